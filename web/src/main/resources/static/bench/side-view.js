import { Arrows } from './arrows.js';
import { paint } from './colours.js';
import { place, pose } from './geometry.js';
import { leader, nearest } from './leaders.js';
import { nose } from './measures.js';
import { Craft } from './side-craft.js';
import { FOOT_LAP, footRoom, footWording } from './side-feet.js';
import { frameFor, scene, scenes } from './side-frame.js';
import {
  CENTRE_WORDINGS, GLYPH, PITCH_WORDINGS, caption, describe, forceText, forceUnit, wantedWords,
  wordings,
} from './side-labels.js';
import { scalePath, scales } from './side-scales.js';
import { chooseSlots, obstacles, serves } from './side-slots.js';
import { wrap } from './text-lines.js';
import { Label, add, labelWidth, number, points, root, set, show } from './svg.js';
import { watchSize, whenAtRest } from './watch.js';

/**
 * The craft and its rider from the side, bow to the right, to scale and pitched as computed, with
 * the forces as arrows as long as they are strong. Elements are made once; a draw only writes the
 * attributes that change and reads nothing of the page's layout.
 */

/** Height of a line of text over the size of its letters. */
const LINE = 1.22;

/** A leader is drawn from a word to what it names where they are farther apart [px]. */
const LEADER_FROM = 9;

const FALLBACK_HEIGHT = 220;

/**
 * A side view in a host element.
 *
 * @param {HTMLElement} host whose size the page's style sheet gives
 * @returns {{svg: SVGElement, draw: function(Object): void, close: function(): void}} `draw` takes
 *     `{reply, index, pinned, measures, colours}`; `pinned` is null or `{reply, index}`: another
 *     reply, and its point that is compared
 */
export function createSideView(host) {
  const view = new SideView(host);
  const size = watchSize(host, FALLBACK_HEIGHT, () => view.redraw());
  view.size = size;
  return {
    svg: view.svg,
    draw(state) {
      view.state = state;
      view.draw(state);
    },
    close: () => size.close(),
  };
}

class SideView {
  constructor(host) {
    const { svg, title, description } = root(host, 'side-view');
    this.svg = svg;
    this.surface = add(svg, 'rect', { x: 0, y: 0, class: 'pic-surface' });
    this.water = add(svg, 'rect', { x: 0, 'fill-opacity': 0.12, class: 'pic-water' });
    this.waterline = add(svg, 'line', { x1: 0, class: 'pic-waterline' });
    this.reference = new Craft(svg, true);
    this.craft = new Craft(svg, false);
    this.centre = add(svg, 'polygon', { class: 'pic-foot-pressure', 'stroke-width': 1 });
    this.pinnedArrows = new Arrows(svg, true);
    this.arrows = new Arrows(svg, false);
    this.leaders = add(svg, 'path', { class: 'pic-leader', fill: 'none', 'stroke-width': 1 });
    this.scale = add(svg, 'path', { class: 'pic-scale', fill: 'none', 'stroke-width': 1.5 });
    this.glyph = add(svg, 'polygon', { class: 'pic-foot-pressure-key' });
    this.words = add(svg, 'g', { class: 'pic-words' });
    this.labels = new Map();
    this.rest = whenAtRest(title, description);
  }

  redraw() {
    if (this.state) {
      this.draw(this.state);
    }
  }

  draw(state) {
    const { reply, index, pinned, measures, colours } = state;
    const point = reply.points[index];
    this.plan(state);
    const { frame } = this;
    const trimmed = point.pitch_deg !== null;
    const now = trimmed ? scene(reply, point)
      : { craft: reply.craft, pose: pose(reply.craft, 0), forces: [] };
    this.used = new Set();
    this.ground(colours);
    this.craft.draw(reply.craft, now.pose, frame, colours, !trimmed);
    this.drawPinned(pinned, colours);
    const ends = this.arrows.draw(now.forces, now.pose, frame, colours);
    this.pressure(point, now, colours, measures);
    this.drawScales(measures, colours);
    this.word('water', 'waterline', '', colours.muted, [() => ['waterline'], () => ['water']]);
    if (trimmed) {
      this.feet(point, now, measures, colours);
      this.forces(point, now, ends, measures, colours);
      this.word('pitch', nose(point.pitch_deg), '', colours.ink, PITCH_WORDINGS);
    } else {
      set(this.leaders, { d: null });
      this.outcome(point, now, colours);
    }
    for (const [key, label] of this.labels) {
      if (!this.used.has(key)) {
        label.hide();
      }
    }
    const speed = measures.withUnit(point.speed_kmh, 'km/h', 0);
    set(this.svg, { 'data-speed': speed, 'data-caption': caption(reply, speed, pinned ? 'dotted: the pinned reference' : '') });
    this.rest(() => [
      `Side view of ${reply.name} at ${speed}`,
      describe(point, reply, measures) + (pinned ? ' Dotted: the pinned reference.' : ''),
    ]);
  }

