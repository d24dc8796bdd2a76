import { readColours } from '/bench/colours.js';
import { byId, make, setText } from '/bench/dom.js';
import { loadChoice, saveChoice } from '/bench/draft.js';
import { createMeasures } from '/bench/measures.js';
import { createServer } from '/bench/requests.js';
import { savePicture } from '/bench/save-picture.js';
import { createAsking } from './asking.js';
import { drawFell } from './fell.js';
import { createFront, drawFrontTable } from './front.js';
import { createJob } from './job.js';
import { loadMatch, saveMatch, visitor } from './kept.js';
import { createRows } from './rows.js';

/**
 * The match: a question about a stock, a job that looks for the answer, and the answer.
 *
 * How a test tells where the page is: `document.documentElement.dataset.match` is idle, working,
 * shown, stopped or failed; `dataset.ready` is set once the page can be used.
 */

const DESK = window.matchMedia('(min-width: 1200px)');
const PHONE = window.matchMedia('(max-width: 719px)');

const root = document.documentElement;
const data = JSON.parse(byId('match-data').textContent);
const server = createServer();
let measures = createMeasures(data.measures, loadChoice('measures', ['metric', 'imperial']) ?? 'metric');
let colours = readColours();
const kept = loadMatch();
let { job = null, found = null, askedFor = null, foundFor = null } = kept;

const front = createFront(byId('front-view'));
const rows = createRows({
  colours: () => colours,
  measures: () => measures,
  onBench: (address) => location.assign(address),
});
// A rider named in the address comes before the one of this tab's last question.
const isNamed = new URLSearchParams(location.search).has('case');
const asking = createAsking({
  data,
  server,
  measures: () => measures,
  kept: isNamed && kept.asking?.case !== data.case ? null : kept.asking ?? null,
  onChange() {
    drawStale();
    keep();
  },
});
const jobs = createJob({
  server,
  onJob(name) {
    job = name;
    keep();
  },
  onFound(answer) {
    found = answer;
    foundFor = askedFor;
    rows.forget();
    draw();
    keep();
    const { metric } = found;
    setText(byId('announcer'), metric.rows.length === 0 ? metric.words[0]
      : `${metric.rows.length} setups are shown. ${metric.words[0]}`);
    byId('result').scrollIntoView({ block: 'nearest' });
  },
});

function keep() {
  saveMatch({ asking: asking?.state(), job, found, askedFor, foundFor });
}

function drawStale() {
  if (found !== null && foundFor !== null) {
    byId('stale').hidden = JSON.stringify(asking.state()) === foundFor.state;
  }
}

function draw() {
  byId('before').hidden = found !== null;
  byId('result').hidden = found === null;
  if (found === null) {
    return;
  }
  const answer = found[measures.system];
  const { asked } = answer;
  setText(byId('result-for'),
    `${answer.name}, ${answer.stock_name}, ${measures.text(asked.from_kmh, 'km/h', 0)} to `
    + `${measures.withUnit(asked.to_kmh, 'km/h', 0)}, feet moved up to `
    + `${measures.withUnit(asked.feet_reach_mm, 'mm')}.`);
  const words = [...answer.words, ...found.remarks];
  byId('result-words').replaceChildren(...words.map((text, i) =>
    make('p', i === 0 ? { class: answer.rows.length === 0 ? 'headline none-passed' : 'headline' } : {}, text)));
  rows.draw(found);
  byId('front').hidden = answer.front.points.length === 0;
  if (answer.front.points.length > 0) {
    drawFrontTable(answer, measures);
    front.draw({ answer, measures, colours });
  }
  drawFell(answer);
  byId('minds').replaceChildren(...answer.cautions.map((text) => make('li', {}, text)));
  drawStale();
}

byId('asking').addEventListener('submit', async (event) => {
  event.preventDefault();
  const problems = byId('start-problems');
  problems.replaceChildren();
  await asking.loaded();
  const question = asking.question();
  if (question === null) {
    problems.append(make('p', {}, 'Choose a rider and a stock first.'));
    return;
  }
  askedFor = { state: JSON.stringify(asking.state()) };
  const wrong = await jobs.start({ ...question, visitor: visitor() });
  problems.replaceChildren(...wrong.map((text) => make('p', {}, text)));
  if (wrong.length === 0 && !DESK.matches) {
    byId('job').scrollIntoView({ block: 'center' });
  }
});

document.querySelectorAll('input[name=measures]').forEach((input) => {
  input.checked = input.value === measures.system;
  input.addEventListener('change', () => {
    saveChoice('measures', input.value);
    measures = createMeasures(data.measures, input.value);
    asking.renew();
    draw();
  });
});
document.querySelectorAll('[data-save]').forEach((button) =>
  button.addEventListener('click', () =>
    savePicture(front.svg, `${found[measures.system].name} trade-off`, button.dataset.kind)));

function renewColours() {
  colours = readColours();
  draw();
}

PHONE.addEventListener('change', renewColours);
new MutationObserver(renewColours).observe(root, { attributes: true, attributeFilter: ['data-theme'] });
DESK.addEventListener('change', unfold);

/** On a desk the wishes stand open beside what was found. */
function unfold() {
  byId('wishes-fold').open = DESK.matches;
}

unfold();
draw();
root.dataset.match = found === null ? 'idle' : 'shown';
if (job !== null) {
  jobs.follow(job);
}
asking.loaded().then(() => (root.dataset.ready = ''));
