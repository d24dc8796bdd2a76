import { box, overlap } from './geometry.js';
import { Pool } from './pool.js';
import { Label, add, number, set, show, textWidth } from './svg.js';

/**
 * The limits as marks on the speed axis: a symbol of its own for each on the axis, a stem down to a
 * word below the axis's numbers. Words never cover each other or a stem; a mark for which there is
 * no room keeps its symbol, and the table of limits names it. What lies beyond the axis is told in
 * words at its end.
 */

/** Symbols around their middle, drawn as strokes; they differ in shape, never in colour alone. */
const SYMBOLS = {
  take_off: 'M0 -6L5 4H-5Z',
  stall: 'M-4.5 -4.5L4.5 4.5M4.5 -4.5L-4.5 4.5',
  banked: 'M-5 -3L5 5M-5 5H5',
  cavitation: 'M4.5 0A4.5 4.5 0 1 1 -4.5 0A4.5 4.5 0 1 1 4.5 0Z',
  longest: 'M-4.5 -5.5H4.5L-4.5 5.5H4.5Z',
  farthest: 'M-4 -5L5 0L-4 5Z',
  fastest: 'M-5 -5L0 0L-5 5M0 -5L5 0L0 5',
};

/** A drawn symbol for the table's rows. */
export function symbolOf(id) {
  return SYMBOLS[id];
}

const GAP = 4;

/** Placements tried before a word is left out. */
const MOST_TRIES = 4000;

/**
 * Finds a row and a side for each word, as many as can be had, by trying.
 *
 * @param {{x: number, width: number}[]} marks from left to right [px]
 * @param {{rows: number, line: number, left: number, right: number, taken: Object[]}} room
 * @returns {(?{row: number, side: number})[]} in the order of the marks; null for a word left out
 */
export function placeWords(marks, { rows, line, left, right, taken }) {
  let tries = 0;
  let best = { count: -1, places: [] };
  const boxes = [];
  const stems = [];
  const free = (word, stem) =>
    !taken.some((other) => overlap(word, other, GAP, 0) || overlap(stem, other, 1, 0)) &&
    !boxes.some((other) => overlap(word, other, GAP + 2, -1) || overlap(stem, other, 1, -1)) &&
    !stems.some((other) => overlap(word, other, 1, -1));
  const go = (i, places, count) => {
    if (count + marks.length - i <= best.count || tries > MOST_TRIES) {
      return;
    }
    if (i === marks.length) {
      best = { count, places: [...places] };
      return;
    }
    const { x, width } = marks[i];
    for (let row = 0; row < rows; row += 1) {
      for (const side of [1, -1]) {
        tries += 1;
        const start = side > 0 ? x + GAP : x - GAP - width;
        const word = box(start, row * line, width, line);
        const stem = box(x - 1, 0, 2, (row + 0.8) * line);
        if (start >= left && start + width <= right && free(word, stem)) {
          boxes.push(word);
          stems.push(stem);
          go(i + 1, [...places, { row, side }], count + 1);
          boxes.pop();
          stems.pop();
          if (best.count === marks.length) {
            return;
          }
        }
      }
    }
    go(i + 1, [...places, null], count);
  };
  go(0, [], 0);
  return best.places;
}

export class SpeedMarks {
  /**
   * @param {Element} parent of symbols and words
   * @param {Element} under of the stems, which pass behind the axis's numbers
   */
  constructor(parent, under) {
    this.stems = add(under, 'path', { class: 'pic-stems', fill: 'none', 'stroke-width': 1 });
    const group = add(parent, 'g', { class: 'pic-speed-marks' });
    this.symbols = new Pool(() => add(group, 'path', {
      class: 'pic-speed-mark', 'stroke-width': 2, 'stroke-linejoin': 'round' }));
    this.words = new Pool(() => new Label(group, 'limit'));
  }

  /**
   * @param {?Object} envelope none draws nothing
   * @param {Object} sheet `{axis, colours, measures, line, rows, width, axisY, top}`: where the
   *     axis lies and where the words begin [px]
   */
  draw(envelope, { axis, colours, measures, line, rows, width, axisY, top }) {
    this.symbols.begin();
    this.words.begin();
    const all = envelope?.marks ?? [];
    const on = all.filter(({ speed_kmh: kmh }) => axis.holds(kmh));
    const taken = [];
    for (const [words, atEnd] of beyond(all, axis, measures)) {
      const length = textWidth(words, colours);
      const x = atEnd ? width - 3 - length : 3;
      taken.push(box(x, (rows - 1) * line, length, line));
      this.words.next().show(
        x, top + (rows - 0.21) * line, 'start', words, '', colours.muted, colours);
    }
    const marks = on.map((mark) => ({
      x: axis.x(mark.speed_kmh), width: textWidth(mark.label, colours) }));
    const places = placeWords(marks, { rows, line, left: 3, right: width - 3, taken });
    let stems = '';
    on.forEach((mark, i) => {
      const { x } = marks[i];
      set(this.symbols.next(), {
        d: SYMBOLS[mark.id], transform: `translate(${number(x)} ${number(axisY)})`,
        stroke: colours.ink, fill: SYMBOLS[mark.id].includes('Z') ? colours.surface : 'none',
        'data-mark': mark.id, 'data-speed': mark.speed_kmh.toFixed(1) });
      const place = places[i];
      if (place) {
        const y = top + (place.row + 0.79) * line;
        stems += `M${number(x)} ${number(axisY + 6)}V${number(y)}`;
        this.words.next().show(
          x + place.side * GAP, y, place.side > 0 ? 'start' : 'end', mark.label, '',
          colours.ink, colours);
      }
    });
    set(this.stems, { d: stems || null, stroke: colours.edge });
    show(this.stems, stems !== '');
    this.symbols.end();
    this.words.end();
  }
}

/** What lies beyond each end of the axis, in words. */
function beyond(marks, axis, measures) {
  const name = ({ label, speed_kmh: kmh }) => `${label} ${measures.text(kmh, 'km/h', 0)}`;
  const slower = marks.filter(({ speed_kmh: kmh }) => kmh < axis.from && !axis.holds(kmh));
  const faster = marks.filter(({ speed_kmh: kmh }) => kmh > axis.to && !axis.holds(kmh));
  const words = [];
  if (faster.length > 0) {
    words.push([`${faster.map(name).join(', ')} \u2192`, true]);
  }
  if (slower.length > 0) {
    words.push([`\u2190 ${slower.map(name).join(', ')}`, false]);
  }
  return words;
}

/** The marks in a sentence, for somebody who cannot see them. */
export function marksWords(envelope, measures) {
  const name = (mark) => `${mark.name} ${measures.withUnit(mark.speed_kmh, 'km/h', 1)}`;
  return envelope === null || envelope.marks.length === 0
    ? '' : `Marks on the axis: ${envelope.marks.map(name).join('; ')}.`;
}
