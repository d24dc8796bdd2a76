/**
 * An answer of the server, as the page uses it. On its way what recurs at every speed stands once:
 * names of numbers, which the points give in rows, and sentences and kinds of force, which they name
 * by their place.
 */

/**
 * Names the points' numbers, and puts sentences and kinds of force where the points name them.
 * @param {Object} answer as it came; one that was not accepted stays as it is
 * @returns {Object} the same object
 */
export function spellOut(answer) {
  if (answer.points !== undefined) {
    const { phrases, force_kinds: kinds, point_keys: keys, moment_keys: terms } = answer;
    const phrase = (number) => phrases[number];
    for (const point of answer.points) {
      keys.forEach((key, i) => (point[key] = point.numbers?.[i] ?? null));
      point.moment_terms_nm = point.moments && Object.fromEntries(terms.map((t, i) => [t, point.moments[i]]));
      point.verdict = point.verdict.map(phrase);
      point.cause = {
        headline: phrase(point.cause.headline),
        sentences: point.cause.sentences.map(phrase),
      };
      point.split = point.split?.map(splitRow, phrases) ?? null;
      point.forces = point.forces.map(force, kinds);
    }
  }
  return answer;
}

function splitRow([name, pitch, share, pressure, sum]) {
  return { name: this[name], pitch_deg: pitch, foot_share: share, foot_pressure_mm: pressure, sum };
}

function force([kind, x, y, ahead, up]) {
  return { ...this[kind], x_m: x, y_m: y, ahead_n: ahead, up_n: up };
}
