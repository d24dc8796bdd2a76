import { roundAbove } from './geometry.js';
import { fixed } from './measures.js';
import { boardEnds } from './play-frame.js';
import { momentWords, TRACES } from './play-series.js';
import { Pool } from './pool.js';
import { Label, add, number, root, set, textWidth } from './svg.js';
import { timeHandle } from './time-handle.js';
import { TracePanel } from './trace-panel.js';
import { watchSize, whenAtRest } from './watch.js';

/**
 * The numbers of a play against time, on one axis, under one upright line at the moment that is
 * shown. What stands is drawn once per play; a moment moves the line, the dots and the numbers.
 */

const FALLBACK_HEIGHT = 380;
const LINE = 1.22;
const EDGE = 6;

/** The longest number of an upright axis. */
const LONGEST_TICK = '\u22120000';

/** Room of a tick's number across, over the size of the letters. */
const TICK_ROOM = 4;

/**
 * The traces in a host element.
 *
 * @param {HTMLElement} host whose size the page's style sheet gives
 * @param {function(number): void} onMoment called with the moment that was chosen [s]
 * @returns {{svg: SVGElement, handle: HTMLElement, plan: function(Object): void,
 *     show: function(Object, boolean): void}} `plan` takes `{play, craft, measures, colours, name, of}`;
 *     `show` takes a moment and whether the clock runs
 */
export function createPlayTraces(host, onMoment) {
  const traces = new PlayTraces(host, onMoment);
  traces.size = watchSize(host, FALLBACK_HEIGHT, () => traces.replan());
  return {
    svg: traces.svg,
    handle: traces.handle.element,
    plan: (given) => traces.plan(given),
    show: (moment, runs) => traces.show(moment, runs),
  };
}

class PlayTraces {
  constructor(host, onMoment) {
    const { svg, title, description } = root(host, 'traces');
    this.svg = svg;
    this.surface = add(svg, 'rect', { x: 0, y: 0, class: 'pic-surface' });
    // Under the panels, whose words keep it off with their rims.
    this.upright = add(svg, 'line', { class: 'pic-mark', 'stroke-width': 2 });
    this.panels = TRACES.map((one) => new TracePanel(add(svg, 'g'), one));
    this.events = add(svg, 'path', {
      class: 'pic-events', fill: 'none', 'stroke-width': 1.5, 'stroke-dasharray': '3 4' });
    this.ticks = add(svg, 'path', { class: 'pic-axis', fill: 'none', 'stroke-width': 1 });
    const numbers = add(svg, 'g');
    this.numbers = new Pool(() => new Label(numbers, 'tick-time'));
    this.dots = TRACES.map(() => add(svg, 'circle', { r: 4.5, 'stroke-width': 1.5 }));
    this.handle = timeHandle(host, onMoment);
    this.rest = whenAtRest(title, description);
  }

  replan() {
    if (this.given) {
      this.plan(this.given);
      if (this.moment) {
        this.show(this.moment, this.runs);
      }
    }
  }

  plan(given) {
    const { play, craft, measures, colours } = given;
    const { width, height } = this.size;
    this.given = given;
    const line = LINE * colours.size;
    set(this.svg, {
      width, height, viewBox: `0 0 ${width} ${height}`,
      'font-family': colours.font, 'font-size': colours.size,
      'data-ground': colours.ground, 'data-ink': colours.ink,
    });
    set(this.surface, { width, height, fill: colours.surface });
    const left = EDGE + 6 + textWidth(LONGEST_TICK, colours);
    const right = width - EDGE - textWidth('0', colours);
    this.x = (s) => left + ((right - left) * s) / play.lastS;
    const foot = 1.5 * line + 6;
    const each = (height - 4 - foot) / TRACES.length;
    const sheet = {
      play, measures, colours, line, x: this.x, left, right,
      ends: { foot_pressure_ahead_of_mast_mm: boardEnds(craft) },
    };
    this.panels.forEach((panel, i) => panel.plan(sheet, 4 + i * each, each));
    this.top = this.panels[0].plot.y;
    const last = this.panels[this.panels.length - 1].plot;
    this.bottom = last.y + last.height;
    this.axis(play.lastS, left, right, line, colours);
    set(this.events, {
      d: this.panels.map(({ plot }) => play.answer.marks.map(({ at_s: s }) => (
        `M${number(this.x(s))} ${number(plot.y)}v${number(plot.height)}`)).join('')).join('') || null,
      stroke: colours.ink });
    set(this.upright, { stroke: colours.action });
    this.dots.forEach((dot, i) => set(dot, {
      fill: this.panels[i].hue, stroke: colours.surface }));
    // From the first name on, so that the ring of who goes by keys cuts no word.
    this.handle.cover(left, 4, right - left, this.bottom - 4, play.lastS);
  }

  axis(lastS, left, right, line, colours) {
    const step = roundAbove(lastS / ((right - left) / (TICK_ROOM * colours.size)));
    const decimals = Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
    let marks = '';
    this.numbers.begin();
    const count = Math.floor(lastS / step + 1e-9);
    for (let i = 0; i <= count; i++) {
      const x = this.x(i * step);
      marks += `M${number(x)} ${number(this.bottom)}v4`;
      const unit = i === count ? 's' : '';
      // The number stands in the middle under its tick; the unit hangs on.
      const words = fixed(i * step, decimals);
      this.numbers.next().show(
        Math.min(x - textWidth(words, colours) / 2, right + EDGE - textWidth(words, colours)
          - (unit === '' ? 0 : textWidth(' s', colours))),
        this.bottom + 0.5 * line + 0.79 * line, 'start', words, unit, colours.muted, colours);
    }
    this.numbers.end();
    set(this.ticks, { d: marks, stroke: colours.edge });
  }

  show(moment, runs) {
    const { measures, name, of, play } = this.given;
    this.moment = moment;
    this.runs = runs;
    const x = this.x(moment.s);
    set(this.upright, { x1: x, y1: this.top, x2: x, y2: this.bottom });
    this.panels.forEach((panel, i) => set(this.dots[i], { cx: x, cy: panel.show(moment) }));
    const time = `${moment.s.toFixed(2)} s`;
    const speed = measures.withUnit(play.answer.speed_kmh, 'km/h', 0);
    set(this.svg, {
      'data-time': moment.s.toFixed(3), 'data-speed': `${speed} ${time}`,
      'data-caption': `${of}: ${name}, from ${speed}; the line stands at ${time}` });
    this.handle.move(moment.s);
    if (!runs) {
      this.handle.say(momentWords(moment, measures));
    }
    this.rest(() => [`${name}, from ${speed}: the numbers against time`,
      `The upright line stands at ${momentWords(moment, measures)}.`]);
  }
}
