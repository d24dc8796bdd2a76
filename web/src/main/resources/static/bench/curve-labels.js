import { box, inside, overlap } from './geometry.js';
import { Label, labelWidth } from './svg.js';

/**
 * Words in a panel of curves. A word keeps its place beside what it names until that place has
 * become clearly worse than another, so that it does not hop while values change.
 */

/** Cost of one pixel of a covered line, and of one rank in the order of places. */
const COVERED = 2;

const RANK = 7;

/** How much worse its place must have become before a word moves. */
const PATIENCE = 28;

const APART = 3;

/** From the top of a line of text to its base line, over the line's height. */
const BASE = 0.79;

/** The labels of one panel. */
export class PanelLabels {
  constructor(parent) {
    this.parent = parent;
    this.labels = new Map();
    this.chosen = new Map();
    this.boxes = [];
  }

  /** Begins anew: no word stands, but where each stood is remembered. */
  clear() {
    this.boxes = [];
    this.shown = new Set();
  }

  /** Keeps the words that stand now, and lets later ones be placed again. */
  mark() {
    this.kept = this.boxes.length;
    this.keptShown = new Set(this.shown);
  }

  /** Takes away the words placed since {@link mark}. */
  rewind() {
    this.boxes.length = this.kept;
    this.shown = new Set(this.keptShown);
  }

  /** Keeps a box free of words. */
  keepFree(taken) {
    this.boxes.push(taken);
  }

  /**
   * Places a word at the best of some places.
   *
   * @param {string} key which word
   * @param {string} words
   * @param {string} unit behind them
   * @param {{x: number, y: number, anchor: string}[]} places best first; `y` is the middle of the
   *     line of text [px]
   * @param {string} hue paint
   * @param {Object} room `{frame, strokes, line, colours}`
   * @param {boolean} must whether it is shown even where it covers another
   */
  place(key, words, unit, places, hue, room, must = false) {
    const { frame, strokes, line, colours } = room;
    const width = labelWidth(words, unit, colours);
    const boxes = places.map(({ x, y, anchor }) => box(
      x - (anchor === 'end' ? width : anchor === 'middle' ? width / 2 : 0), y - line / 2,
      width, line));
    const costs = boxes.map((b, i) => (this.free(b, frame) ? RANK * i + covered(b, strokes)
      : Infinity));
    let best = costs.indexOf(Math.min(...costs));
    const before = this.chosen.get(key);
    if (before < places.length && costs[before] <= costs[best] + PATIENCE) {
      best = before;
    }
    if (costs[best] === Infinity && !must) {
      return;
    }
    this.chosen.set(key, best);
    this.boxes.push(boxes[best]);
    this.shown.add(key);
    this.label(key).show(
      places[best].x, boxes[best].y + BASE * line, places[best].anchor, words, unit, hue, colours);
  }

  /** Hides what was not placed. */
  finish() {
    for (const [key, label] of this.labels) {
      if (!this.shown.has(key)) {
        label.hide();
      }
    }
  }

  free(b, frame) {
    return (
      b.x >= frame.x && b.x + b.width <= frame.x + frame.width &&
      b.y >= frame.y && b.y + b.height <= frame.y + frame.height &&
      !this.boxes.some((other) => overlap(b, other, APART, 0))
    );
  }

  label(key) {
    let label = this.labels.get(key);
    if (!label) {
      label = new Label(this.parent, key);
      this.labels.set(key, label);
    }
    return label;
  }
}

function covered(b, strokes) {
  let sum = 0;
  for (const stroke of strokes) {
    sum += inside(stroke, b);
  }
  return COVERED * sum;
}

/** Places around a dot: right or left of it, above or below, ever farther. */
export function around(x, y, line, gap) {
  const all = [];
  for (const away of [0, 0.7, 1.5, 2.5]) {
    const dy = line / 2 + 3 + away * line;
    for (const [dx, anchor] of [[gap, 'start'], [-gap, 'end']]) {
      all.push({ x: x + dx, y: y - dy, anchor }, { x: x + dx, y: y + dy, anchor });
    }
  }
  return all;
}
