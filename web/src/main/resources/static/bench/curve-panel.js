import { uprightRange } from './axes.js';
import { PanelGround } from './curve-ground.js';
import { PanelLabels, around } from './curve-labels.js';
import { paint } from './colours.js';
import { EndNames } from './curve-ends.js';
import { box } from './geometry.js';
import { dashOf, markerPath } from './kept-marks.js';
import { indexAt } from './kept.js';
import { fixed } from './measures.js';
import { Pool } from './pool.js';
import { bandOf, marksOf, valueOf, wishOf } from './quantities.js';
import { Label, add, number, points, set, show } from './svg.js';

/** One quantity against speed. `plan` draws what stands while the speed moves, `mark` the rest. */

const DOT = 4.5;
const DASHES = '8 5';

/** Half the room that a kept setup's marker asks of the words beside it [px]. */
const ROOM = 6;

/** Width of a kept setup's line over the live one's. */
const LIGHTER = 0.75;

export class CurvePanel {
  constructor(parent) {
    this.group = add(parent, 'g', { class: 'pic-panel' });
    const layer = () => add(this.group, 'g');
    const pool = (name, attributes, group = layer()) =>
      new Pool(() => add(group, name, attributes));
    this.title = new Label(this.group, 'title');
    this.ground = new PanelGround(layer());
    this.bands = pool('polygon', { class: 'pic-band', 'fill-opacity': 0.22 });
    this.wish = add(this.group, 'path', { class: 'pic-wish', fill: 'none', 'stroke-width': 1.5 });
    this.kept = pool('path', { fill: 'none', 'stroke-linecap': 'round' });
    this.curves = pool('path', {
      class: 'pic-curve', fill: 'none', 'stroke-linejoin': 'round', 'stroke-linecap': 'round' });
    this.upright = add(this.group, 'line', { class: 'pic-mark', 'stroke-width': 2 });
    this.markers = pool('path', { class: 'pic-kept-marker', 'stroke-width': 2 });
    this.marks = pool('circle', { class: 'pic-marker', r: DOT, 'stroke-width': 2 });
    this.dots = pool('circle', { class: 'pic-mark-dot', r: DOT + 0.5, 'stroke-width': 1.5 });
    this.ends = new EndNames(layer());
    this.labels = new PanelLabels(layer());
  }

  /**
   * Draws all that does not depend on the chosen speed.
   *
   * @param {Object} sheet `{reply, kept, measures, colours, axis, line, right}`; `right` is the
   *     end of the room for names [px]
   * @param {Object} quantity
   * @param {Object} plot box of the panel's plot; its title stands above [px]
   */
  plan(sheet, quantity, plot) {
    show(this.group, true);
    Object.assign(this, { sheet, quantity, plot });
    const { reply, measures, colours, axis, line } = sheet;
    this.range = uprightRange(this.range, ...this.extremes(), quantity, plot.height, colours.size);
    const symbol = measures.symbol(quantity.unit);
    // A no-break space holds the lone degree sign off the words.
    const words = quantity.title + (symbol === '°' ? '\u00A0' : '');
    this.title.show(plot.x, plot.y - 6, 'start', words, symbol, colours.ink, colours);
    this.ground.draw(sheet, plot, this.range, (value) => this.y(value));
    this.strokes = [];
    this.curves.begin();
    this.bands.begin();
    this.labels.clear();
    const ends = quantity.lines.map((one) => this.curve(one));
    this.curves.end();
    this.bands.end();
    const keptEnds = this.keptLines();
    this.room = {
      frame: box(plot.x + 3, plot.y + 1, sheet.right - plot.x - 3, plot.height - 2),
      strokes: this.strokes, line, colours,
    };
    this.marks.begin();
    const marks = marksOf(quantity, reply, measures).filter(({ kmh }) => axis.holds(kmh));
    marks.forEach(({ kmh, value }) => this.dot(this.marks, axis.x(kmh), this.y(value), {
      fill: colours.surface, stroke: colours.ink }));
    this.marks.end();
    const beside = this.ends.draw(ends, keptEnds, this);
    this.names(ends.map((end) => (beside.includes(end) ? null : end)));
    marks.forEach(({ word, kmh, value }, i) => {
      const speed = measures.text(kmh, 'km/h', 1);
      this.labels.place(`mark ${i}`, `${word} ${speed}`, '',
        around(axis.x(kmh), this.y(value), line, 4), colours.ink, this.room);
    });
    this.wishes();
    this.labels.mark();
  }

