import { arrowEnds, box, inside, overlap, place } from './geometry.js';
import { labelWidth } from './svg.js';

/**
 * Places for the side view's words. A place is chosen for the whole curve at once, with room for
 * the longest number, so that no word moves while the speed does; it is chosen anew only when the
 * frame is, or when what moves below has made the old place a bad one.
 */

/** Room between two words beside each other, and between a word and the frame [px]. */
const APART = 4;

/** Room between two words above each other, beyond their lines' own [px]. */
const ABOVE = 1;

/** How many poses along the curve are looked at for what a word would cover. */
const LOOKED_AT = 9;

/** Cost of one pixel of a covered line, in pixels of distance. */
const COVERED = 3;

/** How much worse than at first a place may become before another is looked for. */
const PATIENCE = 45;

/** Cost of giving up the fuller wording, and of lying across the waterline. */
const SHORTER = 35;

const CROSSING = 40;

/** Shifts that are tried [px]. */
const ACROSS = [0, 10, 22, 40, 64, 96, 140, 190, 250];

const FARTHEST = 140;
const STEP = 6;

/** From the top of a line of text to its base line, over the line's height. */
const BASE = 0.79;

/** Cost of what it covers above which a word that can be spared is left out. */
const SPARED = 48;

/** Parts that a word had better not cover. */
const PARTS = ['board', 'mast', 'fuselage', 'drive', 'front-wing', 'stabilizer', 'propeller'];

/** Every how many points of a section's outline are enough to know what it covers. */
const STRIDE = { 'front-wing': 12, stabilizer: 12, fuselage: 3, drive: 3 };

/**
 * @typedef {Object} Wanted
 * @property {string} name
 * @property {string[][]} wordings lines of text with room for the longest number; fullest first
 * @property {string} unit behind the last line
 * @property {{side: string, from: number[], cost: number}[]} starts places it would like, with
 *     the edge of the text that lies there ('right': it runs to the right from there)
 * @property {number[]} [size] width and height of what is no text [px]
 * @property {number} [before] room for a sign before the text [px]
 * @property {number} [reach] how far it may stand from where it would like to [px]
 * @property {boolean} [spare] whether it may be left out
 */

/**
 * @typedef {Object} Slot
 * @property {number} x where the text starts, ends or is centred [px]
 * @property {number} y base line of the first line [px]
 * @property {string} anchor
 * @property {number} wording which of the wordings
 * @property {Object} box the room it takes
 * @property {number} cost when it was chosen
 */

/**
 * Lines that words had better not cover, over the whole curve.
 *
 * @param {Object[]} shown scenes
 * @param {Object} frame
 * @param {number} loads base line of the feet's kilograms [px]
 * @returns {number[][][]} for each of a few poses its lines
 */
export function obstacles(shown, frame, loads) {
  const step = Math.max(1, Math.ceil((shown.length - 1) / LOOKED_AT));
  const all = [];
  for (let i = 0; i < shown.length; i += step) {
    all.push(linesOf(shown[i], frame, loads));
  }
  all.push(linesOf(shown[shown.length - 1], frame, loads));
  return all;
}

function linesOf({ craft, pose, forces }, frame, loads) {
  const lines = [];
  const at = (x, y) => [frame.x + x * frame.perMetre, frame.water - y * frame.perMetre];
  for (const { kind, points } of craft.shapes) {
    if (!PARTS.includes(kind)) {
      continue;
    }
    const stride = 2 * (STRIDE[kind] ?? 1);
    let last = at(...place(pose, points[points.length - 2], points[points.length - 1]));
    for (let i = 0; i < points.length; i += stride) {
      const next = at(...place(pose, points[i], points[i + 1]));
      lines.push([...last, ...next]);
      last = next;
    }
  }
  for (const force of forces) {
    const [x1, y1, x2, y2] = arrowEnds(pose, force, frame.metresPerNewton);
    const tail = at(x1, y1);
    lines.push([tail[0], force.towards ? loads : tail[1], ...at(x2, y2)]);
  }
  return lines;
}

