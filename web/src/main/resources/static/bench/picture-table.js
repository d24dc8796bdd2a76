import { plusMinus } from './bands.js';
import { fixed } from './measures.js';

/** The numbers behind the pictures, for a screen reader and for who likes numbers. */

const COLUMNS = [
  { head: 'Speed', unit: 'km/h', key: 'speed_kmh', decimals: 0 },
  { head: 'Pitch, nose-up', unit: '°', key: 'pitch_deg', decimals: 1 },
  { head: 'Front foot', unit: '%', key: 'foot_share', times: 100, decimals: 0 },
  { head: 'Front leg', unit: 'kg', key: 'front_leg_kg', decimals: 0 },
  { head: 'Back leg', unit: 'kg', key: 'back_leg_kg', decimals: 0 },
  { head: 'Pressure centre ahead of the mast', unit: 'mm', key: 'foot_pressure_ahead_of_mast_mm' },
  { head: 'Front wing, up', unit: 'N', key: 'front_wing_lift_n', decimals: 0 },
  { head: 'Stabilizer, up', unit: 'N', key: 'stabilizer_lift_n', decimals: 0 },
  { head: 'Thrust', unit: 'N', key: 'thrust_n', decimals: 0 },
  { head: 'Drag', unit: 'N', key: 'drag_n', decimals: 0 },
  { head: 'Electric power', unit: 'W', key: 'electric_power_w', decimals: 0 },
];

/**
 * The table of a reply: what the side view and the curves show, at every speed.
 *
 * @param {Object} reply
 * @param {Object} measures
 * @returns {{caption: string, heads: {text: string, unit: string}[], rows: {index: number,
 *     cells: string[], note: string}[]}} a row without a trim has its speed as its one cell, and
 *     says why in its note
 */
export function tableOf(reply, measures) {
  const columns = COLUMNS.filter(({ key }) => reply.points.some((point) => point[key] !== null
    && point[key] !== undefined));
  return {
    caption: `${reply.name}: the numbers behind the pictures`,
    heads: columns.map(({ head, unit }) => ({ text: head, unit: measures.symbol(unit) })),
    rows: reply.points.map((point, index) => {
      const trimmed = point.pitch_deg !== null;
      return {
        index,
        cells: columns.slice(0, trimmed ? columns.length : 1)
          .map((column) => cell(point, column, measures)),
        note: trimmed ? '' : point.reason ?? 'No trim at this speed.',
      };
    }),
  };
}

function cell(point, { key, unit, times = 1, decimals }, measures) {
  const value = point[key];
  if (value === null || value === undefined) {
    return fixed(NaN, 0);
  }
  const shown = measures.unit(unit);
  const sure = plusMinus(point[`${key}_band`], times * shown.factor, decimals ?? shown.decimals);
  return measures.text(value * times, unit, decimals) + (sure === '' ? '' : ` ${sure}`);
}
