/*
 * Run by BenchPicturesTest inside the Bench: draws the page's own pictures in hosts of its own and
 * measures what the browser made of them.
 */
const done = arguments[arguments.length - 1];
(async () => {
  const at = (name) => import(`/bench/${name}.js`);
  const { createSideView } = await at('side-view');
  const { createCurves } = await at('curves');
  const { readColours } = await at('colours');
  const measuring = await at('measures');
  const saving = await at('save-picture');
  const { createPlanform } = await at('planform');
  const { tableOf } = await at('picture-table');
  const { spellOut } = await at('answer');
  const data = JSON.parse(document.getElementById('bench-data').textContent);
  spellOut(data.reply);
  const ALL = ['pitch_deg', 'foot_share', 'electric_power_w'];
  const asked = [];

  const makers = {
    side: createSideView, curves: (host) => createCurves(host, (i) => asked.push(i)),
    planform: createPlanform,
  };

  /** A picture of its own, in front of the page. */
  function picture(kind, width, height) {
    const host = document.createElement('div');
    Object.assign(host.style, {
      position: 'fixed', left: '0', top: '0', zIndex: '99', background: 'white',
      width: `${width}px`, height: `${height}px`,
    });
    document.body.append(host);
    const made = makers[kind](host);
    return { ...made, host, remove() { made.close(); host.remove(); } };
  }

  function state(index, more = {}) {
    return {
      reply: data.reply, index, pinned: null, quantities: ALL, colours: readColours(),
      measures: measuring.createMeasures(data.measures, 'metric'), ...more,
    };
  }

  const shownIn = (svg, selector) =>
    [...svg.querySelectorAll(selector)].filter((e) => e.closest('[display="none"]') === null);

  /** A text's box in its picture: its own and the shift that puts it there. */
  function placed(text) {
    const { x, y, width, height } = text.getBBox();
    const { e, f } = text.transform.baseVal.consolidate().matrix;
    return { x: x + e, y: y + f, width, height };
  }

  /** Labels as the browser drew them, in the picture's pixels. */
  function labels(svg) {
    return shownIn(svg, 'text')
      .filter((text) => text.textContent !== '')
      .map((text) => {
        const { x, y, width, height } = placed(text);
        // A line's own leading is no part of its letters.
        return { text: text.textContent, x, y: y + 0.12 * height, width, height: 0.76 * height };
      });
  }

  /** What is wrong with a picture's labels: such as lie on one another or leave it. */
  function faults(svg, where) {
    const width = Number(svg.getAttribute('width'));
    const height = Number(svg.getAttribute('height'));
    const all = labels(svg);
    const found = [];
    all.forEach((a, i) => {
      if (a.x < -0.5 || a.y < -0.5 || a.x + a.width > width + 0.5 || a.y + a.height > height + 0.5) {
        found.push(`${where}: "${a.text}" leaves the picture`);
      }
      all.slice(i + 1).forEach((b) => {
        if (a.x < b.x + b.width - 0.5 && b.x < a.x + a.width - 0.5
            && a.y < b.y + b.height - 0.5 && b.y < a.y + a.height - 0.5) {
          found.push(`${where}: "${a.text}" lies on "${b.text}"`);
        }
      });
    });
    return found;
  }

  /** Arrow heads and tails that leave a picture. */
  function strayArrows(svg, where) {
    const width = Number(svg.getAttribute('width'));
    const height = Number(svg.getAttribute('height'));
    return arrows(svg)
      .filter(({ ends }) => ends.some((v, i) => v < 0 || v > (i % 2 ? height : width)))
      .map(({ kind }) => `${where}: the arrow of ${kind} leaves the picture`);
  }

  /** Tail and head of each arrow [px]. */
  function arrows(svg) {
    return shownIn(svg, '[data-force], [data-pinned]').map((group) => {
      const shaft = group.querySelector('line');
      const head = group.querySelector('polygon').points.getItem(0);
      return {
        kind: group.dataset.force ?? group.dataset.pinned,
        ends: [shaft.x1.baseVal.value, shaft.y1.baseVal.value, head.x, head.y],
      };
    });
  }

  /** The server's answer with one field changed. */
  async function replyWith(path, value) {
    const meta = (name) => document.querySelector(`meta[name="${name}"]`).content;
    const answer = await fetch('/bench/curve', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', [meta('csrf-header')]: meta('csrf-token') },
      body: JSON.stringify({
        sequence: 1, measures: 'metric', fields: { ...data.case.fields, [path]: String(value) },
      }),
    });
    return spellOut(await answer.json());
  }

  const trimmed = data.reply.points.map((p, i) => (p.pitch_deg === null ? -1 : i)).filter((i) => i >= 0);
  const without = data.reply.points.findIndex((p) => p.pitch_deg === null);

  window.benchPictures = {
    /** Faults of both pictures at every speed, at a size, in both measures. */
    everySpeed(kind, width, height, theme, quantities) {
      const found = [];
      document.documentElement.dataset.theme = theme;
      const view = picture(kind, width, height);
      for (const system of ['metric', 'imperial']) {
        const measures = measuring.createMeasures(data.measures, system);
        const colours = readColours();
        data.reply.points.forEach((point, index) => {
          view.draw(state(index, { measures, colours, quantities }));
          const where = `${kind} ${width} px ${theme} ${point.speed_kmh} km/h ${system} ${quantities}`;
          found.push(...faults(view.svg, where), ...strayArrows(view.svg, where));
        });
      }
      view.remove();
      return found;
    },

    /** Places of the side view's words at every speed, those over the feet left out. */
    places(width, height) {
      const view = picture('side', width, height);
      const all = trimmed.map((index) => {
        view.draw(state(index));
        return shownIn(view.svg, 'text[data-label]')
          .filter((text) => !text.dataset.label.endsWith('foot-load'))
          .map((t) => `${t.dataset.label} ${t.getAttribute('transform')}`)
          .join('; ');
      });
      view.remove();
      return [...new Set(all)];
    },

    /** The side view's scale and what is drawn to it, at a speed of the list of those that trim. */
    scale(share, width, height) {
      const index = trimmed[Math.round(share * (trimmed.length - 1))];
      const view = picture('side', width, height);
      view.draw(state(index));
      const mast = view.svg.querySelector('.pic-craft .pic-mast');
      const seen = [...mast.points].map((p) => p.matrixTransform(mast.getScreenCTM()));
      const middle = (a, b) => [(a.x + b.x) / 2, (a.y + b.y) / 2];
      const [foot, head] = [middle(seen[0], seen[1]), middle(seen[2], seen[3])];
      const point = data.reply.points[index];
      const bar = view.svg.querySelector('.pic-scale');
      const words = (kind) => view.svg.querySelector(`[data-label="scale-${kind}"] tspan`).textContent;
      const result = {
        perMetre: Number(view.svg.dataset.pixelsPerMetre),
        perNewton: Number(view.svg.dataset.pixelsPerNewton),
        mastPixels: Math.hypot(head[0] - foot[0], head[1] - foot[1]),
        mastMillimetres: Number(data.case.fields['setup.mast.length_mm']),
        barPixels: Number(bar.dataset.bar), barMillimetres: Number(words('length')),
        arrowPixels: Number(bar.dataset.arrow), arrowNewtons: Number(words('force')),
        forces: arrows(view.svg).map(({ kind, ends }) => {
          const force = point.forces.find((f) => f.kind === kind);
          return {
            kind, newtons: Math.hypot(force.ahead_n, force.up_n),
            pixels: Math.hypot(ends[2] - ends[0], ends[3] - ends[1]), upPixels: ends[1] - ends[3],
          };
        }),
      };
      view.remove();
      return result;
    },

    /** What is seen of a speed without a trim. */
    noTrim() {
      if (without < 0) {
        return null;
      }
      const view = picture('side', 356, 220);
      view.draw(state(without));
      const { transform } = view.svg.querySelector('.pic-craft').attributes;
      const result = {
        arrows: arrows(view.svg).length, transform: transform.value,
        words: labels(view.svg).map(({ text }) => text).join(' '),
        reason: data.reply.points[without].reason,
      };
      view.remove();
      return result;
    },

    /** A saved picture as text, and what the parser says of it. */
    saved(kind) {
      const view = picture(kind, 356, 220);
      view.draw(state(trimmed[3]));
      const text = saving.pictureText(view.svg);
      view.remove();
      const parsed = new DOMParser().parseFromString(text, 'image/svg+xml');
      const names = new Set();
      parsed.querySelectorAll('*').forEach((e) => [...e.attributes].forEach((a) => names.add(a.name)));
      return {
        text, fault: parsed.querySelector('parsererror')?.textContent ?? '',
        attributes: [...names], root: parsed.documentElement.tagName,
        namespace: parsed.documentElement.namespaceURI,
        title: parsed.querySelector('title').textContent,
      };
    },

    /** Hands a picture to the browser as a file. */
    async save(kind, name) {
      const view = picture('side', 356, 220);
      view.draw(state(trimmed[3]));
      await saving.savePicture(view.svg, name, kind);
      view.remove();
    },

    /** The speed of a saved picture [km/h], as its name has it. */
    savedSpeed: () => Math.round(data.reply.points[trimmed[3]].speed_kmh),

    /** Numbers that do not come back as they were, over all units of the table. */
    roundTrips() {
      const lost = [];
      for (const system of ['metric', 'imperial']) {
        const measures = measuring.createMeasures(data.measures, system);
        for (const unit of Object.keys(data.measures.metric)) {
          for (const value of [0, 1, -2.5, 12.345, 1650, 0.004321, 98765]) {
            const back = measures.canonical(measures.value(value, unit), unit);
            if (Math.abs(back - value) > 1e-9 * Math.max(1, Math.abs(value))) {
              lost.push(`${system} ${unit} ${value} came back as ${back}`);
            }
            const typed = String(measures.value(value, unit));
            const wire = Number(measures.toWire(typed, unit));
            if (Math.abs(wire - value) > 1e-6 * Math.max(1e-3, Math.abs(value))) {
              lost.push(`${system} ${unit} typed ${typed} went out as ${wire}`);
            }
          }
          for (const raw of ['', 'fast', '12 mm', '1,500', '--3']) {
            if (measures.toWire(raw, unit) !== raw) {
              lost.push(`${system} ${unit} "${raw}" went out as ${measures.toWire(raw, unit)}`);
            }
          }
        }
      }
      return lost;
    },

    texts(system) {
      const measures = measuring.createMeasures(data.measures, system);
      return [
        measuring.fixed(-0.04, 1), measuring.fixed(-0.05, 1), measuring.fixed(1.005, 2),
        measuring.fixed(2.5, 0), measuring.fixed(NaN, 1), measures.withUnit(25, 'km/h'),
        measures.withUnit(254, 'mm'), measuring.nose(-0.04), measuring.nose(-1.26),
        measures.toWire('10', 'mm'), measures.toWire('0,5', '°'), measures.fromWire('254', 'mm'),
      ];
    },

    /** Curves that stay, for keys and pointer; `chosen` tells what they asked for. */
    keepCurves(width, height) {
      const view = picture('curves', width, height);
      let index = trimmed[2];
      const draw = () => view.draw(state(index));
      window.keptCurves = {
        view,
        chosen() {
          if (asked.length > 0) {
            index = asked.pop();
            asked.length = 0;
            draw();
          }
          return index;
        },
      };
      draw();
      view.handle.id = 'kept-handle';
      view.handle.focus();
      return { index, last: data.reply.points.length - 1 };
    },

    dropCurves() {
      window.keptCurves.view.remove();
    },

    /** Numbers of the upright axes while a field changes a little; one text for each change. */
    async axes(path, values) {
      const view = picture('curves', 460, 420);
      const seen = [];
      for (const value of values) {
        const reply = await replyWith(path, value);
        view.draw(state(trimmed[3], { reply }));
        seen.push(shownIn(view.svg, '[data-label="tick"]').map((t) => t.textContent).join(' '));
      }
      view.remove();
      return seen;
    },

    /** Icons of all parts in hosts of one size: their scale, and their span on the screen. */
    planforms() {
      return Object.entries(data.reply.planforms).map(([name, points]) => {
        const view = picture('planform', 96, 36);
        view.draw({ points, name, colours: readColours() });
        const { width } = view.svg.querySelector('polygon').getBBox();
        const along = points.filter((_, i) => i % 2 === (name === 'board' ? 1 : 0));
        view.remove();
        return {
          name, width, perMetre: Number(view.svg.dataset.pixelsPerMetre),
          metres: Math.max(...along) - Math.min(...along),
        };
      });
    },

    /** A reference from another rider beside the case: what is dotted, and what leaves the picture. */
    async pinned(width, height) {
      const reply = await replyWith('rider.mass_kg', 2 * Number(data.case.fields['rider.mass_kg']));
      const view = picture('side', width, height);
      const lines = picture('curves', 460, 420);
      const found = [];
      const kept = [{ letter: 'A', reply, isReference: true }];
      trimmed.forEach((index) => {
        view.draw(state(index, { pinned: { reply, index } }));
        lines.draw(state(index, { kept, nameOf: () => 'another rider' }));
        found.push(...faults(view.svg, `pinned ${index}`), ...strayArrows(view.svg, `pinned ${index}`));
        found.push(...faults(lines.svg, `pinned curves ${index}`));
      });
      const result = {
        found, arrows: shownIn(view.svg, '[data-pinned]').length,
        outlines: shownIn(view.svg, '.pic-reference polygon').length,
        curves: shownIn(lines.svg, '.pic-pinned').length,
      };
      view.draw(state(trimmed[0]));
      lines.draw(state(trimmed[0]));
      result.left = shownIn(view.svg, '[data-pinned], .pic-reference polygon').length
        + shownIn(lines.svg, '.pic-pinned').length;
      view.remove();
      lines.remove();
      return result;
    },

    table() {
      return tableOf(data.reply, measuring.createMeasures(data.measures, 'metric'));
    },
  };
  done('');
})().catch((fault) => done(String(fault.stack ?? fault)));
