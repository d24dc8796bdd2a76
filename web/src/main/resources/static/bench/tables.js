import { keepChildren, make, setText } from './dom.js';
import { nose } from './measures.js';
import { tableOf } from './picture-table.js';

/**
 * The numbers behind each picture as tables for people who listen. They are renewed once the hand
 * rests, never while it moves.
 */

/** An empty table; the function returned writes caption, heads and rows of texts into it. */
export function createTable(host) {
  const caption = make('caption');
  const heads = make('tr');
  const body = make('tbody');
  host.replaceChildren(make('table', {}, caption, make('thead', {}, heads), body));
  const row = () => make('tr', {}, make('th', { scope: 'row' }));
  return (title, headings, rows) => {
    setText(caption, title);
    keepChildren(heads, headings, () => make('th', { scope: 'col' }), setText);
    keepChildren(body, rows, row, (element, [name, ...cells]) => {
      while (element.children.length <= cells.length) {
        element.append(make('td'));
      }
      while (element.children.length > cells.length + 1) {
        element.lastElementChild.remove();
      }
      [name, ...cells].forEach((cell, i) => setText(element.children[i], cell));
    });
  };
}

/** @returns {function(Object)} writes both tables from {reply, index, measures} */
export function createTables(sideHost, curvesHost) {
  const side = createTable(sideHost);
  const curves = createTable(curvesHost);
  return ({ reply, index, measures }) => {
    const point = reply.points[index];
    const speed = measures.withUnit(point.speed_kmh, 'km/h', 1);
    side(`Side view at ${speed}`, ['What', 'Value'], sideRows(point, measures));
    const { caption, heads, rows } = tableOf(reply, measures);
    const headings = heads.map((head) => (head.unit === '' ? head.text : `${head.text}, ${head.unit}`));
    curves(caption, headings, rows.map(({ cells, note }) => (note === '' ? cells : [...cells, note])));
  };
}

function sideRows(point, measures) {
  if (point.pitch_deg === null) {
    return [['Verdict', point.verdict[0]]];
  }
  const forces = point.forces.map((force) => {
    const size = Math.hypot(force.ahead_n, force.up_n);
    const direction = Math.abs(force.up_n) >= Math.abs(force.ahead_n)
      ? (force.up_n < 0 ? 'down' : 'up')
      : (force.ahead_n < 0 ? 'backward' : 'forward');
    return [force.name, `${measures.withUnit(size, 'N', 0)} ${direction}`];
  });
  return [
    ['Deck', nose(point.pitch_deg)],
    ['Back leg', measures.withUnit(point.back_leg_kg, 'kg', 0)],
    ['Front leg', measures.withUnit(point.front_leg_kg, 'kg', 0)],
    ...forces,
  ];
}
