import { createAnnouncer } from './announce.js';
import { createAsking } from './asking.js';
import { byId, keepChildren, make, setAttribute, setText } from './dom.js';
import { fixed } from './measures.js';
import { createClock } from './play-clock.js';
import { createPlay } from './play.js';
import { createPlayPicture } from './play-picture.js';
import { playTable } from './play-series.js';
import { createPlayTraces } from './play-traces.js';
import { createTable } from './tables.js';

/**
 * "What if": one of a few things done to the case at the speed looked at, played as a moving picture
 * to scale with its numbers against time below. It is asked for while it stands open: at once where
 * a person opened it or chose a play, otherwise once nothing has moved for a while. What is shown
 * goes when the case or the speed changes.
 *
 * For tests: `document.documentElement.dataset.play` is `shown` while the page shows one.
 */

const REST_MS = 600;

/** Who waits longer than this is told so [ms]. */
const PATIENCE_MS = 300;

/** A shorter play is over before it is seen: it starts at quarter speed unless a person chose [s]. */
const SHORT_S = 1;

/** How far the buttons beside the moment go [s]. */
const NUDGE_S = 0.1;

const STILL = window.matchMedia('(prefers-reduced-motion: reduce)');

/**
 * @param {Object} parts
 * @param {function(Object, AbortSignal): Promise<Object>} parts.ask sends a question
 * @param {function(): Object|null} parts.question the question for what is shown, to which play and
 *     speed are added; null while that is not what stands in the fields
 * @param {function(): Object} parts.view `{reply, index, measures, colours, rider}`; the rider's
 *     `{height, posture}`, stature in metres
 * @returns {{draw: function(): void, forget: function(): void, pictures: Object}} `draw` follows
 *     what the page shows
 */
