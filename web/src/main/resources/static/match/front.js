import { byId, make, setText } from '/bench/dom.js';
import { uprightTicks } from '/bench/axes.js';
import { roundAbove } from '/bench/geometry.js';
import { Pool } from '/bench/pool.js';
import { Label, add, number, root, set, textWidth, write } from '/bench/svg.js';
import { watchSize } from '/bench/watch.js';
import { whole } from './asking.js';
import { wishText } from './rows.js';

/**
 * The trade-off between two wishes: setups of which no other is better in one and no worse in the
 * other. One wish goes across, the other up, each with its better end marked; where both are good
 * the ground is tinted. The shown setups stand in it with their numbers.
 */

const FALLBACK_HEIGHT = 320;

/** Half the width of a shown setup's marker [px]. */
const MARKER = 6;

const DOT = 2.5;

/** Room around what is drawn, over the range. */
const AIR = 0.06;

const MOST_ROWS = 400;

/** A wish's number in the unit that an axis shows. */
function shownNumber({ wish, unit }, value, measures) {
  switch (wish) {
    case 'feet': return 100 * value;
    case 'growth': return 100 * value / measures.unit('km/h').factor;
    case 'level': case 'stall': case 'turn': case 'manners': return value;
    default: return measures.value(value, unit);
  }
}

function shownUnit({ wish, unit }, measures) {
  switch (wish) {
    case 'feet': return '%';
    case 'growth': return `% per ${measures.symbol('km/h')}`;
    case 'level': case 'stall': case 'turn': return '°';
    case 'manners': return '°/s';
    default: return measures.symbol(unit);
  }
}

function axis(wish, values, measures) {
  const good = [wish.good_from, wish.good_to].map((end) =>
    (end === null ? null : shownNumber(wish, end, measures)));
  const all = [...values, ...good.filter((end) => end !== null)];
  let low = Math.min(...all);
  let high = Math.max(...all);
  const air = AIR * (high - low) || 1;
  low = Math.max(0, low - air);
  high += air;
  // Less is better where a wish is good up to something: its better end lies right and up.
  const isReversed = wish.good_from === null;
  return {
    low, high, good, isReversed,
    part: (value) => (isReversed ? (high - value) / (high - low) : (value - low) / (high - low)),
  };
}

/** @returns {{svg: SVGElement, draw: function(Object)}} takes `{answer, measures, colours}` */
export function createFront(host) {
  const { svg, title, description } = root(host, 'front');
  const tint = add(svg, 'rect', { class: 'pic-window' });
  const box = add(svg, 'rect', { class: 'pic-plot', fill: 'none', 'stroke-width': 1 });
  const lines = add(svg, 'g');
  const ticks = new Pool(() => add(lines, 'line', { class: 'pic-tick', 'stroke-width': 0.5 }));
  const steps = add(svg, 'path', { class: 'pic-steps', fill: 'none', 'stroke-width': 1.5, 'stroke-opacity': 0.7 });
  const dotGroup = add(svg, 'g');
  const dots = new Pool(() => add(dotGroup, 'circle', { class: 'pic-dot', r: DOT }));
  const markerGroup = add(svg, 'g');
  const markers = new Pool(() => add(markerGroup, 'rect', {
    class: 'pic-marker', width: 2 * MARKER, height: 2 * MARKER, rx: 1 }));
  const labelGroup = add(svg, 'g');
  const labels = new Pool(() => new Label(labelGroup, 'front'));
  let state = null;
  const size = watchSize(host, FALLBACK_HEIGHT, () => state && draw(state));

  function draw(next) {
    state = next;
    const { answer, measures, colours } = state;
    const [across, up] = answer.front.of.map((code) =>
      answer.wishes.find(({ wish }) => wish === code));
    const value = (wish, setup) => setup.values[wish.value];
    const has = (setup) => value(across, setup) !== null && value(up, setup) !== null;
    const points = answer.front.points.filter(has);
    const rows = answer.rows.map((row, i) => ({ row, i })).filter(({ row }) => has(row));
    const numbers = (wish) => [...points, ...rows.map(({ row }) => row)]
      .map((setup) => shownNumber(wish, value(wish, setup), measures));
    const x = axis(across, numbers(across), measures);
    const y = axis(up, numbers(up), measures);
    const { width, height } = size;
    const line = colours.size * 1.3;
    set(svg, {
      width, height, viewBox: `0 0 ${width} ${height}`, 'font-family': colours.font,
      'font-size': colours.size, 'data-ground': colours.surface, 'data-ink': colours.ink,
      'data-caption': `${across.title} against ${up.title.toLowerCase()}: ${answer.name}, ${answer.stock_name}`,
    });
    const upTicks = uprightTicks({ low: y.low, high: y.high, step: roundAbove((y.high - y.low) / 5) });
    const acrossTicks = uprightTicks({ low: x.low, high: x.high,
      step: roundAbove((x.high - x.low) / Math.max(2, Math.min(7, width / (6 * colours.size)))) });
    const left = 8 + Math.max(...upTicks.map(({ text }) => textWidth(text, colours)), 0);
    const plot = { x: left + 6, y: line + 8, width: width - left - 18, height: height - 3.4 * line - 8 };
    const placeX = (shown) => plot.x + x.part(shown) * plot.width;
    const placeY = (shown) => plot.y + (1 - y.part(shown)) * plot.height;
    const at = (setup) => [placeX(shownNumber(across, value(across, setup), measures)),
      placeY(shownNumber(up, value(up, setup), measures))];

    set(box, { x: plot.x, y: plot.y, width: plot.width, height: plot.height, stroke: colours.edge });
    const goodX = span(x, placeX, plot.x, plot.x + plot.width);
    const goodY = span(y, placeY, plot.y + plot.height, plot.y);
    set(tint, { x: goodX[0], y: goodY[0], width: Math.max(0, goodX[1] - goodX[0]),
      height: Math.max(0, goodY[1] - goodY[0]), fill: colours.window });
    ticks.begin();
    labels.begin();
    for (const { value: shown, text } of upTicks) {
      const place = placeY(shown);
      set(ticks.next(), { x1: plot.x, x2: plot.x + plot.width, y1: place, y2: place, stroke: colours.edge });
      labels.next().show(plot.x - 6, place + 0.29 * line, 'end', text, '', colours.muted, colours);
    }
    for (const { value: shown, text } of acrossTicks) {
      const place = placeX(shown);
      set(ticks.next(), { x1: place, x2: place, y1: plot.y, y2: plot.y + plot.height, stroke: colours.edge });
      labels.next().show(place, plot.y + plot.height + line, 'middle', text, '', colours.muted, colours);
    }
    ticks.end();
    labels.next().show(2, line - 2, 'start', `↑ ${up.title}, better up`, shownUnit(up, measures), colours.ink, colours);
    labels.next().show(plot.x + plot.width, height - 0.4 * line, 'end',
      `${across.title}, better this way →`, shownUnit(across, measures), colours.ink, colours);

    const places = points.map(at).sort((a, b) => a[0] - b[0]);
    set(steps, {
      d: places.map(([px, py], i) => (i === 0 ? `M${number(px)} ${number(py)}`
        : `V${number(py)}H${number(px)}`)).join(''),
      stroke: colours.ink,
    });
    dots.begin();
    places.forEach(([px, py]) => set(dots.next(), { cx: px, cy: py, fill: colours.ink }));
    dots.end();
    markers.begin();
    const taken = [];
    for (const { row, i } of rows) {
      const [px, py] = at(row);
      set(markers.next(), { x: px - MARKER, y: py - MARKER, fill: colours.action, stroke: colours.surface });
      taken.push({ i, px, py });
    }
    markers.end();
    for (const group of groups(taken)) {
      const words = ranges(group.numbers);
      const room = plot.x + plot.width - group.px - MARKER - 6;
      const isLeft = textWidth(words, colours) > room;
      labels.next().show(group.px + (isLeft ? -1 : 1) * (MARKER + 4), group.py + 0.29 * line,
        isLeft ? 'end' : 'start', words, '', colours.action, colours);
    }
    labels.end();
    write(title, `${across.title} against ${up.title.toLowerCase()}`);
    write(description, `${points.length} setups of which no other is better in one of the two and no`
      + ' worse in the other, and the setups shown. The table below has the same numbers.');
  }

  return { svg, draw };
}

