/**
 * How sure the numbers are. Bands cost some twenty times what an answer costs, so they are asked
 * for once nothing has moved for a while, and laid onto the answer that is shown. The next answer
 * comes without any: a band never stands beside numbers that it does not belong to.
 *
 * For tests: `document.documentElement.dataset.bands` is `shown` while the page shows bands.
 */

/** Nothing must change for so long before bands are asked for [ms]. */
const REST_MS = 350;

/** After a question that was given up, or lost on its way [ms]. */
const AGAIN_MS = 2000;

/**
 * @param {Object} parts
 * @param {function(Object): Promise<Object>} parts.ask sends a question
 * @param {function(): Object|null} parts.question the question for what is shown; null while that
 *     is not what stands in the fields
 * @param {function(): Object} parts.reply the answer shown
 * @param {function(Object)} parts.onBands called with that answer, its bands laid onto it
 */
export function createBands({ ask, question, reply, onBands }) {
  const { dataset } = document.documentElement;
  let timer = 0;
  let underWay = null;

  function later(ms) {
    clearTimeout(timer);
    timer = setTimeout(find, ms);
  }

  async function find() {
    const asked = question();
    const shown = reply();
    if (asked === null) {
      return; // The next answer asks again.
    }
    const mine = {};
    underWay = mine;
    try {
      const answer = await ask(asked);
      if (underWay !== mine || reply() !== shown) {
        return;
      }
      if (answer.accepted) {
        dataset.bands = 'shown';
        onBands(laid(shown, answer));
      } else {
        later(AGAIN_MS);
      }
    } catch {
      // Numbers without bands are numbers still; the words for a lost connection are the curve's.
      if (underWay === mine) {
        later(AGAIN_MS);
      }
    }
  }

  return {
    /** An answer is shown that has no bands yet, or another reference is pinned. */
    want() {
      if (reply().band_keys === undefined) {
        delete dataset.bands;
      }
      underWay = null;
      later(REST_MS);
    },

    /** What is shown is about to change; the server itself gives up what is under way. */
    forget() {
      clearTimeout(timer);
      underWay = null;
    },
  };
}

/**
 * An answer with its bands.
 * @param {Object} shown the answer to the curve's question
 * @param {Object} answer its bands, points in the same order
 * @returns {Object} a new answer
 */
function laid(shown, answer) {
  const { band_keys: keys, phrases, points, ...rest } = answer;
  return {
    ...shown,
    band_keys: keys,
    level_speed_kmh_band: rest.level_speed_kmh_band,
    rideable_from_kmh_band: rest.rideable_from_kmh_band,
    rideable_to_kmh_band: rest.rideable_to_kmh_band,
    points: shown.points.map((point, i) => withBands(point, points[i], keys, phrases)),
  };
}

/** Names of the numbers that cannot be told from the pinned reference's. */
export function alikeKeys(places, keys) {
  return places.map((place) => keys[place]);
}

function withBands(point, { bands, second, sure, apart, alike }, keys, phrases) {
  const phrase = (number) => phrases[number];
  const banded = {
    ...point, sure: sure.map(phrase), apart: apart.map(phrase), alike: alikeKeys(alike, keys),
  };
  keys.forEach((key, i) => {
    const low = bands?.[2 * i] ?? null;
    banded[`${key}_band`] = low === null ? null : [low, bands[2 * i + 1]];
  });
  if (second !== null) {
    banded.verdict = [point.verdict[0], phrases[second]];
  }
  return banded;
}

/**
 * An answer that no longer says what it was told of the pinned reference, since that is another now.
 * @param {Object} shown
 * @returns {Object} the same answer where it has no bands
 */
export function withoutReference(shown) {
  return shown.band_keys === undefined
    ? shown
    : { ...shown, points: shown.points.map((point) => ({ ...point, apart: [], alike: [] })) };
}

/**
 * Half the width of a band, rounded up: no band is shown narrower than it is.
 * @param {number[]|null|undefined} band lowest and highest
 * @param {number} times shown units per unit of the band
 * @param {number} decimals
 * @returns {string} such as `±1.1`; empty where there is no band
 */
export function plusMinus(band, times, decimals) {
  if (!band) {
    return '';
  }
  const scale = 10 ** decimals;
  const half = Math.ceil((Math.abs(band[1] - band[0]) / 2) * times * scale - 1e-6) / scale;
  return `±${half.toFixed(decimals)}`;
}
