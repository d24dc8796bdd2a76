import { write } from './svg.js';

/** What a picture watches: the size of its host, and whether its words have come to rest. */

/** How long nothing must change before a picture's title is renewed [ms]. */
const REST = 500;

/** Width of a host that is not shown yet [px]. */
const FALLBACK_WIDTH = 356;

/**
 * Keeps a host's size at hand without asking the page for it while drawing.
 *
 * @param {HTMLElement} host
 * @param {number} fallbackHeight for a host that is not shown yet [px]
 * @param {function(): void} changed called when the size has changed
 * @returns {{width: number, height: number, close: function(): void}}
 */
export function watchSize(host, fallbackHeight, changed) {
  const first = host.getBoundingClientRect();
  const size = {
    width: Math.round(first.width) || FALLBACK_WIDTH,
    height: Math.round(first.height) || fallbackHeight,
    close: () => observer.disconnect(),
  };
  const observer = new ResizeObserver(([entry]) => {
    const width = Math.round(entry.contentRect.width);
    const height = Math.round(entry.contentRect.height);
    // A host that is not shown keeps the size it had.
    if (width > 0 && height > 0 && (width !== size.width || height !== size.height)) {
      size.width = width;
      size.height = height;
      changed();
    }
  });
  observer.observe(host);
  return size;
}

/**
 * Renews a picture's title and description once it is at rest: a screen reader has no use for the
 * ones in between, and they cost time.
 *
 * @returns {function(function(): string[]): void} takes what gives title and description
 */
export function whenAtRest(title, description) {
  let timer = 0;
  let words = null;
  const renew = () => {
    timer = 0;
    const [name, text] = words();
    write(title, name);
    write(description, text);
  };
  return (given) => {
    const first = words === null;
    words = given;
    clearTimeout(timer);
    if (first) {
      renew();
    } else {
      timer = setTimeout(renew, REST);
    }
  };
}
