import { byId, make } from '/bench/dom.js';
import { whole } from './asking.js';

/** Why setups fell out: over all, and part by part. */

const KINDS = {
  board: 'Boards', battery: 'Batteries', mast: 'Masts', drive: 'Drives', fuselage: 'Fuselages',
  front_wing: 'Front wings', stabilizer: 'Stabilizers', shim: 'Shims',
};

const setups = (count) => `${whole(count)} ${count === 1 ? 'setup' : 'setups'}`;

function bar(share, tone) {
  const element = make('span', { class: 'ground-bar', 'data-tone': tone, 'aria-hidden': 'true' }, make('span'));
  element.firstElementChild.style.width = `${100 * share}%`;
  return element;
}

export function drawFell(answer) {
  const largest = Math.max(1, answer.passed, ...answer.fell.map((ground) => ground.setups));
  const items = [...answer.fell].sort((a, b) => b.setups - a.setups).map((ground) =>
    make('li', {},
      make('span', {}, `${setups(ground.setups)} fell to ${ground.name}`),
      bar(ground.setups / largest, 'bad')));
  const passed = make('li', {},
    make('span', {}, `${setups(answer.passed)} ${answer.passed === 1 ? 'passes' : 'pass'} the limits that tables know`),
    bar(answer.passed / largest, 'good'));
  const full = new Map();
  answer.fallen.forEach(({ why }) => full.set(why[0], (full.get(why[0]) ?? 0) + 1));
  const solved = answer.looked === 0 ? [] : [make('li', {},
    make('p', {}, `${whole(answer.looked)} of those were solved in full; `
      + `${answer.fallen.length === 0 ? 'none fell.' : `${whole(answer.fallen.length)} fell, first to:`}`),
    make('ul', {}, ...[...full].map(([words, count]) =>
      make('li', {}, `${setups(count)}: ${words}`))))];
  byId('grounds').replaceChildren(...items, passed, ...solved);
  const rows = [];
  let kind = '';
  for (const part of answer.parts) {
    if (part.kind !== kind) {
      kind = part.kind;
      rows.push(make('tr', { class: 'kind' }, make('th', { scope: 'rowgroup', colspan: '4' }, KINDS[kind])));
    }
    const most = [...part.fell].sort((a, b) => b.setups - a.setups)[0];
    const words = !part.there ? 'out' : part.setups === 0 ? 'fits nothing here'
      : most === undefined ? 'none fell' : `${most.name} (${whole(most.setups)})`;
    rows.push(make('tr', {}, make('th', { scope: 'row' }, part.id),
      make('td', {}, whole(part.setups)), make('td', {}, whole(part.passed)),
      make('td', { class: 'words' }, words)));
  }
  byId('parts-rows').replaceChildren(...rows);
}
