/**
 * What this tab remembers of the match: the question, the job under way and what was found, so that
 * the way to the Bench and back loses nothing. It never leaves the tab but with a question.
 */

const KEY = 'trimwright-match';

/** Another shape is not read. */
const VERSION = 1;

const VISITOR = 'trimwright-visitor';

/** @returns {Object} what was kept; empty where there is nothing */
export function loadMatch() {
  try {
    const kept = JSON.parse(sessionStorage.getItem(KEY) ?? 'null');
    return kept?.version === VERSION ? kept : {};
  } catch {
    return {}; // Storage can be shut off, and what another program keeps is none of ours.
  }
}

/** Keeps it; where it is too large, without what was found. */
export function saveMatch(kept) {
  for (const some of [kept, { ...kept, found: null }]) {
    try {
      sessionStorage.setItem(KEY, JSON.stringify({ version: VERSION, ...some }));
      return;
    } catch {
      // Full: the next one is smaller. Shut off: it lasts as long as the page.
    }
  }
}

let own = null;

/** The name that this browser gives itself: one look through a stock at a time. */
export function visitor() {
  try {
    own = localStorage.getItem(VISITOR) ?? own ?? crypto.randomUUID();
    localStorage.setItem(VISITOR, own);
  } catch {
    own ??= crypto.randomUUID();
  }
  return own;
}
