import { createFolds } from './folds.js';
import { createApart } from './kept-apart.js';
import { createNames } from './kept-names.js';
import { fromOutside } from './kept-outside.js';
import { createKeptPanel } from './kept-panel.js';
import { createKept } from './kept.js';

/**
 * Setups side by side: what is kept beside the one on the sliders, the panel that shows it, and what
 * a person does with it.
 *
 * @param {Object} parts
 * @param {Object} parts.server
 * @param {Object} parts.state
 * @param {Object[]} parts.list the fields as the page's data describe them
 * @param {Object<string, string>} parts.fallbacks
 * @param {MediaQueryList} parts.phone
 * @param {MediaQueryList} parts.desk
 * @param {function(): Object} parts.measures
 * @param {function(Object): Promise<Object>} parts.ask gives the answer to a map of texts
 * @param {function(): Object|null} parts.answer to what is on the sliders; null while it is on its way
 * @param {function(): string} parts.wrong why what is on the sliders cannot be used, or nothing
 * @param {function(): Object} parts.view what pictures take
 * @param {function()} parts.onTake called before a kept setup comes onto the sliders
 * @param {function(boolean)} parts.onChange told whether another one is the reference now
 */
export function createSideBySide({
  server, state, list, fallbacks, phone, desk, measures, ask, answer, wrong, view, onTake, onChange,
}) {
  const nameOf = createNames(list, fallbacks);
  let reference;

  const kept = createKept({
    ask,
    onChange() {
      const before = reference;
      reference = kept.reference()?.fields;
      onChange(reference !== before);
      apart.want();
    },
  });
  const apart = createApart({
    ask: (fields, pinned) =>
      server.json('/bench/bands', { sequence: 0, measures: measures().system, fields, pinned }),
    kept,
  });
  const folds = createFolds({ phone, desk, onKept: () => panel.draw(view()) });
  const panel = createKeptPanel({ onShow: folds.show, onPin: kept.pin, onTake: take, onRemove: remove });

  /** Keeps what is on the sliders with the answer that is shown, if that is the answer to it. */
  function keep() {
    if (wrong() !== '') {
      panel.say(`${wrong()} before this can be kept.`);
      return;
    }
    const { fields, saved } = state.now;
    const letter = kept.keep({ fields, saved, reply: answer() });
    panel.say(letter === null
      ? 'Three setups are kept. Remove one to keep another.' : `Kept as ${letter}.`);
  }

  function take(letter) {
    const { fields, saved } = kept.find(letter);
    onTake();
    state.take(fields, saved);
    panel.say(`${letter} is on the sliders. Undo brings back what was there.`);
  }

  function remove(letter) {
    const place = kept.all().findIndex((entry) => entry.letter === letter);
    kept.remove(letter);
    panel.say(`${letter} is removed.`);
    panel.focusOn(place);
  }

  return {
    keep,

    /** What the pictures take of it at a speed [km/h]. */
    at: (speedKmh) => ({
      pinned: kept.at(speedKmh),
      kept: kept.shown(),
      all: kept.all(),
      nameOf: (entry) => nameOf(entry, state.now.fields, measures()),
    }),

    draw: panel.draw,
    unfold: folds.unfold,

    /** Texts of the reference; none where nothing is kept. */
    reference: () => kept.reference()?.fields,

    renew: kept.renew,

    /** The page rests and shows its bands. */
    rest: apart.want,

    /** Something moves. */
    forget: apart.forget,

    draft: kept.draft,
    restore: kept.restore,

    /** Fetches what the address names, and what another page hands over. */
    async bring(ids) {
      const outside = await fromOutside(server, ids);
      if (outside.live !== null) {
        kept.restore([]);
        state.open(outside.live);
      }
      outside.kept.forEach((saved) => kept.keep({ fields: saved.fields, saved }));
      panel.trouble(outside.trouble);
    },
  };
}
