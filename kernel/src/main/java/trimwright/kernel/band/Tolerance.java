package trimwright.kernel.band;

import trimwright.kernel.propel.PowerBasis;

/**
 * The table of tolerances: one standard deviation for each kind of input and each way of knowing
 * it. All are chosen unless a source stands beside them; the reasons are common workshop practice.
 *
 * <p>A rounded number spreads evenly over its last step, which is a standard deviation of the step
 * over the root of 12; a tape's hook and a round tip's end add to what its marks resolve; a
 * calliper reads 0.1 mm but is laid on by hand on curved parts; a scan is as good as the alignment
 * of its planes.
 */
enum Tolerance {
  /**
   * Spans, distances along the fuselage and the mast [m]. Sheets round to 5 or 10 mm and parts vary
   * by a few; a tape reads 1 mm and is laid on twice; callipers and scans leave the laying on.
   */
  LENGTH(4e-3, 1.5e-3, 0.5e-3, 0.5e-3),

  /** Root chord against tip chord at the same area [m]: sheets round to 5 mm. */
  CHORD(3e-3, 1.5e-3, 0.3e-3, 0.3e-3),

  /**
   * A wing's area, as a share [1]. Sheets round to 10 or 50 cm² and differ in what they count
   * (projected or along the bent surface); otherwise it follows from chords and span.
   */
  AREA(0.02, 0.012, 0.005, 0.003),

  /** Sweep and drop of a tip [m]: seldom on a sheet, guessed from a picture there. */
  TIP_PLACE(6e-3, 2e-3, 1e-3, 0.5e-3),

  /** Height of a wing or the thrust line over the fuselage's axis [m]. */
  HEIGHT(3e-3, 1.5e-3, 0.5e-3, 0.5e-3),

  /**
   * An angle at which a part sits: setting, mast base, rake, thrust line [rad]. Sheets print half
   * degrees (0.14) and seats vary (0.25). A tape tells no more: 1 mm over a stabilizer's chord is
   * half a degree. A calliper: 0.15 mm over 100 mm.
   */
  ANGLE(0.3, 0.3, 0.1, 0.05, Math.PI / 180),

  /** Twist of a tip [rad]: hardly ever on a sheet; by eye along the trailing edge. */
  TWIST(0.5, 0.5, 0.2, 0.1, Math.PI / 180),

  /** A shim's angle [rad]: printed or cut to a tenth, bedded on by hand. */
  SHIM(0.1, 0.1, 0.05, 0.05, Math.PI / 180),

  /** A section's thickness [chords]: a name rounds to whole percents, paint adds. */
  THICKNESS(0.005, 0.004, 0.001, 0.001),

  /**
   * A section's camber [chords]: a section given by name is seldom built just so; 0.2 % is a fifth
   * of a degree of zero lift. A tape tells nothing about it; a calliper a little, off a straight
   * edge.
   */
  CAMBER(0.002, 0.002, 0.001, 0.0005),

  /**
   * The mast's thickness [m]: sheets print whole millimetres and quote the thickest place; a tape
   * goes round it; a calliper reads it.
   */
  MAST_THICKNESS(0.5e-3, 0.5e-3, 0.1e-3, 0.1e-3),

  /** A part's mass, as a share [1]: rounded on a sheet, bolts and water left out. */
  MASS(0.05, 0.03, 0.03, 0.03),

  /** Mass centre of board or battery [m]: on no sheet; otherwise balanced on an edge. */
  MASS_CENTRE(25e-3, 8e-3, 8e-3, 8e-3),

  /** Where the mast stands in its track [m]: read off a scale or an edge of the box. */
  TRACK(2e-3, 1.5e-3, 0.5e-3, 0.5e-3),

  /** The rider's body [kg]: a bathroom scale, and the time of the day. */
  RIDER_MASS(1.0),

  /** What the rider wears [kg]: dry or soaked. */
  KIT_MASS(1.0),

  /** Where a foot presses against where it is said to stand [m]. */
  FOOT(10e-3),

  /** Drag area in the air, as a share [1]: from upright to crouched it varies twofold. */
  AIR_DRAG(0.2),

  /** Wind along the course [m/s]: 2 km/h, which nobody feels. */
  WIND(0.55),

  /**
   * Viscosity of the water, as a share [1]: 2 °C, at 2.5 % for each (IAPWS R12-08 between 15 and 20
   * °C), as the surface is warmer than the foil's depth.
   */
  VISCOSITY(0.05),

  /** Immersion of the front wing [m]: riders hold it within a few centimetres. */
  IMMERSION(30e-3),

  /** Drive efficiency that is estimated, as a share [1], see {@link PowerBasis#ESTIMATED}. */
  EFFICIENCY_ESTIMATED(PowerBasis.ESTIMATED.deviation()),

  /** Drive efficiency that was given, as a share [1]. */
  EFFICIENCY_GIVEN(PowerBasis.GIVEN_EFFICIENCY.deviation()),

  /** Drive efficiency by blades of a published series, as a share [1]. */
  EFFICIENCY_SERIES(PowerBasis.SERIES.deviation()),

