import { add, number, points, set, show } from './svg.js';

/**
 * The craft's outlines, written once per gear and from then on only turned and shifted.
 */

const THIN = 1.5;

/** How each part is painted: fill, stroke and what else, from the back to the front. */
const PAINTS = [
  ['mast', (c) => ({ fill: c.surface, stroke: c.ink })],
  ['drive', (c) => ({ fill: c.surface, stroke: c.ink })],
  ['propeller', (c) => ({ fill: 'none', stroke: c.ink, 'stroke-width': c.line })],
  ['fuselage', (c) => ({ fill: c.surface, stroke: c.ink })],
  ['front-wing-shadow', (c) => ({ fill: c.front, 'fill-opacity': 0.25, stroke: 'none' })],
  ['stabilizer-shadow', (c) => ({ fill: c.back, 'fill-opacity': 0.25, stroke: 'none' })],
  ['front-wing', (c) => ({ fill: c.front, stroke: c.front })],
  ['stabilizer', (c) => ({ fill: c.back, stroke: c.back })],
  ['board', (c) => ({ fill: c.surface, stroke: c.ink })],
];

/** Parts whose outline is enough to show where a reference lies. */
const OUTLINED = {
  board: 'muted', mast: 'muted', fuselage: 'muted', 'front-wing': 'front', stabilizer: 'back',
};

const DOTTED = { fill: 'none', 'stroke-dasharray': '1.5 4', 'stroke-linecap': 'round' };

/** A foot's outline from heel to toe, in half widths and heights. */
const FOOT = [
  -1, 0, 1, 0, 1, 0.5, 0.7, 0.9, 0.3, 1, -0.3, 1, -0.7, 0.9, -1, 0.5,
];

/** Half the width of a foot seen from its toes, and its height [m]. */
const HALF_FOOT = 0.055;

const FOOT_HEIGHT = 0.045;

/** The craft with its feet. */
export class Craft {
  /**
   * @param {Element} parent
   * @param {boolean} dotted whether it is drawn as a reference
   */
  constructor(parent, dotted) {
    this.dotted = dotted;
    this.group = add(parent, 'g', { class: dotted ? 'pic-reference' : 'pic-craft' });
    this.parts = new Map();
    for (const [kind] of PAINTS) {
      if (!dotted || OUTLINED[kind]) {
        this.parts.set(kind, add(this.group, 'polygon', {
          class: 'pic-' + kind, 'stroke-width': THIN, 'stroke-linejoin': 'round',
          ...(dotted ? DOTTED : {}),
        }));
      }
    }
    if (!dotted) {
      this.feet = ['front', 'back'].map((hue) => add(this.group, 'polygon', {
        class: `pic-${hue}-foot`, 'stroke-width': THIN, 'stroke-linejoin': 'round',
      }));
    }
  }

  /**
   * Draws the craft in a pose.
   *
   * @param {Object} craft of the reply
   * @param {Object} pose
   * @param {Object} frame
   * @param {Object} colours
   * @param {boolean} dimmed whether it is only a place holder
   */
  draw(craft, pose, frame, colours, dimmed) {
    const { perMetre } = frame;
    if (this.craft !== craft || this.perMetre !== perMetre) {
      this.craft = craft;
      this.perMetre = perMetre;
      this.outline(craft, perMetre);
    }
    if (this.colours !== colours) {
      this.colours = colours;
      this.paint(colours);
    }
    const y = frame.water + pose.water * perMetre;
    set(this.group, {
      transform: `translate(${number(frame.x)} ${number(y)}) rotate(${-pose.degrees.toFixed(3)})`,
      opacity: dimmed ? 0.45 : null,
      display: null,
    });
  }

  hide() {
    show(this.group, false);
  }

  outline(craft, perMetre) {
    const given = new Map(craft.shapes.map((shape) => [shape.kind, shape.points]));
    const scaled = (flat) => flat.map((v, i) => (i % 2 ? -v : v) * perMetre);
    for (const [kind, element] of this.parts) {
      const flat = given.get(kind);
      show(element, Boolean(flat));
      if (flat) {
        set(element, { points: points(scaled(flat)) });
      }
    }
    if (this.feet) {
      [craft.front_foot, craft.back_foot].forEach(([x, y], i) => {
        const flat = FOOT.map((v, k) => (k % 2 ? y + v * FOOT_HEIGHT : x + v * HALF_FOOT));
        set(this.feet[i], { points: points(scaled(flat)) });
      });
    }
  }

  paint(colours) {
    for (const [kind, style] of PAINTS) {
      const element = this.parts.get(kind);
      if (element && this.dotted) {
        set(element, { stroke: colours[OUTLINED[kind]] });
      } else if (element) {
        set(element, style(colours));
      }
    }
    this.feet?.forEach((foot, i) => {
      const hue = i === 0 ? colours.front : colours.back;
      set(foot, { fill: hue, stroke: hue });
    });
  }
}