  hide() {
    show(this.group, false);
  }

  extremes() {
    const { reply, kept, measures } = this.sheet;
    let low = Infinity;
    let high = -Infinity;
    for (const one of this.quantity.lines) {
      for (const all of [reply.points, ...kept.map((entry) => entry.reply.points)]) {
        for (const point of all) {
          const value = valueOf(point, one, this.quantity, measures);
          if (value !== null) {
            low = Math.min(low, value);
            high = Math.max(high, value);
          }
        }
      }
    }
    return [low, high];
  }

  y(value) {
    const { low, high } = this.range;
    return this.plot.y + this.plot.height * (1 - (value - low) / (high - low));
  }

  /** A band's edge, cut at the plot's: the axis is the lines', so that it stands when bands come. */
  clamped(value) {
    return Math.max(this.plot.y, Math.min(this.plot.y + this.plot.height, this.y(value)));
  }

  /** One curve with its band; returns where it ends, or null. */
  curve(one) {
    const { reply, measures, colours, axis } = this.sheet;
    const hue = paint(colours, one.hue);
    const { path, last } = this.path(reply, one, this.strokes);
    set(this.curves.next(), {
      d: path || null, stroke: hue, 'stroke-width': colours.line,
      'stroke-dasharray': one.hue === 'back' ? DASHES : null });
    const upper = [];
    const lower = [];
    for (const point of reply.points) {
      const band = bandOf(point, one, this.quantity, measures);
      if (band) {
        upper.push(axis.x(point.speed_kmh), this.clamped(band[1]));
        lower.unshift(axis.x(point.speed_kmh), this.clamped(band[0]));
      }
    }
    if (upper.length > 2) {
      set(this.bands.next(), { points: points([...upper, ...lower]), fill: hue });
    }
    return last && { ...last, one, hue };
  }

  /** The lines of the kept setups, the reference dotted; returns where each ends. */
  keptLines() {
    const { kept, colours } = this.sheet;
    const ends = [];
    this.kept.begin();
    for (const entry of kept) {
      for (const one of this.quantity.lines) {
        const hue = paint(colours, one.hue);
        const { path, last } = this.path(entry.reply, one, null);
        set(this.kept.next(), {
          class: entry.isReference ? 'pic-pinned' : 'pic-kept', d: path || null, stroke: hue,
          'stroke-width': entry.isReference ? colours.line : LIGHTER * colours.line,
          'stroke-dasharray': dashOf(entry) });
        if (last) {
          ends.push({ ...last, letter: entry.letter, hue });
        }
      }
    }
    this.kept.end();
    return ends;
  }

  /** A line's way with gaps where there is no trim. */
  path({ points: all }, one, strokes) {
    const { axis, measures } = this.sheet;
    let path = '';
    let last = null;
    let pen = null;
    for (const point of all) {
      const value = axis.holds(point.speed_kmh)
        ? valueOf(point, one, this.quantity, measures) : null;
      if (value === null) {
        pen = null;
        continue;
      }
      const x = axis.x(point.speed_kmh);
      const y = this.y(value);
      // The first point alone would not show; no length with a round end is a dot.
      path += pen ? `L${number(x)} ${number(y)}` : `M${number(x)} ${number(y)}h0`;
      if (pen && strokes) {
        strokes.push([pen.x, pen.y, x, y]);
      }
      pen = { x, y };
      last = pen;
    }
    return { path, last };
  }

  /** Each line's name at its end. */
  names(ends) {
    const { line, right } = this.sheet;
    const edge = this.plot.x + this.plot.width;
    ends.forEach((end, i) => {
      if (!end) {
        return;
      }
      const outside = { x: end.x + 8, y: this.within(end.y), anchor: 'start' };
      const up = { x: Math.min(end.x, edge - 4), y: end.y - line / 2 - 6, anchor: 'end' };
      const down = { ...up, y: end.y + line / 2 + 6 };
      const more = [0.6, 1.2, 2, 3].flatMap((k) => [
        { ...up, y: up.y - k * line }, { ...down, y: down.y + k * line },
      ]);
      const beside = [0, -line, line].map((dy) => ({ ...outside, y: outside.y + dy }));
      // Outside the plot wherever there is a margin for names, or the line ends early.
      const places = right > edge + line || end.x < edge - 6 * line ? [...beside, up, down, ...more]
        : [up, down, ...more];
      this.labels.place(`name ${i}`, end.one.name, '', places, end.hue, this.room);
    });
  }

