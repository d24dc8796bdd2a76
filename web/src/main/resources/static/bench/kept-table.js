import { byId, keepChildren, make, setAttribute, setText } from './dom.js';
import { indexAt } from './kept.js';
import { less } from './readings.js';

/**
 * What the one on the sliders and each kept setup do at the chosen speed, with the difference from
 * the pinned reference under each number, or a word where the two cannot be told apart.
 */

const NONE = '\u2013';

/** Stands for a difference that tolerances swallow. */
const ALIKE = 'alike';

const ofPoint = (key, times = 1) => ({ point }) =>
  point === undefined || point[key] === null || point[key] === undefined ? null : times * point[key];

const ofKey = (key, times = 1) => ({
  key,
  of: ({ point }) => ((point?.[key] ?? null) === null ? null : times * point[key]),
});

/** What a row reads, and under which name the server says whether two of it can be told apart. */
const ROWS = [
  { head: 'Pitch, nose-up', unit: '°', decimals: 1, ...ofKey('pitch_deg') },
  { head: 'Front foot', unit: '%', decimals: 0, ...ofKey('foot_share', 100) },
  { head: 'Front foot', unit: 'kg', decimals: 0, ...ofKey('front_leg_kg') },
  { head: 'Back foot', unit: 'kg', decimals: 0, ...ofKey('back_leg_kg') },
  { head: 'Power', unit: 'W', decimals: 0, ...ofKey('electric_power_w') },
  { head: 'Stall margin', unit: '°', decimals: 1, ...ofKey('stall_margin_deg') },
  { head: 'Rideable from', unit: 'km/h', decimals: 0, of: ({ reply }) => reply.rideable_from_kmh },
  { head: 'Rideable to', unit: 'km/h', decimals: 0, of: ({ reply }) => reply.rideable_to_kmh },
];

export function createKeptTable() {
  const heads = byId('kept-heads');
  const rows = byId('kept-rows');

  function columnsOf({ reply, index, kept, all }) {
    const { speed_kmh: kmh } = reply.points[index];
    const reference = all.find(({ isReference }) => isReference);
    return [
      { name: 'Now', reply, point: reply.points[index], alike: reply.points[index].alike ?? [] },
      ...kept.map((entry) => {
        const at = indexAt(entry.reply, kmh);
        return {
          name: entry.letter, isReference: entry.isReference, reply: entry.reply,
          point: entry.reply.points[at],
          alike: alikeOf(entry, reference.fields)?.points[at] ?? [],
        };
      }),
    ];
  }

  function row(count) {
    const made = make('tr', {}, make('th', { scope: 'row' }, make('span'), ' ',
      make('span', { class: 'unit' })));
    for (let i = 0; i < count; i++) {
      made.append(make('td', {}, make('span', { class: 'value' }), ' ',
        make('span', { class: 'more' })));
    }
    return made;
  }

  return (now) => {
    const { measures, reply, index } = now;
    const columns = columnsOf(now);
    const reference = columns.find(({ isReference }) => isReference);
    setText(byId('kept-caption'),
      `At ${measures.withUnit(reply.points[index].speed_kmh, 'km/h', 0)}`);
    setText(byId('kept-against'), reference === undefined ? ''
      : `Under each number: how much more than ${reference.name}.`);
    byId('kept-alike').hidden = !columns.some(({ alike }) => alike.length > 0);
    if (heads.children.length !== columns.length + 1) {
      rows.replaceChildren();
    }
    keepChildren(heads, [null, ...columns],
      () => make('th', { scope: 'col' }, make('span'), make('span', { class: 'hidden' })),
      (head, column, i) => {
        setAttribute(head, 'class', column?.isReference ? 'reference-column' : null);
        setText(head.firstChild, i === 0 ? '' : column.name);
        setText(head.lastChild, i === 0 ? 'What' : column.isReference ? ', the reference' : '');
      });
    const isPowered = columns.some(({ point }) => (point?.electric_power_w ?? null) !== null);
    const shown = ROWS.filter(({ unit }) => unit !== 'W' || isPowered);
    keepChildren(rows, shown, () => row(columns.length), (element, one) => {
      const [head, ...cells] = element.children;
      setText(head.firstChild, one.head);
      setText(head.lastChild, measures.symbol(one.unit));
      cells.forEach((cell, i) => {
        const column = columns[i];
        setText(cell.firstChild, words(one, column, measures));
        setText(cell.lastChild, column.isReference || reference === undefined ? ''
          : moreWords(one, column, reference, measures));
      });
    });
  };
}

/** What was found against the reference that is pinned now, and against no other. */
const alikeOf = ({ alike }, fields) => (alike?.against === fields ? alike : null);

function words(row, column, measures) {
  const value = row.of(column);
  return value === null ? NONE : measures.text(value, row.unit, row.decimals);
}

function moreWords(row, column, reference, measures) {
  const value = row.of(column);
  const other = row.of(reference);
  if (value === null || other === null) {
    return NONE;
  }
  if (column.alike.includes(row.key)) {
    return ALIKE;
  }
  const { factor } = measures.unit(row.unit);
  return less(value * factor, other * factor, row.decimals);
}
