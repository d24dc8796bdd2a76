/**
 * The colours and sizes that the page's style sheet gives to pictures. Read once per theme and
 * width, never while drawing.
 */

/** Custom properties of the style sheet, by the name that the pictures use. */
const TOKENS = {
  ground: '--ground',
  surface: '--surface',
  ink: '--ink',
  muted: '--muted',
  edge: '--edge',
  action: '--action',
  front: '--front',
  back: '--back',
  good: '--good',
  warn: '--warn',
  bad: '--bad',
  window: '--window',
};

const FALLBACK_LINE = 2.5;
const FALLBACK_SIZE = 14;

/**
 * Colours as they stand now.
 *
 * @param {Element} [element] whose custom properties count
 * @returns {Object} a colour for each token, `line` (width of curves and arrows [px]), `size` of
 *     the letters [px] and `font` (a list of families)
 */
export function readColours(element = document.documentElement) {
  const style = getComputedStyle(element);
  const colours = {};
  for (const name in TOKENS) {
    colours[name] = style.getPropertyValue(TOKENS[name]).trim() || 'currentColor';
  }
  colours.line = parseFloat(style.getPropertyValue('--line')) || FALLBACK_LINE;
  colours.size = parseFloat(style.getPropertyValue('--small')) || FALLBACK_SIZE;
  colours.font = getComputedStyle(document.body).fontFamily || 'sans-serif';
  return Object.freeze(colours);
}

/** The paint of a hue that the server names: front, back, ink or action. */
export function paint(colours, hue) {
  return colours[hue] ?? colours.ink;
}
