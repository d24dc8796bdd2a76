/**
 * The moment of a play that is shown: moved by hand, or by the clock while it plays. Frames are
 * asked for only while it plays.
 */

/** A longer wait between two frames than this is no part of the play, such as another tab [ms]. */
const LONGEST_FRAME_MS = 100;

/**
 * @param {function(number, boolean)} onMoment called with the moment to show [s], and whether the
 *     clock runs
 */
export function createClock(onMoment) {
  let lastS = 0;
  let s = 0;
  let rate = 1;
  let frame = 0;
  let before = 0;

  function tell() {
    onMoment(s, frame !== 0);
  }

  function step(now) {
    const ms = before === 0 ? 0 : Math.min(LONGEST_FRAME_MS, now - before);
    before = now;
    s = Math.min(lastS, s + (rate * ms) / 1000);
    frame = s < lastS ? requestAnimationFrame(step) : 0;
    tell();
  }

  function pause() {
    cancelAnimationFrame(frame);
    frame = 0;
  }

  function play() {
    if (frame === 0 && lastS > 0) {
      s = s < lastS ? s : 0;
      before = 0;
      frame = requestAnimationFrame(step);
    }
  }

  return {
    /** Another play: from a moment on [s]. */
    load(nextLastS, from = 0) {
      pause();
      lastS = nextLastS;
      s = Math.max(0, Math.min(lastS, from));
      tell();
    },

    /** Plays, from the beginning where it has come to the end. */
    play() {
      play();
      tell();
    },

    /** Stands still. */
    pause() {
      pause();
      tell();
    },

    toggle() {
      (frame === 0 ? play : pause)();
      tell();
    },

    /** The hand takes over [s]. */
    seek(to) {
      pause();
      s = Math.max(0, Math.min(lastS, to));
      tell();
    },

    /** Seconds of the play in a second. */
    setRate(next) {
      rate = next;
    },

    get s() {
      return s;
    },
  };
}
