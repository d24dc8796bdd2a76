import { Label, add, number, points, root, set } from './svg.js';
import { watchSize, whenAtRest } from './watch.js';

/**
 * The craft from the front in a turn to the right of the picture: waterline and the chop's troughs,
 * board, mast and front wing to scale, banked. The higher tip lies as deep as was computed.
 */

const FALLBACK_HEIGHT = 240;
const RADIANS = Math.PI / 180;
const EDGE = 8;
const LINE = 1.22;

/** How far under a tip the picture goes on, and over the deck at no bank [mm]. */
const BELOW = 120;
const ABOVE = 120;

/**
 * The picture in a host element.
 *
 * @param {HTMLElement} host
 * @returns {{svg: SVGElement, draw: function(Object): void}} `draw` takes `{turns, index, colours,
 *     words}`
 */
export function createTurnView(host) {
  const view = new TurnView(host);
  const size = watchSize(host, FALLBACK_HEIGHT, () => view.redraw());
  view.size = size;
  return {
    svg: view.svg,
    draw(state) {
      view.state = state;
      view.draw(state);
    },
  };
}

class TurnView {
  constructor(host) {
    const { svg, title, description } = root(host, 'turn');
    this.svg = svg;
    this.surface = add(svg, 'rect', { x: 0, y: 0, class: 'pic-surface' });
    this.water = add(svg, 'rect', { x: 0, 'fill-opacity': 0.12, class: 'pic-water' });
    this.waterline = add(svg, 'line', { x1: 0, class: 'pic-waterline' });
    this.trough = add(svg, 'line', {
      x1: 0, class: 'pic-trough', 'stroke-width': 1.5, 'stroke-dasharray': '6 4' });
    this.board = add(svg, 'polygon', { class: 'pic-board', 'stroke-linejoin': 'round' });
    this.mast = add(svg, 'line', { class: 'pic-mast' });
    this.wing = add(svg, 'polyline', {
      class: 'pic-wing', fill: 'none', 'stroke-linecap': 'round', 'stroke-linejoin': 'round' });
    this.depth = add(svg, 'line', { class: 'pic-depth', 'stroke-width': 1.5 });
    this.tip = add(svg, 'circle', { class: 'pic-tip', r: 5, 'stroke-width': 2 });
    this.labels = ['water', 'bank'].map((kind) => new Label(svg, kind));
    this.rest = whenAtRest(title, description);
  }

  redraw() {
    if (this.state) {
      this.draw(this.state);
    }
  }

  draw({ turns, index, colours, words }) {
    const { width, height } = this.size;
    const { craft } = turns;
    const turn = turns.banks[index];
    const frame = frameOf(turns, width, height);
    const { perMm, water } = frame;
    // Right banked: the inside, and the lower end of the wing, lie to the right.
    const sin = Math.sin(turn.bank_deg * RADIANS);
    const cos = Math.cos(turn.bank_deg * RADIANS);
    const depth = axisDepth(turn, craft);
    const at = (out, up) => [
      frame.x + perMm * (out * cos + up * sin),
      water + perMm * (depth - up * cos + out * sin),
    ];
    set(this.svg, {
      width, height, viewBox: `0 0 ${width} ${height}`,
      'font-family': colours.font, 'font-size': colours.size, 'data-bank': turn.bank_deg,
    });
    set(this.surface, { width, height, fill: colours.surface });
    set(this.water, { y: water, width, height: Math.max(0, height - water), fill: colours.edge });
    set(this.waterline, {
      y1: water, x2: width, y2: water, stroke: colours.edge, 'stroke-width': colours.line });
    const trough = water + 0.5 * turns.chop_mm * perMm;
    set(this.trough, {
      y1: trough, x2: width, y2: trough, stroke: colours.edge,
      display: turns.chop_mm > 0 ? null : 'none' });
    const half = craft.board_width_mm / 2;
    const bottom = craft.mast_mm;
    const deck = bottom + craft.board_thickness_mm;
    set(this.board, {
      points: points([
        ...at(-half, deck), ...at(half, deck), ...at(0.8 * half, bottom), ...at(-0.8 * half, bottom),
      ]),
      fill: colours.surface, stroke: colours.ink, 'stroke-width': 1.5 });
    const [mx1, my1] = at(0, 0);
    const [mx2, my2] = at(0, bottom);
    set(this.mast, { x1: mx1, y1: my1, x2: mx2, y2: my2, stroke: colours.ink, 'stroke-width': 4 });
    set(this.wing, {
      points: points(wingPoints(craft).flatMap(([out, up]) => at(out, up))),
      stroke: colours.front, 'stroke-width': colours.line + 1.5 });
    this.say({ turn, turns, colours, frame, tip: at(...higherTip(craft)) });
    this.rest(() => [`The craft from the front, ${words}`, '']);
  }

  /** The higher tip under the waterline, and the few words for which there is room everywhere. */
  say({ turn, turns, colours, frame, tip: [x, y] }) {
    const { water } = frame;
    const isOut = turn.tip_depth_mm < 0.5 * turns.chop_mm + 0.5;
    set(this.depth, { x1: x, y1: water, x2: x, y2: y, stroke: colours.ink });
    set(this.tip, { cx: x, cy: y, fill: isOut ? colours.ink : colours.surface,
      stroke: colours.ink });
    const [waterWord, bankWord] = this.labels;
    waterWord.show(6, water - 6, 'start', 'waterline', '', colours.muted, colours);
    bankWord.show(
      6, 1.1 * LINE * colours.size, 'start', `bank ${number(Math.round(turn.bank_deg))}°`, '',
      colours.ink, colours);
  }
}

/** Depth of the fuselage's axis below still water in a turn, from its higher tip's [mm]. */
function axisDepth(turn, craft) {
  const [out, up] = higherTip(craft);
  const sin = Math.sin(turn.bank_deg * RADIANS);
  const cos = Math.cos(turn.bank_deg * RADIANS);
  return turn.tip_depth_mm + up * cos - out * sin;
}

/** The outer end of the wing that rises, out to the left negative [mm]. */
function higherTip(craft) {
  const last = craft.wing_out_mm.length - 1;
  return [-craft.wing_out_mm[last], craft.wing_up_mm[last]];
}

/** The whole wing from the left to the right [mm]. */
function wingPoints(craft) {
  const right = craft.wing_out_mm.map((out, i) => [out, craft.wing_up_mm[i]]);
  const left = right.slice(1).map(([out, up]) => [-out, up]).reverse();
  return [...left, ...right];
}

/** One scale for all banks, so that the picture does not breathe while the bank changes. */
function frameOf(turns, width, height) {
  const { craft, banks } = turns;
  const deck = craft.mast_mm + craft.board_thickness_mm;
  const half = craft.board_width_mm / 2;
  const [out] = higherTip(craft);
  let top = 0;
  let bottom = 0;
  let left = 0;
  let right = 0;
  for (const turn of banks) {
    const sin = Math.sin(turn.bank_deg * RADIANS);
    const cos = Math.cos(turn.bank_deg * RADIANS);
    const depth = axisDepth(turn, craft);
    top = Math.max(top, deck * cos + half * sin - depth);
    bottom = Math.max(bottom, depth - out * sin);
    left = Math.min(left, out * cos, -half * cos);
    right = Math.max(right, deck * sin + half * cos);
  }
  const perMm = Math.min(
    (height - 2 * EDGE) / (top + bottom + ABOVE + BELOW), (width - 2 * EDGE) / (right - left));
  return {
    perMm,
    water: EDGE + perMm * (top + ABOVE),
    x: (width - perMm * (right + left)) / 2,
  };
}