/** Where a wish is good, on the page; the larger end second. */
function span({ good: [from, to], low, high }, place, start, end) {
  const a = from === null ? low : Math.min(Math.max(from, low), high);
  const b = to === null ? high : Math.max(Math.min(to, high), low);
  const ends = [place(a), place(b)].map((value) =>
    Math.min(Math.max(value, Math.min(start, end)), Math.max(start, end)));
  return [Math.min(...ends), Math.max(...ends)];
}

/** Markers that lie on each other share one label. */
function groups(taken) {
  const all = [];
  for (const { i, px, py } of taken) {
    const near = all.find((group) => Math.abs(group.px - px) < 6 * MARKER && Math.abs(group.py - py) < 3 * MARKER);
    if (near === undefined) {
      all.push({ px, py, numbers: [i] });
    } else {
      near.numbers.push(i);
      near.px = Math.max(near.px, px);
    }
  }
  return all;
}

/** Numbers counted from 1, those in a row as a range. */
function ranges(places) {
  const parts = [];
  let first = 0;
  places.forEach((place, i) => {
    if (places[i + 1] !== place + 1) {
      const [from, to] = [places[first] + 1, place + 1];
      parts.push(from === to ? String(from) : `${from}${to === from + 1 ? ', ' : '\u2013'}${to}`);
      first = i + 1;
    }
  });
  return parts.join(', ');
}

/** Title, key and table of the trade-off. */
export function drawFrontTable(answer, measures) {
  const [across, up] = answer.front.of.map((code) => answer.wishes.find(({ wish }) => wish === code));
  setText(byId('front-title'), `${across.title} against ${up.title.toLowerCase()}`);
  setText(byId('front-key'),
    'Each dot is a setup that no other beats in both, by tables and whatever it does to the other wishes.'
    + ' Squares are the setups above, by the full solution. Tinted: good in both.');
  setText(byId('front-caption'),
    `${whole(answer.front.points.length)} setups, from the best in ${across.title.toLowerCase()} on`);
  const heads = ['Setup', across.title, up.title, 'Falls short by'];
  byId('front-heads').replaceChildren(...heads.map((text) => make('th', { scope: 'col' }, text)));
  byId('front-rows').replaceChildren(...answer.front.points.slice(0, MOST_ROWS).map((setup) =>
    make('tr', {},
      make('th', { scope: 'row' }, `${setup.setup}; ${setup.shim_words}; ${setup.places.join('; ')}`),
      make('td', {}, wishText(across, setup.values[across.value], measures)),
      make('td', {}, wishText(up, setup.values[up.value], measures)),
      make('td', {}, setup.shortfall === null ? '' : setup.shortfall.toFixed(2)))));
}
