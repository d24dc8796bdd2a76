/**
 * How the lines of kept setups are told apart without their colour: each letter has its dashes and
 * its marker. The pinned reference is dotted, whichever letter it has.
 */

/** Half the width of a marker [px]. */
const SIZE = 5;

const DOTS = '0.1 5';

const MARKS = {
  A: { dash: '14 6', word: 'long dashes', marker: 'square' },
  B: { dash: '6 6', word: 'short dashes', marker: 'triangle' },
  C: { dash: '14 5 0.1 5', word: 'dashes and dots', marker: 'diamond' },
};

/** Dashes of a kept setup's line, for lines with round ends. */
export function dashOf({ letter, isReference }) {
  return isReference ? DOTS : MARKS[letter].dash;
}

/** The same in words. */
export function lineWords({ letter, isReference }) {
  return `${isReference ? 'dotted' : MARKS[letter].word}, marked by a ${MARKS[letter].marker}`;
}

/** A marker's outline around a place [px]. */
export function markerPath(letter, x, y) {
  const at = (dx, dy) => `${(x + dx).toFixed(1)} ${(y + dy).toFixed(1)}`;
  switch (MARKS[letter].marker) {
    case 'square':
      return `M${at(-SIZE + 1, -SIZE + 1)}L${at(SIZE - 1, -SIZE + 1)}L${at(SIZE - 1, SIZE - 1)}`
        + `L${at(-SIZE + 1, SIZE - 1)}Z`;
    case 'triangle':
      return `M${at(0, -SIZE - 1)}L${at(SIZE + 1, SIZE - 1)}L${at(-SIZE - 1, SIZE - 1)}Z`;
    default:
      return `M${at(0, -SIZE - 1)}L${at(SIZE + 1, 0)}L${at(0, SIZE + 1)}L${at(-SIZE - 1, 0)}Z`;
  }
}
