/**
 * A fresh page draws itself unseen, so that the first moves do not wait for the browser to compile
 * what draws.
 */

/** Times; by then the browser has compiled it. */
const TIMES = 80;

/** Where idle time is not told of, so long between two times [ms]. */
const APART_MS = 100;

/**
 * In idle time and before anything has been changed draws a neighbouring speed and at once the
 * present one again: no frame shows it.
 *
 * @param {function(boolean)} draw draws a neighbouring speed, or the present one
 * @param {function(): boolean} isFresh whether nothing has been changed yet
 */
export function rehearse(draw, isFresh, left = TIMES) {
  const idle = window.requestIdleCallback ?? ((work) => setTimeout(work, APART_MS));
  idle(() => {
    if (left > 0 && isFresh()) {
      draw(true);
      draw(false);
      rehearse(draw, isFresh, left - 1);
    }
  });
}
