import { box } from './geometry.js';
import { Pool } from './pool.js';
import { Label, add, number, set, textWidth } from './svg.js';

/**
 * Names at the ends of a panel's lines where setups are kept: one under the other in the margin, in
 * the order of the ends, each led to its line where it had to give way to another.
 */

/** From a line's end to its name [px]. */
const AWAY = 12;

/** Height of a name over the size of its letters. */
const HIGH = 1.06;

/** How far names may stand beyond the plot, above and below [px]. */
const BEYOND = 5;

/** A name that stands closer to its line's end needs no leader [px]. */
const NEAR = 4;

export class EndNames {
  constructor(parent) {
    this.leaders = new Pool(() => add(parent, 'path', {
      class: 'pic-end-leader', fill: 'none', 'stroke-width': 1 }));
    this.names = new Pool(() => new Label(parent, 'kept'));
  }

  /**
   * Draws the letters of the kept setups, and the names of the live lines that end beside them.
   *
   * @param {Object[]} live where the live lines end, null where one has no point
   * @param {Object[]} kept where the kept ones end, with their letters
   * @param {Object} panel whose plot, sheet and labels count
   * @returns {Object[]} the live ones that were named
   */
  draw(live, kept, { plot, sheet, labels }) {
    const { right, colours } = sheet;
    const edge = plot.x + plot.width;
    const width = (words) => textWidth(words, colours);
    const named = kept.length === 0 ? [] : live.filter((end) =>
      end !== null && end.x > edge - AWAY && edge + AWAY + width(end.one.name) <= right);
    const all = [...named.map((end) => ({ ...end, words: end.one.name })),
      ...kept.map((end) => ({ ...end, words: end.letter }))].sort((a, b) => a.y - b.y);
    const step = HIGH * colours.size;
    const places = spread(all.map(({ y }) => y), step,
      plot.y - BEYOND + step / 2, plot.y + plot.height + BEYOND - step / 2);
    this.leaders.begin();
    this.names.begin();
    all.forEach(({ x, y, words, hue }, i) => {
      const left = x + AWAY;
      const middle = places[i];
      set(this.leaders.next(), {
        d: Math.abs(middle - y) < NEAR ? null
          : `M${number(x + 1)} ${number(y)}L${number(left - 3)} ${number(middle)}`,
        stroke: colours.edge,
      });
      this.names.next().show(left, middle + 0.36 * colours.size, 'start', words, '', hue, colours);
      labels.reserve(`end ${i}`, box(left, middle - step / 2, width(words), step));
    });
    this.leaders.end();
    this.names.end();
    return named;
  }
}

/**
 * Heights near the wanted ones that keep apart.
 *
 * @param {number[]} wanted ascending [px]
 * @param {number} step least distance [px]
 * @param {number} least [px]
 * @param {number} most [px]; where there is not room enough for all, they go beyond it
 */
export function spread(wanted, step, least, most) {
  const places = [];
  wanted.forEach((y, i) => {
    places.push(Math.max(y, least, i > 0 ? places[i - 1] + step : least));
  });
  for (let i = places.length - 1; i >= 0; i--) {
    const limit = i === places.length - 1 ? most : places[i + 1] - step;
    places[i] = Math.max(least + i * step, Math.min(places[i], limit));
  }
  return places;
}
