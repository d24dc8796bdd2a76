import { textWidth } from './svg.js';

/**
 * Breaks a text into lines.
 *
 * @param {string} text
 * @param {number} width of a line [px]
 * @param {Object} colours
 * @param {number} most lines; what does not fit is cut with an ellipsis
 * @returns {string[]}
 */
export function wrap(text, width, colours, most) {
  const lines = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line ? line + ' ' + word : word;
    if (line && textWidth(longer, colours) > width) {
      lines.push(line);
      line = word;
    } else {
      line = longer;
    }
  }
  if (line) {
    lines.push(line);
  }
  if (lines.length > most) {
    lines.length = most;
    lines[most - 1] = lines[most - 1].replace(/[ ,.;:]*\S*$/, '') + ' \u2026';
  }
  return lines;
}