  within(y) {
    const half = this.sheet.line / 2 + 2;
    return Math.max(this.plot.y + half, Math.min(this.plot.y + this.plot.height - half, y));
  }

  /** The wished speed as a notch in the axis, the wished value as a thin level line. */
  wishes() {
    const { plot } = this;
    const { reply, colours, axis } = this.sheet;
    let path = '';
    if (axis.holds(reply.wished_speed_kmh)) {
      const x = number(axis.x(reply.wished_speed_kmh));
      path += `M${x} ${number(plot.y + plot.height - 9)}l-5 9h10z`;
    }
    const wish = wishOf(this.quantity, reply);
    this.wished = wish !== null && wish >= this.range.low && wish <= this.range.high ? wish : null;
    if (this.wished !== null) {
      path += `M${number(plot.x)} ${number(this.y(wish))}h${number(plot.width)}`;
    }
    set(this.wish, { d: path || null, stroke: colours.muted });
  }

  /** The wished value's word, which gives way to what the upright line says. */
  wishWord() {
    const { plot, quantity } = this;
    const { measures, colours, line } = this.sheet;
    const y = this.y(this.wished);
    const left = { x: plot.x + 5, anchor: 'start' };
    const right = { x: plot.x + plot.width - 5, anchor: 'end' };
    const places = [left, right].flatMap((end) => [-1, 1].map((side) => (
      { ...end, y: y + side * (line / 2 + 2) })));
    const symbol = measures.symbol(quantity.unit);
    const words = `wish ${fixed(this.wished, quantity.decimals)}`;
    this.labels.place('wish', words, symbol, places, colours.muted, this.room);
  }

  /** The upright line at the chosen speed, with what each curve has there. */
  mark(index) {
    const { reply, measures, colours, axis, line } = this.sheet;
    const { plot, quantity } = this;
    const point = reply.points[index];
    const x = axis.x(point.speed_kmh);
    set(this.upright, {
      x1: x, y1: plot.y, x2: x, y2: plot.y + plot.height, stroke: colours.action });
    this.labels.rewind();
    this.dots.begin();
    const found = quantity.lines
      .map((one) => ({ one, value: valueOf(point, one, quantity, measures) }))
      .filter(({ value }) => value !== null)
      .map((read) => ({ ...read, y: this.y(read.value) }));
    this.keptMarkers(point.speed_kmh, x);
    for (const { one, y } of found) {
      this.dot(this.dots, x, y, { fill: paint(colours, one.hue), stroke: colours.surface });
    }
    found.forEach(({ value, y }, i) => {
      this.labels.place(`value ${i}`, fixed(value, quantity.decimals),
        measures.symbol(quantity.unit), around(x, y, line, 8), colours.ink, this.room, true);
    });
    this.dots.end();
    if (found.length === 0) {
      const places = around(x, plot.y + plot.height / 2, line, 8);
      this.labels.place('none', 'no trim', '', places, colours.muted, this.room);
    }
    if (this.wished !== null) {
      this.wishWord();
    }
    this.labels.finish();
  }

  /** Each kept setup's marker where its lines meet the upright one. */
  keptMarkers(kmh, x) {
    const { kept, measures, colours } = this.sheet;
    this.markers.begin();
    for (const { letter, reply } of kept) {
      const point = reply.points[indexAt(reply, kmh)];
      for (const one of point ? this.quantity.lines : []) {
        const value = valueOf(point, one, this.quantity, measures);
        if (value !== null) {
          const y = this.y(value);
          this.labels.reserve(`marker ${letter}`, box(x - ROOM, y - ROOM, 2 * ROOM, 2 * ROOM));
          set(this.markers.next(), {
            d: markerPath(letter, x, y), fill: colours.surface,
            stroke: paint(colours, one.hue) });
        }
      }
    }
    this.markers.end();
  }

  dot(pool, x, y, attributes) {
    set(pool.next(), { cx: x, cy: y, ...attributes });
  }
}
