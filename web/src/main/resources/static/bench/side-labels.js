import { arrowEnds, place, pose, strength } from './geometry.js';
import { nose } from './measures.js';
import { scales } from './side-scales.js';

/**
 * The side view's words: what each says, and where it would like to stand. Wordings take the
 * number as text; for choosing a place they are asked with the longest one.
 */

/** Room between the craft and a column of words [px]. */
const CLEAR = 12;

const EDGE = 8;

/** Room for the sign before the words of the foot-pressure centre [px]. */
export const GLYPH = 17;

/** Longest numbers that a place has room for. */
const LONGEST = { n: '8888', kg: '888', mm: '\u2212888', nose: '88.8° nose-down' };

const LIFTS = { 'front-wing-lift': 'front wing', 'stabilizer-lift': 'stabilizer' };

/** What a force's label says, fullest first, each a list of lines; the unit follows the last. */
const FORCE_WORDINGS = {
  lift: (name, way) => [(v) => [`${name} ${way} ${v}`], (v) => [name, `${way} ${v}`]],
  plain: (name) => [(v) => [`${name} ${v}`]],
  gear: () => [(v) => [`weight of gear ${v}`], (v) => [`gear ${v}`]],
};

export const PITCH_WORDINGS = [
  (v) => [`deck ${v}`], (v) => [v === 'level' ? 'deck level' : v],
];
export const CENTRE_WORDINGS = [
  (v) => [`pressure centre ${v}`], (v) => [`centre ${v}`], (v) => [v],
];

/** A force's size as shown: kilograms on the feet, else newtons. */
export function forceText(force, point, measures) {
  if (force.shown === 'kg') {
    const key = force.kind.startsWith('front') ? 'front_leg_kg' : 'back_leg_kg';
    return measures.text(point[key], 'kg', 0);
  }
  return measures.text(strength(force), 'N', 0);
}

/** Symbol of a force's unit as shown. */
export function forceUnit(force, measures) {
  return measures.symbol(force.shown === 'kg' ? 'kg' : 'N');
}

/** The wordings of a force. */
export function wordings(force) {
  if (LIFTS[force.kind]) {
    return FORCE_WORDINGS.lift(LIFTS[force.kind], force.up_n < 0 ? 'down' : 'up');
  }
  if (force.kind === 'gear-weight') {
    return FORCE_WORDINGS.gear();
  }
  return FORCE_WORDINGS.plain(force.kind === 'thrust' && isPull(force) ? 'pull' : force.kind);
}

/** Whether a thrust is a pull at a handle, well above the deck. */
function isPull(force) {
  return force.name === 'pull';
}

/**
 * The words that want a place, the most important first.
 *
 * @param {Object[]} shown scenes of the whole curve
 * @param {Object} frame
 * @param {Object} measures
 * @param {Object} colours
 */
export function wantedWords(shown, frame, measures, colours) {
  const all = [];
  const craft = shown[0].craft;
  const { width, height, line, water } = frame;
  const px = (x, y) => [frame.x + x * frame.perMetre, water - y * frame.perMetre];
  const level = pose(craft, 0);
  const columns = sides(shown, frame);
  const scale = scales(frame, measures, colours);
  all.push({
    name: 'scales', size: [scale.width, line + 5],
    starts: [
      { side: 'left', from: [width - EDGE, height - line / 2 - 5] },
      { side: 'right', from: [EDGE, height - line / 2 - 5], cost: 25 },
    ],
  });
  all.push(text('pitch', PITCH_WORDINGS, LONGEST.nose, '', [
    { side: 'right', from: [EDGE, line / 2 + 5] },
    { side: 'left', from: [width - EDGE, line / 2 + 5], cost: 20 },
  ]));
  const sample = sampleForces(shown);
  const wing = sample.get('front-wing-lift');
  if (wing) {
    const [, root] = px(...place(level, ...craft.front_wing_root));
    const from = [columns.right, 0.4 * root + 0.6 * water];
    all.push(forceWords(wing, [{ side: 'right', from }]));
  }
  const thrust = sample.get('thrust');
  if (thrust) {
    const [x, y] = farthest(shown, frame, 'thrust');
    const high = y < water - frame.perMetre;
    all.push(forceWords(thrust, [
      { side: 'right', from: [high ? x + CLEAR : Math.max(columns.right, x + CLEAR), y] },
    ]));
  }
  const stabilizer = sample.get('stabilizer-lift');
  if (stabilizer) {
    const [x, y] = stern(craft, level, px);
    all.push(forceWords(stabilizer, [
      { side: 'left', from: [x - CLEAR, y] },
      { side: 'left', from: [columns.left, y - line], cost: 12 },
      { side: 'right', from: [EDGE, height - line / 2 - 4], cost: 15 },
    ]));
  }
  const drag = sample.get('drag');
  if (drag) {
    const [, y] = farthest(shown, frame, 'drag');
    all.push(forceWords(drag, [{ side: 'left', from: [columns.left, y] }]));
  }
  const gear = sample.get('gear-weight');
  if (gear) {
    const [, y] = farthest(shown, frame, 'gear-weight');
    all.push({ ...forceWords(gear, [
      { side: 'right', from: [columns.right, y] },
      { side: 'left', from: [columns.left, y], cost: 20 },
    ]), spare: true });
  }
  all.push({ ...text('centre', CENTRE_WORDINGS, LONGEST.mm, measures.symbol('mm'), [
    { side: 'left', from: [width - EDGE, line / 2 + 5] },
    { side: 'right', from: [EDGE + GLYPH, 1.5 * line + 9] },
  ]), before: GLYPH, reach: 40, spare: true });
  all.push({ ...text('water', [() => ['waterline'], () => ['water']], '', '', [
    { side: 'left', from: [width - EDGE, water + line / 2 + 3] },
    { side: 'right', from: [EDGE, water + line / 2 + 3], cost: 5 },
    { side: 'left', from: [width - EDGE, water - line / 2 - 3], cost: 10 },
  ]), reach: 12, spare: true });
  return all;

  function text(name, forms, longest, unit, starts) {
    return { name, unit, starts, wordings: forms.map((form) => form(longest)) };
  }

  function forceWords(force, starts) {
    const unit = forceUnit(force, measures);
    return text(force.kind, wordings({ ...force, up_n: -1 }), LONGEST.n, unit, starts);
  }
}

