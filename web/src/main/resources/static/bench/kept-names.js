import { fixed } from './measures.js';
import { numberReader, shortest, SLIDERS } from './slider-list.js';

/**
 * What a kept setup is called: what it has that the one on the sliders has not, in the words of the
 * trade. So its name goes along with the sliders.
 */

/** Numbers closer than this are the same [canonical unit]. */
const SAME = 1e-6;

/** Degrees below this are none at all. */
const NO_ANGLE_DEG = 0.025;

/** So many differences are spelt out; the rest are counted. */
const MOST_SPELT = 2;

/** From so many numbers on it is another part, and no longer the same one altered. */
const ANOTHER_PART = 3;

/** Number by which a part is known. */
const KNOWN_BY = {
  'setup.front_wing': 'area_cm2',
  'setup.stabilizer': 'area_cm2',
  'setup.mast': 'length_mm',
  'setup.board': 'volume_l',
  'setup.fuselage': 'length_mm',
  'setup.battery': 'energy_wh',
};

const isNone = (degrees) => Math.abs(degrees) < NO_ANGLE_DEG;

/** What a slider's value is in few words; `size` is the value with its unit and without a sign. */
const SLID = {
  shim: (value, size) =>
    isNone(value) ? 'no shim' : `shim ${size}, leading edge ${value > 0 ? 'up' : 'down'}`,
  wedge: (value, size) =>
    isNone(value) ? 'no mast wedge' : `wedge ${size}, deck ${value > 0 ? 'nose-up' : 'nose-down'}`,
  track: (value, size) =>
    value === 0 ? "mast in its track's middle"
      : `mast ${size} ${value > 0 ? 'forward' : 'back'} in its track`,
  feet: (value, size) => `feet ${size} ${value < 0 ? 'behind' : 'ahead of'} the mast`,
  width: (value, size) => `stance ${size} wide`,
  mass: (value, size) => `rider ${size}`,
  wind: (value, size) => (value === 0 ? 'calm' : `${value > 0 ? 'head' : 'tail'} wind ${size}`),
  wish: (value, size) => `wished speed ${size}`,
};

/**
 * @param {Object[]} list the fields as the page's data describe them
 * @param {Object<string, string>} fallbacks what counts where a path is left out
 * @returns {function(Object, Object, Object): string} takes a kept entry, the texts on the sliders
 *     and the measures
 */
export function createNames(list, fallbacks) {
  const described = new Map(list.map((field) => [field.path, field]));
  const slid = new Set(SLIDERS.flatMap(({ paths }) => paths));
  const known = new WeakMap();

  const sizeWords = (value, unit, measures) =>
    unit === '°' ? `${fixed(Math.abs(value), 1)}°`
      : `${shortest(Math.abs(measures.value(value, unit)))}\u00A0${measures.symbol(unit)}`;

  function slidWords(mine, live, measures) {
    const words = [];
    for (const slider of SLIDERS) {
      const value = slider.read(numberReader(mine, fallbacks));
      const other = slider.read(numberReader(live, fallbacks));
      if (value !== null && (other === null || Math.abs(value - other) > SAME)) {
        words.push(SLID[slider.name](value, sizeWords(value, slider.unit, measures)));
      }
    }
    return words;
  }

  function meant(fields, path) {
    const text = (fields[path] ?? fallbacks[path] ?? '').trim();
    return text !== '' && Number.isFinite(Number(text)) ? String(Number(text)) : text;
  }

  const groupOf = (path) => path.split('.').slice(0, path.startsWith('setup.') ? 2 : 1).join('.');

  function fieldWords(path, mine, measures) {
    const field = described.get(path);
    const part = (described.get(path)?.group_label ?? groupOf(path)).toLowerCase();
    if (field === undefined) {
      return `another ${part}`;
    }
    const label = field.label.toLowerCase();
    const name = label.includes(part) || part === '' ? label : `${part}, ${label}`;
    const text = meant(mine, path);
    if (text === '') {
      return `no ${name}`;
    }
    if (field.kind !== 'number') {
      return `${name} ${field.choices?.find(({ code }) => code === text)?.label ?? text}`;
    }
    const number = Number(text);
    const sign = number < 0 ? '\u2212' : '';
    return `${name} ${sign}${sizeWords(number, field.unit, measures)}`;
  }

  function partWords(group, paths, mine, measures) {
    const isGone = paths.every((path) => !(path in mine));
    const first = list.find((field) => field.group === group)?.group_label ?? group.split('.').pop();
    const part = first.toLowerCase();
    if (isGone) {
      return `no ${part}`;
    }
    const path = `${group}.${KNOWN_BY[group]}`;
    const field = described.get(path);
    return field !== undefined && meant(mine, path) !== ''
      ? `${part} ${sizeWords(Number(meant(mine, path)), field.unit, measures)}` : `another ${part}`;
  }

  function otherWords(mine, live, measures) {
    const groups = new Map();
    for (const path of new Set([...Object.keys(mine), ...Object.keys(live)])) {
      if (path !== 'name' && path !== 'format' && !slid.has(path)
        && meant(mine, path) !== meant(live, path)) {
        const group = groupOf(path);
        groups.set(group, [...(groups.get(group) ?? []), path]);
      }
    }
    return [...groups].flatMap(([group, paths]) =>
      paths.length >= ANOTHER_PART
        ? [partWords(group, paths, mine, measures)]
        : paths.map((path) => fieldWords(path, mine, measures)));
  }

  function spell({ fields: mine }, live, measures) {
    const name = meant(mine, 'name');
    const words = [
      ...(name !== '' && name !== meant(live, 'name') ? [name] : []),
      ...otherWords(mine, live, measures),
      ...slidWords(mine, live, measures),
    ];
    if (words.length === 0) {
      return 'as it stands on the sliders';
    }
    const more = words.length - MOST_SPELT;
    const spelt = words.slice(0, more === 1 ? MOST_SPELT + 1 : MOST_SPELT);
    return spelt.join('; ') + (more > 1 ? `; ${more} more` : '');
  }

  return (entry, live, measures) => {
    const before = known.get(entry);
    if (before?.live === live && before.measures === measures) {
      return before.words;
    }
    const words = spell(entry, live, measures);
    known.set(entry, { live, measures, words });
    return words;
  };
}
