import { icon, make, setAttribute, setIcon, setText } from './dom.js';

/**
 * One slider: minus, value and plus above, lock, track and the way back below. It knows notches and
 * words, nothing of what they mean.
 */

/**
 * @typedef {Object} Shown
 * @property {number} notch where the knob stands
 * @property {number} least first notch
 * @property {number} most last notch
 * @property {number|null} savedNotch where the saved value lies; null where there is none
 * @property {string} number
 * @property {string} unit
 * @property {string} word
 * @property {string} say all of it as one says it
 * @property {string} savedSay the saved value as one says it
 * @property {boolean} isSaved whether the value is the saved one
 * @property {boolean} isUsable false where the field holds no number
 */

/**
 * @param {string} name
 * @param {string} label
 * @param {{onNotch: function(number), onStep: function(number), onBack: function(),
 *     onLock: function(boolean), onGrip: function(), onRelease: function()}} told
 */
export function createSlider(name, label, told) {
  const id = `slider-${name}`;
  const small = label.toLowerCase();
  const button = (className, symbol, word, speaks) =>
    make(
      'button',
      { type: 'button', class: className, 'aria-label': speaks },
      icon(symbol),
      ...(word === '' ? [] : [make('span', {}, word)]),
    );
  const minus = button('step', 'minus', '', `${label}: less`);
  const plus = button('step', 'plus', '', `${label}: more`);
  const lock = button('tool lock', 'unlock', 'Lock', `Lock ${small}`);
  const back = button('tool back', 'back', 'Back', `Back to the saved ${small}`);
  const number = make('span', { class: 'number' });
  const unit = make('span', { class: 'unit' });
  const word = make('span', { class: 'unit word' });
  const range = make('input', { type: 'range', id, step: '1' });
  const saved = make('span', { class: 'saved-mark', 'aria-hidden': 'true' });
  const element = make(
    'div',
    { class: 'slider', 'data-slider': name },
    minus,
    make(
      'div',
      { class: 'slider-value' },
      make('label', { for: id }, label),
      make('p', {}, number, unit, ' ', word),
    ),
    plus,
    lock,
    make('div', { class: 'slider-track' }, saved, range),
    back,
  );
  let isLocked = false;
  let isUsable = true;

  range.addEventListener('pointerdown', told.onGrip);
  range.addEventListener('input', () => told.onNotch(Number(range.value)));
  range.addEventListener('change', told.onRelease);
  minus.addEventListener('click', () => told.onStep(-1));
  plus.addEventListener('click', () => told.onStep(1));
  back.addEventListener('click', told.onBack);
  lock.addEventListener('click', () => told.onLock(!isLocked));
  lock.setAttribute('aria-pressed', 'false');

  let isSaved = true;
  function enable(notch, least, most) {
    const shut = isLocked || !isUsable;
    range.disabled = shut;
    minus.disabled = shut || notch <= least;
    plus.disabled = shut || notch >= most;
    back.disabled = isLocked || isSaved;
  }

  return {
    element,

    /** @param {boolean} locked */
    lock(locked) {
      isLocked = locked;
      lock.setAttribute('aria-pressed', String(locked));
      setIcon(lock.firstElementChild, locked ? 'lock' : 'unlock');
      element.classList.toggle('locked', locked);
      enable(Number(range.value), Number(range.min), Number(range.max));
    },

    /** @param {Shown} shown */
    draw(shown) {
      setAttribute(range, 'min', String(shown.least));
      setAttribute(range, 'max', String(shown.most));
      if (range.value !== String(shown.notch)) {
        range.value = String(shown.notch);
      }
      setText(number, shown.number);
      setText(unit, shown.unit);
      unit.classList.toggle('close', shown.unit === '°');
      setText(word, shown.word);
      setAttribute(range, 'aria-valuetext', shown.say);
      setAttribute(back, 'aria-label', `Back to the saved ${small}: ${shown.savedSay}`);
      isSaved = shown.isSaved;
      isUsable = shown.isUsable;
      enable(shown.notch, shown.least, shown.most);
      const span = shown.most - shown.least;
      saved.hidden = shown.savedNotch === null || span <= 0;
      if (!saved.hidden) {
        const place = String((shown.savedNotch - shown.least) / span);
        if (saved.style.getPropertyValue('--place') !== place) {
          saved.style.setProperty('--place', place);
        }
      }
    },
  };
}
