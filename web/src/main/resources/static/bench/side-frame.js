import { arrowEnds, place, pose, strength } from './geometry.js';

/**
 * Which part of the world the side view shows, and how large. The frame has room for the craft and
 * its forces at every speed of the curve, so that it stays put while the speed moves; and it is
 * kept while other settings move, as long as everything fits and no room is wasted.
 */

/** Length of an arrow as strong as the whole weight, over the deck's height above the fuselage. */
const WEIGHT_ARROW = 0.66;

/** The same of the strongest force of the curve, at most. */
const STRONGEST_ARROW = 0.85;

/** How far the arrows' scale may lie from its best before it is chosen anew. */
const ARROWS_KEPT = [0.72, 1.25];

/** How much smaller than could be the picture may be before it is chosen anew. */
const SIZE_KEPT = 0.84;

/** Room that a new frame leaves for what a slider may still change. */
const SPARE = 0.97;

const SIDE = 8;
const EDGE = 5;

/**
 * @typedef {Object} Frame
 * @property {number} width [px]
 * @property {number} height [px]
 * @property {number} perMetre pixels per metre
 * @property {number} metresPerNewton length of a newton's arrow
 * @property {number} x where the datum lies across [px]
 * @property {number} water height of the waterline from the top [px]
 * @property {number} loads base line of the feet's kilograms when the frame was chosen [px]
 */

/**
 * Everything that must be seen: poses of the reply with their forces, and of the reference.
 *
 * @param {Object} reply
 * @param {?Object} reference another reply
 * @returns {{craft: Object, pose: Object, forces: Object[]}[]}
 */
export function scenes(reply, reference) {
  const all = [{ craft: reply.craft, pose: pose(reply.craft, 0), forces: [] }];
  for (const shown of reference ? [reply, reference] : [reply]) {
    for (const point of shown.points) {
      if (point.pitch_deg !== null) {
        all.push(scene(shown, point));
      }
    }
  }
  return all;
}

/** The craft and its forces at one point of a reply. */
export function scene(reply, point) {
  return {
    craft: reply.craft,
    pose: pose(reply.craft, point.pitch_deg),
    forces: point.forces ?? [],
  };
}

/**
 * The frame for these scenes: the one that stands, where it still serves, and the base line of the
 * feet's kilograms, which lies above the longest load of the whole curve.
 *
 * @param {?Frame} standing
 * @param {Object[]} shown from {@link scenes}
 * @param {number} width [px]
 * @param {number} height [px]
 * @param {number} line height of a line of text [px]
 * @returns {{frame: Frame, loads: number}} the very same frame as `standing` where it serves
 */
export function frameFor(standing, shown, width, height, line) {
  const same =
    standing && standing.width === width && standing.height === height && standing.line === line;
  const craft = shown[0].craft;
  const best = arrowScale(craft, shown);
  const ratio = same ? standing.metresPerNewton / best : 0;
  const kept = ratio > ARROWS_KEPT[0] && ratio < ARROWS_KEPT[1];
  const metresPerNewton = kept ? standing.metresPerNewton : best;
  const extent = extentOf(shown, metresPerNewton);
  const fitting = fit(extent, width, height, line);
  if (kept && fits(standing, extent) && standing.perMetre > SIZE_KEPT * fitting.perMetre) {
    return { frame: standing, loads: loadsLine(standing, extent) };
  }
  const perMetre = fitting.perMetre * SPARE;
  const wide = (extent.right - extent.left) * perMetre;
  const above = fitting.above(perMetre);
  const high = above - extent.bottom * perMetre + fitting.below;
  const frame = {
    width, height, line, perMetre, metresPerNewton,
    x: (width - wide) / 2 - extent.left * perMetre,
    water: (height - high) / 2 + above,
    loads: Infinity,
  };
  frame.loads = loadsLine(frame, extent);
  return { frame, loads: frame.loads };
}

/** Stays where it was when the frame was chosen, unless a load has grown beyond it. */
function loadsLine(frame, extent) {
  return Math.min(frame.loads, frame.water - extent.loads * frame.perMetre - EDGE);
}

function arrowScale(craft, shown) {
  let most = 1;
  let weight = 1;
  for (const { forces } of shown) {
    let down = 0;
    for (const force of forces) {
      most = Math.max(most, strength(force));
      down += force.towards || force.kind === 'gear-weight' ? -force.up_n : 0;
    }
    weight = Math.max(weight, down);
  }
  const [x, y] = craft.deck;
  return Math.hypot(x, y) * Math.min(WEIGHT_ARROW / weight, STRONGEST_ARROW / most);
}

/** Outermost places of all scenes, from the water [m]; `loads` is the top of the feet's arrows. */
function extentOf(shown, metresPerNewton) {
  const extent = { left: 0, right: 0, bottom: 0, top: 0, loads: 0 };
  const widen = (x, y) => {
    extent.left = Math.min(extent.left, x);
    extent.right = Math.max(extent.right, x);
    extent.bottom = Math.min(extent.bottom, y);
    extent.top = Math.max(extent.top, y);
  };
  for (const { craft, pose: at, forces } of shown) {
    for (const { points } of craft.shapes) {
      for (let i = 0; i < points.length; i += 2) {
        const [x, y] = place(at, points[i], points[i + 1]);
        widen(x, y);
      }
    }
    for (const force of forces) {
      const [x1, y1, x2, y2] = arrowEnds(at, force, metresPerNewton);
      widen(x1, y1);
      widen(x2, y2);
      if (force.towards) {
        extent.loads = Math.max(extent.loads, y1);
      }
    }
  }
  return extent;
}

/** The largest scale at which an extent fits, with a line for the loads above and a strip below. */
function fit(extent, width, height, line) {
  const narrow = width < 2 * height;
  const below = narrow ? line + EDGE : EDGE + 4;
  const loads = line + 2 * EDGE;
  const deep = -extent.bottom;
  const perMetre = Math.min(
    (width - 2 * SIDE) / (extent.right - extent.left),
    (height - loads - below) / (extent.loads + deep),
    (height - EDGE - below) / (extent.top + deep),
  );
  return {
    perMetre,
    below,
    above: (scale) => Math.max(extent.loads * scale + loads, extent.top * scale + EDGE),
  };
}

function fits(frame, extent) {
  const { perMetre, x, water, width, height, line } = frame;
  return (
    x + extent.left * perMetre >= EDGE - 2 &&
    x + extent.right * perMetre <= width - EDGE + 2 &&
    water - extent.bottom * perMetre <= height - EDGE &&
    water - extent.top * perMetre >= 2 &&
    water - extent.loads * perMetre >= line + EDGE
  );
}
