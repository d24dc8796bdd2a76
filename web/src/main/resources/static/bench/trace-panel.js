import { uprightRange, uprightTicks } from './axes.js';
import { paint } from './colours.js';
import { box } from './geometry.js';
import { Pool } from './pool.js';
import { Label, add, number, set, textWidth } from './svg.js';

/** One number of a play against time, with its value at the moment shown beside its name. */

/** Height of the plot's own room under the name, over the letters' line. */
const TITLE = 1.05;
const GAP = 5;

/** The longest number beside a name. */
const LONGEST = '\u22120000';

export class TracePanel {
  /**
   * @param {Element} parent
   * @param {Object} trace one of play-series.js
   */
  constructor(parent, trace) {
    this.trace = trace;
    this.title = new Label(parent, 'title');
    this.value = new Label(parent, `value ${trace.key}`);
    const ticks = add(parent, 'g');
    this.ticks = new Pool(() => add(ticks, 'line', { class: 'pic-tick' }));
    const numbers = add(parent, 'g');
    this.numbers = new Pool(() => new Label(numbers, 'tick'));
    this.frame = add(parent, 'rect', { class: 'pic-plot', fill: 'none', 'stroke-width': 1 });
    this.path = add(parent, 'path', {
      class: 'pic-trace', fill: 'none', 'stroke-linejoin': 'round', 'data-trace': trace.key });
  }

  /**
   * All that stands while a play is shown.
   *
   * @param {Object} sheet what all panels share
   * @param {number} top of the panel with its name [px]
   * @param {number} height of both [px]
   */
  plan(sheet, top, height) {
    const { play, measures, colours, line, x, left, right, ends } = sheet;
    const { key, title, short, unit, hue, span, down } = this.trace;
    this.sheet = sheet;
    this.hue = paint(colours, hue);
    const room = TITLE * line;
    this.plot = box(left, top + room, right - left, Math.max(16, height - room - GAP));
    const narrow = textWidth(`${title} ${LONGEST} ${measures.symbol(unit)}`, colours) > right - left;
    this.title.show(
      left, top + 0.79 * line, 'start', narrow ? (short ?? title) : title, '', colours.muted,
      colours);
    const [least, most] = ends[key] ?? [-Infinity, Infinity];
    // What lies beyond is drawn along the edge.
    this.shown = (value) => measures.value(Math.max(least, Math.min(most, value)), unit);
    const values = play.each(key).map(this.shown);
    this.range = rangeOf(values, span * measures.unit(unit).factor, key, this.plot.height,
      colours.size);
    const { low, high } = this.range;
    this.y = (value) => {
      const share = (value - low) / (high - low);
      return this.plot.y + this.plot.height * (down ? share : 1 - share);
    };
    this.ticks.begin();
    this.numbers.begin();
    let below = Infinity;
    for (const { value, text } of uprightTicks(this.range)) {
      const y = this.y(value);
      if (Math.abs(below - y) < colours.size) {
        continue; // No room for its number.
      }
      below = y;
      set(this.ticks.next(), {
        x1: left, y1: y, x2: right, y2: y, stroke: colours.edge,
        'stroke-width': value === 0 ? 1.5 : 0.5 });
      this.numbers.next().show(
        left - 6, y + 0.29 * line, 'end', text, '', colours.muted, colours);
    }
    this.ticks.end();
    this.numbers.end();
    set(this.frame, {
      x: left, y: this.plot.y, width: this.plot.width, height: this.plot.height,
      stroke: colours.edge });
    const times = play.answer.times_s;
    set(this.path, {
      d: values.map((value, i) => (
        `${i === 0 ? 'M' : 'L'}${number(x(times[i]))} ${number(this.y(value))}`)).join(''),
      stroke: this.hue, 'stroke-width': colours.line });
  }

  /** The value at a moment; gives its height [px]. */
  show(moment) {
    const { measures, colours, line, right } = this.sheet;
    const { key, unit, decimals } = this.trace;
    const [least, most] = this.sheet.ends[key] ?? [-Infinity, Infinity];
    const isOn = moment[key] >= least && moment[key] <= most;
    this.value.show(
      right, this.plot.y - 0.26 * line, 'end',
      isOn ? measures.text(moment[key], unit, decimals) : 'off the board',
      isOn ? measures.symbol(unit) : '', colours.ink, colours);
    return this.y(this.shown(moment[key]));
  }
}

/** An upright axis around values, at least so long. */
function rangeOf(values, span, key, height, size) {
  let low = Math.min(...values);
  let high = Math.max(...values);
  const more = Math.max(0, span - (high - low)) / 2;
  low -= more;
  high += more;
  return uprightRange(null, low, high, { id: key, always: [low, high] }, height, size);
}
