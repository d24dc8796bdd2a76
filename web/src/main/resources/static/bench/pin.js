import { byId, setAttribute, setText } from './dom.js';

/**
 * One state pinned as the reference. It is kept as texts, so that it outlives a reload and can be
 * asked for again in other measures; it is compared at the speed that is looked at, as the dotted
 * curve is.
 */

/** Speeds nearer than this are the same point of a grid [km/h]. */
const SAME_SPEED_KMH = 0.01;

/**
 * @param {Object} parts
 * @param {function(Object): Promise<Object>} parts.ask gives the reply to a map of texts
 * @param {function()} parts.onChange
 */
export function createPin({ ask, onChange }) {
  const button = byId('pin');
  let fields = null;
  let reply = null;
  let asked = 0;

  function show() {
    setAttribute(button, 'aria-pressed', String(fields !== null));
    setText(byId('pin-word'), fields === null ? 'Pin' : 'Unpin');
    setAttribute(
      button,
      'aria-label',
      fields === null ? 'Pin this state as the reference' : 'Unpin the reference',
    );
    onChange();
  }

  async function renew() {
    asked += 1;
    const mine = asked;
    try {
      const answer = await ask(fields);
      if (mine === asked && answer.accepted) {
        reply = answer;
        show();
      }
    } catch {
      // Without a connection there is no reference yet; the next change of measures asks again.
    }
  }

  show();
  return {
    /** Pins a state, or takes the reference away where there is one. */
    toggle(newFields, newReply) {
      asked += 1;
      const isPinned = fields !== null;
      fields = isPinned ? null : newFields;
      reply = isPinned ? null : newReply;
      show();
    },

    /** Texts of the reference, for the draft; null where there is none. */
    fields: () => fields,

    /** Asks for the reference anew: after a reload, and in other measures. */
    renew(texts = fields) {
      fields = texts;
      reply = null;
      show();
      return fields === null ? Promise.resolve() : renew();
    },

    /** What pictures and readings take: the reference at that speed [km/h]. */
    at(speedKmh) {
      if (reply === null) {
        return null;
      }
      const index = reply.points.findIndex((p) => Math.abs(p.speed_kmh - speedKmh) < SAME_SPEED_KMH);
      return index < 0 ? null : { reply, index };
    },
  };
}
