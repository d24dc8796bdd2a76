import { alikeKeys } from './bands.js';

/**
 * Whether a kept setup can be told from the pinned reference. Each pair is asked for once, when the
 * page rests and shows its bands, and never while anything moves. (The one on the sliders is held
 * against the reference by its own bands.)
 *
 * For tests: `document.documentElement.dataset.apart` is `shown` while all of it is known.
 */

/** Once the page shows bands [ms]. */
const REST_MS = 200;

/** After a question that was given up, or lost on its way [ms]. */
const AGAIN_MS = 2000;

/**
 * @param {Object} parts
 * @param {function(Object, Object): Promise<Object>} parts.ask takes the texts of a setup and of the
 *     reference
 * @param {Object} parts.kept
 * @returns {{want: function(), forget: function()}}
 */
export function createApart({ ask, kept }) {
  const { dataset } = document.documentElement;
  let timer = 0;
  let underWay = null;

  function later(ms) {
    clearTimeout(timer);
    timer = setTimeout(find, ms);
  }

  /** The first pair of which it is not known. */
  function next() {
    const reference = kept.reference();
    const entry = kept.shown().find(({ isReference, alike }) =>
      !isReference && alike?.against !== reference.fields);
    return entry === undefined ? null : { entry, reference };
  }

  async function find() {
    const pair = next();
    if (pair === null) {
      dataset.apart = 'shown';
    }
    if (pair === null || dataset.bands !== 'shown') {
      return; // The next bands that are shown ask again.
    }
    const mine = {};
    underWay = mine;
    const { entry, reference } = pair;
    try {
      const answer = await ask(entry.fields, reference.fields);
      if (underWay !== mine) {
        return;
      }
      underWay = null;
      if (answer.accepted && kept.find(entry.letter)?.reply === entry.reply) {
        kept.setAlike(entry.letter, {
          against: reference.fields,
          points: answer.points.map(({ alike }) => alikeKeys(alike, answer.band_keys)),
        });
      }
      later(answer.accepted ? REST_MS : AGAIN_MS);
    } catch {
      if (underWay === mine) {
        underWay = null;
        later(AGAIN_MS);
      }
    }
  }

  return {
    /** Bands are shown, or other setups are kept. */
    want() {
      if (next() !== null) {
        delete dataset.apart;
      }
      if (underWay === null) {
        later(REST_MS);
      }
    },

    /** Something moves; the server itself gives up what is under way. */
    forget() {
      clearTimeout(timer);
      underWay = null;
    },
  };
}
