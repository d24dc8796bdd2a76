/**
 * SVG elements that are made once and then only changed. Everything is an attribute, so that a
 * picture saved as a file looks as it does on the page. Nothing here reads the page's layout.
 */

const NAMESPACE = 'http://www.w3.org/2000/svg';

/** Width of the rim of ground behind a text, so that lines do not cut it [px]. */
const RIM = 3;

/** Gap between a number and its unit, over the size of the letters. */
const UNIT_GAP = 0.25;

/** Attributes as they stand, so that an unchanged one costs no write. */
const written = new WeakMap();

/**
 * Makes an element at the end of another.
 *
 * @param {Element} parent
 * @param {string} name of the element
 * @param {Object<string, string|number>} [attributes]
 * @returns {SVGElement}
 */
export function add(parent, name, attributes) {
  const element = document.createElementNS(NAMESPACE, name);
  written.set(element, new Map());
  if (attributes) {
    set(element, attributes);
  }
  parent.append(element);
  return element;
}

/**
 * Writes the attributes that differ from what stands there. Numbers get two decimals.
 *
 * @param {SVGElement} element made by {@link add}
 * @param {Object<string, string|number|null>} attributes null takes one away
 */
export function set(element, attributes) {
  const now = written.get(element);
  for (const name in attributes) {
    const given = attributes[name];
    const value = typeof given === 'number' ? number(given) : given;
    if (now.get(name) !== value) {
      now.set(name, value);
      if (value === null) {
        element.removeAttribute(name);
      } else {
        element.setAttribute(name, value);
      }
    }
  }
}

/** Shows or hides an element; what is hidden is left out of a saved file too. */
export function show(element, shown) {
  set(element, { display: shown ? null : 'none' });
}

/** Writes an element's text if it differs. */
export function write(element, text) {
  const now = written.get(element);
  if (now.get('#text') !== text) {
    now.set('#text', text);
    if (element.firstChild === null) {
      element.append(text);
    } else {
      element.firstChild.data = text;
    }
  }
}

/** A coordinate with two decimals, and no negative zero. */
export function number(value) {
  return String(Math.round(value * 100) / 100 || 0);
}

/**
 * Points as SVG wants them.
 *
 * @param {number[]} flat x and y in turn [px]
 */
export function points(flat) {
  let text = '';
  for (let i = 0; i < flat.length; i += 2) {
    text += (i ? ' ' : '') + number(flat[i]) + ',' + number(flat[i + 1]);
  }
  return text;
}

/**
 * The root of a picture in a host element, which gets its size from the page's style sheet.
 *
 * @param {HTMLElement} host
 * @param {string} kind for the class
 */
export function root(host, kind) {
  const svg = document.createElementNS(NAMESPACE, 'svg');
  written.set(svg, new Map());
  set(svg, { role: 'img', class: 'bench-' + kind });
  // Out of the flow, so that a picture never holds open the box that gives it its size.
  svg.style.position = 'absolute';
  svg.style.inset = '0';
  host.style.position = 'relative';
  host.style.overflow = 'hidden';
  host.prepend(svg);
  const title = add(svg, 'title');
  const description = add(svg, 'desc');
  return { svg, title, description };
}

/** A text with an optional unit in muted ink behind it. */
export class Label {
  constructor(parent, kind) {
    this.text = add(parent, 'text', {
      class: 'pic-label',
      'data-label': kind,
      'stroke-width': RIM,
      'stroke-linejoin': 'round',
      'paint-order': 'stroke',
      'font-variant-numeric': 'tabular-nums',
    });
    this.words = add(this.text, 'tspan');
    this.unit = add(this.text, 'tspan');
  }

  /**
   * Shows the text with its base line at a height.
   *
   * @param {number} x where it starts, is centred or ends [px]
   * @param {number} y of the base line [px]
   * @param {string} anchor start, middle or end
   * @param {string} words
   * @param {string} unit behind them, may be empty
   * @param {string} paint of the words
   * @param {Object} colours from colours.js
   */
  show(x, y, anchor, words, unit, paint, colours) {
    // Moved as a whole: with another x or y the browser would set its letters anew.
    set(this.text, {
      transform: `translate(${number(x)} ${number(y)})`,
      'text-anchor': anchor, fill: paint, stroke: colours.surface, display: null,
    });
    write(this.words, words);
    write(this.unit, unit);
    // A shift and no space: some renderers drop a space at a span's start.
    const gap = unit === '' || unit === '°' ? 0 : UNIT_GAP * colours.size;
    set(this.unit, { fill: colours.muted, dx: gap });
  }

  hide() {
    show(this.text, false);
  }
}

/** Width of a label's text as {@link Label} draws it [px]. */
export function labelWidth(words, unit, colours) {
  const gap = unit === '' || unit === '°' ? 0 : UNIT_GAP * colours.size;
  return textWidth(words, colours) + (unit === '' ? 0 : gap + textWidth(unit, colours));
}

let pen = null;
const widths = new Map();

/**
 * Width of a text in the picture's letters, measured on a canvas and remembered. Figures are
 * counted as equally wide, as they are drawn.
 *
 * @param {string} text one line
 * @param {{size: number, font: string}} colours
 * @returns {number} [px]
 */
export function textWidth(text, colours) {
  const face = colours.size + 'px ' + colours.font;
  const key = face + '\n' + text.replace(/\d/g, '0');
  let width = widths.get(key);
  if (width === undefined) {
    pen ??= document.createElement('canvas').getContext('2d');
    pen.font = face;
    width = pen.measureText(text.replace(/\d/g, '0')).width;
    widths.set(key, width);
  }
  return width;
}