/**
 * Chooses a place for each word, the most important first.
 *
 * @param {Wanted[]} wanted
 * @param {Object[]} taken boxes that no word may touch
 * @param {number[][][]} lines from {@link obstacles}
 * @param {Object} frame
 * @param {Object} colours
 * @returns {Map<string, Slot>} without the words that were left out
 */
export function chooseSlots(wanted, taken, lines, frame, colours) {
  const slots = new Map();
  const boxes = [...taken];
  for (const want of wanted) {
    const slot = bestSlot(want, boxes, lines, frame, colours);
    if (slot) {
      slots.set(want.name, slot);
      boxes.push(slot.box);
    }
  }
  return slots;
}

function bestSlot(want, boxes, lines, frame, colours) {
  let best = null;
  const count = want.size ? 1 : want.wordings.length;
  for (let w = 0; w < count; w++) {
    const size = want.size ?? sizeOf(want.wordings[w], want.unit, frame, colours);
    want.starts.forEach((start, s) => {
      for (const [dx, dy] of steps(start.side)) {
        const away = (start.cost ?? 0) + 0.8 * Math.abs(dx) + Math.abs(dy) + w * SHORTER;
        const far = Math.max(Math.abs(dx), Math.abs(dy)) > (want.reach ?? FARTHEST);
        if (far || (best && away >= best.cost)) {
          continue;
        }
        const slot = slotAt(start, size, want.before ?? 0, dx, dy, frame);
        if (!isFree(slot.box, boxes, frame)) {
          continue;
        }
        slot.cost = away + covered(slot.box, lines, frame);
        if (!best || slot.cost < best.cost) {
          best = { ...slot, wording: w, start: s, dx, dy, away };
        }
      }
    });
  }
  return best && want.spare && best.cost - best.away > SPARED ? null : best;
}

/** Shifts from the place wanted, across only the way that the text runs. */
function* steps(side) {
  const sign = side === 'left' ? -1 : 1;
  for (const dx of side === 'middle' ? [0] : ACROSS) {
    for (let dy = 0; dy <= FARTHEST; dy += STEP) {
      yield [sign * dx, dy];
      if (dy > 0) {
        yield [sign * dx, -dy];
      }
    }
  }
}

function sizeOf(wording, unit, frame, colours) {
  const last = wording.length - 1;
  let width = 0;
  wording.forEach((text, i) => {
    width = Math.max(width, labelWidth(text, i === last ? unit : '', colours));
  });
  return [width, wording.length * frame.line];
}

function slotAt(start, [width, height], before, dx, dy, frame) {
  const anchor = { right: 'start', left: 'end', middle: 'middle' }[start.side];
  const x = start.from[0] + dx;
  const left = x - (anchor === 'end' ? width : anchor === 'middle' ? width / 2 : 0);
  const top = start.from[1] + dy - height / 2;
  const taken = box(left - before, top, width + before, height);
  return { x, y: top + BASE * frame.line, anchor, box: taken };
}

function isFree(b, boxes, frame) {
  return (
    b.x >= APART && b.x + b.width <= frame.width - APART &&
    b.y >= APART / 2 && b.y + b.height <= frame.height - APART / 2 &&
    !boxes.some((other) => overlap(b, other, APART, ABOVE))
  );
}

/** What a word at this place would cover, in pixels of distance. */
function covered(b, lines, frame) {
  let sum = 0;
  let most = 0;
  for (const pose of lines) {
    let length = 0;
    for (const line of pose) {
      length += inside(line, b);
    }
    sum += length;
    most = Math.max(most, length);
  }
  const crossing = frame.water > b.y - 1 && frame.water < b.y + b.height + 1 ? CROSSING : 0;
  return crossing + COVERED * (sum / lines.length + 0.3 * most);
}

/** Whether the places chosen earlier still serve. */
export function serves(slots, taken, lines, frame) {
  const boxes = [...taken];
  for (const slot of slots.values()) {
    const cost = slot.away + covered(slot.box, lines, frame);
    if (!isFree(slot.box, boxes, frame) || cost > slot.cost + PATIENCE) {
      return false;
    }
    boxes.push(slot.box);
  }
  return true;
}
