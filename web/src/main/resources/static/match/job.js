import { byId, setText } from '/bench/dom.js';

/** A look through the stock: begun, followed while it works, stopped, and its answer taken along. */

/** From one question how far it is to the next [ms]. */
const ASK_MS = 400;

/** After a lost connection [ms]. */
const AGAIN_MS = 2000;

const { dataset } = document.documentElement;

/**
 * @param {Object} parts
 * @param {Object} parts.server
 * @param {function(string): void} parts.onJob called with the name of the job under way, or null
 * @param {function(Object): void} parts.onFound called with what was found
 */
export function createJob({ server, onJob, onFound }) {
  let job = null;
  let timer = 0;

  function show(state, words = '') {
    dataset.match = state;
    byId('job').hidden = state !== 'working';
    byId('look').disabled = false;
    setText(byId('job-said'), words);
  }

  function leave(state, words) {
    job = null;
    clearTimeout(timer);
    onJob(null);
    show(state, words);
  }

  async function ask() {
    const mine = job;
    try {
      const { state, words, share } = await server.json('/match/state', { job: mine });
      if (job !== mine) {
        return;
      }
      setText(byId('job-said'), '');
      setText(byId('job-words'), words);
      byId('job-bar').value = share;
      if (state === 'waiting' || state === 'running') {
        timer = setTimeout(ask, ASK_MS);
      } else if (state === 'done') {
        await take(mine);
      } else {
        leave(state === 'failed' ? 'failed' : 'stopped', words);
      }
    } catch (error) {
      if (job === mine) {
        setText(byId('job-said'), error instanceof TypeError
          ? 'No connection to the program. It is asked again.' : error.message);
        timer = setTimeout(ask, AGAIN_MS);
      }
    }
  }

  async function take(mine) {
    const found = await server.json('/match/result', { job: mine });
    if (job === mine) {
      leave('shown', '');
      onFound(found);
    }
  }

  function follow(name) {
    clearTimeout(timer);
    job = name;
    onJob(name);
    setText(byId('job-words'), 'Laying out the stock');
    byId('job-bar').value = 0;
    show('working');
    ask();
  }

  byId('job-stop').addEventListener('click', () => {
    const stopped = job;
    leave('stopped', 'Stopped.');
    byId('look').focus();
    server.json('/match/stop', { job: stopped }).catch(() => {
      // It ends by itself when nobody asks for it.
    });
  });

  return {
    follow,
    /** Begins one; returns what is wrong with the question, in sentences. */
    async start(question) {
      byId('look').disabled = true;
      try {
        const answer = await server.json('/match/start', question);
        if (answer.accepted) {
          follow(answer.job);
          return [];
        }
        show(job === null ? 'stopped' : 'working');
        return answer.problems.map(({ message }) => message);
      } catch (error) {
        show(job === null ? 'stopped' : 'working');
        return [error instanceof TypeError
          ? 'No connection to the program. Try again.' : error.message];
      }
    },
    isWorking: () => job !== null,
  };
}
