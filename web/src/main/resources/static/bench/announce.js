/** Words for people who listen: said once the sliders have come to rest, and not while they move. */

/** How long nothing must change [ms]. */
const REST_MS = 500;

/**
 * @param {HTMLElement} region a polite live region
 * @returns {function(function(): string)} asks for the words at rest; the newest call counts
 */
export function createAnnouncer(region) {
  let timer = 0;
  let said = '';
  return (words) => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      const text = words();
      if (text !== said) {
        said = text;
        region.textContent = text;
      }
    }, REST_MS);
  };
}

/**
 * Work that can wait until the hand rests, such as tables that nobody sees.
 * @param {function()} work
 * @param {number} [restMs] how long nothing must change [ms]
 * @returns {function()} to be called at each change
 */
export function atRest(work, restMs = REST_MS) {
  let timer = 0;
  return () => {
    clearTimeout(timer);
    timer = setTimeout(work, restMs);
  };
}
