/**
 * The limits of the case in hand. They cost some ten times what an answer costs, so they are asked
 * for once nothing has moved for a while, after the bands. They go when what is shown changes:
 * limits never stand beside a case that is not theirs.
 *
 * For tests: `document.documentElement.dataset.envelope` is `shown` while the page shows them.
 */

/** Nothing must change for so long before they are asked for; longer than for the bands [ms]. */
const REST_MS = 600;

/** After a question that was given up, or lost on its way [ms]. */
const AGAIN_MS = 2000;

/** No answer after this is as good as none [ms]. */
const GIVE_UP_MS = 15000;

/**
 * @param {Object} parts
 * @param {function(Object, AbortSignal): Promise<Object>} parts.ask sends a question
 * @param {function(): Object|null} parts.question the question for what is shown; null while that
 *     is not what stands in the fields
 * @param {function(): string} parts.standsOn names what is shown: an answer to another is dropped
 * @param {function(?Object, string)} parts.onEnvelope called with the answer, or with null and why
 *     there is none now
 */
export function createEnvelope({ ask, question, standsOn, onEnvelope }) {
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
      delete dataset.envelope;
    } else {
      dataset.envelope = 'shown';
    }
    onEnvelope(answer, why);
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
      if (answer.accepted && standsOn() === subject) {
        take(answer);
      } else {
        later(AGAIN_MS);
      }
    } catch {
      if (underWay === mine) {
        underWay = null;
        take(null, 'The limits could not be had just now; they are asked for again.');
        later(AGAIN_MS);
      }
    } finally {
      clearTimeout(limit);
    }
  }

  return {
    /** An answer is shown: where it is another than the limits belong to, they are wanted anew. */
    want() {
      if (standsOn() === shown) {
        return;
      }
      callOff();
      take(null);
      later(REST_MS);
    },

    /** What is shown is about to change. */
    forget() {
      callOff();
      if (shown !== null) {
        take(null);
      }
    },
  };
}
