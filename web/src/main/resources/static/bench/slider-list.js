import { fixed, parse } from './measures.js';

/**
 * What can be slid, and in which words its value is said. Values are canonical, as the case file
 * writes them; steps and ends are in the units shown, for those are the trade's steps.
 */

/** Figures after the point that a value keeps on its way to the wire. */
const WIRE_DECIMALS = 6;

/** Degrees below this are none at all. */
const NO_ANGLE_DEG = 0.025;

/** Canonical text of a number, without trailing zeros. */
export function wireText(value) {
  return String(Number(value.toFixed(WIRE_DECIMALS)));
}

/** A number with no more decimals than it needs, two at most. */
export function shortest(value) {
  const text = fixed(value, 2);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

const SPOKEN = {
  '°': ['degree', 'degrees'],
  'km/h': ['kilometre per hour', 'kilometres per hour'],
  mph: ['mile per hour', 'miles per hour'],
  mm: ['millimetre', 'millimetres'],
  in: ['inch', 'inches'],
  kg: ['kilogram', 'kilograms'],
  lb: ['pound', 'pounds'],
};

/** A size and its unit as one says them: half a degree, 25 millimetres. */
export function spoken(value, unit, measures) {
  const symbol = measures.symbol(unit);
  const size = Math.abs(measures.value(value, unit));
  const [one, many] = SPOKEN[symbol] ?? [symbol, symbol];
  if (fixed(size, 2) === '0.50') {
    return `half ${/^[aeiou]/.test(one) ? 'an' : 'a'} ${one}`;
  }
  const text = shortest(size);
  return `${text} ${text === '1' ? one : many}`;
}

/** The thick end of a shim, where it is one. */
export function shimEnd(angleDeg, isAbove) {
  return angleDeg > 0 === isAbove ? 'front' : 'back';
}

const isNone = (angleDeg) => Math.abs(angleDeg) < NO_ANGLE_DEG;

/** A slider over one number of the case. */
function plain(path, rest) {
  return {
    paths: [path],
    read: (number) => number(path),
    write: (value) => ({ [path]: wireText(value) }),
    ...rest,
  };
}

const SHIM = 'setup.shim.angle_deg';
const FRONT = 'rider.front_foot_mm';
const BACK = 'rider.back_foot_mm';

/**
 * @typedef {Object} Slider
 * @property {string} name
 * @property {string} label
 * @property {string} unit canonical
 * @property {{metric: number, imperial: number}} step in shown units
 * @property {{metric: number[], imperial: number[]}} ends in shown units
 * @property {string[]} paths of the fields it writes
 * @property {function(function(string): ?number): ?number} read its value from the fields' numbers
 * @property {function(number, function(string): ?number): Object<string, string>} write texts for a value
 * @property {function(number): string} word behind the number and its unit, may be empty
 * @property {function(number, Object, boolean): string} say the whole in words
 */

/** @type {Slider[]} */
export const SLIDERS = [
  plain(SHIM, {
    name: 'shim',
    label: 'Shim',
    unit: '°',
    step: { metric: 0.5, imperial: 0.5 },
    ends: { metric: [-4, 4], imperial: [-4, 4] },
    word: (value) =>
      isNone(value) ? 'no shim' : value > 0 ? 'leading edge up' : 'leading edge down',
    say: (value, measures, isAbove) =>
      isNone(value)
        ? 'no shim'
        : `leading edge ${value > 0 ? 'up' : 'down'} ${spoken(value, '°', measures)},` +
          ` thick end at the ${shimEnd(value, isAbove)}`,
  }),
  plain('setup.mast.base_angle_deg', {
    name: 'wedge',
    label: 'Mast wedge',
    unit: '°',
    step: { metric: 0.5, imperial: 0.5 },
    ends: { metric: [-5, 5], imperial: [-5, 5] },
    word: (value) => (isNone(value) ? 'square' : value > 0 ? 'deck nose-up' : 'deck nose-down'),
    say: (value, measures) =>
      isNone(value)
        ? 'deck square to the fuselage'
        : `deck ${spoken(value, '°', measures)} ${value > 0 ? 'nose-up' : 'nose-down'},` +
          ` thick end at the ${value > 0 ? 'front' : 'back'}`,
  }),
  plain('setup.board.track_mm', {
    name: 'track',
    label: 'Mast in its track',
    unit: 'mm',
    step: { metric: 5, imperial: 0.25 },
    ends: { metric: [-200, 200], imperial: [-8, 8] },
    word: (value) => (value === 0 ? 'middle' : value > 0 ? 'forward' : 'back'),
    say: (value, measures) =>
      value === 0
        ? "in the track's middle"
        : `${spoken(value, 'mm', measures)} ${value > 0 ? 'forward of' : 'behind'} the track's middle`,
  }),
  {
    name: 'feet',
    label: 'Both feet',
    unit: 'mm',
    step: { metric: 5, imperial: 0.25 },
    ends: { metric: [-300, 900], imperial: [-12, 36] },
    paths: [FRONT, BACK],
    read: (number) => between(number, (front, back) => (front + back) / 2),
    write(value, number) {
      const width = between(number, (front, back) => front - back);
      return { [FRONT]: wireText(value + width / 2), [BACK]: wireText(value - width / 2) };
    },
    word: (value) => (value < 0 ? 'behind' : 'ahead'),
    say: (value, measures) =>
      `middle of the stance ${spoken(value, 'mm', measures)}` +
      ` ${value < 0 ? 'behind' : 'ahead of'} the mast`,
  },
  {
    name: 'width',
    label: 'Stance width',
    unit: 'mm',
    step: { metric: 5, imperial: 0.25 },
    ends: { metric: [200, 900], imperial: [8, 36] },
    paths: [FRONT, BACK],
    read: (number) => between(number, (front, back) => front - back),
    write(value, number) {
      const middle = between(number, (front, back) => (front + back) / 2);
      return { [FRONT]: wireText(middle + value / 2), [BACK]: wireText(middle - value / 2) };
    },
    word: () => '',
    say: (value, measures) => `${spoken(value, 'mm', measures)} from foot to foot`,
  },
  plain('rider.mass_kg', {
    name: 'mass',
    label: 'Rider',
    unit: 'kg',
    step: { metric: 1, imperial: 2 },
    ends: { metric: [30, 160], imperial: [66, 352] },
    word: () => 'without kit',
    say: (value, measures) => `${spoken(value, 'kg', measures)} without kit`,
  }),
  plain('water.wind_kmh', {
    name: 'wind',
    label: 'Wind',
    unit: 'km/h',
    step: { metric: 1, imperial: 1 },
    ends: { metric: [-40, 40], imperial: [-25, 25] },
    word: (value) => (value === 0 ? 'calm' : value > 0 ? 'head wind' : 'tail wind'),
    say: (value, measures) =>
      value === 0
        ? 'calm'
        : `${value > 0 ? 'head' : 'tail'} wind of ${spoken(value, 'km/h', measures)}`,
  }),
  plain('rider.wished_speed_kmh', {
    name: 'wish',
    label: 'Wished speed',
    unit: 'km/h',
    step: { metric: 1, imperial: 1 },
    ends: { metric: [8, 45], imperial: [5, 28] },
    word: () => '',
    say: (value, measures) => spoken(value, 'km/h', measures),
  }),
];

function between(number, join) {
  const front = number(FRONT);
  const back = number(BACK);
  return front === null || back === null ? null : join(front, back);
}

/** Number of a path among the texts, or what counts where it is left out; null where it is none. */
export function numberReader(fields, fallbacks) {
  // A case without a shim has one of no angle.
  return (path) => parse(fields[path] ?? fallbacks[path] ?? (path === SHIM ? '0' : ''));
}
