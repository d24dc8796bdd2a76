import { roundAbove } from './geometry.js';
import { fixed } from './measures.js';

/** Axes with round ticks: one of speed that all panels share, and an upright one per panel. */

/** Room for a tick's number across, and up and down, over the size of the letters. */
const TICK_ROOM = 4;

const TICK_HEIGHT = 1.7;

/** Share of the upright axis that values must fill, or it is chosen anew. */
const FILLED = 0.6;

/**
 * The speed axis.
 *
 * @param {Object[]} points of the reply
 * @param {number} left where the lowest speed stands [px]
 * @param {number} right where the highest stands [px]
 * @param {Object} measures
 * @param {number} size of the letters [px]
 */
export function speedAxis(points, left, right, measures, size) {
  const from = points[0].speed_kmh;
  const to = Math.max(points[points.length - 1].speed_kmh, from + 1);
  const low = measures.value(from, 'km/h');
  const high = measures.value(to, 'km/h');
  const step = Math.max(1, roundAbove((high - low) / ((right - left) / (TICK_ROOM * size))));
  const x = (kmh) => left + ((kmh - from) / (to - from)) * (right - left);
  const ticks = round(low, high, step).map((value) => (
    { text: fixed(value, 0), x: x(measures.canonical(value, 'km/h')) }));
  return {
    from, to, left, right, x, ticks,
    holds: (kmh) => kmh >= from - 1e-9 && kmh <= to + 1e-9,
    /** The point whose speed lies nearest to a place across [px]. */
    nearest(place) {
      const kmh = from + ((place - left) / (right - left)) * (to - from);
      let best = 0;
      points.forEach((point, i) => {
        if (Math.abs(point.speed_kmh - kmh) < Math.abs(points[best].speed_kmh - kmh)) {
          best = i;
        }
      });
      return best;
    },
  };
}

/**
 * The upright range of a panel. It stands while values stay inside it and fill enough of it, so
 * that the picture does not breathe while a slider moves.
 *
 * @param {?{low: number, high: number, step: number}} standing
 * @param {number} low least value
 * @param {number} high greatest value
 * @param {Object} quantity
 * @param {number} height of the panel [px]
 * @param {number} size of the letters [px]
 */
export function uprightRange(standing, low, high, quantity, height, size) {
  const steps = Math.max(2, Math.min(6, Math.floor(height / (TICK_HEIGHT * size))));
  const [least, most] = quantity.still ? quantity.always
    : [Math.min(low, quantity.always[0]), Math.max(high, quantity.always[1])];
  const same = standing && standing.id === quantity.id && standing.steps === steps;
  const inside = same && least >= standing.low && most <= standing.high;
  if (inside && most - least >= FILLED * (standing.high - standing.low)) {
    return standing;
  }
  const step = roundAbove((most - least) / steps);
  // The ends lie on quarters of a step: whole steps would leave half of a low panel empty.
  const quarter = step / 4;
  return {
    id: quantity.id, steps, step,
    low: quarter * Math.floor(least / quarter + 1e-9),
    high: quarter * Math.ceil(most / quarter - 1e-9),
  };
}

/** The upright ticks of a range. */
export function uprightTicks({ low, high, step }) {
  const decimals = Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
  return round(low, high, step).map((value) => ({ value, text: fixed(value, decimals) }));
}

function round(low, high, step) {
  const all = [];
  for (let i = Math.ceil(low / step - 1e-9); i <= Math.floor(high / step + 1e-9); i++) {
    all.push(i * step);
  }
  return all;
}
