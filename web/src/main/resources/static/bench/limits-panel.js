import { byId, keepChildren, make, setAttribute, setText } from './dom.js';
import { fixed } from './measures.js';
import { symbolOf } from './speed-marks.js';
import { createTurnView } from './turn-view.js';

/**
 * What the case can do before something gives way: turns as a picture with a slider for the bank,
 * the limits in sentences, and the marks of the speed axis as a table whose rows bring the upright
 * line to their speeds.
 */

const SVG = 'http://www.w3.org/2000/svg';

/**
 * @param {function(number)} onSpeed called with a speed that was asked for [km/h]
 * @returns {{draw: function(Object), say: function(string)}} `draw` takes `{envelope, measures,
 *     colours}`
 */
export function createLimitsPanel(onSpeed) {
  const panel = byId('limits-body');
  const range = byId('turn-bank');
  const minus = byId('turn-less');
  const plus = byId('turn-more');
  const picture = createTurnView(byId('turn-view'));
  let bank = null;
  let drawn = null;

  /** The turn nearest to the bank that was chosen last; the steepest inside the limits at first. */
  function indexOf(turns) {
    const wanted = bank ?? turns.most_bank_deg ?? 0;
    let best = 0;
    turns.banks.forEach((turn, i) => {
      const gap = Math.abs(turn.bank_deg - wanted);
      if (gap < Math.abs(turns.banks[best].bank_deg - wanted)) {
        best = i;
      }
    });
    return best;
  }

  function choose(index) {
    const { turns } = drawn.envelope;
    bank = turns.banks[Math.max(0, Math.min(turns.banks.length - 1, index))].bank_deg;
    drawTurn();
  }

  range.addEventListener('input', () => choose(Number(range.value)));
  minus.addEventListener('click', () => choose(Number(range.value) - 1));
  plus.addEventListener('click', () => choose(Number(range.value) + 1));

  function drawTurn() {
    const { envelope, measures, colours } = drawn;
    const { turns } = envelope;
    byId('turns').hidden = turns === null;
    if (turns === null) {
      return;
    }
    const index = indexOf(turns);
    const turn = turns.banks[index];
    const words = spoken(turns, turn, measures);
    setAttribute(range, 'max', String(turns.banks.length - 1));
    range.value = String(index);
    setAttribute(range, 'aria-valuetext', words);
    minus.disabled = index === 0;
    plus.disabled = index === turns.banks.length - 1;
    setText(byId('turn-number'), fixed(turn.bank_deg, 0));
    const speed = measures.withUnit(envelope.wished_speed_kmh, 'km/h', 0);
    setText(byId('turn-speed'), `at ${speed}`);
    setText(byId('turn-verdict'), verdict(turns, turn));
    setText(byId('turn-breach'), breach(turns));
    writeCells(cells(turn, measures));
    picture.draw({ turns, index, measures, colours, words });
  }

  function writeCells(all) {
    keepChildren(byId('turn-cells'), all, pair, (element, [name, value, unit]) => {
      setText(element.children[0], name);
      setText(element.children[1].children[0], value);
      setText(element.children[1].children[1], unit);
    });
  }

  function drawMarks() {
    const { envelope, measures } = drawn;
    setText(byId('marks-unit'), measures.symbol('km/h'));
    keepChildren(byId('mark-rows'), envelope.marks, row, (element, mark) => {
      element.querySelector('path').setAttribute('d', symbolOf(mark.id));
      setText(element.querySelector('.mark-name'), mark.name);
      const button = element.querySelector('button');
      setText(button, measures.text(mark.speed_kmh, 'km/h', 1));
      const speed = measures.withUnit(mark.speed_kmh, 'km/h', 1);
      setAttribute(button, 'aria-label', `${mark.name}: ${speed}. Move the upright line there`);
      button.onclick = () => onSpeed(mark.speed_kmh);
    });
  }

  return {
    draw(state) {
      panel.classList.toggle('waiting', state.envelope === null);
      if (state.envelope === null) {
        return;
      }
      drawn = state;
      panel.hidden = false;
      drawTurn();
      drawMarks();
      keepChildren(byId('limit-notes'), state.envelope.notes, note, (element, item) => {
        setText(element.children[0], item.title);
        keepChildren(element.children[1], item.sentences, () => make('p'), setText);
        setText(element.children[2], item.basis);
      });
    },

    /** Says why there are none now; nothing where they are only being worked out. */
    say(why) {
      setText(byId('limits-said'), why);
    },
  };
}

function pair() {
  return make('div', { class: 'cell' }, make('dt'),
    make('dd', {}, make('span', { class: 'number' }), make('span', { class: 'unit' })));
}

function note() {
  return make('section', { class: 'limit-note' }, make('h3'), make('div'),
    make('p', { class: 'muted basis' }));
}

function row() {
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('class', 'icon');
  svg.setAttribute('viewBox', '-12 -12 24 24');
  svg.setAttribute('aria-hidden', 'true');
  svg.append(document.createElementNS(SVG, 'path'));
  const head = make('th', { scope: 'row' }, svg, make('span', { class: 'mark-name' }));
  return make('tr', {}, head,
    make('td', {}, make('button', { type: 'button', class: 'button quiet' })));
}

function cells(turn, measures) {
  const radius = turn.radius_m === null ? '\u2013' : measures.text(turn.radius_m, 'm', 1);
  return [
    ['Radius', radius, measures.symbol('m')],
    ['Load', fixed(turn.load_factor, 2), '×'],
    ['Higher tip', measures.text(turn.tip_depth_mm, 'mm'), `${measures.symbol('mm')} deep`],
  ];
}

function verdict(turns, turn) {
  if (turns.breach_bank_deg !== null && turn.bank_deg >= turns.breach_bank_deg - 0.01) {
    return 'The higher tip comes out in the troughs and draws air.';
  }
  if (turns.most_bank_deg === null) {
    return `No turn is inside the limits. ${turns.end}`;
  }
  if (turn.bank_deg > turns.most_bank_deg + 0.01) {
    return `The limits end at ${fixed(turns.most_bank_deg, 0)}°. ${turns.end}`;
  }
  return turn.bank_deg > turns.most_bank_deg - 0.01
    ? `The steepest inside the limits. ${turns.end}`
    : 'Inside the limits that are computed.';
}

/** Where the higher tip comes out, if it does. */
function breach(turns) {
  return turns.breach_bank_deg === null
    ? 'The higher tip stays in the water in every steady turn that was found at this speed.'
    : `The higher tip comes out at ${fixed(turns.breach_bank_deg, 0)}° of bank.`;
}

function spoken(turns, turn, measures) {
  const radius = turn.radius_m === null ? 'straight ahead'
    : `radius ${measures.withUnit(turn.radius_m, 'm', 1)}`;
  const depth = measures.withUnit(Math.abs(turn.tip_depth_mm), 'mm');
  return `bank ${fixed(turn.bank_deg, 0)}°, ${radius}, load ${fixed(turn.load_factor, 2)}, `
    + `higher tip ${depth} ${turn.tip_depth_mm < 0 ? 'above the water' : 'deep'}. `
    + verdict(turns, turn);
}
