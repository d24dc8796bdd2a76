/**
 * The draft: everything that was entered, kept in the browser's tab so that a reload loses nothing.
 * It never leaves the tab.
 */

const KEY = 'trimwright-bench-draft';

/** Another shape of draft is not read. */
const VERSION = 1;

/** @returns {Object|null} the draft of this tab */
export function loadDraft() {
  try {
    const draft = JSON.parse(sessionStorage.getItem(KEY) ?? 'null');
    return draft?.version === VERSION ? draft : null;
  } catch {
    return null; // Storage can be shut off, and a draft of another program is none of ours.
  }
}

/** Keeps a draft; where it is too large, without the way back. */
export function saveDraft(draft) {
  for (const kept of [draft, { ...draft, state: { ...draft.state, past: [], future: [] } }]) {
    try {
      sessionStorage.setItem(KEY, JSON.stringify({ version: VERSION, ...kept }));
      return;
    } catch {
      // Full: the next one is smaller. Shut off: the case lasts as long as the page.
    }
  }
}

/** A choice that stays with the browser, such as the measures. */
export function loadChoice(name, known) {
  try {
    const choice = localStorage.getItem(`trimwright-${name}`);
    return known.includes(choice) ? choice : null;
  } catch {
    return null;
  }
}

export function saveChoice(name, choice) {
  try {
    localStorage.setItem(`trimwright-${name}`, choice);
  } catch {
    // As above.
  }
}
