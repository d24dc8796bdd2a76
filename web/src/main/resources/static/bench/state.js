/**
 * The case in hand: texts by path as the wire carries them, what was typed, the speed looked at,
 * what is saved, and the way back through all of it.
 *
 * A snapshot is never changed once it is made, so undo is nothing but keeping the old ones.
 */

/** How many steps back are kept. */
const MOST_STEPS = 200;

/**
 * @typedef {Object} Snapshot
 * @property {Object<string, string>} fields canonical texts by path
 * @property {Object<string, string>} typed what stands in a field where it is not the canonical text
 * @property {number|null} speedKmh the speed looked at [km/h]; null for the wished one
 * @property {{id: string, title: string, kind: string, fields: Object<string, string>}} saved
 */

/**
 * A state that starts with a case as it is saved.
 * @param {{id: string, title: string, kind: string, fields: Object<string, string>}} saved
 * @param {Object<string, string>} fallbacks what counts where a path is left out
 */
export function createState(saved, fallbacks) {
  let now = { fields: saved.fields, typed: {}, speedKmh: null, saved };
  let past = [];
  let future = [];
  let gesture = null;
  const listeners = [];

  function tell(before) {
    const change = {
      fields: before.fields !== now.fields,
      speed: before.speedKmh !== now.speedKmh,
      opened: before.saved.id !== now.saved.id || before.saved.title !== now.saved.title,
    };
    listeners.forEach((listener) => listener(change));
  }

  function put(next, step) {
    const before = now;
    if (step === null || step !== gesture) {
      past.push(before);
      past = past.slice(-MOST_STEPS);
    }
    gesture = step;
    future = [];
    now = next;
    tell(before);
  }

  function travel(from, to) {
    if (from.length === 0) {
      return;
    }
    const before = now;
    to.push(now);
    now = from.pop();
    gesture = null;
    tell(before);
  }

  return {
    /** @returns {Snapshot} */
    get now() {
      return now;
    },

    /** Called with what changed: {fields, speed, opened}. */
    subscribe(listener) {
      listeners.push(listener);
    },

    /**
     * Writes texts; an empty one takes the path away.
     * @param {Object<string, string>} texts canonical texts by path
     * @param {string|null} step changes of one name that follow each other are one step of undo
     * @param {Object<string, string>} [typed] what stands in the fields where it is another text
     */
    write(texts, step, typed = {}) {
      const fields = { ...now.fields };
      const typedNow = { ...now.typed };
      for (const [path, text] of Object.entries(texts)) {
        delete typedNow[path];
        if (text === '') {
          delete fields[path];
        } else {
          fields[path] = text;
        }
      }
      put({ ...now, fields, typed: { ...typedNow, ...typed } }, step);
    },

    /** Looks at another speed [km/h]. */
    look(speedKmh, step) {
      if (speedKmh !== now.speedKmh) {
        put({ ...now, speedKmh }, step);
      }
    },

    /** Another case comes onto the bench; undo brings this one back. */
    open(other, fields = other.fields) {
      put({ fields, typed: {}, speedKmh: null, saved: other }, null);
    },

    /** A setup that was kept comes back, at the speed looked at; undo brings this one back. */
    take(fields, saved) {
      put({ fields, typed: {}, speedKmh: now.speedKmh, saved }, null);
    },

    /** What is in hand is saved now, under that name, which the case bears from now on. */
    markSaved(id, title) {
      const before = now;
      const fields = { ...now.fields, name: title };
      now = { ...now, fields, saved: { id, title, kind: 'saved', fields } };
      gesture = null;
      tell(before);
    },

    /** The next change begins a step of its own. */
    endStep() {
      gesture = null;
    },

    /** In other measures what was typed is no longer what is meant, unless it was no number at all. */
    forgetTyped(isKept) {
      const typed = Object.fromEntries(Object.entries(now.typed).filter(([, text]) => isKept(text)));
      now = { ...now, typed };
    },

    undo: () => travel(past, future),
    redo: () => travel(future, past),
    canUndo: () => past.length > 0,
    canRedo: () => future.length > 0,

    /** Whether the case differs from what is saved. */
    isChanged() {
      return differ(now.fields, now.saved.fields, fallbacks);
    },

    /** All of it as plain values, for the draft. */
    draft: () => ({ now, past, future }),

    /** Goes on from a draft. */
    restore(draft) {
      now = draft.now;
      past = draft.past;
      future = draft.future;
    },
  };
}

/** Whether two maps of texts mean different cases: 0.50 is 0.5, and left out is the fallback. */
function differ(a, b, fallbacks) {
  if (a === b) {
    return false;
  }
  const meant = (fields, path) => {
    const text = (fields[path] ?? fallbacks[path] ?? '').trim();
    return text !== '' && Number.isFinite(Number(text)) ? String(Number(text)) : text;
  };
  const paths = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...paths].some((path) => meant(a, path) !== meant(b, path));
}
