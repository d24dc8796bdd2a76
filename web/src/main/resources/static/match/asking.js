import { byId, make, setText } from '/bench/dom.js';
import { createNotch } from './notch.js';

/** The question: who rides, from which stock, how, and what counts how much. */

/** Largest file that is read [bytes]. */
const MOST_BYTES = 262144;

const MOST_FEET_MM = 400;
const FEET_STEP_MM = 5;
const MOST_SPREAD_KG = 15;

/** Parts in words: one, several. */
const KINDS = {
  board: ['board', 'boards'],
  battery: ['battery', 'batteries'],
  mast: ['mast', 'masts'],
  drive: ['drive', 'drives'],
  fuselage: ['fuselage', 'fuselages'],
  front_wing: ['front wing', 'front wings'],
  stabilizer: ['stabilizer', 'stabilizers'],
  shim: ['shim', 'shims'],
};

export const whole = (number) => number.toLocaleString('en-US');

/**
 * @param {Object} parts
 * @param {Object} parts.data of the page
 * @param {Object} parts.server
 * @param {function(): Object} parts.measures
 * @param {Object|null} parts.kept a question of this tab
 * @param {function()} parts.onChange
 * @returns {Object}
 */
export function createAsking({ data, server, measures, kept, onChange }) {
  let rider = null;
  let stock = null;
  let stockText = kept?.stockText ?? null;
  let ride = kept?.ride ?? {};
  let weights = kept?.weights ?? {};
  let era = 0;
  let stockEra = 0;
  const wishNotches = new Map();

  const select = byId('rider');
  data.shelf.filter(({ kind }) => kind !== 'damaged').forEach(({ id, title }) =>
    select.append(make('option', { value: id }, title)));
  select.value = kept?.case ?? data.case;
  if (select.value === '') {
    select.value = data.case;
  }
  for (const name of ['trade-one', 'trade-other']) {
    data.wishes.filter((wish) => wish.in_tables).forEach(({ wish, title }) =>
      byId(name).append(make('option', { value: wish }, title)));
  }
  byId('trade-one').value = kept?.trade?.[0] ?? 'take_off';
  byId('trade-other').value = kept?.trade?.[1] ?? 'range';
  byId('waters').append(...data.waters.map((water) => {
    const box = make('input', { type: 'checkbox', value: water.code, name: 'water' });
    box.checked = kept?.waters?.includes(water.code) ?? false;
    box.addEventListener('change', onChange);
    return make('label', { class: 'check' }, box, make('span', { 'data-water': water.code }));
  }));

  /** A slider over a number of the ride, in shown units. */
  function rideNotch(host, key, label, unit, range) {
    const notch = createNotch({ id: key.replaceAll('_', '-'), label }, (shown) => {
      ride = { ...ride, [key]: measures().canonical(shown, unit) };
      draw();
      onChange();
    });
    byId(host).append(notch.element);
    return () => {
      const { min, max, step, text } = range(key);
      notch.draw({ min, max, step, value: measures().value(ride[key], unit), text });
    };
  }

  const speeds = (key) => ({
    text: measures().withUnit(ride[key] ?? 0, 'km/h', 0),
    min: Math.ceil(measures().value(rider.slowest_kmh, 'km/h') - 1e-6),
    max: Math.floor(measures().value(rider.fastest_kmh, 'km/h') + 1e-6),
    step: 1,
  });
  const feet = () => ({
    min: 0,
    max: measures().value(MOST_FEET_MM, 'mm'),
    step: measures().value(FEET_STEP_MM, 'mm'),
    text: ride.feet_reach_mm < FEET_STEP_MM / 2 ? 'not at all'
      : measures().withUnit(ride.feet_reach_mm, 'mm'),
  });
  const spread = () => ({
    min: 0,
    max: measures().value(MOST_SPREAD_KG, 'kg'),
    step: measures().value(1, 'kg'),
    text: ride.weight_spread_kg < 0.5 ? 'as said'
      : `${measures().withUnit(ride.weight_spread_kg, 'kg')} more or less`,
  });
  const rideNotches = [
    rideNotch('ride-notches', 'from_kmh', 'Slowest', 'km/h', speeds),
    rideNotch('ride-notches', 'to_kmh', 'Fastest', 'km/h', speeds),
    rideNotch('ride-notches', 'feet_reach_mm', 'Feet moved up to', 'mm', feet),
    rideNotch('more-notches', 'weight_spread_kg', "Rider's weight", 'kg', spread),
  ];
  for (const { wish, title } of data.wishes) {
    const notch = createNotch({ id: `wish-${wish.replaceAll('_', '-')}`, label: title }, (weight) => {
      weights = { ...weights, [wish]: weight };
      draw();
      onChange();
    });
    byId('wish-notches').append(notch.element);
    wishNotches.set(wish, notch);
  }

  const weightOf = ({ wish, weight }) => weights[wish] ?? weight;

  function draw() {
    for (const water of data.waters) {
      const salt = water.salinity_g_kg < 1 ? 'fresh' : 'salt';
      setText(document.querySelector(`[data-water=${water.code}]`),
        `${water.title}, ${measures().withUnit(water.temperature_c, '°C')}, ${salt}`);
    }
    if (rider === null) {
      return;
    }
    rideNotches.forEach((notch) => notch());
    for (const wish of rider.wishes) {
      const value = weightOf(wish);
      const { words } = data.weights[value];
      wishNotches.get(wish.wish).draw({
        min: 0, max: data.weights.length - 1, step: 1, value, usual: wish.weight,
        text: words, hint: `good: ${wish.good}`,
      });
    }
    const others = rider.wishes.filter((wish) => weightOf(wish) !== wish.weight).length;
    setText(byId('wishes-sum'),
      others === 0 ? `as usual for ${rider.riding}` : `${others} other than usual`);
    byId('wishes-usual').disabled = others === 0;
  }

  function drawGrades() {
    byId('grades').replaceChildren(...rider.wishes.flatMap((wish) => [
      make('dt', {}, wish.title),
      make('dd', {},
        make('p', {}, make('span', { class: 'muted' }, `${wish.meaning[0].toUpperCase()}${wish.meaning.slice(1)}.`)),
        make('p', {}, `Good: ${wish.good}. Poor: ${wish.poor}.`),
        make('p', {}, wish.why)),
    ]));
  }

  /** Whole numbers of the shown unit, outwards, so that sliders stand where they say. */
  function usualRide() {
    const wholeKmh = (kmh, round) => {
      const { min, max } = speeds('from_kmh');
      const shown = Math.min(max, Math.max(min, round(measures().value(kmh, 'km/h'))));
      return measures().canonical(shown, 'km/h');
    };
    return {
      from_kmh: wholeKmh(rider.from_kmh, Math.floor),
      to_kmh: wholeKmh(rider.to_kmh, Math.ceil),
      feet_reach_mm: rider.feet_reach_mm,
      weight_spread_kg: rider.weight_spread_kg,
    };
  }

  /** Asks for the rider; with `anew` the ride and the wishes become the usual ones. */
  async function fetchRider(anew) {
    era += 1;
    const mine = era;
    try {
      const answer = await server.json('/match/rider', { case: select.value, measures: measures().system });
      if (mine !== era) {
        return;
      }
      rider = answer;
      if (anew || ride.from_kmh === undefined) {
        weights = {};
        ride = usualRide();
      }
      setText(byId('rider-words'), rider.words);
      byId('first-flights').hidden = !rider.first_flights;
      draw();
      drawGrades();
      drawStock();
      onChange();
    } catch (error) {
      if (mine === era) {
        setText(byId('rider-words'), error instanceof TypeError
          ? 'No connection to the program. Choose the rider again.' : error.message);
      }
    }
  }

  function drawStock() {
    if (stock === null || rider === null) {
      return;
    }
    const count = rider.towed ? stock.towed : stock.driven;
    const parts = stock.kinds.map(({ kind, parts: number }) =>
      `${number} ${KINDS[kind][number === 1 ? 0 : 1]}`);
    setText(byId('stock-words'), `${stock.name}: ${parts.join(', ')}. `
      + `${whole(count)} ${count === 1 ? 'setup mounts' : 'setups mount'} together, `
      + `${rider.towed ? 'without a drive' : 'each with a drive'}.`);
  }

  function complain(problems, name = '') {
    stock = null;
    setText(byId('stock-words'), '');
    const place = ({ line }) => (line > 0 ? `Line ${line}: ` : '');
    byId('stock-problems').replaceChildren(
      ...(name === '' ? [] : [make('p', {}, `${name} cannot be used yet.`)]),
      make('ul', {}, ...problems.map((problem) => make('li', {}, place(problem) + problem.message))));
  }

  async function fetchStock(text, name) {
    stockEra += 1;
    const mine = stockEra;
    byId('stock-problems').replaceChildren();
    try {
      const answer = await server.json('/match/stock', text === null ? {} : { stock: text });
      if (mine !== stockEra) {
        return;
      }
      if (answer.accepted) {
        stock = answer;
        stockText = text;
        drawStock();
      } else {
        complain(answer.problems, name);
      }
    } catch (error) {
      if (mine === stockEra) {
        complain([{ message: error instanceof TypeError
          ? 'No connection to the program. Try again.' : error.message }]);
      }
    }
    onChange();
  }

  function drawSource() {
    byId('stock-file').hidden = document.querySelector('input[name=stock]:checked').value !== 'file';
  }

  select.addEventListener('change', () => (riderLoad = fetchRider(true)));
  document.querySelectorAll('input[name=stock]').forEach((input) => {
    input.checked = input.value === (stockText === null ? 'demo' : 'file');
    input.addEventListener('change', () => {
      drawSource();
      if (input.value === 'demo') {
        stockLoad = fetchStock(null, '');
      } else {
        stock = null;
        setText(byId('stock-words'), 'Choose a file.');
        onChange();
      }
    });
  });
  byId('stock-input').addEventListener('change', async (event) => {
    const [file] = event.target.files;
    event.target.value = '';
    if (file === undefined) {
      return;
    }
    if (file.size > MOST_BYTES) {
      complain([{ message: `${file.name} is too large for a stock: at most 256 kB.` }]);
      onChange();
      return;
    }
    stockLoad = fetchStock(await file.text(), file.name);
  });
  for (const [name, other] of [['trade-one', 'trade-other'], ['trade-other', 'trade-one']]) {
    byId(name).addEventListener('change', () => {
      if (byId(name).value === byId(other).value) {
        const free = [...byId(other).options].find(({ value }) => value !== byId(name).value);
        byId(other).value = free.value;
      }
      onChange();
    });
  }
  byId('wishes-usual').addEventListener('click', () => {
    weights = {};
    draw();
    onChange();
  });
  drawSource();
  draw();
  let riderLoad = fetchRider(false);
  let stockLoad = fetchStock(stockText, 'The stock file of before');

  const waters = () =>
    [...document.querySelectorAll('input[name=water]:checked')].map(({ value }) => value);

  return {
    /** What this tab keeps of the question; equal questions are equal texts. */
    state: () => ({
      case: select.value, stockText, ride, waters: waters(),
      weights: Object.fromEntries((rider?.wishes ?? []).map((wish) => [wish.wish, weightOf(wish)])),
      trade: [byId('trade-one').value, byId('trade-other').value],
    }),
    /** The question as it is sent; null while rider or stock are not there. */
    question() {
      if (rider === null || stock === null) {
        return null;
      }
      return {
        case: select.value,
        measures: measures().system,
        ...ride,
        ...(stockText === null ? {} : { stock: stockText }),
        fields: Object.fromEntries(rider.wishes.map((wish) => [wish.wish, String(weightOf(wish))])),
        trade_one: byId('trade-one').value,
        trade_other: byId('trade-other').value,
        waters: waters().join(','),
      };
    },
    /** Other measures: words are asked for anew. */
    renew() {
      draw();
      riderLoad = fetchRider(false);
    },
    /** Settled once rider and stock are there, or have been found wanting. */
    loaded: () => Promise.all([riderLoad, stockLoad]),
  };
}
