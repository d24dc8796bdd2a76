import { arrowEnds } from './geometry.js';
import { paint } from './colours.js';
import { add, points, set, show } from './svg.js';

/** Forces as arrows, as long as they are strong. */

/** Length of an arrow's head, and half its width over its length [px]. */
const HEAD = 9;

const HALF_WIDTH = 0.52;

/** Below this length nothing is drawn [px]. */
const SHORTEST = 0.6;

/** One arrow; its `data-force` names the force, and the shaft with its head is as long as that. */
class Arrow {
  /**
   * @param {Element} parent
   * @param {string} kind of the force
   * @param {boolean} dotted whether it belongs to a reference
   */
  constructor(parent, kind, dotted) {
    this.dotted = dotted;
    const name = dotted ? 'data-pinned' : 'data-force';
    this.group = add(parent, 'g', { class: 'pic-arrow', [name]: kind });
    this.shaft = add(this.group, 'line', dotted ? { 'stroke-linecap': 'round' } : {});
    this.head = add(this.group, 'polygon', { 'stroke-linejoin': 'round' });
  }

  /**
   * Draws a force.
   *
   * @returns {number[]} tail and head [px]
   */
  draw(force, pose, frame, colours) {
    const ends = arrowEnds(pose, force, frame.metresPerNewton);
    const x1 = frame.x + ends[0] * frame.perMetre;
    const y1 = frame.water - ends[1] * frame.perMetre;
    const x2 = frame.x + ends[2] * frame.perMetre;
    const y2 = frame.water - ends[3] * frame.perMetre;
    const length = Math.hypot(x2 - x1, y2 - y1);
    show(this.group, length > SHORTEST);
    if (length > SHORTEST) {
      const size = Math.min(HEAD, length);
      const ux = (x2 - x1) / length;
      const uy = (y2 - y1) / length;
      const nx = x2 - ux * size;
      const ny = y2 - uy * size;
      const half = Math.max(1.5, size * HALF_WIDTH);
      const hue = paint(colours, force.hue);
      set(this.shaft, {
        x1, y1, x2: nx, y2: ny, stroke: hue,
        'stroke-width': this.dotted ? 1.5 : colours.line,
        'stroke-dasharray': this.dotted ? '1.5 4' : force.dashed ? '7 4' : null,
      });
      set(this.head, {
        points: points([
          x2, y2, nx - uy * half, ny + ux * half, nx + uy * half, ny - ux * half,
        ]),
        fill: this.dotted ? 'none' : hue,
        stroke: this.dotted ? hue : null,
      });
    }
    return [x1, y1, x2, y2];
  }

  hide() {
    show(this.group, false);
  }
}

/** A set of arrows, one for each kind of force, made when it is first seen. */
export class Arrows {
  constructor(parent, dotted) {
    this.parent = add(parent, 'g');
    this.dotted = dotted;
    this.all = new Map();
  }

  /**
   * Draws these forces and hides all others.
   *
   * @returns {Map<string, number[]>} tail and head of each [px]
   */
  draw(forces, pose, frame, colours) {
    const ends = new Map();
    for (const force of forces) {
      let arrow = this.all.get(force.kind);
      if (!arrow) {
        arrow = new Arrow(this.parent, force.kind, this.dotted);
        this.all.set(force.kind, arrow);
      }
      ends.set(force.kind, arrow.draw(force, pose, frame, colours));
    }
    for (const [kind, arrow] of this.all) {
      if (!ends.has(kind)) {
        arrow.hide();
      }
    }
    return ends;
  }
}
