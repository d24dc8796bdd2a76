import { atRest, createAnnouncer } from './announce.js';
import { spellOut } from './answer.js';
import { createBands, withoutReference } from './bands.js';
import { readColours } from './colours.js';
import { createCurves } from './curves.js';
import { byId, isTextEntry } from './dom.js';
import { loadChoice, loadDraft, saveChoice, saveDraft } from './draft.js';
import { createEnvelope } from './envelope.js';
import { createFields } from './fields.js';
import { createFiles } from './files.js';
import { createLimitsPanel } from './limits-panel.js';
import { createMeasures, parse } from './measures.js';
import { problemWords, showCase, showProblems, showStatus } from './notices.js';
import { createReadings } from './readings.js';
import { rehearse } from './rehearsal.js';
import { createRequests, createServer } from './requests.js';
import { savePicture } from './save-picture.js';
import { createSections } from './sections.js';
import { createSheet } from './sheet.js';
import { createSideBySide } from './side-by-side.js';
import { createSideView } from './side-view.js';
import { createSliders } from './sliders.js';
import { createState } from './state.js';
import { createTables } from './tables.js';
import { createWhatIf } from './what-if.js';
import { createWords } from './words.js';

/**
 * The Bench. What a person does changes the state; a changed case is asked for, a changed speed is
 * drawn from the answer that is there.
 *
 * How a test or a stopwatch tells that the page is up to date: each change raises
 * `document.documentElement.dataset.asked` by one, within its event. Once the page shows the answer
 * to it or to a later one (or says that the input cannot be used), `dataset.drawn` has reached that
 * number; the next frame that the browser paints holds it. `dataset.ready` is set once the page can be used.
 */

const PHONE = window.matchMedia('(max-width: 719px)');
const DESK = window.matchMedia('(min-width: 1200px)');
const QUANTITIES = ['pitch_deg', 'foot_share', 'electric_power_w'];

/** Typing rests for so long before it is sent; sliders do not wait [ms]. */
const TYPING_MS = 150;

/** Moves along the curves within this time of each other are one step of undo [ms]. */
const ONE_STEP_MS = 800;

/** A draft is kept once nothing has changed for so long [ms]. */
const DRAFT_MS = 250;

const root = document.documentElement;
const data = JSON.parse(byId('bench-data').textContent);
const server = createServer();
const fallbacks = Object.fromEntries(
  data.fields.filter((f) => f.fallback !== null).map((f) => [f.path, f.fallback]),
);
const limits = new Map(data.fields.map((f) => [f.path, f]));
const state = createState(data.case, fallbacks);
const query = new URLSearchParams(location.search);
const address = [query.get('case') ?? '', ...query.getAll('kept')].join(' ');
const draft = loadDraft();
const isDraft = draft !== null && draft.address === address;
if (draft !== null) {
  state.restore(draft.state);
  if (!isDraft) {
    state.open(data.case); // Another case was asked for: undo brings the draft back.
  }
}

let measures = createMeasures(data.measures, loadChoice('measures', ['metric', 'imperial']) ?? 'metric');
let colours = readColours();
let reply = spellOut(data.reply);
let limitsOfCase = null;
let index = 0;
let sequence = 0;
let problems = [];
let typing = 0;

