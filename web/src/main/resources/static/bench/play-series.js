import { fixed, nose } from './measures.js';

/** What the traces and the table of a play show. */

/**
 * By the series of the answer; `span` is the least that an axis has, so that a small
 * wobble does not look like a large one [canonical unit]; `short` is the title where it is narrow,
 * and `down` that numbers grow downwards.
 */
export const TRACES = [
  { key: 'deck_pitch_deg', title: 'Deck, nose up', unit: '°', decimals: 1, span: 2, hue: 'ink' },
  { key: 'bow_clearance_mm', title: 'Bow over water', unit: 'mm', span: 100, hue: 'ink' },
  { key: 'immersion_mm', title: 'Front wing under water', short: 'Wing under water',
    unit: 'mm', span: 100, hue: 'front', down: true },
  { key: 'speed_kmh_at', title: 'Speed', unit: 'km/h', decimals: 1, span: 2, hue: 'ink' },
  { key: 'foot_pressure_ahead_of_mast_mm', title: 'Foot pressure ahead of mast',
    short: 'Foot pressure', unit: 'mm', span: 50, hue: 'ink' },
  { key: 'thrust_n', title: 'Thrust', unit: 'N', decimals: 0, span: 40, hue: 'action' },
];

/** More that only the table has. */
const MORE = [
  { key: 'body_ahead_mm', title: 'Body moved forward', unit: 'mm' },
  { key: 'water_mm', title: 'Water at the mast', unit: 'mm' },
];

/** About so many rows has the table of a play. */
const ROWS = 20;

/** Steps of the table's rows [s]. */
const STEPS = [0.05, 0.1, 0.2, 0.25, 0.5, 1, 2, 5];

/** A moment in words. */
export function momentWords(moment, measures) {
  return `${fixed(moment.s, 2)} seconds: deck ${nose(moment.deck_pitch_deg)}, `
    + `bow ${above(moment.bow_clearance_mm, measures)}, `
    + `front wing ${above(-moment.immersion_mm, measures)}, `
    + measures.withUnit(moment.speed_kmh_at, 'km/h', 1);
}

function above(mm, measures) {
  return `${measures.withUnit(Math.abs(mm), 'mm')} ${mm < 0 ? 'under' : 'over'} water`;
}

/**
 * The table behind a play's picture and traces, thinned.
 *
 * @returns {{heads: string[], rows: string[][]}}
 */
export function playTable(play, measures) {
  const all = [...TRACES, ...MORE.filter(({ key }) => play.each(key).some((value) => value !== 0))];
  const step = STEPS.find((one) => play.lastS / one <= ROWS) ?? play.lastS / ROWS;
  const moments = [];
  for (let i = 0; i * step < play.lastS - step / 4; i++) {
    moments.push(i * step);
  }
  moments.push(play.lastS);
  return {
    heads: ['Time, s', ...all.map(({ title, unit }) => `${title}, ${measures.symbol(unit)}`)],
    rows: moments.map((s) => {
      const moment = play.at(s);
      return [
        fixed(s, 2),
        ...all.map(({ key, unit, decimals }) => measures.text(moment[key], unit, decimals)),
      ];
    }),
  };
}
