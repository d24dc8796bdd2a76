import { pointWords } from './quantities.js';

/**
 * What lies over the curves and moves the upright line: a slider for finger, pointer and keys.
 * It speaks in places of the curve's grid, so each speed shown is one that was computed.
 */

/** Steps of PageUp and PageDown. */
const LEAP = 5;

/**
 * Makes the slider.
 *
 * @param {HTMLElement} host
 * @param {function(number): void} onSpeed called with the index of the point that was chosen
 */
export function speedHandle(host, onSpeed) {
  const element = document.createElement('div');
  element.className = 'speed-handle';
  element.tabIndex = 0;
  element.setAttribute('role', 'slider');
  element.setAttribute('aria-label', 'Speed');
  element.setAttribute('aria-orientation', 'horizontal');
  Object.assign(element.style, {
    position: 'absolute', touchAction: 'pan-y', cursor: 'ew-resize', userSelect: 'none',
  });
  host.append(element);
  const written = new Map();
  let points = [];
  let index = 0;
  let axis = null;
  let hostLeft = 0;
  let held = null;

  const choose = (wanted) => {
    const next = Math.max(0, Math.min(points.length - 1, wanted));
    if (next !== index) {
      onSpeed(next);
    }
  };
  const moveTo = (event) => choose(axis.nearest(event.clientX - hostLeft));

  element.addEventListener('pointerdown', (event) => {
    if (event.button === 0 && axis) {
      held = event.pointerId;
      hostLeft = host.getBoundingClientRect().left + host.clientLeft;
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
      ArrowRight: index + 1, ArrowUp: index + 1, ArrowLeft: index - 1, ArrowDown: index - 1,
      PageUp: index + LEAP, PageDown: index - LEAP, Home: 0, End: points.length - 1,
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

    /** Lays the slider over the plots [px in the host]. */
    cover(x, y, width, height) {
      Object.assign(element.style, {
        left: x + 'px', top: y + 'px', width: width + 'px', height: height + 'px',
      });
    },

    /** Says where the line stands. */
    update(reply, at, nextAxis, measures) {
      points = reply.points;
      index = at;
      axis = nextAxis;
      const shown = (point) => measures.text(point.speed_kmh, 'km/h', 0);
      attribute('aria-valuemin', shown(points[0]));
      attribute('aria-valuemax', shown(points[points.length - 1]));
      attribute('aria-valuenow', shown(points[at]));
      attribute('aria-valuetext', pointWords(points[at], measures));
    },
  };
}
