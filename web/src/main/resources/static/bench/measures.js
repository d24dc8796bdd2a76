/**
 * Numbers and units as people read them, both ways. The factors come from the table that the
 * server embeds in the page; none is written here.
 *
 * A unit is named by the symbol it has on the wire and in the case file: 'km/h', 'mm', 'kg', 'N',
 * '°', '%', 'W', '°C', 'cm²'. A unit that the table does not know is shown as it is.
 */

const MINUS = '\u2212';

/** Figures that are kept of a number on its way to the wire. */
const WIRE_FIGURES = 9;

/**
 * @typedef {Object} ShownUnit
 * @property {string} symbol
 * @property {number} factor shown units per canonical unit
 * @property {number} offset added after the factor, in the shown unit
 * @property {number} decimals
 */

/**
 * The measures of one system.
 *
 * @param {{metric: Object<string, ShownUnit>, imperial: Object<string, ShownUnit>}} table
 * @param {string} system metric or imperial
 */
export function createMeasures(table, system) {
  const units = new Map();
  for (const key in table.metric) {
    const shown = table[system][key];
    units.set(key, shown);
    // The metric symbol is the canonical one, whatever the table's keys are called.
    units.set(table.metric[key].symbol, shown);
  }
  const plain = new Map();

  /** How a canonical unit is shown. */
  function unit(canonical) {
    let shown = units.get(canonical) ?? plain.get(canonical);
    if (!shown) {
      shown = { symbol: canonical, factor: 1, offset: 0, decimals: 0 };
      plain.set(canonical, shown);
    }
    return shown;
  }

  return {
    system,
    unit,

    /** The shown value of a canonical one. */
    value(canonical, name) {
      const { factor, offset } = unit(name);
      return canonical * factor + offset;
    },

    /** The canonical value of a shown one. */
    canonical(shown, name) {
      const { factor, offset } = unit(name);
      return (shown - offset) / factor;
    },

    /** The symbol of the shown unit. */
    symbol(name) {
      return unit(name).symbol;
    },

    /**
     * A canonical value as shown, without its unit.
     *
     * @param {number} canonical
     * @param {string} name of the canonical unit
     * @param {number} [decimals] in place of the table's
     */
    text(canonical, name, decimals = unit(name).decimals) {
      return fixed(this.value(canonical, name), decimals);
    },

    /** A canonical value as shown, with its unit. */
    withUnit(canonical, name, decimals) {
      return join(this.text(canonical, name, decimals), unit(name).symbol);
    },

    /**
     * What was typed, as the wire wants it: canonical digits, or the text as it is where it is no
     * number or nothing is to convert.
     *
     * @param {string} typed in shown units
     * @param {string} name of the canonical unit
     * @returns {string}
     */
    toWire(typed, name) {
      const { factor, offset } = unit(name);
      const value = parse(typed);
      if (value === null || (factor === 1 && offset === 0)) {
        return value === null ? typed : plainDigits(typed);
      }
      return String(Number(this.canonical(value, name).toPrecision(WIRE_FIGURES)));
    },

    /**
     * What the wire carries, as it is typed: up to two decimals more than a plain value is shown
     * with, so that a field shows what was meant.
     *
     * @param {string} text canonical
     * @param {string} name of the canonical unit
     * @returns {string}
     */
    fromWire(text, name) {
      const { factor, offset, decimals } = unit(name);
      const value = parse(text);
      if (value === null || (factor === 1 && offset === 0)) {
        return text;
      }
      const shown = fixed(this.value(value, name), decimals + 2).replace(MINUS, '-');
      return shown.includes('.') ? shown.replace(/\.?0+$/, '') : shown;
    },
  };
}

/**
 * A number with fixed decimals, rounded half away from zero, a true minus and no negative zero.
 *
 * @param {number} value
 * @param {number} decimals
 * @returns {string} a dash for what is no number
 */
export function fixed(value, decimals) {
  if (!Number.isFinite(value)) {
    return '\u2013';
  }
  // The shortest digits of the double decide on halves, as a person reading them would.
  const rounded = Number(Math.round(Number(Math.abs(value) + 'e' + decimals)) + 'e-' + decimals);
  const text = (Number.isFinite(rounded) ? rounded : Math.abs(value)).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? MINUS + text : text;
}

/** A number and its unit; a degree sign stands close. */
export function join(text, symbol) {
  return symbol === '' ? text : symbol === '°' ? text + symbol : text + '\u00A0' + symbol;
}

/**
 * The number in a typed text: a decimal comma and a true minus are understood.
 *
 * @param {string} text
 * @returns {?number} null for what is no number
 */
export function parse(text) {
  const digits = plainDigits(text);
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(digits) ? Number(digits) : null;
}

function plainDigits(text) {
  const trimmed = text.trim().replace(MINUS, '-');
  // Three figures behind a comma may be thousands: those are left for the person to put right.
  return /^[+-]?\d*,(\d{1,2}|\d{4,})$/.test(trimmed) ? trimmed.replace(',', '.') : trimmed;
}

/** A pitch as riders say it: `2.4° nose-up`, `level`. */
export function nose(degrees) {
  const size = fixed(Math.abs(degrees), 1);
  return Number(size) === 0 ? 'level' : size + '° ' + (degrees < 0 ? 'nose-down' : 'nose-up');
}