const endStep = atRest(() => state.endStep(), ONE_STEP_MS);
const words = createWords();
const sideView = createSideView(byId('side-view'));
const curves = createCurves(byId('curves-view'), (i) => {
  if (!sliders.locked().includes('speed')) {
    state.look(reply.points[i].speed_kmh, 'speed');
    endStep();
  }
});
const readings = createReadings(byId('readings'));
const tables = createTables(byId('side-table'), byId('curves-table'));
const announce = createAnnouncer(byId('announcer'));
const fields = createFields(byId('fields'), {
  list: data.fields,
  repeated: data.repeated_fields ?? [],
  state,
  measures: () => measures,
  help: byId('field-help'),
});
const sliders = createSliders(byId('sliders'), {
  state,
  fallbacks,
  limits,
  measures: () => measures,
  reply: () => reply,
  index: () => index,
  onLock() {
    fields.lock(sliders.lockedPaths());
    keepDraft();
  },
});
const requests = createRequests({
  ask: askCurve,
  onReply,
  onStatus: showStatus,
});
const bands = createBands({
  ask: (question) => server.json('/bench/bands', question),
  question: () =>
    requests.isWaiting() || typing !== 0 || problems.length > 0
      ? null
      : {
          sequence,
          measures: measures.system,
          fields: state.now.fields,
          pinned: sideBySide.reference(),
        },
  reply: () => reply,
  onBands(banded) {
    reply = banded;
    draw();
    sideBySide.rest();
  },
});
const limitsPanel = createLimitsPanel((kmh) => {
  if (!sliders.locked().includes('speed')) {
    state.look(kmh, 'speed');
    endStep();
  }
});
const envelope = createEnvelope({
  ask: (question, signal) => server.json('/bench/envelope', question, signal),
  question: () =>
    requests.isWaiting() || typing !== 0 || problems.length > 0
      ? null
      : { sequence, measures: measures.system, fields: state.now.fields },
  standsOn: () => `${reply.case_digest} ${reply.sections} ${reply.measures}`,
  onEnvelope(found, why) {
    limitsOfCase = found;
    limitsPanel.say(why);
    limitsPanel.draw(view());
    if (found !== null) {
      curves.draw(view());
    }
  },
});
const whatIf = createWhatIf({
  ask: (question, signal) => server.json('/bench/motion', question, signal),
  question: () =>
    requests.isWaiting() || typing !== 0 || problems.length > 0
      ? null
      : { sequence, measures: measures.system, fields: state.now.fields },
  view: () => ({ reply, index, measures, colours, rider: riderOf(state.now.fields) }),
});
const sections = createSections({
  ask: () =>
    server.json('/bench/sections', { measures: measures.system, fields: state.now.fields }),
  reply: () => reply,
  onReady() {
    sideBySide.renew();
    countChange();
    ask();
  },
});
const sideBySide = createSideBySide({
  server,
  state,
  list: data.fields,
  fallbacks,
  phone: PHONE,
  desk: DESK,
  measures: () => measures,
  ask: (texts) => askCurve({ sequence: 0, measures: measures.system, fields: texts }),
  answer: () => (requests.isWaiting() || typing !== 0 ? null : reply),
  wrong: () => (problems.length > 0 ? problemWords(problems) : ''),
  view,
  onTake() {
    if (sliders.lockedPaths().size > 0) {
      sliders.lockOnly([]); // As when a case is opened: all of it comes.
    }
  },
  onChange(isOtherReference) {
    if (root.dataset.ready === undefined) {
      return;
    }
    if (isOtherReference) {
      reply = withoutReference(reply);
      bands.want();
    }
    draw();
    keepDraft();
  },
});

async function askCurve(question, signal) {
  return spellOut(await server.json('/bench/curve', question, signal));
}

function view() {
  const chosen = document.querySelector('input[name=quantity]:checked').value;
  const quantities = PHONE.matches ? [chosen] : QUANTITIES;
  const beside = sideBySide.at(reply.points[index].speed_kmh);
  return { reply, index, measures, colours, quantities, envelope: limitsOfCase, ...beside };
}

/** The rider as a play's picture draws it. */
function riderOf(fields) {
  const text = (path) => fields[path] ?? fallbacks[path];
  return { height: Number(text('rider.height_m')), posture: text('rider.posture') };
}

/** The point looked at: the one nearest to the speed that was chosen, or to the wished one. */
function findIndex() {
  const wanted = state.now.speedKmh ?? reply.wished_speed_kmh;
  let best = 0;
  reply.points.forEach((point, i) => {
    if (Math.abs(point.speed_kmh - wanted) < Math.abs(reply.points[best].speed_kmh - wanted)) {
      best = i;
    }
  });
  return best;
}

const rest = atRest(() => {
  words.drawAtRest(view());
  tables(view());
  fields.drawPlanforms(reply.planforms, colours);
});

function drawView(now) {
  words.draw(now);
  readings.draw(now);
  sideView.draw(now);
  curves.draw(now);
  sideBySide.draw(now);
}

function draw() {
  index = findIndex();
  const now = view();
  sliders.drawSpeed();
  drawView(now);
  whatIf.draw();
  rest();
  announce(() => (problems.length > 0 ? problemWords(problems) : words.spoken(view())));
}

/** @param {number} [shown] the change that the page shows at least */
function markDrawn(shown) {
  if (!requests.isWaiting() && typing === 0) {
    root.dataset.drawn = String(sequence);
  } else if (shown !== undefined) {
    root.dataset.drawn = String(shown);
  }
}

function ask() {
  typing = 0;
  requests.send({ sequence, measures: measures.system, fields: state.now.fields });
}

