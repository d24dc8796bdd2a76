import { speedAxis } from './axes.js';
import { CurvePanel } from './curve-panel.js';
import { box, overlap } from './geometry.js';
import { pointWords, quantityOf } from './quantities.js';
import { lineWords } from './kept-marks.js';
import { caption } from './side-labels.js';
import { speedHandle } from './speed-handle.js';
import { SpeedMarks, marksWords } from './speed-marks.js';
import { Label, add, labelWidth, root, set, textWidth } from './svg.js';
import { watchSize, whenAtRest } from './watch.js';

/**
 * Quantities against speed on one shared axis, with one upright line at the chosen speed that
 * finger, pointer and keys move.
 */

export { QUANTITIES } from './quantities.js';

const LINE = 1.22;
const EDGE = 6;

/** From this width on there is a margin at the right for the lines' names [px]. */
const NAMES_FROM = 460;

/** Lines for the words of the marks, held free so that nothing moves when they come. */
const MARK_ROWS = 3;
const MARK_ROWS_NARROW = 4;

/** The longest number of an upright axis. */
const LONGEST_TICK = '00000';

const FALLBACK_HEIGHT = 220;

const NOTHING_KEPT = [];

/** What the letters of a saved picture mean. */
function keptWords(kept, nameOf) {
  return kept
    .map((entry) => `${entry.letter}${entry.isReference ? ' (dotted)' : ''}: ${nameOf(entry)}`)
    .join('. ');
}

/**
 * Curves in a host element.
 *
 * @param {HTMLElement} host whose size the page's style sheet gives
 * @param {function(number): void} onSpeed called with the index of the point that was chosen
 * @returns {{svg: SVGElement, handle: HTMLElement, draw: function(Object): void,
 *     close: function(): void}} `draw` takes `{reply, index, kept, nameOf, quantities, measures,
 *     colours}`; `quantities` is a list of ids of {@link QUANTITIES}, one or more; `kept` is a list
 *     of setups to draw beside the reply's (`kept.js`), the same list until one of them changes,
 *     and `nameOf` says what each is called
 */
export function createCurves(host, onSpeed) {
  const curves = new Curves(host, onSpeed);
  const size = watchSize(host, FALLBACK_HEIGHT, () => curves.redraw());
  curves.size = size;
  return {
    svg: curves.svg,
    handle: curves.handle.element,
    draw(state) {
      curves.state = state;
      curves.draw(state);
    },
    close: () => size.close(),
  };
}

class Curves {
  constructor(host, onSpeed) {
    const { svg, title, description } = root(host, 'curves');
    this.svg = svg;
    this.surface = add(svg, 'rect', { x: 0, y: 0, class: 'pic-surface' });
    this.panelLayer = add(svg, 'g');
    this.panels = [];
    this.axisTicks = add(svg, 'path', { class: 'pic-axis', fill: 'none', 'stroke-width': 1 });
    const stems = add(svg, 'g');
    this.axisLayer = add(svg, 'g');
    this.speedMarks = new SpeedMarks(add(svg, 'g'), stems);
    this.tickLabels = [];
    this.wishLabel = new Label(this.axisLayer, 'wish-speed');
    this.speedLabel = new Label(this.axisLayer, 'speed');
    this.handle = speedHandle(host, onSpeed);
    this.rest = whenAtRest(title, description);
  }

  redraw() {
    if (this.state) {
      this.draw(this.state);
    }
  }

  draw(state) {
    const { reply, index, kept = NOTHING_KEPT, nameOf, measures, colours } = state;
    this.plan(state);
    this.shown.forEach((panel) => panel.mark(index));
    this.speeds(index, reply, measures, colours);
    this.handle.update(reply, index, this.axis, measures);
    const speed = measures.withUnit(reply.points[index].speed_kmh, 'km/h', 0);
    set(this.svg, { 'data-speed': speed, 'data-caption': caption(reply, speed, keptWords(kept, nameOf)) });
    this.rest(() => [
      `${this.quantities.map((one) => one.title).join('; ')} of ${reply.name} against speed`,
      this.describe(state),
    ]);
  }

