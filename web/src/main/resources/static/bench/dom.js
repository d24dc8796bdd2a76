/** The few things that every part of the page does with elements. */

/**
 * The element of that name.
 * @param {string} id
 * @returns {HTMLElement}
 * @throws {Error} if the page has none
 */
export function byId(id) {
  const element = document.getElementById(id);
  if (element === null) {
    throw new Error(`the page has no element ${id}`);
  }
  return element;
}

/**
 * Makes an element. Text goes in as text, never as markup.
 * @param {string} tag
 * @param {Object<string, string|boolean|null>} [attributes] true writes an empty one, false and null none
 * @param {...(Node|string)} children
 * @returns {HTMLElement}
 */
export function make(tag, attributes = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === true) {
      element.setAttribute(name, '');
    } else if (value !== false && value !== null) {
      element.setAttribute(name, value);
    }
  }
  element.append(...children);
  return element;
}

const SVG = 'http://www.w3.org/2000/svg';

/**
 * One of the page's own icons; always beside a word.
 * @param {string} name as in the page's sprite
 * @returns {SVGElement}
 */
export function icon(name) {
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('class', 'icon');
  svg.setAttribute('viewBox', '0 0 24 24');
  svg.setAttribute('aria-hidden', 'true');
  svg.setAttribute('focusable', 'false');
  const use = document.createElementNS(SVG, 'use');
  use.setAttribute('href', `#icon-${name}`);
  svg.append(use);
  return svg;
}

/** Changes an icon made by {@link icon}. */
export function setIcon(svg, name) {
  setAttribute(svg.firstElementChild, 'href', `#icon-${name}`);
}

/** Writes a text only where it differs: what stays the same costs no layout. */
export function setText(element, text) {
  const first = element.firstChild;
  if (first === null || first.nextSibling !== null || first.nodeType !== Node.TEXT_NODE) {
    element.textContent = text;
  } else if (first.data !== text) {
    first.data = text;
  }
}

/** Writes an attribute only where it differs; null takes it away. */
export function setAttribute(element, name, value) {
  if (value === null) {
    element.removeAttribute(name);
  } else if (element.getAttribute(name) !== value) {
    element.setAttribute(name, value);
  }
}

/**
 * Keeps as many children as there are items, making and dropping only the difference.
 * @param {Element} parent
 * @param {Array} items
 * @param {function(): Element} create makes an empty child
 * @param {function(Element, *, number)} write writes an item into its child
 */
export function keepChildren(parent, items, create, write) {
  while (parent.children.length > items.length) {
    parent.lastElementChild.remove();
  }
  while (parent.children.length < items.length) {
    parent.append(create());
  }
  items.forEach((item, i) => write(parent.children[i], item, i));
}

/** Whether the person is typing there: the keys of undo then belong to the text. */
export function isTextEntry(element) {
  return (
    element instanceof HTMLTextAreaElement ||
    (element instanceof HTMLInputElement && ['text', 'search', 'number'].includes(element.type))
  );
}
