import { make, setAttribute, setText } from './dom.js';

/**
 * One input of the case. What is typed stays as it was typed; the unit stands behind it. An angle
 * of a shim is asked for as a size and a direction, because the trade writes its sign both ways
 * round.
 */

/** Fields whose sign is said in words: what above and below zero mean. */
const DIRECTIONS = {
  'setup.shim.angle_deg': { label: 'Angle', words: ['leading edge up', 'leading edge down'] },
};

/** Label above, box below or beside it, and room for what is wrong. */
function frame(field, control, unit) {
  const problem = make('p', { class: 'problem', id: `${control.id}-problem`, hidden: true });
  const label = make('label', { for: control.id }, field.label);
  const box = make('span', { class: 'box' }, control, unit);
  control.setAttribute('aria-describedby', 'field-help');
  return { element: make('div', { class: 'field' }, label, box, problem), problem, box };
}

function say(control, problem, message) {
  problem.hidden = message === '';
  setText(problem, message);
  setAttribute(control, 'aria-invalid', message === '' ? null : 'true');
  setAttribute(
    control,
    'aria-describedby',
    message === '' ? 'field-help' : `${problem.id} field-help`,
  );
}

const idOf = (path) => `field-${path.replaceAll('.', '-')}`;

/**
 * @param {Object} field as the page's data describe it
 * @param {function(): Object} measures
 * @param {function(string)} onText called with the text in the shown unit
 * @param {function()} onDone called when the person leaves it
 * @returns {{element: HTMLElement, control: HTMLElement, show: function(string),
 *     units: function(), lock: function(boolean), problem: function(string)}}
 */
export function createField(field, measures, onText, onDone) {
  if (field.kind === 'choice') {
    return choiceField(field, onText, onDone);
  }
  const directions = DIRECTIONS[field.path];
  return directions === undefined
    ? textField(field, measures, onText, onDone)
    : directedField(field, directions, measures, onText, onDone);
}

function input(field) {
  const isNumber = field.kind === 'number';
  return make('input', {
    type: 'text',
    id: idOf(field.path),
    class: isNumber ? null : 'words',
    inputmode: isNumber ? 'decimal' : null,
    autocomplete: 'off',
    spellcheck: 'false',
    autocapitalize: 'off',
  });
}

function textField(field, measures, onText, onDone) {
  const control = input(field);
  const unit = make('span', { class: 'unit' });
  const { element, problem } = frame(field, control, unit);
  control.addEventListener('input', () => onText(control.value));
  control.addEventListener('change', onDone);
  return {
    element,
    control,
    show(text) {
      if (control.value !== text) {
        control.value = text;
      }
    },
    units() {
      setText(unit, measures().symbol(field.unit));
      control.placeholder = measures().fromWire(field.fallback ?? '', field.unit);
    },
    lock: (locked) => (control.readOnly = locked),
    problem: (message) => say(control, problem, message),
  };
}

function choiceField(field, onText, onDone) {
  const control = make('select', { id: idOf(field.path) });
  const labelOf = (code) => field.choices.find((choice) => choice.code === code)?.label ?? code;
  if (field.optional) {
    const blank = field.fallback ? `${labelOf(field.fallback)} (left out)` : 'left out';
    control.append(make('option', { value: '' }, blank));
  }
  field.choices.forEach((c) => control.append(make('option', { value: c.code }, c.label)));
  const { element, problem } = frame(field, control, '');
  control.addEventListener('change', () => {
    onText(control.value);
    onDone();
  });
  return {
    element,
    control,
    show(text) {
      if (control.value === text) {
        return;
      }
      if (![...control.options].some((option) => option.value === text)) {
        control.append(make('option', { value: text }, text));
      }
      control.value = text;
    },
    units() {},
    lock: (locked) => (control.disabled = locked),
    problem: (message) => say(control, problem, message),
  };
}

/** A size and a word for its direction; the two together are one number on the wire. */
function directedField(described, { label, words }, measures, onText, onDone) {
  const field = { ...described, label };
  const [above, below] = words;
  const control = input(field);
  const unit = make('span', { class: 'unit' });
  const direction = make(
    'select',
    { id: `${control.id}-direction`, 'aria-label': `${field.label}: direction` },
    make('option', { value: '' }, above),
    make('option', { value: '-' }, below),
  );
  const { element, problem, box } = frame(field, control, unit);
  box.after(make('span', { class: 'box direction' }, direction));
  const send = () => onText(control.value.trim() === '' ? '' : direction.value + control.value);
  control.addEventListener('input', send);
  control.addEventListener('change', onDone);
  direction.addEventListener('change', () => {
    send();
    onDone();
  });
  return {
    element,
    control,
    show(text) {
      const isBelow = /^\s*[-\u2212]/.test(text);
      const size = isBelow ? text.replace(/^\s*[-\u2212]/, '') : text;
      if (control.value !== size) {
        control.value = size;
      }
      const sign = isBelow ? '-' : '';
      // Nothing has no direction: the one that was chosen stays. Each write of a choice, even of the
      // same, has browsers look through all fields for what they could fill in.
      if ((Number(size) !== 0 || isBelow) && direction.value !== sign) {
        direction.value = sign;
      }
    },
    units() {
      setText(unit, measures().symbol(field.unit));
      control.placeholder = field.fallback ?? '';
    },
    lock(locked) {
      control.readOnly = locked;
      direction.disabled = locked;
    },
    problem: (message) => say(control, problem, message),
  };
}
