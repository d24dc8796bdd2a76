import { byId, icon, make, setText } from '/bench/dom.js';
import { fixed, join } from '/bench/measures.js';
import { createPlanform } from '/bench/planform.js';
import { handToBench } from '/bench/kept-outside.js';

/** The setups that suit, one card each, and the way to the Bench with one or up to four of them. */

const MOST_COMPARED = 4;

/** A shortfall below this is none that anybody sees. */
const NONE = 0.005;

const DRAWN = ['board', 'front_wing', 'stabilizer'];

const PARTS = [
  ['board', 'Board'], ['battery', 'Battery'], ['mast', 'Mast'], ['drive', 'Drive'],
  ['fuselage', 'Fuselage'], ['front_wing', 'Front wing'], ['stabilizer', 'Stabilizer'],
];

const sentence = (words) => `${words[0].toUpperCase()}${words.slice(1)}.`;

/** How a shortfall is named. */
function lackWords(lack) {
  return lack < NONE ? 'good' : lack < 1 ? `short by ${fixed(lack, 2)}` : `poor, ${fixed(lack, 1)}`;
}

/** A wish's number in shown units, with its unit; growth counts per a unit of speed. */
export function wishText({ wish, unit }, value, measures) {
  if (value === null) {
    return 'none';
  }
  switch (wish) {
    case 'feet':
      return join(fixed(100 * value, 1), '%');
    case 'growth':
      return `${fixed(100 * value / measures.unit('km/h').factor, 2)} % per ${measures.symbol('km/h')}`;
    case 'manners':
      return `${fixed(value, 2)}°/s`;
    case 'level': case 'stall': case 'turn':
      return `${fixed(value, 2)}°`;
    default:
      return measures.withUnit(value, unit, 2);
  }
}

function valueItem(wish, row, texts, good) {
  const lack = row.shortfalls[wish.wish] ?? 0;
  const counts = wish.weight > 0;
  const tone = !counts ? 'none' : lack < NONE ? 'good' : lack < 1 ? 'warn' : 'bad';
  const bar = make('span', { class: 'lack-bar', 'aria-hidden': 'true' }, make('span'));
  bar.firstElementChild.style.width = `${Math.min(1, lack) * 100}%`;
  return make('div', { class: 'wish-value', 'data-tone': tone, title: `good: ${good}` },
    make('dt', {}, wish.title),
    make('dd', {},
      make('span', { class: 'number' }, texts[wish.wish]),
      bar,
      make('span', { class: 'lack' }, counts ? lackWords(lack) : 'does not count')));
}

function differences(row, answer, measures) {
  const cells = answer.wishes
    .filter((wish) => row.table_difference[wish.value] !== null)
    .map((wish) => make('tr', {},
      make('th', { scope: 'row' }, wish.title),
      make('td', {}, wishText(wish, row.values[wish.value], measures)),
      make('td', {}, wishText(wish, row.table_difference[wish.value], measures))));
  return make('details', { class: 'fold' },
    make('summary', {}, 'Tables against the full solution'),
    make('table', {},
      make('caption', {}, 'The numbers above are the full solution; tables only screened.'),
      make('thead', {}, make('tr', {}, make('th', { scope: 'col' }, 'Wish'),
        make('th', { scope: 'col' }, 'Full'), make('th', { scope: 'col' }, 'Tables off by'))),
      make('tbody', {}, ...cells)));
}

function lost(value) {
  return value === null ? 'lost' : fixed(value, 2);
}

function robustWords(row) {
  const others = row.varied.map(({ name, shortfall, breaks }) =>
    `${name} ${shortfall === null ? 'the ride is lost' : fixed(shortfall, 2)}`
      + (breaks.length === 0 ? '' : ' and breaks limits'));
  return others.length === 0 ? '' : `${sentence(others.join('; '))}`;
}

/** Icons of a setup's parts from above, to one scale. */
function icons(setup, planforms, colours) {
  const list = make('div', { class: 'planforms' });
  for (const part of DRAWN) {
    const points = planforms[setup.parts[part]];
    if (points !== undefined) {
      const host = make('div', { class: 'planform-host' });
      list.append(make('figure', {}, host, make('figcaption', {},
        make('span', { class: 'muted' }, PARTS.find(([key]) => key === part)[1]),
        make('span', {}, setup.parts[part]))));
      const planform = createPlanform(host);
      requestAnimationFrame(() => planform.draw({ points, name: part, colours }));
    }
  }
  return list;
}

function restOfParts(setup) {
  const words = PARTS.filter(([key]) => !DRAWN.includes(key) && setup.parts[key] !== null)
    .map(([key]) => setup.parts[key]);
  return make('p', { class: 'rest-of-parts' }, words.join(', '));
}

