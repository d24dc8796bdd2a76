import { make, setText } from './dom.js';
import { createField } from './field.js';
import { createPlanform } from './planform.js';

/**
 * Every input of the case, grouped as in the case file. What a case leaves out and may leave out
 * lies one fold deeper. Parts are drawn as their own planforms beside their group's name.
 */

/** Groups with a planform of their own, by path. */
const DRAWN = {
  'setup.board': 'board',
  'setup.front_wing': 'front_wing',
  'setup.stabilizer': 'stabilizer',
};

/** Groups of the file that read better as part of another. */
const INSIDE = /\.(section|stations)(\..*)?$/;

/**
 * @param {HTMLElement} host
 * @param {Object} parts
 * @param {Object[]} parts.list the fields as the page's data describe them
 * @param {Object[]} parts.repeated those of lists, with a star for the place
 * @param {Object} parts.state
 * @param {function(): Object} parts.measures
 * @param {HTMLElement} parts.help where a sentence on the field in hand stands
 */
export function createFields(host, { list, repeated, state, measures, help }) {
  let controls = new Map();
  let planforms = new Map();
  let optional = new Map();
  let shape = '';

  /** The fields of the case in hand: the single ones, and those of its lists. */
  function listAll() {
    const stations = Object.keys(state.now.fields)
      .filter((path) => /\.\d+\./.test(path))
      .map((path) => describeRepeated(path, repeated))
      .filter((field) => field !== null);
    return [...list, ...stations];
  }

  function build() {
    controls = new Map();
    planforms = new Map();
    optional = new Map();
    const groups = new Map();
    for (const field of listAll()) {
      const group = field.group.replace(INSIDE, '');
      if (!groups.has(group)) {
        groups.set(group, []);
      }
      groups.get(group).push(field);
    }
    host.replaceChildren(...[...groups].map(([group, fields]) => buildGroup(group, fields)));
    controls.forEach((entry) => entry.control.units());
  }

  function buildGroup(group, fields) {
    const title = fields.find((field) => field.group === group)?.group_label || 'Case';
    const usual = fields.filter((field) => isUsual(field));
    const rest = fields.filter((field) => !isUsual(field));
    const heading = make('span', { class: 'group-name' }, title);
    const absent = make('span', { class: 'absent' });
    const summary = make('summary', {}, heading, absent);
    if (group in DRAWN) {
      const icon = make('span', { class: 'planform', 'aria-hidden': 'true' });
      summary.append(icon);
      planforms.set(DRAWN[group], createPlanform(icon));
    }
    const body = make('div', { class: 'group' }, ...usual.map((field) => place(field, fields)));
    if (rest.length > 0) {
      const more = make('details', { class: 'fold more' }, make('summary', {}, 'More'));
      more.append(make('div', { class: 'group' }, ...rest.map((field) => place(field, fields))));
      body.append(usual.length === 0 ? more.lastElementChild : more);
    }
    if (fields.some((field) => field.group === group && field.group_optional)) {
      body.append(leaveOut(title, fields));
      optional.set(absent, fields.map((field) => field.path));
    }
    const fold = make('details', { class: 'fold group-fold', 'data-group': group }, summary, body);
    fold.open = group === 'rider';
    return fold;
  }

  /** What a case gives or must give; a measured wing needs none of a spec sheet's numbers. */
  function isUsual(field) {
    const { fields } = state.now;
    return field.path in fields || (!field.optional && !(`${field.group}.stations.0.eta` in fields));
  }

  function place(field, siblings) {
    const control = createField(field, measures, (text) => typed(field, text), () => state.endStep());
    control.control.addEventListener('focus', () => setText(help, field.help ?? ''));
    controls.set(field.path, { field, control, siblings });
    return control.element;
  }

  function leaveOut(title, fields) {
    const button = make('button', { type: 'button', class: 'button outline' }, `Leave out: ${title}`);
    button.addEventListener('click', () =>
      state.write(Object.fromEntries(fields.map((field) => [field.path, ''])), null),
    );
    return button;
  }

  function typed(field, text) {
    const wire = field.kind === 'number' ? measures().toWire(text, field.unit) : text;
    const canonical = text.trim() === '' ? '' : wire;
    state.write({ [field.path]: canonical }, `field:${field.path}`, { [field.path]: text });
  }

  function draw() {
    const { fields, typed: raw } = state.now;
    for (const [path, { field, control }] of controls) {
      const text = fields[path] ?? '';
      const shown = field.kind === 'number' ? measures().fromWire(text, field.unit) : text;
      control.show(raw[path] ?? shown);
    }
    drawAbsent();
  }

  function drawAbsent() {
    for (const [mark, paths] of optional) {
      setText(mark, paths.some((path) => path in state.now.fields) ? '' : 'left out');
    }
  }

  function reveal(element) {
    for (let fold = element.closest('details'); fold; fold = fold.parentElement.closest('details')) {
      fold.open = true;
    }
  }

  host.addEventListener('submit', (event) => event.preventDefault());

  return {
    /** Builds the inputs anew where another case has other ones. */
    rebuild() {
      const next = `${state.now.saved.id} ${Object.keys(state.now.saved.fields).join()}`;
      if (next !== shape) {
        shape = next;
        build();
      }
      draw();
    },

    draw,

    /** Other measures: other units behind the same case. */
    changeUnits() {
      controls.forEach((entry) => entry.control.units());
      draw();
    },

    /** @param {Set<string>} paths of fields that a locked slider holds */
    lock(paths) {
      controls.forEach(({ control }, path) => control.lock(paths.has(path)));
    },

    /**
     * Says at the fields what is wrong with them.
     * @param {{paths: string[], message: string}[]} problems
     */
    setProblems(problems) {
      const messages = new Map();
      for (const { paths, message } of problems) {
        paths.forEach((path) => messages.set(path, [...(messages.get(path) ?? []), message]));
      }
      for (const [path, { control }] of controls) {
        control.problem((messages.get(path) ?? []).join(' '));
      }
    },

    /** Leads to the first field that is wrong. */
    focusFirstWrong() {
      const wrong = host.querySelector('[aria-invalid="true"]');
      if (wrong !== null) {
        reveal(wrong);
        wrong.focus();
        wrong.scrollIntoView({ block: 'center' });
      }
    },

    /** The parts as they are now. */
    drawPlanforms(shapes, colours) {
      planforms.forEach((planform, name) => planform.draw({ points: shapes[name], name, colours }));
    },
  };
}

/** The description of a field in a list, with its place put in for the star. */
function describeRepeated(path, repeated) {
  const star = path.replace(/\.\d+(?=\.)/g, '.*');
  const found = repeated.find((field) => field.path === star);
  if (found === undefined) {
    return null;
  }
  const place = Number(/\.(\d+)\./.exec(path)[1]) + 1;
  const group = found.group.replace(/\.\*.*$/, '');
  return { ...found, path, group, label: `${found.label}, station ${place}`, group_optional: false };
}
