import { createAsking } from './asking.js';

/**
 * The limits of the case in hand. They cost some ten times what an answer costs, so they are asked
 * for once nothing has moved for a while, after the bands.
 *
 * For tests: `document.documentElement.dataset.envelope` is `shown` while the page shows them.
 */

/** Nothing must change for so long before they are asked for; longer than for the bands [ms]. */
const REST_MS = 600;

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
  return createAsking({
    flag: 'envelope',
    restMs: REST_MS,
    lost: 'The limits could not be had just now; they are asked for again.',
    ask,
    question,
    standsOn,
    isAnswer: (answer) => answer.accepted,
    onAnswer: onEnvelope,
  });
}
