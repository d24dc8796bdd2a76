import { byId, setText } from './dom.js';

/**
 * Numbers that stand on fitted sections, because those of the sections themselves are still being
 * computed: says so beside the verdict, looks now and then how far they are, and has the case asked
 * for again once they are there.
 */

/** Between two looks [ms]. */
const EVERY_MS = 1000;

/**
 * @param {Object} parts
 * @param {function(): Promise<{ready: boolean, final: boolean, words: string}>} parts.ask
 * @param {function(): Object} parts.reply the answer that the page shows
 * @param {function()} parts.onReady called once the sections of the case in hand are there
 */
export function createSections({ ask, reply, onReady }) {
  let timer = 0;
  let looks = 0;

  async function look() {
    timer = 0;
    looks += 1;
    const mine = looks;
    try {
      const state = await ask();
      if (mine !== looks) {
        return;
      }
      say(state.words);
      if (state.ready) {
        onReady();
      } else if (!state.final) {
        later();
      }
    } catch {
      later(); // No connection: the page says so itself.
    }
  }

  function later() {
    clearTimeout(timer);
    timer = setTimeout(look, EVERY_MS);
  }

  function say(words) {
    setText(byId('sections-said'), words);
    byId('sections-said').hidden = words === '';
  }

  return {
    /** To be called with each answer that was drawn. */
    follow() {
      if (reply().sections !== 'fitted') {
        looks += 1;
        clearTimeout(timer);
        timer = 0;
        say('');
      } else if (timer === 0) {
        timer = setTimeout(look, 0);
      }
    },
  };
}
