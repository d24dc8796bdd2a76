import { place } from './geometry.js';
import { add, number, set, show } from './svg.js';

/**
 * The rider of a play: a plain body of the case's own height over feet that stay where they are.
 * Its mass moves against the deck as was computed; how the limbs lie is drawn, not computed.
 *
 * Heights are shares of the stature: of the mass centre as the computation has them (the kernel's
 * postures), of hip, shoulders and head chosen to look like a person with bent knees.
 */

const STANDING = { mass: 0.56, hip: 0.5, shoulder: 0.8, head: 0.92 };
const KNEELING = { mass: 0.36, hip: 0.27, shoulder: 0.57, head: 0.69 };
const PRONE = { mass: 0.06, hip: -0.05, shoulder: 0.25, head: 0.37 };

/** Where the feet of who lies are, behind the mass centre. */
const TOES = -0.52;

const POSTURES = { standing: STANDING, kneeling: KNEELING, prone: PRONE };

/** Half a head, and half a trunk across, over the stature. */
const HEAD = 0.065;
const TRUNK = 0.055;

/** Where a hand is: along the body below the shoulder and out to a side, over the stature. */
const HAND_DOWN = 0.2;
const HAND_OUT = 0.16;

const RADIANS = Math.PI / 180;

/** The steepest lean that is drawn [1], as its sine. */
const MOST_LEAN = 0.985;

/**
 * How the body lies at a moment.
 *
 * @param {Object} craft of the reply
 * @param {Object} pose
 * @param {Object} rider `{height, posture, standsMm}`: stature [m], and the place of the deck that
 *     the body's way is counted from, ahead of the mast [mm]
 * @param {number} bodyAheadMm of the mass centre before that place, level [mm]
 * @returns {{base: number[], mass: number[], ends: number[][], degrees: number}} places in level
 *     axes [m]; `ends` are the outermost ones, `degrees` is the lean to the bow
 */
export function bodyAt(craft, pose, rider, bodyAheadMm) {
  const [dx, dy] = craft.deck;
  const base = place(pose, dx + rider.standsMm / 1000, dy);
  const { mass, head } = POSTURES[rider.posture] ?? STANDING;
  const ahead = bodyAheadMm / 1000;
  const round = HEAD * rider.height;
  const around = ([x, y]) => [[x - round, y - round], [x + round, y + round]];
  if (rider.posture === 'prone') {
    const at = [base[0] + ahead, base[1] + mass * rider.height];
    const along = (share) => [
      at[0] + share * rider.height * pose.cos, at[1] + share * rider.height * pose.sin,
    ];
    return {
      base, mass: at, degrees: 90 - pose.degrees, ends: [...around(along(head)), along(TOES)],
    };
  }
  // The mass centre stays as far from the deck as it was: it falls along an arc.
  const length = mass * rider.height;
  const sin = Math.max(-MOST_LEAN, Math.min(MOST_LEAN, ahead / length));
  const cos = Math.sqrt(1 - sin * sin);
  const along = (share) => [
    base[0] + share * rider.height * sin, base[1] + share * rider.height * cos,
  ];
  return {
    base, mass: along(mass), ends: around(along(head)), degrees: Math.asin(sin) / RADIANS,
  };
}

/** The body's elements. */
export class Rider {
  constructor(parent) {
    this.group = add(parent, 'g', {
      class: 'pic-rider', 'stroke-linecap': 'round', 'stroke-linejoin': 'round' });
    this.back = add(this.group, 'line', { class: 'pic-back-leg', 'stroke-dasharray': '6 5' });
    this.front = add(this.group, 'line', { class: 'pic-front-leg' });
    this.body = add(this.group, 'g');
    this.arms = add(this.body, 'polyline', { fill: 'none' });
    this.trunk = add(this.body, 'line', { x1: 0, x2: 0 });
    this.shirt = add(this.body, 'line', { x1: 0, x2: 0 });
    this.head = add(this.body, 'circle', { cx: 0, 'stroke-width': 1.5 });
    this.mass = add(this.group, 'circle', { class: 'pic-body', r: 4, 'stroke-width': 2 });
  }

  /** Outlines that stay while a play is shown; they lie upright over the place where it stands. */
  plan(rider, frame, colours) {
    const size = rider.height * frame.perMetre;
    const { hip, shoulder, head } = POSTURES[rider.posture] ?? STANDING;
    const limb = { stroke: colours.ink, 'stroke-width': 2 };
    this.hip = hip * rider.height;
    this.lies = rider.posture === 'prone';
    this.toes = TOES * rider.height;
    const hand = -(shoulder - HAND_DOWN) * size;
    const out = HAND_OUT * size;
    set(this.arms, {
      points: `${number(-out)},${number(hand)} 0,${number(-shoulder * size)} `
        + `${number(out)},${number(hand)}`, ...limb });
    const across = 2 * TRUNK * size;
    show(this.arms, !this.lies);
    show(this.back, !this.lies);
    set(this.trunk, {
      y1: -hip * size, y2: -(shoulder - TRUNK / 2) * size, stroke: colours.ink,
      'stroke-width': across });
    set(this.shirt, {
      y1: -hip * size, y2: -(shoulder - TRUNK / 2) * size, stroke: colours.surface,
      'stroke-width': Math.max(1, across - 3) });
    set(this.head, {
      cy: -head * size, r: HEAD * size, fill: colours.surface, stroke: colours.ink });
    set(this.front, { stroke: this.lies ? colours.ink : colours.front, 'stroke-width': colours.line });
    set(this.back, { stroke: colours.back, 'stroke-width': colours.line });
    set(this.mass, { fill: colours.surface, stroke: colours.ink });
  }

  /** Moves the body. */
  draw(craft, pose, body, frame) {
    const px = ([x, y]) => [frame.x + x * frame.perMetre, frame.water - y * frame.perMetre];
    const from = this.lies ? body.mass : body.base;
    const [x, y] = px(from);
    set(this.body, {
      transform: `translate(${number(x)} ${number(y)}) rotate(${body.degrees.toFixed(2)})` });
    const sin = Math.sin(body.degrees * RADIANS);
    const cos = Math.cos(body.degrees * RADIANS);
    const along = (metres) => [from[0] + metres * sin, from[1] + metres * cos];
    const [hx, hy] = px(along(this.hip));
    for (const [leg, foot] of [[this.front, craft.front_foot], [this.back, craft.back_foot]]) {
      const [fx, fy] = px(this.lies ? along(this.toes) : place(pose, ...foot));
      set(leg, { x1: hx, y1: hy, x2: fx, y2: fy });
    }
    const [mx, my] = px(body.mass);
    set(this.mass, { cx: mx, cy: my });
  }
}
