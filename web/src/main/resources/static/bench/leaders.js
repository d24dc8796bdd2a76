/** Thin lines from a word to what it names. */

/** From the nearest point of a box to the nearest point of an arrow. */
export function nearest(box, [x1, y1, x2, y2]) {
  const cx = box.x + box.width / 2;
  const cy = box.y + box.height / 2;
  const length = (x2 - x1) ** 2 + (y2 - y1) ** 2;
  const along = length > 0 ? ((cx - x1) * (x2 - x1) + (cy - y1) * (y2 - y1)) / length : 0;
  const t = Math.max(0, Math.min(1, along));
  const to = [x1 + t * (x2 - x1), y1 + t * (y2 - y1)];
  const from = [
    Math.max(box.x - 3, Math.min(box.x + box.width + 3, to[0])),
    Math.max(box.y, Math.min(box.y + box.height, to[1])),
  ];
  return [from, to];
}

/**
 * The path of a leader, or nothing where its ends are closer than so much.
 */
export function leader(from, to, least) {
  return Math.hypot(to[0] - from[0], to[1] - from[1]) < least ? ''
    : `M${from[0].toFixed(1)} ${from[1].toFixed(1)}L${to[0].toFixed(1)} ${to[1].toFixed(1)}`;
}