  /** All that does not depend on the chosen speed, anew only where something of it changed. */
  plan({ reply, kept = NOTHING_KEPT, quantities, measures, colours, envelope = null }) {
    const { width, height } = this.size;
    const key = [
      reply, kept, measures, colours, width, height, quantities.join(), envelope];
    if (this.key && key.every((part, i) => part === this.key[i])) {
      return;
    }
    this.key = key;
    const line = LINE * colours.size;
    set(this.svg, {
      width, height, viewBox: `0 0 ${width} ${height}`,
      'font-family': colours.font, 'font-size': colours.size,
      'data-ground': colours.ground, 'data-ink': colours.ink,
    });
    set(this.surface, { width, height, fill: colours.surface });
    this.quantities = quantities.map((id) => quantityOf(id, reply));
    const left = EDGE + 6 + textWidth(LONGEST_TICK, colours);
    const names = this.quantities.flatMap((one) => one.lines.map(({ name }) => name));
    const margin = width >= NAMES_FROM
      ? 12 + Math.max(...names.map((name) => textWidth(name, colours)))
      : Math.max(kept.length > 0 ? 12 + textWidth('A', colours) : EDGE,
        textWidth('00', colours) / 2);
    const right = width - margin - EDGE;
    this.axis = speedAxis(reply.points, left, right, measures, colours.size);
    const title = line + 6;
    // Half a line for the lowest number of the upright axis, which stands lower than the plot.
    const rows = width >= NAMES_FROM ? MARK_ROWS : MARK_ROWS_NARROW;
    const foot = (1.5 + rows) * line + 3;
    const count = this.quantities.length;
    const each = (height - foot - 2) / count - title - (count > 1 ? 0.45 * line : 0);
    const sheet = {
      reply, kept, measures, colours, line, axis: this.axis, right: width - 3,
    };
    while (this.panels.length < count) {
      this.panels.push(new CurvePanel(this.panelLayer));
    }
    let y = 2;
    this.shown = this.panels.slice(0, count);
    this.panels.forEach((panel, i) => {
      if (i >= count) {
        panel.hide();
        return;
      }
      panel.plan(sheet, this.quantities[i], box(left, y + title, right - left, Math.max(20, each)));
      y += title + each + 0.45 * line;
    });
    const last = this.shown[count - 1].plot;
    this.bottom = last.y + last.height;
    this.line = line;
    set(this.axisTicks, {
      d: this.axis.ticks.map(({ x }) => `M${x.toFixed(1)} ${this.bottom}v4`).join(''),
      stroke: colours.edge,
    });
    this.speedMarks.draw(envelope, {
      axis: this.axis, colours, measures, line, rows, width, axisY: this.bottom,
      top: this.bottom + 1.5 * line + 4,
    });
    this.handle.cover(left, this.shown[0].plot.y, right - left, this.bottom - this.shown[0].plot.y);
  }

  /** Numbers under the axis; the chosen speed's drives away what it would cover. */
  speeds(index, reply, measures, colours) {
    const { axis, line } = this;
    const y = this.bottom + 0.5 * line + 2 + 0.79 * line;
    const unit = measures.symbol('km/h');
    const taken = [];
    const put = (label, words, symbol, middle, hue) => {
      const width = labelWidth(words, symbol, colours);
      const x = Math.max(3, Math.min(this.size.width - 3 - width, middle - width / 2));
      const room = box(x, y - line, width, line);
      if (taken.some((other) => overlap(room, other, 5))) {
        label.hide();
        return;
      }
      taken.push(room);
      label.show(x, y, 'start', words, symbol, hue, colours);
    };
    const kmh = reply.points[index].speed_kmh;
    put(this.speedLabel, measures.text(kmh, 'km/h', 0), unit, axis.x(kmh), colours.action);
    if (axis.holds(reply.wished_speed_kmh)) {
      put(this.wishLabel, 'wish', '', axis.x(reply.wished_speed_kmh), colours.muted);
    } else {
      this.wishLabel.hide();
    }
    axis.ticks.forEach(({ text, x }, i) => {
      this.tickLabels[i] ??= new Label(this.axisLayer, 'tick-speed');
      put(this.tickLabels[i], text, '', x, colours.muted);
    });
    this.tickLabels.slice(axis.ticks.length).forEach((label) => label.hide());
  }

  describe({ reply, index, kept = NOTHING_KEPT, nameOf, measures, envelope = null }) {
    const at = (kmh) => measures.withUnit(kmh, 'km/h', 1);
    const even = reply.even_feet_speeds.map(({ speed_kmh: kmh }) => at(kmh));
    const window = reply.rideable_from_kmh === null ? 'No speed is inside every limit.'
      : `Inside every limit from ${at(reply.rideable_from_kmh)} to ${at(reply.rideable_to_kmh)}.`;
    return [
      `The upright line stands at ${pointWords(reply.points[index], measures)}.`,
      window,
      even.length ? `Even feet at ${even.join(' and ')}.` : 'Even feet at no speed.',
      `Level at ${reply.level_speed_kmh === null ? 'no speed' : at(reply.level_speed_kmh)}.`,
      `Wished: ${at(reply.wished_speed_kmh)}.`,
      marksWords(envelope, measures),
      ...kept.map((entry) => `${entry.letter}, ${lineWords(entry)}: ${nameOf(entry)}.`),
    ].filter((words) => words !== '').join(' ');
  }
}