  /** Drive efficiency by a measured propeller table, as a share [1]. */
  EFFICIENCY_OPEN_WATER(PowerBasis.OPEN_WATER.deviation()),

  /**
   * Zero-lift angle of a section by its method [rad]. Checks of six cambered sections at Reynolds
   * numbers of 6 to 9 million miss by 0.19 degrees (root mean square, largest 0.30;
   * docs/validation, c-meas-a0). Wings here run at 0.2 to 1.5 million, where no measured value is
   * in hand: 0.3.
   */
  ZERO_LIFT_CAMBERED(Math.toRadians(0.3)),

  /** The same of a thin symmetrical section [rad]: no misfit at high Reynolds numbers; chosen. */
  ZERO_LIFT_THIN_SYMMETRICAL(Math.toRadians(0.15)),

  /** Lift slope of a fitted section, as a share [1]: largest misfit of the same checks 1.7 %. */
  LIFT_SLOPE(0.015),

  /**
   * The same of a section on its layers [1]. 19 checks miss by 3.6 % (root mean square;
   * docs/validation, v-slope and its kin), nearly all of it one way: 3.2 % too steep on average, 6
   * % for cambered sections at 6 to 9 million, 1 % at a million. Not taken out, since nothing
   * measured is in hand where wings here run.
   */
  LIFT_SLOPE_LAYERS(0.036),

  /**
   * Downwash at the stabilizer, as a share [1]: the checks far behind elliptic wings are met within
   * 0.3 to 2.5 % (e-downwash), the rolling up of the wake is not in the method; chosen.
   */
  DOWNWASH(0.05),

  /**
   * Viscous drag of the wings' sections, as a share [1]: the fitted method's stated range is 15 %
   * either way ({@code ProfileDrag}). On layers the checks miss by 3.8 % (root mean square;
   * docs/validation, v-cd), by 10 % at the only one below a million: the same is kept.
   */
  SECTION_DRAG(0.075),

  /**
   * Moment of a section about its aerodynamic centre [1]: the checks of cambered sections miss by
   * up to 0.002 at Reynolds numbers of 6 to 9 million (c-meas-cm); twice as much, as wings here run
   * at a tenth of that; chosen.
   */
  SECTION_MOMENT(0.004),

  /**
   * Friction and form drag of the mast, as a share [1]: the water's own turbulence and a
   * propeller's wash move transition, which is all of the difference between the two finishes;
   * chosen, no source.
   */
  MAST_DRAG(0.12),

  /**
   * Spray, as a share [1]: measured values run from 0.24 to 0.38 of thickness squared
   * (f-spray-range). Spread evenly over that range they lie 0.08 from the 0.24 taken (root mean
   * square), which is a third of it.
   */
  SPRAY_DRAG(0.33),

  /**
   * Drag of corners, as a share [1]: by their fillets from hardly any to twice as much; chosen, no
   * source.
   */
  CORNER_DRAG(0.3),

  /**
   * Drag of fuselage and pod, as a share [1]: form factors of slender bodies are met by
   * construction (f-body), screws, gaps and a pod's blunt end are not in them; chosen, no source.
   */
  BODY_DRAG(0.15),

  /**
   * What waves do at the wings, as a share [1]: linear theory of straight lifting lines, of which
   * the checks (b-wave-drag, b-wave-wash) hold the evaluation and not the theory; measured values
   * of a wing at a finite Froude number are not in hand. Chosen, no source.
   */
  WAVES(0.2),

  /**
   * What the wake has lost, as a share [1]: the two relations carry all of the section's drag about
   * two chords behind it and three quarters at four ({@code WingWake}).
   */
  WAKE(0.2),

  /**
   * Lift limit of fitted sections, as a share [1]: stated at 12 % either way below a Reynolds
   * number of a million ({@code LiftLimit}).
   */
  LIFT_LIMIT(0.06),

  /**
   * The same of sections on their layers [1]: 12 checks miss by 9.5 % (root mean square;
   * docs/validation, v-clmax), a thin one by 22 % too much, the only one below a million by 22 %
   * too little.
   */
  LIFT_LIMIT_LAYERS(0.095),

  /**
   * The same where a wing is scuffed [1]. Layers that are tripped lose 2 % of their largest lift,
   * and tunnels with fine grit agree (v-ladson-clmax); the fitted limit of a rough nose, which
   * thickens the layers besides, lies 20 % lower at a million. Half of that way beside the above;
   * chosen.
   */
  LIFT_LIMIT_SCUFFED_LAYERS(0.14);

  private final double[] deviation;

  Tolerance(double everyWay) {
    this(everyWay, everyWay, everyWay, everyWay);
  }

  Tolerance(double sheet, double tape, double calliper, double scan) {
    this(sheet, tape, calliper, scan, 1);
  }

  Tolerance(double sheet, double tape, double calliper, double scan, double unit) {
    deviation = new double[] {sheet * unit, tape * unit, calliper * unit, scan * unit};
  }

  /** One standard deviation, in the unit of the kind. */
  double deviation(KnownBy by) {
    return deviation[by.ordinal()];
  }
}
