import { place } from './geometry.js';
import { labelWidth } from './svg.js';

/** The kilograms over the feet: the front's run forward from the foot, the back's aft. */

/** How far a foot's words reach over the foot to the other side [px]. */
export const FOOT_LAP = 8;

/** Longest number that there is room for. */
const LONGEST = '888';

/** What a foot's load says, with its name or without. */
export function footWording(force, named) {
  const side = force.kind.startsWith('front') ? 'front' : 'back';
  return named ? (v) => `${side} ${v}` : (v) => v;
}

/**
 * The room that they take along the whole curve, which no other word may.
 *
 * @param {Object[]} shown scenes
 * @param {Object} frame
 * @param {number} loads their base line [px]
 * @returns {{named: boolean, boxes: Object[]}} whether there is room for their names
 */
export function footRoom(shown, frame, loads, measures, colours) {
  const front = [];
  const back = [];
  for (const { craft, pose } of shown) {
    front.push(frame.x + place(pose, ...craft.front_foot)[0] * frame.perMetre);
    back.push(frame.x + place(pose, ...craft.back_foot)[0] * frame.perMetre);
  }
  const unit = measures.symbol('kg');
  const room = (side, named) => labelWidth((named ? side + ' ' : '') + LONGEST, unit, colours);
  const right = (named) => Math.max(...front) - FOOT_LAP + room('front', named);
  const left = (named) => Math.min(...back) + FOOT_LAP - room('back', named);
  const named = right(true) <= frame.width - 4 && left(true) >= 4;
  const y = loads - 0.79 * frame.line;
  const from = left(named);
  const start = Math.min(...front) - FOOT_LAP;
  return {
    named,
    boxes: [
      { x: from, y, width: Math.max(...back) + FOOT_LAP - from, height: frame.line },
      { x: start, y, width: right(named) - start, height: frame.line },
    ],
  };
}
