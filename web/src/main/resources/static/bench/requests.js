/**
 * Questions to the server: one under way, the newest waits, and what lies between is dropped. An
 * answer that is older than what was drawn, or that belongs to a case no longer on the bench, is
 * dropped too, so nothing ever jumps back. A lost connection loses nothing: the newest question is
 * asked again until it is answered.
 */

/** An answer that takes longer than this is worth a word [ms]. */
const PATIENCE_MS = 100;

/** No answer after this counts as a lost connection [ms]. */
const GIVE_UP_MS = 15000;

/** Statuses whose answers say what a person has to put right: taken, too large, not usable. */
const WORDS_FOR_THE_PERSON = [409, 413, 422];

const FIRST_RETRY_MS = 500;
const LAST_RETRY_MS = 5000;

/**
 * @param {Object} parts
 * @param {function(Object, AbortSignal): Promise<Object>} parts.ask sends a question; fails with a
 *     TypeError or AbortError where there is no connection, with an Error otherwise
 * @param {function(Object, Object, boolean)} parts.onReply called with answer, its question, and
 *     whether it is the newest one
 * @param {function(string, string)} parts.onStatus 'idle', 'catching-up', 'no-connection' or 'fault'
 *     with a message
 */
export function createRequests({ ask, onReply, onStatus }) {
  let waiting = null;
  let underWay = null;
  let drawn = -1;
  let era = 0;
  let late = 0;
  let retry = 0;
  let delay = FIRST_RETRY_MS;
  let status = 'idle';

  function say(next, message = '') {
    if (status !== next || next === 'fault') {
      status = next;
      onStatus(next, message);
    }
  }

  function settle() {
    clearTimeout(late);
    late = 0;
    delay = FIRST_RETRY_MS;
    say('idle');
  }

  function answered(question, reply) {
    if (question.era === era && question.sequence > drawn) {
      drawn = question.sequence;
      onReply(reply, question, waiting === null);
    }
  }

  function failed(question, error) {
    waiting = waiting ?? question;
    const lost = error instanceof TypeError || error.name === 'AbortError';
    clearTimeout(late);
    late = 0;
    say(lost ? 'no-connection' : 'fault', error.message);
    retry = setTimeout(pump, delay);
    delay = Math.min(2 * delay, LAST_RETRY_MS);
  }

  async function pump() {
    clearTimeout(retry);
    retry = 0;
    if (waiting === null || underWay !== null) {
      return;
    }
    const question = waiting;
    waiting = null;
    underWay = question;
    const giveUp = new AbortController();
    const limit = setTimeout(() => giveUp.abort(), GIVE_UP_MS);
    try {
      const reply = await ask(question, giveUp.signal);
      underWay = null;
      if (waiting === null) {
        settle();
      } else {
        delay = FIRST_RETRY_MS;
      }
      pump();
      answered(question, reply);
    } catch (error) {
      underWay = null;
      failed(question, error);
    } finally {
      clearTimeout(limit);
    }
  }

  window.addEventListener('online', pump);

  return {
    /** Asks; of several that wait only the newest is sent. */
    send(question) {
      waiting = { ...question, era };
      if (late === 0 && status === 'idle') {
        late = setTimeout(() => say('catching-up'), PATIENCE_MS);
      }
      if (retry === 0) {
        pump();
      }
    },

    /** Another case: whatever is still under way is no longer wanted. */
    forget() {
      era += 1;
      waiting = null;
    },

    /** Whether an answer is still to come. */
    isWaiting: () => waiting !== null || underWay !== null,
  };
}

/**
 * A way to the server that carries the page's token.
 * @returns {{json: function(string, Object, AbortSignal=): Promise<Object>,
 *     response: function(string, Object, AbortSignal=): Promise<Response>,
 *     get: function(string): Promise<Object>}}
 */
export function createServer() {
  const meta = (name) => document.querySelector(`meta[name='${name}']`)?.content ?? '';
  const headers = { 'Content-Type': 'application/json', Accept: 'application/json, */*' };
  if (meta('csrf-header') !== '') {
    headers[meta('csrf-header')] = meta('csrf-token');
  }

  const response = (address, body, signal) =>
    fetch(address, { method: 'POST', headers, body: JSON.stringify(body), signal });

  /** The answer's JSON; a request that got none fails with the words that came instead. */
  async function read(answer) {
    const isJson = (answer.headers.get('Content-Type') ?? '').includes('json');
    const body = isJson ? await answer.json() : {};
    if (!answer.ok && !WORDS_FOR_THE_PERSON.includes(answer.status)) {
      throw new Error(body.message ?? `The program answered ${answer.status}.`);
    }
    return body;
  }

  return {
    response,
    json: async (address, body, signal) => read(await response(address, body, signal)),
    get: async (address) => read(await fetch(address, { headers: { Accept: 'application/json' } })),
  };
}
