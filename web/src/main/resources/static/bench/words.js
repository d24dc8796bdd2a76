import { byId, keepChildren, make, setAttribute, setText } from './dom.js';
import { fixed } from './measures.js';
import { signed } from './readings.js';

/**
 * Verdict and cause in words, the split that adds up, what to rule out, and the shim. The server
 * writes the words; here they only find their places. What lies below the fold of a panel waits
 * until the hand rests.
 */

/** Terms of the moment balance, in the words of the page. */
const TERMS = {
  front_wing: 'Front wing',
  stabilizer: 'Stabilizer',
  thrust_line: 'Thrust line',
  drags: 'Drags in the water',
  masses: 'Masses of the gear',
  feet: 'Your feet',
  deck_lever: "Deck's height (lever)",
  air: 'Air on you',
  buoyancy: 'Buoyancy',
};

const paragraph = () => make('p');

export function createWords() {
  const verdict = byId('verdict');
  const toneIcon = byId('tone-icon');
  const first = byId('verdict-first');
  const second = byId('verdict-second');
  const headlines = [byId('verdict-cause'), byId('cause-headline')];

  function splitRow() {
    const row = make('tr', {}, make('th', { scope: 'row' }));
    row.append(make('td'), make('td'), make('td'));
    return row;
  }

  function drawSplit(split, measures) {
    byId('split-frame').classList.toggle('empty', split === null);
    setText(byId('split-pitch-unit'), '°');
    setText(byId('split-centre-unit'), measures.symbol('mm'));
    keepChildren(byId('split-rows'), split ?? [], splitRow, (row, item, i) => {
      row.classList.toggle('sum', item.sum);
      const figure = (value, decimals) =>
        item.sum || i === 0 ? fixed(value, decimals) : signed(value, decimals);
      const lengthDecimals = measures.unit('mm').decimals;
      setText(row.children[0], item.name);
      setText(row.children[1], figure(item.pitch_deg, 1));
      setText(row.children[2], figure(100 * item.foot_share, 0));
      setText(row.children[3], figure(item.foot_pressure_mm * measures.unit('mm').factor, lengthDecimals));
    });
  }

  /**
   * Until the bands of what is shown are there, the sentences keep their room and nobody reads
   * them.
   */
  function drawSure(point) {
    const isKnown = point.sure !== undefined;
    byId('sure-words').classList.toggle('waiting', !isKnown);
    if (isKnown) {
      const none = ['Nothing to be sure of where there is no trim at this speed or the wished one.'];
      const said = [...point.apart, ...point.sure];
      keepChildren(byId('sure-words'), said.length > 0 ? said : none, paragraph, setText);
    }
  }

  function drawMoments(point, measures) {
    const terms = Object.entries(point.moment_terms_nm ?? {});
    setText(byId('moments-unit'), measures.symbol('N·m'));
    const rows = [...terms, ['', terms.reduce((sum, [, value]) => sum + value, 0)]];
    keepChildren(
      byId('moment-rows'),
      terms.length === 0 ? [] : rows,
      () => make('tr', {}, make('th', { scope: 'row' }), make('td')),
      (row, [name, value]) => {
        row.classList.toggle('sum', name === '');
        setText(row.children[0], name === '' ? 'Sum' : (TERMS[name] ?? name.replaceAll('_', ' ')));
        setText(row.children[1], signed(measures.value(value, 'N·m'), 1));
      },
    );
  }

  return {
    /** Verdict, cause and split: in every frame. */
    draw({ reply, index, measures }) {
      const point = reply.points[index];
      setAttribute(verdict, 'data-tone', point.tone);
      setAttribute(toneIcon, 'href', `#icon-${point.tone}`);
      setText(first, point.verdict[0]);
      setText(second, point.verdict[1] ?? '');
      headlines.forEach((headline) => setText(headline, point.cause.headline));
      keepChildren(byId('cause-sentences'), point.cause.sentences, paragraph, setText);
      drawSure(point);
      keepChildren(byId('shim-words'), reply.shim, paragraph, setText);
      drawSplit(point.split, measures);
    },

    /** The rest of it: once the hand rests. */
    drawAtRest({ reply, index, measures }) {
      const point = reply.points[index];
      drawMoments(point, measures);
      keepChildren(
        byId('rule-out'),
        reply.rule_out,
        () => make('li', {}, make('strong'), ' ', make('span')),
        (item, { title, text }) => {
          setText(item.firstChild, `${title}.`);
          setText(item.lastChild, text);
        },
      );
    },

    /** What is said aloud. */
    spoken: ({ reply, index }) => {
      const point = reply.points[index];
      return `${point.verdict.join(' ')} ${point.cause.headline}`;
    },
  };
}