export function createWhatIf({ ask, question, view }) {
  const section = byId('what-if');
  const toggle = byId('what-if-toggle');
  const result = byId('play-result');
  const announce = createAnnouncer(byId('play-announcer'));
  const table = createTable(byId('play-table'));
  const clock = createClock(showMoment);
  const picture = createPlayPicture(byId('play-view'));
  const traces = createPlayTraces(byId('traces-view'), clock.seek);
  let play = null;
  let drawn = null;
  let isFresh = false;
  let patience = 0;
  let isRateChosen = false;

  const isOpen = () => !section.hidden;
  const chosen = () => document.querySelector('input[name=play]:checked');
  const nameOf = (input) => input.parentElement.textContent.trim();
  const speedKmh = () => {
    const { reply, index } = view();
    return reply.points[index].speed_kmh;
  };

  const asking = createAsking({
    flag: 'play',
    restMs: REST_MS,
    lost: 'The answer could not be had just now; it is asked for again.',
    ask,
    question() {
      const asked = isOpen() ? question() : null;
      return asked && { ...asked, speed_kmh: speedKmh(), play: chosen().value };
    },
    standsOn() {
      const { reply } = view();
      return [reply.case_digest, reply.sections, reply.measures, speedKmh(), chosen().value].join();
    },
    isAnswer: (answer) => answer.outcome !== undefined,
    onAnswer: take,
  });

  function take(answer, why) {
    result.classList.toggle('waiting', answer === null);
    setAttribute(result, 'aria-busy', String(answer === null));
    setText(byId('play-said'), why);
    clearTimeout(patience);
    if (answer === null) {
      clock.pause();
      patience = setTimeout(sayWaiting, PATIENCE_MS);
      return;
    }
    const begins = isFresh;
    const from = isFresh || play === null ? 0 : clock.s;
    isFresh = false;
    result.hidden = false;
    writeWords(answer);
    play = answer.outcome === 'played' ? createPlay(answer) : null;
    byId('play-shown').hidden = play === null;
    drawn = null;
    drawPlay();
    clock.load(play?.lastS ?? 0, from);
    if (begins && play !== null) {
      setRate();
      if (!STILL.matches) {
        clock.play();
      }
    }
    announce(() => (isOpen() ? [nameOf(chosen()), ...answer.words].join('. ') : ''));
  }

  function setRate() {
    if (!isRateChosen) {
      const value = play.lastS < SHORT_S ? '0.25' : '1';
      document.querySelector(`input[name=play-rate][value='${value}']`).checked = true;
      clock.setRate(Number(value));
    }
  }

  function sayWaiting() {
    if (isOpen() && question() !== null && byId('play-said').textContent === '') {
      setText(byId('play-said'), 'Working it out');
    }
  }

  function writeWords({ words, end, marks = [], waves, outcome }) {
    keepChildren(byId('play-words'), words.map(together), () => make('p'), setText);
    // That the time ran out is no moment to look at.
    const ended = outcome === 'played' && end.code !== 'ran_out' ? [end] : [];
    const moments = [...marks, ...ended];
    keepChildren(byId('play-marks'), moments, markRow, (row, { at_s: s, words: said }) => {
      const [button, text] = row.children;
      setText(button, `${fixed(s, 2)} s`);
      setAttribute(button, 'aria-label', `${fixed(s, 2)} seconds: ${said} Show that moment`);
      button.onclick = () => clock.seek(s);
      setText(text, together(said));
    });
    byId('play-moments').hidden = moments.length === 0;
    setText(byId('play-note'), waves?.note ?? '');
  }

  /** Pictures and table, anew where something of them changed. */
  function drawPlay() {
    const { reply, measures, colours, rider } = view();
    const key = [play, measures, colours];
    if (play === null || (drawn !== null && key.every((part, i) => part === drawn[i]))) {
      return;
    }
    drawn = key;
    const name = nameOf(chosen());
    const standsMm = play.each('foot_pressure_ahead_of_mast_mm')[0];
    const shared = { play, craft: reply.craft, measures, colours, name, of: reply.name };
    picture.plan({ ...shared, rider: { ...rider, standsMm } });
    traces.plan(shared);
    showMoment(clock.s, false);
    const { heads, rows } = playTable(play, measures);
    table(`${name}: the numbers behind the picture`, heads, rows);
  }

  function showMoment(s, runs) {
    if (play === null || drawn === null) {
      return;
    }
    const moment = play.at(s);
    picture.show(moment);
    traces.show(moment, runs);
    setText(byId('play-time'), s.toFixed(2));
    setText(byId('play-word'), runs ? 'Pause' : 'Play');
    setAttribute(byId('play-icon'), 'href', runs ? '#icon-pause' : '#icon-play');
    byId('play-back').disabled = s <= 0;
    byId('play-on').disabled = s >= play.lastS;
  }

  function open(opens) {
    section.hidden = !opens;
    setAttribute(toggle, 'aria-expanded', String(opens));
    document.body.classList.toggle('with-play', opens);
    if (opens) {
      isFresh = true;
      asking.now();
      section.scrollIntoView({ block: 'nearest', behavior: STILL.matches ? 'auto' : 'smooth' });
    } else {
      asking.forget();
      toggle.focus();
    }
  }

  toggle.addEventListener('click', () => open(!isOpen()));
  byId('what-if-close').addEventListener('click', () => open(false));
  document.querySelectorAll('input[name=play]').forEach((input) =>
    input.addEventListener('change', () => {
      isFresh = true;
      asking.now();
    }),
  );
  document.querySelectorAll('input[name=play-rate]').forEach((input) =>
    input.addEventListener('change', () => {
      isRateChosen = true;
      clock.setRate(Number(input.value));
    }),
  );
  byId('play-toggle').addEventListener('click', clock.toggle);
  byId('play-back').addEventListener('click', () => clock.seek(clock.s - NUDGE_S));
  byId('play-on').addEventListener('click', () => clock.seek(clock.s + NUDGE_S));

  return {
    draw() {
      if (isOpen()) {
        asking.want();
        drawPlay();
      }
    },
    forget: asking.forget,
    pictures: {
      play: { svg: picture.svg, name: () => nameOf(chosen()) },
      traces: { svg: traces.svg, name: () => `${nameOf(chosen())} traces` },
    },
  };
}

/** A sentence whose numbers keep their units on their line. */
function together(words) {
  return words.replace(/(\d) (?=(mm|s|km\/h|in|mph|%)(?!\w))/g, '$1\u00A0');
}

function markRow() {
  return make('li', {}, make('button', { type: 'button', class: 'button quiet' }), make('span'));
}
