/**
 * A question about what is shown that costs too much to be asked with every move: it waits until
 * nothing has moved for a while, is given up when what is shown changes, and its answer goes with
 * what it belongs to, so that no answer ever stands beside a case that is not its own.
 *
 * For tests: the flag in `document.documentElement.dataset` is `shown` while the page shows one.
 */

/** After a question that was given up, or lost on its way [ms]. */
const AGAIN_MS = 2000;

/** No answer after this is as good as none [ms]. */
const GIVE_UP_MS = 15000;

/**
 * @param {Object} parts
 * @param {string} parts.flag its name in the page's data
 * @param {number} parts.restMs nothing must change for so long before it is asked [ms]
 * @param {string} parts.lost what is said where it got no answer
 * @param {function(Object, AbortSignal): Promise<Object>} parts.ask sends a question
 * @param {function(): Object|null} parts.question the question for what is shown; null while that
 *     is not what stands in the fields
 * @param {function(): string} parts.standsOn names what is shown: an answer to another is dropped
 * @param {function(Object): boolean} parts.isAnswer whether it answers, and was not given up
 * @param {function(?Object, string)} parts.onAnswer called with the answer, or with null and why
 *     there is none now
 */
export function createAsking({
  flag, restMs, lost, ask, question, standsOn, isAnswer, onAnswer,
}) {
  const { dataset } = document.documentElement;
  let timer = 0;
  let underWay = null;
  let shown = null;

  function later(ms) {
    clearTimeout(timer);
    timer = setTimeout(find, ms);
  }

  function callOff() {
    clearTimeout(timer);
    underWay?.abort();
    underWay = null;
  }

  function take(answer, why = '') {
    shown = answer === null ? null : standsOn();
    if (answer === null) {
      delete dataset[flag];
    } else {
      dataset[flag] = 'shown';
    }
    onAnswer(answer, why);
  }

  async function find() {
    const asked = question();
    if (asked === null) {
      return; // The next answer asks again.
    }
    const mine = new AbortController();
    underWay = mine;
    const subject = standsOn();
    const limit = setTimeout(() => mine.abort(), GIVE_UP_MS);
    try {
      const answer = await ask(asked, mine.signal);
      if (underWay !== mine) {
        return;
      }
      underWay = null;
      if (isAnswer(answer) && standsOn() === subject) {
        take(answer);
      } else {
        later(AGAIN_MS);
      }
    } catch {
      if (underWay === mine) {
        underWay = null;
        take(null, lost);
        later(AGAIN_MS);
      }
    } finally {
      clearTimeout(limit);
    }
  }

  function drop() {
    callOff();
    if (shown !== null) {
      take(null);
    }
  }

  return {
    /** Something is shown: where it is another than the answer belongs to, one is wanted anew. */
    want() {
      if (standsOn() === shown) {
        return;
      }
      callOff();
      take(null);
      later(restMs);
    },

    /** A person asked for it: without waiting for rest. */
    now() {
      callOff();
      take(null);
      find();
    },

    /** What is shown is about to change. */
    forget: drop,
  };
}
