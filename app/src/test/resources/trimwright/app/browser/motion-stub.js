/*
 * Stands in for the server's answers to "what if" where a test needs numbers of its own choosing:
 * made up, and not computed.
 */
(() => {
  const STEP = 0.02;
  const real = window.fetch;
  const series = (last, of) => {
    const all = [];
    for (let i = 0; i * STEP <= last + 1e-9; i++) {
      all.push(of(i * STEP));
    }
    return all;
  };
  const wave = { k: (2 * Math.PI) / 1.9, half: 0.05 };
  wave.omega = Math.sqrt(9.80665 * wave.k);

  function answer(asked) {
    const falls = asked.play === 'nose_drop';
    const breaches = asked.play === 'breach';
    const chop = asked.play === 'chop';
    const last = falls ? 1.24 : breaches ? 1.6 : asked.play === 'throttle_up' ? 0.5 : 3;
    const swing = (s) => (s < 0.2 ? 0 : Math.exp(-0.8 * s) * Math.sin(3.2 * (s - 0.2)));
    const grow = (s) => (s / last) ** 2;
    const sign = asked.play === 'lean_back' ? -1 : 1;
    const v = asked.speed_kmh;
    return {
      format: 'trimwright-bench-motion/1', model_version: 'stub', case_digest: '',
      sequence: asked.sequence, play: asked.play, speed_kmh: v, outcome: 'played',
      words: falls ? ['The nose goes down, and the bow touches the water after 0.9 s.',
        'The foot pressure would have to move 90 mm back within 0.3 s.']
        : ['The nose goes down 2.1° and comes back within 2 s.',
          'The speed falls by 0.6 km/h.', 'Your feet have nothing to do.'],
      end: falls ? { code: 'rider_falls', at_s: 1.24, words: 'The body is past what feet can hold.' }
        : breaches ? { code: 'wing_breaches', at_s: 1.6, words: 'The front wing leaves the water.' }
          : { code: 'ran_out', at_s: last, words: '3 s were looked at.' },
      marks: falls ? [{ at_s: 0.9, words: 'The bow touches the water.' }]
        : breaches ? [{ at_s: 1.1, words: 'A tip comes out and draws air.' }] : [],
      still_water: !chop,
      times_s: series(last, (s) => Math.round(s * 100) / 100),
      deck_pitch_deg: series(last, (s) => (
        falls ? 1 - 11 * grow(s) : breaches ? 1 + 12 * grow(s) : 1 - 4 * sign * swing(s))),
      speed_kmh_at: series(last, (s) => v - 0.6 * swing(s) + (breaches ? 3 * grow(s) : 0)),
      immersion_mm: series(last, (s) => (
        falls ? 480 + 380 * grow(s) : breaches ? 480 - 520 * grow(s) : 480 + 60 * sign * swing(s))),
      foot_pressure_ahead_of_mast_mm: series(last, (s) => 176 + (s < 0.2 ? 0 : 30 * sign)),
      thrust_n: series(last, (s) => (asked.play === 'throttle_cut' ? Math.max(0, 78 - 300 * s) : 78)),
      body_ahead_mm: series(last, (s) => (
        falls ? 620 * grow(s) : breaches ? -380 * grow(s) : 40 * sign * swing(s))),
      bow_clearance_mm: series(last, (s) => (
        falls ? 330 - 510 * grow(s) : breaches ? 330 + 670 * grow(s) : 330 - 110 * sign * swing(s))),
      water_mm: series(last, (s) => (chop
        ? 1000 * wave.half * Math.cos(wave.k * (v / 3.6) * s + wave.omega * s) : 0)),
      waves: chop ? {
        components: [{ height_mm: 100, length_mm: 1900, phase_deg: 0 }],
        note: 'Waves from ahead, by a spectrum for 0.1 m of chop.',
      } : null,
    };
  }

  window.motionAnswer = null; // What a test wants instead.
  window.fetch = async (address, given) => {
    if (!String(address).endsWith('/bench/motion')) {
      return real(address, given);
    }
    const asked = JSON.parse(given.body);
    const made = { ...answer(asked), ...(window.motionAnswer ?? {}) };
    return new Response(JSON.stringify(made), { headers: { 'Content-Type': 'application/json' } });
  };
})();
