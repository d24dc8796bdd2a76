/**
 * Boxes, lines and the craft's poses, in plain numbers. Level axes in metres: x ahead and y above
 * the water, both from the datum (where the mast's axis meets the fuselage's).
 */

const RADIANS = Math.PI / 180;

/**
 * @typedef {Object} Pose
 * @property {number} cos of the deck's pitch
 * @property {number} sin of the deck's pitch
 * @property {number} water height of the waterline above the datum [m]
 * @property {number} degrees pitch, nose up positive
 */

/**
 * How the craft lies at a pitch. Its front wing keeps its depth.
 *
 * @param {Object} craft of the reply, shapes at pitch 0
 * @param {number} degrees nose up positive
 * @param {number} [immersion] of the front wing's root below still water [m]
 * @returns {Pose}
 */
export function pose(craft, degrees, immersion = craft.immersion_m) {
  const cos = Math.cos(degrees * RADIANS);
  const sin = Math.sin(degrees * RADIANS);
  const [x, y] = craft.front_wing_root;
  return { cos, sin, degrees, water: x * sin + y * cos + immersion };
}

/** A place on the craft at pitch 0, as it lies in a pose: ahead, above the water [m]. */
export function place(at, x, y) {
  return [x * at.cos - y * at.sin, x * at.sin + y * at.cos - at.water];
}

/** A force's tail and head in level axes from the water [m]. */
export function arrowEnds(at, force, metresPerNewton) {
  const dx = force.ahead_n * metresPerNewton;
  const dy = force.up_n * metresPerNewton;
  const x = force.x_m;
  const y = force.y_m - at.water;
  return force.towards ? [x - dx, y - dy, x, y] : [x, y, x + dx, y + dy];
}

/** Strength of a force [N]. */
export function strength(force) {
  return Math.hypot(force.ahead_n, force.up_n);
}

/** A box by its left top corner. */
export function box(x, y, width, height) {
  return { x, y, width, height };
}

/** Whether two boxes come closer than so much across and up and down [px]. */
export function overlap(a, b, across = 0, upright = across) {
  return (
    a.x < b.x + b.width + across &&
    b.x < a.x + a.width + across &&
    a.y < b.y + b.height + upright &&
    b.y < a.y + a.height + upright
  );
}

/** How much of a line lies inside a box [px] (clipping by Liang and Barsky, 1984). */
export function inside(line, b) {
  const [x1, y1, x2, y2] = line;
  const right = b.x + b.width;
  const bottom = b.y + b.height;
  if (
    (x1 < b.x && x2 < b.x) || (x1 > right && x2 > right) ||
    (y1 < b.y && y2 < b.y) || (y1 > bottom && y2 > bottom)
  ) {
    return 0;
  }
  const dx = x2 - x1;
  const dy = y2 - y1;
  let enter = 0;
  let leave = 1;
  const cut = (step, gap) => {
    if (step === 0) {
      return gap >= 0;
    }
    if (step < 0) {
      enter = Math.max(enter, gap / step);
    } else {
      leave = Math.min(leave, gap / step);
    }
    return true;
  };
  const met =
    cut(-dx, x1 - b.x) && cut(dx, right - x1) && cut(-dy, y1 - b.y) && cut(dy, bottom - y1);
  return met && leave > enter ? (leave - enter) * Math.hypot(dx, dy) : 0;
}

/**
 * The largest of 1, 2 and 5 times a power of ten that is not above a value.
 *
 * @param {number} value above 0
 */
export function roundBelow(value) {
  const power = 10 ** Math.floor(Math.log10(value) + 1e-9);
  const lead = value / power + 1e-9;
  return power * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1);
}

/** The smallest of 1, 2 and 5 times a power of ten that is not below a value. */
export function roundAbove(value) {
  const power = 10 ** Math.floor(Math.log10(value) + 1e-9);
  const lead = value / power - 1e-9;
  return power * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10);
}