function onReply(answer) {
  if (answer.accepted) {
    reply = answer;
  }
  if (!answer.accepted || problems.length > 0) {
    problems = answer.accepted ? [] : answer.problems;
    fields.setProblems(problems);
    showProblems(problems);
  }
  draw();
  markDrawn(answer.sequence);
  sections.follow();
  if (problems.length === 0) {
    bands.want();
    envelope.want();
  }
}

const keepDraft = atRest(writeDraft, DRAFT_MS);

function writeDraft() {
  saveDraft({
    state: state.draft(),
    locked: sliders.locked(),
    kept: sideBySide.draft(),
    address,
  });
}

/** One more change that the page has to catch up with. */
function countChange() {
  sequence += 1;
  root.dataset.asked = String(sequence);
}

state.subscribe((change) => {
  countChange();
  if (change.opened) {
    requests.forget();
    sliders.lockOnly([]);
    fields.rebuild();
  }
  if (change.fields) {
    bands.forget();
    sideBySide.forget();
    envelope.forget();
    whatIf.forget();
    // The question leaves first: the server works while the page writes its numbers.
    clearTimeout(typing);
    typing = 0;
    if (isTextEntry(document.activeElement) && !change.opened) {
      typing = setTimeout(ask, TYPING_MS);
    } else {
      ask();
    }
    sliders.draw();
    fields.draw();
  }
  if (change.speed && !change.opened) {
    draw();
  }
  markDrawn();
  showCase(state);
  keepDraft();
});

/** What can be saved as a file, with its name. */
const pictures = {
  side: { svg: sideView.svg, name: () => 'side view' },
  curves: { svg: curves.svg, name: () => 'curves' },
  ...whatIf.pictures,
};

function wire() {
  byId('undo').addEventListener('click', state.undo);
  byId('redo').addEventListener('click', state.redo);
  document.addEventListener('keydown', (event) => {
    const isTravel = (event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z';
    if (isTravel && !isTextEntry(event.target) && document.querySelector('dialog[open]') === null) {
      event.preventDefault();
      (event.shiftKey ? state.redo : state.undo)();
    }
  });
  byId('keep').addEventListener('click', sideBySide.keep);
  byId('wrong').addEventListener('click', () => {
    byId('inputs-fold').open = true;
    fields.focusFirstWrong();
  });
  document.querySelectorAll('[data-save]').forEach((button) =>
    button.addEventListener('click', () => {
      const { svg, name } = pictures[button.dataset.save];
      savePicture(svg, `${state.now.saved.title} ${name()}`, button.dataset.kind);
    }),
  );
  document.querySelectorAll('input[name=measures]').forEach((input) => {
    input.checked = input.value === measures.system;
    input.addEventListener('change', () => changeMeasures(input.value));
  });
  document.querySelectorAll('input[name=quantity]').forEach((input) =>
    input.addEventListener('change', draw),
  );
  PHONE.addEventListener('change', () => {
    colours = readColours();
    draw();
    limitsPanel.draw(view());
  });
  new MutationObserver(() => {
    colours = readColours();
    draw();
    limitsPanel.draw(view());
  }).observe(root, { attributes: true, attributeFilter: ['data-theme'] });
  document.addEventListener('visibilitychange', writeDraft);
  window.addEventListener('pagehide', writeDraft);
}

function changeMeasures(system) {
  bands.forget();
  sideBySide.forget();
  envelope.forget();
  whatIf.forget();
  saveChoice('measures', system);
  measures = createMeasures(data.measures, system);
  state.forgetTyped((text) => parse(text) === null);
  fields.changeUnits();
  sliders.draw();
  draw();
  sideBySide.renew();
  countChange();
  ask();
}

function start() {
  createFiles({ state, server, shelf: data.shelf, measures: () => measures.system });
  createSheet({
    state,
    measures: () => measures,
    speedKmh: () => reply.points[index].speed_kmh,
    isUsable: () => problems.length === 0,
  });
  sideBySide.unfold();
  fields.rebuild();
  sliders.draw();
  wire();
  showCase(state);
  root.dataset.asked = '0';
  draw();
  if (isDraft) {
    sliders.lockOnly(draft.locked);
    sideBySide.restore(draft.kept ?? []);
  }
  if (isDraft || measures.system !== reply.measures) {
    countChange();
    ask();
  }
  markDrawn();
  sections.follow();
  bands.want();
  envelope.want();
  root.dataset.ready = '';
  sideBySide.bring(isDraft ? [] : query.getAll('kept'));
  rehearse(
    (isNeighbour) => drawView({ ...view(), index: isNeighbour ? Math.abs(index - 1) : index }),
    () => sequence === 0,
  );
}

start();
