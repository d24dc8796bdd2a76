import { createSlider } from './slider.js';
import { numberReader, shortest, SLIDERS, spoken } from './slider-list.js';

/**
 * All sliders. They write into the same map of texts as the inputs, at once and without waiting;
 * the speed is no part of the case and only chooses among the points that are already there.
 */

/** Keys pressed within this time of each other are one step of undo [ms]. */
const ONE_STEP_MS = 800;

const SPEED = 'speed';
const MOUNTED = 'setup.stabilizer.mounted';

/** Notches closer than this are the same: rounding of converted units. */
const SAME = 1e-6;

/**
 * @param {HTMLElement} host
 * @param {Object} parts
 * @param {Object} parts.state
 * @param {Object<string, string>} parts.fallbacks
 * @param {function(): Object} parts.measures
 * @param {function(): Object} parts.reply the answer that is drawn
 * @param {function(): number} parts.index of the point looked at
 * @param {Map<string, Object>} parts.limits least and most number of a path, canonical
 * @param {function()} parts.onLock called when a lock is set or taken away
 */
export function createSliders(host, { state, fallbacks, measures, reply, index, limits, onLock }) {
  const locks = new Set();
  let rest = 0;

  const grip = {
    onGrip() {
      clearTimeout(rest);
      state.endStep();
    },
    onRelease() {
      clearTimeout(rest);
      rest = setTimeout(() => state.endStep(), ONE_STEP_MS);
    },
  };

  function setLock(name, isLocked) {
    if (isLocked) {
      locks.add(name);
    } else {
      locks.delete(name);
    }
    sliders.get(name).lock(isLocked);
    onLock();
  }

  const sliders = new Map();
  sliders.set(
    SPEED,
    createSlider(SPEED, 'Speed', {
      ...grip,
      onNotch: (notch) => lookAt(notch, SPEED),
      onStep: (by) => lookAt(index() + by, null),
      onBack: () => !locks.has(SPEED) && state.look(null, null),
      onLock: (isLocked) => setLock(SPEED, isLocked),
    }),
  );
  for (const slider of SLIDERS) {
    sliders.set(
      slider.name,
      createSlider(slider.name, slider.label, {
        ...grip,
        onNotch: (notch) => moveTo(slider, notch * slider.step[measures().system], slider.name),
        onStep: (by) => stepBy(slider, by),
        onBack: () => goBack(slider),
        onLock: (isLocked) => setLock(slider.name, isLocked),
      }),
    );
  }
  host.append(...[...sliders.values()].map((slider) => slider.element));

  function lookAt(notch, step) {
    const points = reply().points;
    const i = Math.min(points.length - 1, Math.max(0, notch));
    if (!locks.has(SPEED)) {
      state.look(points[i].speed_kmh, step);
    }
  }

  const read = (slider, fields) => slider.read(numberReader(fields, fallbacks));

  function moveTo(slider, shown, step) {
    if (locks.has(slider.name) || read(slider, state.now.fields) === null) {
      return;
    }
    const value = measures().canonical(shown, slider.unit);
    state.write(slider.write(value, numberReader(state.now.fields, fallbacks)), step);
  }

  /** The next notch above or below, also from between two. */
  function stepBy(slider, by) {
    const value = read(slider, state.now.fields);
    if (value !== null) {
      const step = slider.step[measures().system];
      const place = measures().value(value, slider.unit) / step;
      const next = by > 0 ? Math.floor(place + SAME) + 1 : Math.ceil(place - SAME) - 1;
      moveTo(slider, next * step, null);
    }
  }

  function goBack(slider) {
    if (!locks.has(slider.name)) {
      const saved = read(slider, state.now.saved.fields);
      const number = numberReader(state.now.fields, fallbacks);
      const isWhole = slider.paths.length === 1 || saved === null || slider.read(number) === null;
      const texts = isWhole
        ? Object.fromEntries(slider.paths.map((p) => [p, state.now.saved.fields[p] ?? '']))
        : slider.write(saved, number);
      state.write(texts, null);
    }
  }

  /** First and last notch: the usual ends, widened to what the case holds, within what is permitted. */
  function ends(slider, shown, saved) {
    const { system } = measures();
    const step = slider.step[system];
    let [least, most] = slider.ends[system].map((end) => Math.round(end / step));
    for (const value of [shown, saved].filter((v) => v !== null)) {
      least = Math.min(least, Math.floor(value / step + SAME));
      most = Math.max(most, Math.ceil(value / step - SAME));
    }
    const limit = slider.paths.length === 1 ? limits.get(slider.paths[0]) : undefined;
    if (limit !== undefined) {
      const end = (value) => measures().value(value, slider.unit) / step;
      least = limit.minimum === null ? least : Math.max(least, Math.ceil(end(limit.minimum) - SAME));
      most = limit.maximum === null ? most : Math.min(most, Math.floor(end(limit.maximum) + SAME));
    }
    return [least, most];
  }

  function drawOne(slider) {
    const { fields, saved: savedCase } = state.now;
    const value = read(slider, fields);
    const saved = read(slider, savedCase.fields);
    const isAbove = (fields[MOUNTED] ?? fallbacks[MOUNTED]) !== 'below';
    const step = slider.step[measures().system];
    const shown = value === null ? null : measures().value(value, slider.unit);
    const savedShown = saved === null ? null : measures().value(saved, slider.unit);
    const [least, most] = ends(slider, shown, savedShown);
    sliders.get(slider.name).draw({
      notch: Math.min(most, Math.max(least, Math.round((shown ?? 0) / step))),
      least,
      most,
      savedNotch: savedShown === null ? null : savedShown / step,
      number: value === null ? '\u2013' : shortest(Math.abs(shown)),
      unit: value === null ? '' : measures().symbol(slider.unit),
      word: value === null ? 'no number' : slider.word(value),
      say: value === null ? 'no number' : slider.say(value, measures(), isAbove),
      savedSay: saved === null ? 'no number' : slider.say(saved, measures(), isAbove),
      isSaved: value !== null && saved !== null && Math.abs(value - saved) < SAME,
      isUsable: value !== null,
    });
  }

  function drawSpeed() {
    const { points, wished_speed_kmh: wished } = reply();
    const at = points[index()].speed_kmh;
    const first = points[0].speed_kmh;
    const last = points[points.length - 1].speed_kmh;
    sliders.get(SPEED).draw({
      notch: index(),
      least: 0,
      most: points.length - 1,
      savedNotch: ((wished - first) / (last - first)) * (points.length - 1),
      number: shortest(measures().value(at, 'km/h')),
      unit: measures().symbol('km/h'),
      word: '',
      say: spoken(at, 'km/h', measures()),
      savedSay: `the wished ${spoken(wished, 'km/h', measures())}`,
      isSaved: state.now.speedKmh === null,
      isUsable: true,
    });
  }

  return {
    /** Writes every slider's place and words from the state. */
    draw() {
      SLIDERS.forEach(drawOne);
    },

    /** The speed alone, which needs an answer to choose from. */
    drawSpeed,

    /** Paths of the fields that locked sliders hold. */
    lockedPaths: () =>
      new Set(SLIDERS.filter((s) => locks.has(s.name)).flatMap((slider) => slider.paths)),

    /** Names of the locked sliders, for the draft. */
    locked: () => [...locks],

    /** Takes every lock away and sets those named. */
    lockOnly(names) {
      for (const name of sliders.keys()) {
        if (locks.has(name) !== names.includes(name)) {
          setLock(name, names.includes(name));
        }
      }
    },
  };
}
