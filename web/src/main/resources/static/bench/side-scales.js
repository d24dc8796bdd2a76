import { roundBelow } from './geometry.js';
import { fixed } from './measures.js';
import { labelWidth, number } from './svg.js';

/** The picture's two scales, of length and of force. */

/**
 * A bar of a round length and an arrow of a round force, both as long as they say.
 *
 * @returns {{bar: number, barText: string, arrow: number, arrowText: string, arrowAt: number,
 *     width: number}} lengths in px, from the left of the block
 */
export function scales(frame, measures, colours) {
  const room = Math.max(56, 0.13 * frame.width);
  const bar = roundOf('mm', 1000 / frame.perMetre);
  const arrow = roundOf('N', 1 / (frame.perMetre * frame.metresPerNewton));
  const arrowAt = Math.max(bar.length, bar.width) + 18;
  return {
    bar: bar.length, barText: bar.text, barUnit: bar.unit,
    arrow: arrow.length, arrowText: arrow.text, arrowUnit: arrow.unit,
    arrowAt,
    width: arrowAt + Math.max(arrow.length, arrow.width),
  };

  function roundOf(name, perPixel) {
    const shown = roundBelow(measures.value(room * perPixel, name));
    const length = measures.canonical(shown, name) / perPixel;
    const text = fixed(shown, shown < 1 ? 1 : 0);
    const unit = measures.symbol(name);
    return { length, text, unit, width: labelWidth(text, unit, colours) };
  }
}

/** The bar and the arrow with the bar's left end at a place [px]. */
export function scalePath(x, y, { bar, arrow, arrowAt }) {
  const tail = x + arrowAt;
  const head = number(tail + arrow);
  return (
    `M${number(x)} ${number(y - 4)}v4h${number(bar)}v-4` +
    `M${number(tail)} ${number(y)}H${head}m-6 -3.5L${head} ${number(y)}l-6 3.5`
  );
}