/** One force of each kind. */
function sampleForces(shown) {
  const sample = new Map();
  for (const { forces } of shown) {
    for (const force of forces) {
      sample.set(force.kind, force);
    }
  }
  return sample;
}

/** Where columns of words may begin beside what lies under water and its arrows [px]. */
function sides(shown, frame) {
  let left = 0;
  let right = 0;
  const level = shown[0];
  for (const { kind, points } of level.craft.shapes) {
    if (kind === 'front-wing' || kind === 'drive' || kind === 'mast') {
      for (let i = 0; i < points.length; i += 2) {
        right = Math.max(right, points[i]);
        left = kind === 'mast' ? Math.min(left, points[i]) : left;
      }
    }
  }
  for (const { forces, pose: at } of shown) {
    for (const force of forces) {
      const [, , x, y] = arrowEnds(at, force, frame.metresPerNewton);
      if (y < 0.2 && (force.kind === 'thrust' || force.kind === 'drag')) {
        right = Math.max(right, x);
        left = Math.min(left, x);
      }
    }
  }
  return {
    left: frame.x + left * frame.perMetre - CLEAR,
    right: frame.x + right * frame.perMetre + CLEAR,
  };
}

/** The outermost head of a force along the curve [px]. */
function farthest(shown, frame, kind) {
  let found = [frame.x, frame.water];
  let most = -1;
  for (const { forces, pose: at } of shown) {
    const force = forces.find((f) => f.kind === kind);
    const ends = force && arrowEnds(at, force, frame.metresPerNewton);
    if (ends && Math.abs(ends[2]) > most) {
      most = Math.abs(ends[2]);
      found = [frame.x + ends[2] * frame.perMetre, frame.water - ends[3] * frame.perMetre];
    }
  }
  return found;
}

/** The stabilizer's trailing edge [px]. */
function stern(craft, level, px) {
  const { points } = craft.shapes.find((shape) => shape.kind === 'stabilizer');
  let last = [Infinity, 0];
  for (let i = 0; i < points.length; i += 2) {
    if (points[i] < last[0]) {
      last = [points[i], points[i + 1]];
    }
  }
  return px(...place(level, ...last));
}

/** What stands under a picture that is saved; `more` says what else is in it, may be empty. */
export function caption(reply, speed, more) {
  return `${reply.name}, ${speed}` + (more === '' ? '' : `; ${more}`);
}

/** What the picture shows, in sentences. */
export function describe(point, reply, measures) {
  const at = measures.withUnit(point.speed_kmh, 'km/h', 0);
  if (point.pitch_deg === null) {
    return `The craft with its deck level. At ${at} there is no trim. ${point.reason ?? ''}`.trim();
  }
  const words = (point.forces ?? [])
    .filter((force) => force.shown !== 'kg')
    .map((force) => wordings(force)[0](forceText(force, point, measures)).join(' ') + ' ' +
      forceUnit(force, measures));
  const kg = (key) => measures.withUnit(point[key], 'kg', 0);
  const centre = measures.withUnit(point.foot_pressure_ahead_of_mast_mm, 'mm');
  const deep = measures.withUnit(1000 * reply.craft.immersion_m, 'mm');
  return (
    `At ${at} the deck rides ${nose(point.pitch_deg)}. Front foot ${kg('front_leg_kg')}, ` +
    `back foot ${kg('back_leg_kg')}, pressure centre ${centre} ahead of the mast. ` +
    `Forces: ${words.join(', ')}. The front wing runs ${deep} deep.`
  );
}