function settings(setup) {
  return make('ul', { class: 'settings' }, ...[setup.shim_words, ...setup.places].map((words) =>
    make('li', {}, sentence(words).slice(0, -1))));
}

export function createRows({ colours, measures, onBench }) {
  let chosen = [];
  let rows = [];

  function toBench(list) {
    onBench(handToBench(list.map((row) => row.case)));
  }

  function drawCompare() {
    const button = byId('compare-go');
    button.disabled = chosen.length === 0;
    byId('compare').dataset.chosen = String(chosen.length > 0);
    setText(button, chosen.length < 2 ? 'Compare on the Bench'
      : `Compare ${chosen.length} on the Bench`);
    setText(byId('compare-said'), chosen.length === 0
      ? 'Tick up to four setups to see them side by side on the Bench.'
      : `${chosen.length} of ${MOST_COMPARED} chosen; the first goes onto the sliders.`);
    document.querySelectorAll('#rows input[type=checkbox]').forEach((box, i) => {
      box.disabled = !box.checked && chosen.length >= MOST_COMPARED;
      box.checked = chosen.includes(i);
    });
  }

  byId('compare-go').addEventListener('click', () => toBench(chosen.map((i) => rows[i])));

  function card(row, i, answer, found) {
    const ties = row.tied_with;
    const tied = ties.length > 0;
    const system = measures().system;
    const title = `${row.parts.front_wing} with ${row.parts.stabilizer}`;
    const box = make('input', { type: 'checkbox', 'aria-label': `Compare setup ${i + 1}, ${title}` });
    box.addEventListener('change', () => {
      chosen = box.checked ? [...chosen, i] : chosen.filter((one) => one !== i);
      drawCompare();
    });
    const bench = make('button', { type: 'button', class: 'button outline' }, 'Open on the Bench');
    bench.addEventListener('click', () => toBench([row]));
    const head = make('div', { class: 'card-head' },
      make('p', { class: 'rank' }, make('b', {}, String(row.rank)), tied ? make('span', {}, 'tied') : ''),
      make('div', {},
        make('h3', {}, `Setup ${i + 1}: ${title}`),
        make('p', { class: 'muted' },
          `Falls short by ${fixed(row.shortfall, 2)} ±${fixed(row.shortfall_reach, 2)}`
          + `; at worst ${lost(row.worst_shortfall)}, on average ${lost(row.mean_shortfall)}`)));
    return make('li', { class: 'card' },
      head,
      icons(row, found.planforms, colours()),
      settings(row),
      restOfParts(row),
      make('dl', { class: 'wish-values' }, ...answer.wishes.map((wish) =>
        valueItem(wish, row, found.texts[system][i], found.good[system][wish.wish]))),
      robustWords(row) === '' ? '' : make('p', { class: 'muted' }, robustWords(row)),
      differences(row, answer, measures()),
      make('div', { class: 'card-actions' },
        make('label', { class: 'check' }, box, make('span', {}, 'Compare')), bench));
  }

  function nearCard(setup, found) {
    return make('li', { class: 'card near' },
      make('h3', {}, `${setup.parts.front_wing} with ${setup.parts.stabilizer}`),
      make('ul', { class: 'breaks' }, ...setup.why.map((words) =>
        make('li', {}, icon('bad'), make('span', {}, words)))),
      icons(setup, found.planforms, colours()),
      settings(setup),
      restOfParts(setup));
  }

  return {
    draw(found) {
      const answer = found[measures().system];
      rows = answer.rows;
      const passed = rows.length > 0;
      setText(byId('rows-title'), passed ? 'Setups that suit'
        : answer.fallen.length > 0 ? 'The nearest, and what they break' : '');
      byId('rows-title').hidden = !passed && answer.fallen.length === 0;
      setText(byId('rows-key'), passed
        ? 'The best setup of each front wing with a stabilizer. What each falls short by: 0 where every'
          + ' wish is good, 1 where every one is poor. It ranks and says nothing more; tied setups cannot'
          + ' be told apart with what is known of their parts. At worst and on average go over the'
          + ' weights and waters tried.'
        : answer.fallen.length > 0
          ? 'None of these is recommended: each breaks a limit. They show what would have to change.' : '');
      byId('rows').replaceChildren(...(passed
        ? rows.map((row, i) => card(row, i, answer, found))
        : answer.fallen.slice(0, MOST_COMPARED).map((setup) => nearCard(setup, found))));
      byId('compare').hidden = !passed;
      chosen = chosen.filter((i) => i < rows.length);
      drawCompare();
    },
    forget() {
      chosen = [];
    },
  };
}
