import { place, pose } from './geometry.js';
import { nose } from './measures.js';
import { boardEnds, playFrame } from './play-frame.js';
import { Rider, bodyAt } from './play-rider.js';
import { Water } from './play-water.js';
import { Craft } from './side-craft.js';
import { Label, add, points, root, set, show } from './svg.js';
import { watchSize, whenAtRest } from './watch.js';

/**
 * A play as a moving picture to scale: the water level and at one height, craft and rider moving in
 * it, the view going along with them. Elements are made once; a moment only writes what it moves.
 */

const FALLBACK_HEIGHT = 300;
const LINE = 1.22;

/**
 * The picture in a host element.
 *
 * @param {HTMLElement} host whose size the page's style sheet gives
 * @returns {{svg: SVGElement, plan: function(Object): void, show: function(Object): void}} `plan`
 *     takes `{play, craft, rider, measures, colours, name, of}`, names of the play and of the case;
 *     `show` takes a moment of that play
 */
export function createPlayPicture(host) {
  const picture = new PlayPicture(host);
  picture.size = watchSize(host, FALLBACK_HEIGHT, () => picture.replan());
  return {
    svg: picture.svg,
    plan: (given) => picture.plan(given),
    show: (moment) => picture.show(moment),
  };
}

class PlayPicture {
  constructor(host) {
    const { svg, title, description } = root(host, 'play');
    this.svg = svg;
    this.surface = add(svg, 'rect', { x: 0, y: 0, class: 'pic-surface' });
    this.water = new Water(svg);
    this.rider = new Rider(svg);
    this.craft = new Craft(svg, false);
    this.centre = add(svg, 'polygon', { class: 'pic-foot-pressure', 'stroke-width': 1 });
    this.labels = ['time', 'pitch', 'speed', 'water'].map((kind) => new Label(svg, kind));
    this.rest = whenAtRest(title, description);
  }

  replan() {
    if (this.given) {
      this.plan(this.given);
      if (this.moment) {
        this.show(this.moment);
      }
    }
  }

  /** What stands while one play is shown. */
  plan(given) {
    const { play, craft, rider, measures, colours } = given;
    const { width, height } = this.size;
    this.given = given;
    this.frame = playFrame(play, craft, rider, this.size);
    set(this.svg, {
      width, height, viewBox: `0 0 ${width} ${height}`,
      'font-family': colours.font, 'font-size': colours.size,
      'data-ground': colours.ground, 'data-ink': colours.ink,
      'data-pixels-per-metre': String(this.frame.perMetre),
    });
    set(this.surface, { width, height, fill: colours.surface });
    this.water.plan(play.answer.waves, this.frame, measures, colours);
    this.rider.plan(rider, this.frame, colours);
    set(this.centre, { fill: colours.ink, stroke: colours.surface });
    const crest = Math.max(0, ...play.each('water_mm')) / 1000;
    this.labels[3].show(
      6, this.frame.water - crest * this.frame.perMetre - 6, 'start',
      crest > 0 ? 'still water' : 'waterline', '', colours.muted, colours);
  }

  show(moment) {
    const { craft, rider, measures, colours, name, of } = this.given;
    const { frame } = this;
    this.moment = moment;
    const now = pose(craft, moment.deck_pitch_deg, moment.immersion_mm / 1000);
    this.water.draw(moment);
    this.rider.draw(craft, now, bodyAt(craft, now, rider, moment.body_ahead_mm), frame);
    this.craft.draw(craft, now, frame, colours, false);
    const [dx, dy] = craft.deck;
    const pressedMm = moment.foot_pressure_ahead_of_mast_mm;
    const [stern, bow] = boardEnds(craft);
    show(this.centre, pressedMm >= stern && pressedMm <= bow);
    const [x, y] = place(now, dx + pressedMm / 1000, dy);
    const px = frame.x + x * frame.perMetre;
    const py = frame.water - y * frame.perMetre;
    set(this.centre, { points: points([px, py, px - 6, py + 10, px + 6, py + 10]) });
    this.words(moment, measures, colours);
    const time = `${moment.s.toFixed(2)} s`;
    const speed = measures.withUnit(this.given.play.answer.speed_kmh, 'km/h', 0);
    set(this.svg, {
      'data-time': moment.s.toFixed(3), 'data-pitch': moment.deck_pitch_deg.toFixed(3),
      'data-immersion': moment.immersion_mm.toFixed(1),
      'data-speed': `${speed} ${time}`,
      'data-caption': `${of}: ${name}, from ${speed}, after ${time}`,
    });
    this.rest(() => [
      `${name}, from ${speed}: side view after ${time}`,
      `Deck ${nose(moment.deck_pitch_deg)}, front wing `
        + `${measures.withUnit(moment.immersion_mm, 'mm')} under water.`,
    ]);
  }

  words(moment, measures, colours) {
    const line = LINE * colours.size;
    const at = (i) => 6 + (i + 0.79) * line;
    const [time, pitch, speed] = this.labels;
    time.show(8, at(0), 'start', moment.s.toFixed(2), 's', colours.action, colours);
    pitch.show(8, at(1), 'start', nose(moment.deck_pitch_deg), '', colours.ink, colours);
    speed.show(
      8, at(2), 'start', measures.text(moment.speed_kmh_at, 'km/h', 1), measures.symbol('km/h'),
      colours.ink, colours);
  }
}
