import { uprightTicks } from './axes.js';
import { Pool } from './pool.js';
import { Label, add, number, set } from './svg.js';

/** What lies under the curves: rideable stretches as tint, all else hatched, the upright axis. */

/** From one slanting line to the next [px]. */
const HATCH = 9;

export class PanelGround {
  constructor(parent) {
    this.hatch = add(parent, 'path', {
      class: 'pic-hatch', fill: 'none', 'stroke-opacity': 0.45, 'stroke-width': 1,
    });
    const windows = add(parent, 'g');
    this.windows = new Pool(() => add(windows, 'rect', { class: 'pic-window' }));
    const ticks = add(parent, 'g');
    this.ticks = new Pool(() => add(ticks, 'line', { class: 'pic-tick' }));
    this.box = add(parent, 'rect', { class: 'pic-plot', fill: 'none', 'stroke-width': 1 });
    const numbers = add(parent, 'g');
    this.numbers = new Pool(() => new Label(numbers, 'tick'));
  }

  /**
   * @param {Object} sheet what all panels share
   * @param {Object} plot box of the plot [px]
   * @param {Object} range of the upright axis
   * @param {function(number): number} yOf from a value to its height [px]
   */
  draw({ reply, colours, axis, line }, plot, range, yOf) {
    set(this.hatch, { d: hatching(plot), stroke: colours.edge });
    this.windows.begin();
    for (const { from_kmh: from, to_kmh: to } of reply.rideable_intervals) {
      const left = axis.x(Math.max(axis.from, from));
      const right = axis.x(Math.min(axis.to, to));
      if (right > left) {
        set(this.windows.next(), {
          x: left, y: plot.y, width: right - left, height: plot.height, fill: colours.window });
      }
    }
    this.windows.end();
    this.ticks.begin();
    this.numbers.begin();
    for (const { value, text } of uprightTicks(range)) {
      const y = yOf(value);
      set(this.ticks.next(), {
        x1: plot.x, y1: y, x2: plot.x + plot.width, y2: y, stroke: colours.edge,
        'stroke-width': value === 0 ? 1.5 : 0.5 });
      this.numbers.next().show(
        plot.x - 6, y + 0.29 * line, 'end', text, '', colours.muted, colours);
    }
    this.ticks.end();
    this.numbers.end();
    set(this.box, { x: plot.x, y: plot.y, width: plot.width, height: plot.height,
      stroke: colours.edge });
  }
}

/** Slanting lines over a whole plot. */
function hatching({ x, y, width, height }) {
  let path = '';
  for (let right = HATCH; right < width + height; right += HATCH) {
    const start = Math.max(0, right - width);
    const end = Math.min(height, right);
    path += `M${number(x + right - start)} ${number(y + start)}`;
    path += `L${number(x + right - end)} ${number(y + end)}`;
  }
  return path;
}
