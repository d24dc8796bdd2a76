import { box, inside, overlap } from './geometry.js';
import { Label, labelWidth, show } from './svg.js';

/**
 * Words in a panel of curves. A word keeps its place beside what it names until that place has
 * become clearly worse than another, so that it does not hop while values change.
 */

/** Cost of one pixel of a covered line, and of one rank in the order of places. */
const COVERED = 2;

const RANK = 7;

/** How much worse its place must have become before a word moves. */
const PATIENCE = 28;

/** Cost of a word that has to give way. */
const IN_THE_WAY = 10_000;

const APART = 3;

/** From the top of a line of text to its base line, over the line's height. */
const BASE = 0.79;

/** The labels of one panel. */
export class PanelLabels {
  constructor(parent) {
    this.parent = parent;
    this.labels = new Map();
    this.chosen = new Map();
    /** Boxes of the words that stand, by key. */
    this.standing = new Map();
  }

  /** Begins anew: no word stands, but where each stood is remembered. */
  clear() {
    this.standing = new Map();
  }

  /** Keeps the words that stand now, and lets later ones be placed again. */
  mark() {
    this.kept = this.standing;
  }

  /** Takes away the words placed since {@link mark}, and brings back what had given way. */
  rewind() {
    this.standing = new Map(this.kept);
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
   * @param {boolean} must whether others give way where it finds no free place
   */
  place(key, words, unit, places, hue, room, must = false) {
    const { frame, strokes, line, colours } = room;
    const width = labelWidth(words, unit, colours);
    const boxes = places.map(({ x, y, anchor }) => box(
      x - (anchor === 'end' ? width : anchor === 'middle' ? width / 2 : 0), y - line / 2,
      width, line));
    const costs = boxes.map((b, i) => {
      const inTheWay = this.under(b).length;
      return !within(b, frame) || (inTheWay > 0 && !must) ? Infinity
        : IN_THE_WAY * inTheWay + RANK * i + covered(b, strokes);
    });
    let best = costs.indexOf(Math.min(...costs));
    const before = this.chosen.get(key);
    if (before < places.length && costs[before] <= costs[best] + PATIENCE) {
      best = before;
    }
    if (costs[best] === Infinity) {
      return;
    }
    this.chosen.set(key, best);
    this.under(boxes[best]).forEach((other) => this.standing.delete(other));
    this.standing.set(key, boxes[best]);
    this.label(key).show(
      places[best].x, boxes[best].y + BASE * line, places[best].anchor, words, unit, hue, colours);
  }

  /** Holds a box free that another draws into. */
  reserve(key, room) {
    this.standing.set(key, room);
  }

  /** Hides what does not stand. */
  finish() {
    for (const [key, label] of this.labels) {
      show(label.text, this.standing.has(key));
    }
  }

  /** Words that lie where a box is. */
  under(b) {
    const found = [];
    for (const [key, other] of this.standing) {
      if (overlap(b, other, APART, 0)) {
        found.push(key);
      }
    }
    return found;
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

function within(b, frame) {
  return (
    b.x >= frame.x && b.x + b.width <= frame.x + frame.width &&
    b.y >= frame.y && b.y + b.height <= frame.y + frame.height
  );
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
  for (const beside of [gap, gap + 2.5 * line, gap + 5 * line]) {
    for (const away of [0, 0.7, 1.5, 2.5, 3.5]) {
      const dy = line / 2 + 3 + away * line;
      for (const [dx, anchor] of [[beside, 'start'], [-beside, 'end']]) {
        all.push({ x: x + dx, y: y - dy, anchor }, { x: x + dx, y: y + dy, anchor });
      }
    }
  }
  return all;
}
