import { add, number, points, root, set, show } from './svg.js';
import { watchSize } from './watch.js';

/**
 * A part from above, drawn from its own geometry: its icon. Icons in hosts of the same size are to
 * one scale, since the scale is chosen from the widest part of the case.
 */

const MARGIN = 4;
const FALLBACK_HEIGHT = 56;

/** Parts with their words, hues and dashes. The board lies with its bow to the right. */
const PARTS = {
  front_wing: { name: 'Front wing', hue: 'front', dashes: null },
  stabilizer: { name: 'Stabilizer', hue: 'back', dashes: '6 4' },
  board: { name: 'Board', hue: 'ink', dashes: null },
};

/**
 * A part's icon in a host element.
 *
 * @param {HTMLElement} host whose size the page's style sheet gives
 * @param {string} part front_wing, stabilizer or board
 * @returns {{svg: SVGElement, draw: function(Object): void, close: function(): void}} `draw` takes
 *     `{reply, measures, colours}`
 */
export function createPlanform(host, part) {
  const { svg, title, description } = root(host, 'planform');
  const outline = add(svg, 'polygon', {
    class: 'pic-planform', 'stroke-linejoin': 'round', 'fill-opacity': 0.2,
  });
  const { name, hue, dashes } = PARTS[part];
  let state = null;
  let drawn = [];
  const size = watchSize(host, FALLBACK_HEIGHT, () => state && draw(state));

  function draw(next) {
    state = next;
    const { reply, measures, colours } = state;
    const key = [reply.planforms, measures, colours, size.width, size.height];
    if (key.every((one, i) => one === drawn[i])) {
      return;
    }
    drawn = key;
    const { width, height } = size;
    set(svg, {
      width, height, viewBox: `0 0 ${width} ${height}`,
      'data-ground': colours.ground, 'data-ink': colours.ink,
    });
    const flat = laid(part, reply.planforms[part]);
    show(outline, Boolean(flat));
    if (!flat) {
      return;
    }
    const scale = scaleOf(reply.planforms, width, height);
    const [left, right, low, high] = extent(flat);
    const place = flat.map((value, i) => (i % 2
      ? height / 2 - (value - (low + high) / 2) * scale
      : width / 2 + (value - (left + right) / 2) * scale));
    set(svg, { 'data-pixels-per-metre': number(scale) });
    set(outline, {
      points: points(place), fill: colours[hue], stroke: colours[hue],
      'stroke-width': 2, 'stroke-dasharray': dashes,
    });
    title.textContent = `${name} from above`;
    const span = measures.withUnit(1000 * (right - left), 'mm');
    description.textContent = `${name}, ${span} ${part === 'board' ? 'long' : 'from tip to tip'}.`;
  }

  return { svg, draw, close: () => size.close() };
}

/** The scale at which the largest part of a case fits [px/m]. */
function scaleOf(planforms, width, height) {
  let scale = Infinity;
  for (const part in PARTS) {
    if (planforms[part]) {
      const [left, right, low, high] = extent(laid(part, planforms[part]));
      scale = Math.min(
        scale, (width - 2 * MARGIN) / (right - left), (height - 2 * MARGIN) / (high - low));
    }
  }
  return scale;
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
