/**
 * The setups kept beside the one on the sliders: three at most, each under a letter that it keeps as
 * long as it stays, and one of them pinned as the reference. Each is held as texts, so that it
 * outlives a reload, and with the answer it had when it was kept, so that moving a slider asks for
 * none of them again. They are compared at the speed that is looked at.
 */

const LETTERS = ['A', 'B', 'C'];

/** How many are kept beside the one on the sliders. */
export const MOST = LETTERS.length;

/** Speeds nearer than this are the same point of a grid [km/h]. */
const SAME_SPEED_KMH = 0.01;

/** After an answer that was lost on its way [ms]. */
const AGAIN_MS = 3000;

/**
 * @typedef {Object} Entry never changed once it is made
 * @property {string} letter
 * @property {Object<string, string>} fields texts by path
 * @property {Object} saved the case that it came from, as the state holds it
 * @property {Object|null} reply its answer; null while that is on its way
 * @property {string[]} wrong why there is none; empty where all is well
 * @property {boolean} isReference
 * @property {{against: Object, points: string[][]}|null} alike what cannot be told from the
 *     reference, point by point, and the reference's texts that this was found against
 */

/**
 * @param {Object} parts
 * @param {function(Object): Promise<Object>} parts.ask gives the answer to a map of texts
 * @param {function()} parts.onChange
 */
export function createKept({ ask, onChange }) {
  let all = [];
  let shown = [];
  let era = 0;
  let timer = 0;

  function put(next) {
    const pinned = next.find((entry) => entry.isReference)?.letter ?? next[0]?.letter;
    all = next.map((entry) =>
      entry.isReference === (entry.letter === pinned)
        ? entry : { ...entry, isReference: entry.letter === pinned });
    shown = all.filter((entry) => entry.reply !== null);
    onChange();
  }

  const change = (letter, changes) =>
    put(all.map((entry) => (entry.letter === letter ? { ...entry, ...changes } : entry)));

  function free() {
    return LETTERS.find((letter) => all.every((entry) => entry.letter !== letter));
  }

  /** Asks for the answers that are missing, one after the other. */
  async function answerAll() {
    clearTimeout(timer);
    era += 1;
    const mine = era;
    for (;;) {
      const next = all.find((entry) => entry.reply === null && entry.wrong.length === 0);
      if (next === undefined) {
        return;
      }
      try {
        const answer = await ask(next.fields);
        if (mine !== era) {
          return;
        }
        change(next.letter, answer.accepted
          ? { reply: answer } : { wrong: answer.problems.map(({ message }) => message) });
      } catch {
        if (mine === era) {
          timer = setTimeout(answerAll, AGAIN_MS);
        }
        return;
      }
    }
  }

  return {
    /** All of them, in the order kept. */
    all: () => all,

    /** Those that can be drawn; the same list until one of them changes. @returns {Entry[]} */
    shown: () => shown,

    /** The one that is pinned as the reference. @returns {Entry|undefined} */
    reference: () => all.find((entry) => entry.isReference),

    isFull: () => all.length === MOST,

    find: (letter) => all.find((entry) => entry.letter === letter),

    /**
     * Keeps a setup.
     * @param {{fields: Object, saved: Object, reply: Object|null}} setup
     * @returns {string|null} its letter, also where it is kept already; null where there is no room
     */
    keep({ fields, saved, reply = null }) {
      const same = all.find((entry) => isSame(entry.fields, fields));
      if (same !== undefined || all.length === MOST) {
        return same?.letter ?? null;
      }
      const letter = free();
      const entry = { letter, fields, saved, reply, wrong: [], isReference: false, alike: null };
      put([...all, entry].sort((a, b) => a.letter.localeCompare(b.letter)));
      if (reply === null) {
        answerAll();
      }
      return letter;
    },

    /** Takes one away; where it was the reference, the first that is left becomes it. */
    remove: (letter) => put(all.filter((entry) => entry.letter !== letter)),

    /** Pins one as the reference, and no other. */
    pin: (letter) =>
      put(all.map((entry) => ({ ...entry, isReference: entry.letter === letter }))),

    /** What of one cannot be told from the reference, point by point. */
    setAlike: (letter, alike) => change(letter, { alike }),

    /** Asks for all of them anew: in other measures, or where the sections' polars are ready now. */
    renew() {
      if (all.length > 0) {
        put(all.map((entry) => ({ ...entry, reply: null, wrong: [], alike: null })));
        answerAll();
      }
    },

    /** What the draft holds of them. */
    draft: () => all.map(({ letter, fields, saved, isReference }) =>
      ({ letter, fields, saved, isReference })),

    /** Goes on from a draft. */
    restore(entries) {
      put(entries.map((entry) => ({ ...entry, reply: null, wrong: [], alike: null })));
      answerAll();
    },

    /** What the side view and the readings take: the reference at that speed [km/h]. */
    at(speedKmh) {
      const reference = shown.find((entry) => entry.isReference);
      const index = reference === undefined ? -1 : indexAt(reference.reply, speedKmh);
      return index < 0 ? null : { reply: reference.reply, index };
    },
  };
}

/** Place of a speed [km/h] among an answer's points; -1 where it has none there. */
export function indexAt(reply, speedKmh) {
  return reply.points.findIndex((p) => Math.abs(p.speed_kmh - speedKmh) < SAME_SPEED_KMH);
}

function isSame(a, b) {
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((key) => a[key] === b[key]);
}
