import { plusMinus } from './bands.js';
import { make, setText } from './dom.js';
import { fixed, nose } from './measures.js';

/**
 * The readings beside the pictures: legs, pitch, power, level speed and rideable window, each with
 * room for its band, or for its difference from the pinned reference.
 */

const NONE = '\u2013';

const CELLS = [
  { name: 'back', label: 'Back leg', hue: 'back' },
  { name: 'front', label: 'Front leg', hue: 'front' },
  { name: 'pitch', label: 'Pitch' },
  { name: 'power', label: 'Power' },
  { name: 'level', label: 'Level at' },
  { name: 'window', label: 'Rideable' },
];

/** A part of a difference: with its sign, as it is a number of its own. */
export function signed(value, decimals) {
  const text = fixed(value, decimals);
  return value > 0 && Number(text) !== 0 ? `+${text}` : text;
}

/** @param {HTMLElement} host */
export function createReadings(host) {
  const cells = new Map();
  for (const { name, label, hue } of CELLS) {
    const number = make('span', { class: 'number' });
    const unit = make('span', { class: name === 'pitch' ? 'unit close' : 'unit' });
    const remark = make('dd', { class: 'remark' });
    const title = make('dt', {}, label);
    host.append(
      make(
        'div',
        { class: 'cell', 'data-reading': name, 'data-hue': hue ?? null },
        title,
        make('dd', {}, number, unit),
        remark,
      ),
    );
    cells.set(name, { title, number, unit, remark });
  }

  function write(name, number, unit, remark) {
    const cell = cells.get(name);
    setText(cell.number, number);
    setText(cell.unit, number === NONE || number === 'none' ? '' : unit);
    setText(cell.remark, remark);
  }

  return {
    /**
     * @param {Object} reply
     * @param {number} index
     * @param {{reply: Object, index: number}|null} pinned
     * @param {Object} measures
     */
    draw({ reply, index, pinned, measures }) {
      const point = reply.points[index];
      const other = pinned === null ? null : (pinned.reply.points[pinned.index] ?? null);
      const share = point.foot_share;
      const shown = (value, unit, decimals) =>
        value === null ? NONE : measures.text(value, unit, decimals);
      const more = (key, unit, decimals, scale = 1) =>
        other === null || other[key] === null || point[key] === null
          ? pinned === null ? '' : NONE
          : difference(point[key] * scale, other[key] * scale, unit, decimals, measures);
      const remark = (text, ...rest) => (pinned === null ? text : more(...rest));
      const percent = (value) => {
        const sure = plusMinus(point.foot_share_band, 100, 0);
        return value === null ? '' : `${fixed(100 * value, 0)}${sure && ` ${sure}`}\u00A0%`;
      };

      const kg = measures.symbol('kg');
      write('back', shown(point.back_leg_kg, 'kg', 0), kg, remark(percent(share === null ? null : 1 - share), 'back_leg_kg', 'kg', 0));
      write('front', shown(point.front_leg_kg, 'kg', 0), kg, remark(percent(share), 'foot_share', '%', 0, 100));
      const pitch = point.pitch_deg;
      setText(cells.get('pitch').title, pitch === null ? 'Pitch' : noseWord(pitch));
      write('pitch', pitch === null ? NONE : fixed(Math.abs(pitch), 1), '°', remark(after(plusMinus(point.pitch_deg_band, 1, 1), '°'), 'pitch_deg', '°', 1));
      write('power', shown(point.electric_power_w, 'W', 0), 'W', remark(after(plusMinus(point.electric_power_w_band, 1, 0), '\u00A0W'), 'electric_power_w', 'W', 0));
      drawSpeeds(reply, pinned, measures);
    },
  };

  function drawSpeeds(reply, pinned, measures) {
    const speed = (value) => measures.text(value, 'km/h', 1);
    const symbol = measures.symbol('km/h');
    const level = reply.level_speed_kmh;
    const from = reply.rideable_from_kmh;
    const to = reply.rideable_to_kmh;
    const change = (now, before, decimals) =>
      now === null || before === null
        ? NONE
        : less(measures.value(now, 'km/h'), measures.value(before, 'km/h'), decimals);
    const then = pinned?.reply;
    const { factor } = measures.unit('km/h');
    const sure = (key, decimals) => plusMinus(reply[`${key}_band`], factor, decimals);
    const ends = [sure('rideable_from_kmh', 0), sure('rideable_to_kmh', 0)].filter((end) => end !== '');
    write(
      'level',
      level === null ? 'none' : speed(level),
      symbol,
      pinned === null ? after(sure('level_speed_kmh', 1), `\u00A0${symbol}`) : `${change(level, then.level_speed_kmh, 1)}\u00A0${symbol}`,
    );
    write(
      'window',
      from === null ? 'none' : `${measures.text(from, 'km/h', 0)}\u2013${measures.text(to, 'km/h', 0)}`,
      symbol,
      pinned === null
        ? after(ends.join(', '), `\u00A0${symbol}`)
        : `${change(from, then.rideable_from_kmh, 0)}, ${change(to, then.rideable_to_kmh, 0)}\u00A0${symbol}`,
    );
  }
}

/** A text with its unit; nothing where there is no text. */
const after = (text, unit) => (text === '' ? '' : text + unit);

/** What the pitch is, as the name of its reading: a size below it then needs no sign. */
function noseWord(pitchDeg) {
  const words = nose(pitchDeg);
  return words.endsWith('nose-up') ? 'Nose-up' : words.endsWith('nose-down') ? 'Nose-down' : 'Pitch';
}

/** Both are rounded as they are shown and then subtracted, so that what one reads adds up. */
export function less(now, before, decimals) {
  const rounded = (value) => Math.sign(value) * Number(fixed(Math.abs(value), decimals));
  return signed(rounded(now) - rounded(before), decimals);
}

function difference(now, before, unit, decimals, measures) {
  const symbol = measures.symbol(unit);
  const { factor } = measures.unit(unit);
  const text = less(now * factor, before * factor, decimals);
  return `${text}${symbol === '°' ? '' : '\u00A0'}${symbol}`;
}
