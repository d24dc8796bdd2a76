import { add, number, points, root, set } from './svg.js';
import { watchSize } from './watch.js';

/**
 * A part from above, drawn from its own geometry: its icon. All icons of one size are to one
 * scale, so that a shelf on the screen looks like the shelf on the wall.
 */

/** What an icon's width and height stand for [m]: the largest usual board and a rim. */
const WIDTH_SHOWN = 2.1;

const HEIGHT_SHOWN = 0.9;

const MARGIN = 2;
const FALLBACK_HEIGHT = 36;

/** Parts with their words, hues and dashes. The board lies with its bow to the right. */
const PARTS = {
  front_wing: { name: 'Front wing', hue: 'front', dashes: null },
  stabilizer: { name: 'Stabilizer', hue: 'back', dashes: '4 2.5' },
  board: { name: 'Board', hue: 'ink', dashes: null },
};

/**
 * A part's icon in a host element.
 *
 * @param {HTMLElement} host whose size the page's style sheet gives
 * @returns {{svg: SVGElement, draw: function(Object): void, close: function(): void}} `draw` takes
 *     `{points, name, colours}`: the reply's planform, flat, across and ahead in turn [m], and
 *     which one it is (front_wing, stabilizer or board)
 */
export function createPlanform(host) {
  const { svg, title } = root(host, 'planform');
  const outline = add(svg, 'polygon', {
    class: 'pic-planform', 'stroke-linejoin': 'round', 'fill-opacity': 0.2, 'stroke-width': 1.5,
  });
  let state = null;
  const size = watchSize(host, FALLBACK_HEIGHT, () => state && draw(state));

  function draw(next) {
    state = next;
    const { width, height } = size;
    const { name, hue, dashes } = PARTS[state.name];
    const { colours } = state;
    const flat = laid(state.name, state.points);
    const [left, right, low, high] = extent(flat);
    // A part that is larger than an icon can show is drawn as large as it can be.
    const scale = Math.min(
      width / WIDTH_SHOWN,
      height / HEIGHT_SHOWN,
      (width - 2 * MARGIN) / (right - left),
      (height - 2 * MARGIN) / (high - low),
    );
    const place = flat.map((value, i) => (i % 2
      ? height / 2 - (value - (low + high) / 2) * scale
      : width / 2 + (value - (left + right) / 2) * scale));
    set(svg, {
      width, height, viewBox: `0 0 ${width} ${height}`, 'data-pixels-per-metre': number(scale),
      'data-ground': colours.ground, 'data-ink': colours.ink,
    });
    set(outline, {
      points: points(place), fill: colours[hue], stroke: colours[hue], 'stroke-dasharray': dashes,
    });
    title.textContent = `${name} from above`;
  }

  return { svg, draw, close: () => size.close() };
}

/** A planform as it lies in its icon: wings leading edge up, the board turned bow to the right. */
function laid(part, flat) {
  return part !== 'board' ? flat : flat.map((_, i) => (i % 2 ? -flat[i - 1] : flat[i + 1]));
}

function extent(flat) {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < flat.length; i += 2) {
    left = Math.min(left, flat[i]);
    right = Math.max(right, flat[i]);
    low = Math.min(low, flat[i + 1]);
    high = Math.max(high, flat[i + 1]);
  }
  return [left, right, low, high];
}
