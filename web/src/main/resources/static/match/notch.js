import { icon, make, setAttribute, setText } from '/bench/dom.js';

/** A plain slider: a name, what it stands at, a step down and a step up. */

/**
 * @param {Object} described
 * @param {string} described.id
 * @param {string} described.label
 * @param {string} [described.hint] what stands under the name
 * @param {function(number)} onMove called with the value that was chosen
 * @returns {{element: HTMLElement, value: function(): number, draw: function(Object)}} `draw` takes
 *     `{min, max, step, value, text, usual, hint}`; `usual` leaves a mark, null none
 */
export function createNotch({ id, label }, onMove) {
  const input = make('input', { type: 'range', id: `notch-${id}` });
  const word = make('span', { class: 'notch-word' });
  const mark = make('span', { class: 'saved-mark', 'aria-hidden': 'true' });
  const hint = make('p', { class: 'hint', id: `notch-${id}-hint` });
  const step = (name, sign) => {
    const button = make('button', {
      type: 'button', class: 'step', 'aria-label': `${label}: ${sign < 0 ? 'less' : 'more'}`,
    }, icon(name));
    button.addEventListener('click', () => move(Number(input.value) + sign * Number(input.step)));
    return button;
  };
  const less = step('minus', -1);
  const more = step('plus', 1);
  const element = make('div', { class: 'notch' },
    less,
    make('div', { class: 'notch-middle' },
      make('p', { class: 'notch-head' }, make('label', { for: input.id }, label), word),
      make('div', { class: 'slider-track' }, mark, input)),
    more, hint);
  input.addEventListener('input', () => move(Number(input.value)));

  function move(wanted) {
    const value = Math.min(Number(input.max), Math.max(Number(input.min), wanted));
    onMove(Math.round(value / Number(input.step)) * Number(input.step));
  }

  return {
    element,
    draw({ min, max, step: by, value, text, usual = null, hint: words = '' }) {
      for (const [name, number] of Object.entries({ min, max, step: by })) {
        setAttribute(input, name, String(number));
      }
      if (Number(input.value) !== value) {
        input.value = String(value);
      }
      setAttribute(input, 'aria-valuetext', text);
      setText(word, text);
      setText(hint, words);
      hint.hidden = words === '';
      setAttribute(input, 'aria-describedby', words === '' ? null : hint.id);
      mark.hidden = usual === null;
      if (usual !== null) {
        mark.style.setProperty('--place', String((usual - min) / (max - min)));
      }
      // A button that is shut off while it has the focus would lose it.
      setAttribute(less, 'aria-disabled', value <= min ? 'true' : null);
      setAttribute(more, 'aria-disabled', value >= max ? 'true' : null);
    },
  };
}
