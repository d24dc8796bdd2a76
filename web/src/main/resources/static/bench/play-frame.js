import { place, pose } from './geometry.js';
import { bodyAt } from './play-rider.js';

/**
 * Which part of the world a play's picture shows, and how large: room for craft and rider at every
 * moment, so that the picture stands while they move.
 */

const EDGE = 6;

/** Room below the deepest part, and at the sides [m]. */
const BELOW = 0.3;
const BESIDE = 0.12;

/**
 * @param {Object} play
 * @param {Object} craft of the reply
 * @param {Object} rider as `bodyAt` takes it
 * @param {{width: number, height: number}} size [px]
 * @returns {{width: number, height: number, perMetre: number, x: number, water: number}} pixels
 *     per metre; where the datum lies across and the waterline lies down [px]
 */
export function playFrame(play, craft, rider, { width, height }) {
  const corners = cornersOf(craft);
  let [left, right, bottom, top] = [0, 0, 0, 0];
  const widen = ([x, y]) => {
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  };
  const pitches = play.each('deck_pitch_deg');
  const depths = play.each('immersion_mm');
  const bodies = play.each('body_ahead_mm');
  pitches.forEach((pitch, i) => {
    const now = pose(craft, pitch, depths[i] / 1000);
    corners.forEach(([x, y]) => widen(place(now, x, y)));
    bodyAt(craft, now, rider, bodies[i]).ends.forEach(widen);
  });
  left -= BESIDE;
  right += BESIDE;
  bottom -= BELOW;
  const perMetre = Math.min(
    (width - 2 * EDGE) / (right - left), (height - 2 * EDGE) / (top - bottom));
  return {
    width, height, perMetre,
    x: (width - perMetre * (right + left)) / 2,
    water: EDGE + perMetre * top,
  };
}

/**
 * Where the board ends, ahead of the mast as foot pressure is counted [mm]. Farther out no foot can
 * press, whatever would be needed.
 */
export function boardEnds(craft) {
  const { points } = craft.shapes.find(({ kind }) => kind === 'board');
  const xs = points.filter((_, i) => i % 2 === 0);
  return [Math.min(...xs), Math.max(...xs)].map((x) => 1000 * (x - craft.deck[0]));
}

/** Corners of boxes around the craft's parts [m]. */
function cornersOf(craft) {
  return craft.shapes.flatMap(({ points }) => {
    const xs = points.filter((_, i) => i % 2 === 0);
    const ys = points.filter((_, i) => i % 2 === 1);
    const [x1, x2] = [Math.min(...xs), Math.max(...xs)];
    const [y1, y2] = [Math.min(...ys), Math.max(...ys)];
    return [[x1, y1], [x1, y2], [x2, y1], [x2, y2]];
  });
}
