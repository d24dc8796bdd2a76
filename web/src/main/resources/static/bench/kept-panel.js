import { byId, icon, keepChildren, make, setAttribute, setText } from './dom.js';
import { dashOf, lineWords, markerPath } from './kept-marks.js';
import { MOST } from './kept.js';
import { createKeptTable } from './kept-table.js';

/**
 * The kept setups beside the curves: what each is called, what can be done with it, and the table
 * of their numbers at the chosen speed. The panel is there while anything is kept.
 */

const SVG = 'http://www.w3.org/2000/svg';

/**
 * @param {Object} parts
 * @param {function(boolean)} parts.onShow told when the first setup is kept, and when the last is gone
 * @param {function(string)} parts.onPin called with the letter that was chosen, as the others are
 * @param {function(string)} parts.onTake
 * @param {function(string)} parts.onRemove
 * @returns {{draw: function(Object), say: function(string), trouble: function(string[]),
 *     focusOn: function(number)}}
 */
export function createKeptPanel({ onShow, onPin, onTake, onRemove }) {
  const panel = byId('kept');
  const fold = byId('kept-fold');
  const list = byId('kept-list');
  const button = byId('keep');
  const table = createKeptTable();
  let open = null;

  function disclose(letter) {
    open = open === letter ? null : letter;
    for (const item of list.children) {
      const isOpen = item.dataset.kept === open;
      setAttribute(item.firstElementChild, 'aria-expanded', String(isOpen));
      item.lastElementChild.hidden = !isOpen;
    }
  }

  function create() {
    const item = make('li');
    const letterOf = () => item.dataset.kept;
    const name = make('button', { type: 'button', class: 'kept-name', 'aria-expanded': 'false' });
    name.append(swatch(), make('b'), make('span', { class: 'kept-words' }, make('span')));
    name.addEventListener('click', () => disclose(letterOf()));
    const tool = (iconName, word, act) => {
      const made = make('button', { type: 'button', class: 'tool' }, icon(iconName),
        make('span', {}, word));
      made.addEventListener('click', () => act(letterOf()));
      return made;
    };
    const tools = make('div', { class: 'kept-tools', role: 'group', hidden: true },
      tool('pin', 'Reference', onPin), tool('take', 'Take this', onTake),
      tool('remove', 'Remove', onRemove));
    item.append(name, tools);
    return item;
  }

  function write(item, entry, nameOf) {
    const { letter, isReference, wrong, reply } = entry;
    setAttribute(item, 'data-kept', letter);
    const [name, tools] = item.children;
    const [drawing, bold, words] = name.children;
    drawSwatch(drawing, entry);
    setText(bold, letter);
    const state = wrong.length > 0 ? `cannot be used: ${wrong.join(' ')}`
      : reply === null ? 'being computed' : nameOf(entry);
    setText(words.firstChild, isReference ? `Reference: ${state}` : state);
    setAttribute(name, 'aria-expanded', String(letter === open));
    tools.hidden = letter !== open;
    const [pin, take, remove] = tools.children;
    setAttribute(tools, 'aria-label', `Setup ${letter}`);
    setAttribute(pin, 'aria-pressed', String(isReference));
    setAttribute(pin, 'aria-label', `Reference: pin ${letter}`);
    setAttribute(take, 'aria-label', `Take this one, ${letter}, onto the sliders`);
    setAttribute(remove, 'aria-label', `Remove ${letter}`);
  }

  return {
    /** @param {Object} now with `kept`, all that is kept, and `nameOf`, besides what pictures take */
    draw(now) {
      const { all, nameOf } = now;
      const isFull = all.length === MOST;
      setAttribute(button, 'aria-disabled', isFull ? 'true' : null);
      setText(byId('keep-word'), isFull ? 'Full' : 'Keep');
      setAttribute(button, 'aria-label', isFull
        ? `Full: ${MOST} setups are kept; remove one to keep another`
        : 'Keep this setup beside the next ones');
      const isShown = all.length > 0;
      if (panel.hidden === isShown) {
        panel.hidden = !isShown;
        onShow(isShown);
      }
      if (!isShown) {
        return;
      }
      const speed = now.measures.withUnit(now.reply.points[now.index].speed_kmh, 'km/h', 0);
      setText(byId('kept-letters'), `${all.map(({ letter }) => letter).join(', ')}\u00A0`);
      setText(byId('kept-at'), `at ${speed}`);
      if (fold.open) {
        keepChildren(list, all, create, (item, entry) => write(item, entry, nameOf));
        table(now);
      }
    },

    /** Said aloud: what was just done. */
    say: (words) => setText(byId('kept-said'), words),

    /** What could not be kept, for all to read. */
    trouble(sentences) {
      byId('kept-trouble').hidden = sentences.length === 0;
      setText(byId('kept-trouble'), sentences.join(' '));
    },

    /** Leads the keys to what stands now where something was removed. */
    focusOn(place) {
      const item = list.children[Math.min(place, list.children.length - 1)];
      (panel.hidden ? button : item.firstElementChild).focus();
    },
  };
}

/** A piece of a line as the curves draw it. */
function swatch() {
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('class', 'kept-line');
  svg.setAttribute('viewBox', '0 0 40 16');
  svg.setAttribute('role', 'img');
  svg.append(...['path', 'path'].map((name) => document.createElementNS(SVG, name)));
  svg.lastElementChild.setAttribute('class', 'kept-marker');
  return svg;
}

function drawSwatch(svg, entry) {
  const [line, marker] = svg.children;
  setAttribute(svg, 'aria-label', `(${lineWords(entry)})`);
  setAttribute(line, 'd', 'M2 8H38');
  setAttribute(line, 'stroke-dasharray', dashOf(entry));
  setAttribute(marker, 'd', markerPath(entry.letter, 20, 8));
}
