/**
 * What lies over the traces and moves their upright line: a slider for finger, pointer and keys.
 */

/** Steps of the arrows, and of PageUp and PageDown [s]. */
const STEP_S = 0.02;
const LEAP_S = 0.2;

/**
 * @param {HTMLElement} host
 * @param {function(number): void} onMoment called with the moment that was chosen [s]
 */
export function timeHandle(host, onMoment) {
  const element = document.createElement('div');
  element.className = 'time-handle';
  element.tabIndex = 0;
  element.setAttribute('role', 'slider');
  element.setAttribute('aria-label', 'Moment');
  element.setAttribute('aria-orientation', 'horizontal');
  element.setAttribute('aria-valuemin', '0');
  Object.assign(element.style, {
    position: 'absolute', touchAction: 'pan-y', cursor: 'ew-resize', userSelect: 'none',
  });
  host.append(element);
  const written = new Map();
  let s = 0;
  let lastS = 0;
  let width = 1;
  let left = 0;
  let held = null;

  const choose = (wanted) => onMoment(Math.max(0, Math.min(lastS, wanted)));
  const moveTo = (event) => choose(((event.clientX - left) / width) * lastS);
  /** On the grid of steps, so that as many back lead where one came from. */
  const stepped = (by) => STEP_S * Math.round(s / STEP_S) + by;

  element.addEventListener('pointerdown', (event) => {
    if (event.button === 0) {
      held = event.pointerId;
      left = element.getBoundingClientRect().left;
      element.setPointerCapture(held);
      moveTo(event);
    }
  });
  element.addEventListener('pointermove', (event) => {
    if (event.pointerId === held) {
      moveTo(event);
    }
  });
  for (const end of ['pointerup', 'pointercancel', 'lostpointercapture']) {
    element.addEventListener(end, (event) => {
      held = event.pointerId === held ? null : held;
    });
  }
  element.addEventListener('keydown', (event) => {
    const to = {
      ArrowRight: stepped(STEP_S), ArrowUp: stepped(STEP_S),
      ArrowLeft: stepped(-STEP_S), ArrowDown: stepped(-STEP_S),
      PageUp: stepped(LEAP_S), PageDown: stepped(-LEAP_S), Home: 0, End: lastS,
    }[event.key];
    if (to !== undefined && !event.altKey && !event.ctrlKey && !event.metaKey) {
      event.preventDefault();
      choose(to);
    }
  });

  const attribute = (name, value) => {
    if (written.get(name) !== value) {
      written.set(name, value);
      element.setAttribute(name, value);
    }
  };

  return {
    element,

    /** Lays the slider over the traces [px in the host], and says how long they are [s]. */
    cover(x, y, wide, high, longest) {
      width = wide;
      lastS = longest;
      attribute('aria-valuemax', longest.toFixed(2));
      Object.assign(element.style, {
        left: x + 'px', top: y + 'px', width: wide + 'px', height: high + 'px',
      });
    },

    /** Where the line stands [s]. */
    move(to) {
      s = to;
    },

    /** What it says of itself; not in every frame of a play. */
    say(words) {
      attribute('aria-valuenow', s.toFixed(2));
      attribute('aria-valuetext', words);
    },
  };
}
