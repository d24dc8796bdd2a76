/**
 * A play: what the server answered to one "what if", as numbers at any moment between its first and
 * its last.
 */

/** Series of the answer, each with one number per moment. */
const SERIES = [
  'deck_pitch_deg', 'speed_kmh_at', 'immersion_mm', 'foot_pressure_ahead_of_mast_mm', 'thrust_n',
  'body_ahead_mm', 'bow_clearance_mm', 'water_mm',
];

const KMH = 3.6;

/**
 * @typedef {Object} Moment
 * @property {number} s since the play began [s]
 * @property {number} travelled along the water since then [m]
 */

/**
 * @param {Object} answer of the server, played
 * @returns {{answer: Object, lastS: number, at: function(number): Moment, each: function(string):
 *     number[]}} `at` gives the numbers of all series at a moment, by the series' names
 */
export function createPlay(answer) {
  const times = answer.times_s;
  const last = times.length - 1;
  const travelled = distances(times, answer.speed_kmh_at);

  /** The last moment that is not after a time. */
  function before(s) {
    let low = 0;
    let high = last;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (times[middle] <= s) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  return {
    answer,
    lastS: times[last],
    at(s) {
      const i = before(s);
      const next = Math.min(last, i + 1);
      const gap = times[next] - times[i];
      const part = gap > 0 ? Math.max(0, Math.min(1, (s - times[i]) / gap)) : 0;
      const between = (all) => all[i] + part * (all[next] - all[i]);
      const moment = { s, travelled: between(travelled) };
      for (const name of SERIES) {
        moment[name] = between(answer[name]);
      }
      return moment;
    },
    each: (name) => answer[name],
  };
}

/** Way along the water, by the trapezoidal rule [m]. */
function distances(times, kmh) {
  const all = [0];
  for (let i = 1; i < times.length; i++) {
    all.push(all[i - 1] + ((times[i] - times[i - 1]) * (kmh[i] + kmh[i - 1])) / (2 * KMH));
  }
  return all;
}
