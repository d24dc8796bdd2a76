import { byId, keepChildren, make, setAttribute, setText } from './dom.js';

/** What the page says about itself: what is wrong, whether it is up to date, what is saved. */

const STATUS = {
  idle: '',
  'catching-up': 'Catching up',
  'no-connection': 'No connection; what you enter is kept, trying again',
  fault: 'The program could not answer; what you enter is kept, trying again',
};

/** How many things are wrong, in words. */
export function problemWords(problems) {
  return problems.length === 1 ? 'One thing to put right' : `${problems.length} things to put right`;
}

/**
 * Says what cannot be used, at the top and at the pictures, which then show the last good state.
 * @param {{paths: string[], message: string}[]} problems none where all is well
 */
export function showProblems(problems) {
  const isWrong = problems.length > 0;
  document.documentElement.classList.toggle('is-wrong', isWrong);
  document.querySelectorAll('.not-this').forEach((mark) => (mark.hidden = !isWrong));
  byId('wrong').hidden = !isWrong;
  setText(byId('wrong'), isWrong ? problemWords(problems) : '');
  setText(byId('inputs-count'), isWrong ? `${problems.length} to put right` : '');
  const list = byId('problems');
  list.hidden = !isWrong;
  keepChildren(list, problems, () => make('li'), (item, { message }) => setText(item, message));
}

/** @param {string} status idle, catching-up, no-connection or fault */
export function showStatus(status) {
  setText(byId('status'), STATUS[status]);
  setAttribute(byId('status'), 'data-status', status);
}

/** The case's title, whether it is saved, and what can be taken back. */
export function showCase(state) {
  const { saved } = state.now;
  const sign = state.isChanged() ? 'changed' : 'saved';
  setText(byId('case-title'), saved.title);
  document.title = `${saved.title}: Trimwright`;
  setText(byId('sign'), sign);
  setAttribute(byId('sign'), 'data-sign', sign);
  byId('undo').disabled = !state.canUndo();
  byId('redo').disabled = !state.canRedo();
}