  /** Frame and places for words, anew only where the reply, the size or the letters changed. */
  plan({ reply, pinned, measures, colours }) {
    const { width, height } = this.size;
    const key = [reply, pinned?.reply, measures, colours, width, height];
    if (this.key && key.every((part, i) => part === this.key[i])) {
      return;
    }
    this.key = key;
    const line = LINE * colours.size;
    const shown = scenes(reply, pinned?.reply);
    const { frame, loads } = frameFor(this.frame, shown, width, height, line);
    const fresh = frame !== this.frame || measures !== this.measures || colours !== this.colours;
    this.frame = frame;
    this.loads = loads;
    this.measures = measures;
    this.colours = colours;
    const { named, boxes: feet } = footRoom(shown, frame, loads, measures, colours);
    this.footNamed = named;
    const lines = obstacles(shown, frame, loads);
    if (fresh || !serves(this.slots, feet, lines, frame)) {
      const wanted = wantedWords(shown, frame, measures, colours);
      this.slots = chooseSlots(wanted, feet, lines, frame, colours);
    }
    set(this.svg, {
      width, height, viewBox: `0 0 ${width} ${height}`,
      'font-family': colours.font, 'font-size': colours.size,
      'data-ground': colours.ground, 'data-ink': colours.ink,
      'data-pixels-per-metre': String(frame.perMetre),
      'data-pixels-per-newton': String(frame.perMetre * frame.metresPerNewton),
    });
  }

  ground(colours) {
    const { width, height, water } = this.frame;
    set(this.surface, { width, height, fill: colours.surface });
    set(this.water, { y: water, width, height: Math.max(0, height - water), fill: colours.edge });
    set(this.waterline, {
      y1: water, x2: width, y2: water, stroke: colours.edge, 'stroke-width': colours.line,
    });
    set(this.leaders, { stroke: colours.muted });
    set(this.scale, { stroke: colours.muted });
  }

  drawPinned(pinned, colours) {
    const point = pinned && pinned.reply.points[pinned.index];
    if (!point) {
      this.reference.hide();
      this.pinnedArrows.draw([], null, this.frame, colours);
      return;
    }
    const at = pose(pinned.reply.craft, point.pitch_deg ?? 0);
    this.reference.draw(pinned.reply.craft, at, this.frame, colours, false);
    this.pinnedArrows.draw(point.forces ?? [], at, this.frame, colours);
  }

  /** The foot-pressure centre: a wedge in the deck that all load could stand on. */
  pressure(point, now, colours, measures) {
    const trimmed = point.pitch_deg !== null;
    show(this.centre, trimmed);
    const slot = this.slots.get('centre');
    show(this.glyph, trimmed && Boolean(slot));
    if (!trimmed) {
      return;
    }
    const mm = point.foot_pressure_ahead_of_mast_mm;
    const [dx, dy] = now.craft.deck;
    const [x, y] = this.px(place(now.pose, dx + mm / 1000, dy));
    set(this.centre, {
      points: points([x, y, x - 6, y + 10, x + 6, y + 10]),
      fill: colours.ink, stroke: colours.surface,
    });
    if (slot) {
      const unit = measures.symbol('mm');
      const text = measures.text(mm, 'mm');
      this.word('centre', text, unit, colours.ink, CENTRE_WORDINGS);
      const words = CENTRE_WORDINGS[slot.wording](text)[0];
      const left = slot.anchor === 'start' ? slot.x : slot.x - labelWidth(words, unit, colours);
      const base = slot.y;
      set(this.glyph, {
        points: points([
          left - GLYPH + 7, base - 10, left - GLYPH + 1, base, left - GLYPH + 13, base,
        ]),
        fill: colours.ink,
      });
    }
  }

