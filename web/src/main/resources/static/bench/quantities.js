import { fixed, nose } from './measures.js';

/** What the curves show against speed. */

/**
 * @typedef {Object} Line
 * @property {string} name at the line's end
 * @property {string} hue front, back, ink or action; back is dashed
 * @property {string} key of the reply's points
 * @property {number} times from the reply's number to the canonical unit
 */

/**
 * @typedef {Object} Quantity
 * @property {string} id
 * @property {string} title over the panel
 * @property {string} choice the word for a choice between panels
 * @property {string} unit canonical
 * @property {number} decimals of a value read off
 * @property {Line[]} lines
 * @property {number[]} always a range that is shown whatever the values [shown unit]
 * @property {boolean} still whether that range is the whole one
 */

/**
 * By id, which for a single line is its key in the reply.
 *
 * @type {Object<string, Quantity>}
 */
const ALL = {
  pitch_deg: {
    id: 'pitch_deg', title: 'Pitch, nose-up', choice: 'Pitch', unit: '°', decimals: 1,
    lines: [{ name: 'pitch', hue: 'ink', key: 'pitch_deg', times: 1 }],
    always: [-2, 6],
  },
  foot_share: {
    id: 'foot_share', title: 'Load on the front foot', choice: 'Feet', unit: '%', decimals: 0,
    lines: [{ name: 'front foot', hue: 'front', key: 'foot_share', times: 100 }],
    always: [0, 100], still: true,
  },
  legs: {
    id: 'legs', title: 'Load per leg', choice: 'Legs', unit: 'kg', decimals: 0,
    lines: [
      { name: 'front leg', hue: 'front', key: 'front_leg_kg', times: 1 },
      { name: 'back leg', hue: 'back', key: 'back_leg_kg', times: 1 },
    ],
    always: [0, 20],
  },
  electric_power_w: {
    id: 'electric_power_w', title: 'Electric power', choice: 'Power', unit: 'W', decimals: 0,
    lines: [{ name: 'power', hue: 'action', key: 'electric_power_w', times: 1 }],
    always: [0, 500],
  },
  thrust_n: {
    id: 'thrust_n', title: 'Thrust needed', choice: 'Thrust', unit: 'N', decimals: 0,
    lines: [{ name: 'thrust', hue: 'action', key: 'thrust_n', times: 1 }],
    always: [0, 50],
  },
};

/** The quantities that a page offers, in order. */
export const QUANTITIES = ['pitch_deg', 'foot_share', 'legs', 'electric_power_w'].map((id) => ALL[id]);

/**
 * A quantity, or what stands in for it where the reply has none: thrust for power without a drive.
 *
 * @param {string} id
 * @param {Object} reply
 * @returns {Quantity}
 */
export function quantityOf(id, reply) {
  const powered = reply.points.some((point) => point.electric_power_w !== null);
  const trims = reply.points.some((point) => point.pitch_deg !== null);
  return id === 'electric_power_w' && trims && !powered ? ALL.thrust_n : ALL[id];
}

/** A point's value on a line in the shown unit; null where there is none. */
export function valueOf(point, line, quantity, measures) {
  const value = point[line.key];
  return value === null || value === undefined ? null
    : measures.value(value * line.times, quantity.unit);
}

/** A point's band on a line in the shown unit, low and high; null where there is none. */
export function bandOf(point, line, quantity, measures) {
  const band = point[line.key + '_band'];
  return band ? band.map((value) => measures.value(value * line.times, quantity.unit)) : null;
}

/**
 * The case's wish on a quantity, in the shown unit; null where it has none.
 *
 * @param {Quantity} quantity
 * @param {Object} reply
 */
export function wishOf(quantity, reply) {
  if (quantity.id === 'foot_share') {
    return 100 * reply.wished_foot_share;
  }
  // A level deck is the zero line, which is drawn anyhow.
  return quantity.id === 'pitch_deg' && reply.wished_pitch_deg ? reply.wished_pitch_deg : null;
}

/**
 * Speeds that are marked on a quantity, each with its word and its height in the shown unit.
 *
 * @returns {{word: string, kmh: number, value: number}[]}
 */
export function marksOf(quantity, reply, measures) {
  if (quantity.id === 'pitch_deg' && reply.level_speed_kmh) {
    return [{ word: 'level', kmh: reply.level_speed_kmh, value: 0 }];
  }
  if (quantity.id === 'foot_share') {
    return reply.even_feet_speeds.map(({ speed_kmh: kmh }) =>
      ({ word: 'even feet', kmh, value: 50 }));
  }
  if (quantity.id === 'legs') {
    return reply.even_feet_speeds.flatMap(({ speed_kmh: kmh }) => {
      const half = between(reply.points, kmh, 'front_leg_kg');
      return half === null ? []
        : [{ word: 'even feet', kmh, value: measures.value(half, 'kg') }];
    });
  }
  return [];
}

/** A value between the two points next to a speed; null beside a gap. */
function between(all, kmh, key) {
  const next = all.findIndex((point) => point.speed_kmh >= kmh);
  const after = all[next];
  const before = all[Math.max(0, next - 1)];
  if (!after || after[key] === null || before[key] === null) {
    return null;
  }
  const step = after.speed_kmh - before.speed_kmh;
  const share = step > 0 ? (kmh - before.speed_kmh) / step : 0;
  return before[key] + share * (after[key] - before[key]);
}

/** What a point says in one sentence, for those who cannot see the curves. */
export function pointWords(point, measures) {
  const speed = measures.withUnit(point.speed_kmh, 'km/h', 0);
  if (point.pitch_deg === null) {
    return `${speed}, no trim`;
  }
  const power = point.electric_power_w === null
    ? measures.withUnit(point.thrust_n, 'N', 0) + ' thrust'
    : measures.withUnit(point.electric_power_w, 'W', 0);
  const share = fixed(100 * point.foot_share, 0);
  return `${speed}, ${nose(point.pitch_deg)}, ${share} % on the front foot, ${power}`;
}
