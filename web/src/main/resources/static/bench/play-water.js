import { Label, add, number, set, show } from './svg.js';

/**
 * The water of a play: still water as a level line at one height, chop as waves that the craft
 * rides through, and marks at the lower edge that the water carries past.
 */

const GRAVITY = 9.80665;
const RADIANS = Math.PI / 180;

/** From one point of a wave's line to the next, and length of a mark [px]. */
const STEP = 6;
const MARK = 7;

/** From mark to mark along the water, by the measures [m], and how that is said. */
const MARKS = {
  metric: { apart: 1, words: 'a mark every metre' },
  imperial: { apart: 0.9144, words: 'a mark every 3 feet' },
};

/**
 * The water's height over still water.
 *
 * Each component runs as waves do in deep water (omega² = g k): against the craft, or along with it
 * where its length is negative.
 *
 * @param {Object[]} waves `{k, omega, half, phase}`, made by {@link componentsOf}
 * @param {number} place along the water, ahead of where the mast was at first [m]
 * @param {number} s moment [s]
 * @returns {number} [m]
 */
export function waterAt(waves, place, s) {
  let sum = 0;
  for (const { k, omega, half, phase } of waves) {
    sum += half * Math.cos(k * place + omega * s + phase);
  }
  return sum;
}

/** An answer's components in SI; none in still water. */
export function componentsOf(waves) {
  return (waves?.components ?? []).map((one) => {
    const k = (2 * Math.PI * 1000) / one.length_mm;
    return {
      k, omega: Math.sqrt(GRAVITY * Math.abs(k)),
      half: one.height_mm / 2000, phase: one.phase_deg * RADIANS,
    };
  });
}

export class Water {
  constructor(parent) {
    this.fill = add(parent, 'path', { 'fill-opacity': 0.12, class: 'pic-water' });
    this.still = add(parent, 'line', { x1: 0, class: 'pic-waterline' });
    this.line = add(parent, 'path', { fill: 'none', class: 'pic-waves' });
    this.marks = add(parent, 'path', { fill: 'none', class: 'pic-metres', 'stroke-width': 1.5 });
    this.word = new Label(parent, 'metres');
  }

  /** All that stands while a play is shown. */
  plan(waves, frame, measures, colours) {
    this.waves = componentsOf(waves);
    this.frame = frame;
    const { width, height, water, perMetre } = frame;
    const wavy = this.waves.length > 0;
    set(this.fill, { fill: colours.edge, d: `M0 ${number(water)}H${width}V${height}H0Z` });
    set(this.still, {
      y1: water, x2: width, y2: water, stroke: colours.edge,
      'stroke-width': wavy ? 1 : colours.line, 'stroke-dasharray': wavy ? '6 4' : null });
    show(this.line, wavy);
    set(this.line, { stroke: colours.edge, 'stroke-width': colours.line });
    const { apart, words } = MARKS[measures.system];
    this.apart = apart;
    set(this.marks, { stroke: colours.muted });
    this.word.show(width - 6, height - MARK - 4, 'end', words, '', colours.muted, colours);
  }

  /** Moves the water past the craft. */
  draw(moment) {
    const { frame } = this;
    // Whole steps from the place where the play began; none outside, which a file would show.
    const step = this.apart * frame.perMetre;
    const first = frame.x - moment.travelled * frame.perMetre;
    let marks = '';
    for (let x = first - step * Math.floor(first / step); x < frame.width; x += step) {
      marks += `M${number(x)} ${number(frame.height)}v${-MARK}`;
    }
    set(this.marks, { d: marks });
    if (this.waves.length > 0) {
      let line = '';
      for (let i = 0; i < frame.width + STEP; i += STEP) {
        const x = Math.min(i, frame.width);
        const place = (x - frame.x) / frame.perMetre + moment.travelled;
        const y = frame.water - frame.perMetre * waterAt(this.waves, place, moment.s);
        line += `${line === '' ? 'M' : 'L'}${x} ${number(y)}`;
      }
      set(this.line, { d: line });
      set(this.fill, { d: `${line}V${frame.height}H0Z` });
    }
  }
}