  drawScales(measures, colours) {
    const slot = this.slots.get('scales');
    show(this.scale, Boolean(slot));
    if (slot) {
      const s = scales(this.frame, measures, colours);
      const { x } = slot.box;
      const y = slot.box.y + slot.box.height - 3.5;
      const a = x + s.arrowAt;
      set(this.scale, {
        d: scalePath(x, y, s), 'data-bar': number(s.bar), 'data-arrow': number(s.arrow),
      });
      const { muted } = colours;
      this.label('scale-length').show(x, y - 6, 'start', s.barText, s.barUnit, muted, colours);
      this.label('scale-force').show(a, y - 6, 'start', s.arrowText, s.arrowUnit, muted, colours);
    }
  }

  /** Kilograms over each foot, on one line, the front's running forward and the back's aft. */
  feet(point, now, measures, colours) {
    const at = (foot) => this.px(place(now.pose, ...foot))[0];
    const x = { front: at(now.craft.front_foot), back: at(now.craft.back_foot) };
    const lap = Math.min(FOOT_LAP, Math.max(0, (x.front - x.back) / 2 - 2));
    for (const force of now.forces) {
      if (force.shown === 'kg') {
        const front = force.kind.startsWith('front');
        this.label(force.kind).show(
          front ? x.front - lap : x.back + lap, this.loads, front ? 'start' : 'end',
          footWording(force, this.footNamed)(forceText(force, point, measures)),
          forceUnit(force, measures), paint(colours, force.hue), colours);
      }
    }
  }

  /** Each force's word in its place, with a leader to the nearest point of its arrow. */
  forces(point, now, ends, measures, colours) {
    let leaders = '';
    for (const force of now.forces) {
      const arrow = ends.get(force.kind);
      const slot = this.slots.get(force.kind);
      if (force.shown === 'kg') {
        leaders += leader([arrow[0], this.loads + 4], [arrow[0], arrow[1] - 1], 3);
      } else if (slot) {
        const text = forceText(force, point, measures);
        const unit = forceUnit(force, measures);
        const box = this.word(
          force.kind, text, unit, paint(colours, force.hue), wordings(force));
        leaders += leader(...nearest(box, arrow), LEADER_FROM);
      }
    }
    set(this.leaders, { d: leaders || null });
  }

  /** Writes a word in its slot; returns the box that it takes now, or undefined. */
  word(name, value, unit, hue, forms) {
    const slot = this.slots.get(name);
    if (!slot) {
      return undefined;
    }
    const { colours, frame } = this;
    const lines = forms[slot.wording](value);
    let width = 0;
    lines.forEach((line, i) => {
      const last = i === lines.length - 1 ? unit : '';
      const y = slot.y + i * frame.line;
      this.label(name, i).show(slot.x, y, slot.anchor, line, last, hue, colours);
      width = Math.max(width, labelWidth(line, last, colours));
    });
    const x = slot.anchor === 'end' ? slot.x - width : slot.x;
    return { ...slot.box, x, width };
  }

  /** The words of an outcome that is no trim, in the sky over the craft. */
  outcome(point, now, colours) {
    const { frame } = this;
    const [, deck] = this.px(place(now.pose, ...now.craft.deck));
    const most = Math.max(1, Math.floor((deck - 14) / frame.line));
    const words = point.reason ?? point.verdict?.[0] ?? '';
    wrap(words, frame.width - 16, colours, most).forEach((line, i) => {
      this.label('outcome', i).show(
        8, 4 + (i + 0.82) * frame.line, 'start', line, '', colours.ink, colours);
    });
  }

  px([x, y]) {
    return [this.frame.x + x * this.frame.perMetre, this.frame.water - y * this.frame.perMetre];
  }

  label(name, line = 0) {
    const key = name + ' ' + line;
    this.used.add(key);
    if (!this.labels.has(key)) {
      this.labels.set(key, new Label(this.words, name));
    }
    return this.labels.get(key);
  }
}
