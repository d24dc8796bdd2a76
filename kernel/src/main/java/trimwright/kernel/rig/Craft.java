package trimwright.kernel.rig;

import java.util.List;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.surface.LatticeSize;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.WingShape;

/**
 * Everything of a case that is not flow about a lifting surface: where the wings stand, weights,
 * buoyancy, and the drags of mast, fuselage, pod and corners. Forces are in water axes with moments
 * about the datum.
 *
 * <p>Left out: the slipstream of the propeller, the moment of the slender bodies at an angle (about
 * 2 mm of foot-pressure position at 3 degrees on the example case), side forces.
 *
 * <p>Immutable; may be shared between threads.
 */
public final class Craft {
  /** Standard gravity, 3rd CGPM 1901 [m/s²]. */
  public static final double GRAVITY = 9.80665;

  /**
   * Area of a strut's or wing's outline over chord times thickness: NACA 4-digit thickness form,
   * integrated [1].
   */
  private static final double OUTLINE_FULLNESS = 0.685;

  /** Centroid of that outline behind the nose [chords]. */
  private static final double OUTLINE_CENTROID = 0.42;

  /** Volume of a rounded pod or fuselage over its cylinder. Chosen. */
  private static final double BODY_FULLNESS = 0.9;

  private final RideCase rideCase;
  private final Deck deck;
  private final List<PlacedWing> wings;
  private final Moments weights;

  /** Of them what hangs below the board. */
  private final Moments foil;

  private final Moments buoyancy;

  /** Drag areas of the corners of mast and wings with the fuselage, where they are [m²]. */
  private final Moments corners;

  /** Drag area of the corners of mast and pod [m²]. */
  private final double podCorners;

  private final double podAhead;
  private final Attitude rake;

  private final ModelFactors factors;

  /**
   * The craft of a case.
   *
   * @param rideCase the case
   */
  public Craft(RideCase rideCase) {
    this(rideCase, LatticeSize.FRONT_WING, LatticeSize.STABILIZER);
  }

  /**
   * The craft of a case with a chosen lattice.
   *
   * @param rideCase the case
   * @param frontWing how finely the front wing is divided
   * @param stabilizer how finely the stabilizer is divided
   */
  public Craft(RideCase rideCase, LatticeSize frontWing, LatticeSize stabilizer) {
    this(rideCase, frontWing, stabilizer, ModelFactors.NONE);
  }

  private Craft(
      RideCase rideCase, LatticeSize frontWing, LatticeSize stabilizer, ModelFactors factors) {
    this.rideCase = rideCase;
    this.factors = factors;
    Setup s = rideCase.setup();
    Fuselage f = s.fuselage();
    deck = Deck.of(s);
    rake = Attitude.of(s.mast().rake());
    podAhead = s.drive().isPresent() ? s.podAhead() : 0;
    wings =
        List.of(
            new PlacedWing(
                s.frontWing().shape(),
                f.frontWingAhead(),
                s.frontWing().height(),
                s.frontWing().setting(),
                frontWing),
            new PlacedWing(
                s.stabilizer().shape(),
                -f.stabilizerBehind(),
                s.stabilizer().height(),
                s.stabilizer().setting() + s.shim(),
                stabilizer));
    foil = CraftMasses.foil(s);
    weights = CraftMasses.onDeck(s, deck).plus(foil);
    buoyancy = submerged(s);
    Mast m = s.mast();
    double mastCorner = MastDrag.junction(m.chord(), m.thickness());
    Moments sum = Moments.NONE.plus(mastCorner, 0, 0);
    for (PlacedWing w : wings) {
      Station root = w.shape().stations().get(0);
      double corner =
          MastDrag.junction(root.chord(), root.chord() * root.section().shape().thickness());
      // One on either side of the fuselage.
      sum = sum.plus(2 * corner, w.ahead(), w.above());
    }
    corners = sum;
    // The mast goes in above the pod and comes out below it.
    podCorners = 2 * mastCorner;
  }

  /**
   * The same craft with parts of the model changed.
   *
   * @param changed what each is multiplied by
   * @return the craft
   */
  public Craft with(ModelFactors changed) {
    return new Craft(rideCase, wings.get(0).size(), wings.get(1).size(), changed);
  }

  /**
   * The same craft flown at another depth.
   *
   * @param immersion depth of the front wing's root quarter chord [m]
   * @return the craft
   */
  public Craft at(double immersion) {
    return new Craft(
        rideCase.withImmersion(immersion), wings.get(0).size(), wings.get(1).size(), factors);
  }

  /**
   * The same craft in another wind.
   *
   * @param headWind [m/s], positive against the rider
   * @return the craft
   */
  public Craft withHeadWind(double headWind) {
    return new Craft(
        rideCase.withHeadWind(headWind), wings.get(0).size(), wings.get(1).size(), factors);
  }

  /** Half way between the wings: a fuselage overhangs both about alike. */
  static double fuselageMiddle(Fuselage f) {
    return 0.5 * (f.frontWingAhead() - f.stabilizerBehind());
  }

  private Moments submerged(Setup s) {
    Fuselage f = s.fuselage();
    double body = f.volume() > 0 ? f.volume() : cylinder(f.diameter(), f.length());
    Moments sum = Moments.NONE.plus(body, fuselageMiddle(f), 0);
    sum = plusWing(sum, s.frontWing(), wings.get(0));
    return plusWing(sum, s.stabilizer(), wings.get(1));
  }

  /** How high the pod's middle stands above the datum, in water axes [m]. */
  double podAbove(Attitude at) {
    return rideCase.setup().drive().orElseThrow().heightAboveFuselage() * at.cos()
        + podAhead * at.sin();
  }

  /**
   * Share of the pod under water [1]: level with the surface half, so that no force jumps with the
   * pitch.
   */
  double podWet(Attitude at, double datumDepth) {
    double deep = datumDepth - podAbove(at);
    double diameter = rideCase.setup().drive().orElseThrow().diameter();
    return Math.max(0, Math.min(1, 0.5 + deep / diameter));
  }

  /** How far the pod stands ahead of the datum in foil axes [m]; 0 without a drive. */
  public double podAhead() {
    return podAhead;
  }

  private static Moments plusWing(Moments sum, FittedWing wing, PlacedWing placed) {
    WingShape shape = wing.shape();
    double computed = 0;
    double ahead = 0;
    double above = 0;
    for (int i = 1; i < shape.stations().size(); i++) {
      Station a = shape.stations().get(i - 1);
      Station b = shape.stations().get(i);
      double full = shape.span() * (b.fraction() - a.fraction()) * OUTLINE_FULLNESS;
      // Simpson's rule: exact for the cubics that linear chord, thickness and place make.
      for (int part = 0; part <= 2; part++) {
        double t = 0.5 * part;
        double chord = mix(t, a.chord(), b.chord());
        double thickness = mix(t, a.section().shape().thickness(), b.section().shape().thickness());
        double v = full * (part == 1 ? 4 : 1) / 6 * thickness * chord * chord;
        computed += v;
        ahead += v * (mix(t, a.ahead(), b.ahead()) + (0.25 - OUTLINE_CENTROID) * chord);
        above += v * mix(t, a.above(), b.above());
      }
    }
    double volume = wing.volume() > 0 ? wing.volume() : computed;
    return sum.plus(volume, placed.ahead() + ahead / computed, placed.above() + above / computed);
  }

  private static double mix(double share, double from, double to) {
    return from + share * (to - from);
  }

  private static double cylinder(double diameter, double length) {
    return BODY_FULLNESS * Math.PI / 4 * diameter * diameter * length;
  }

  /** Drag areas of the corners of mast and wings with the fuselage, where they are [m²]. */
  Moments corners() {
    return corners;
  }

  /** What parts of the model are multiplied by. */
  public ModelFactors factors() {
    return factors;
  }

  /** Drag area of the corners of mast and pod [m²]. */
  double podCorners() {
    return podCorners;
  }

  /** The case. */
  public RideCase rideCase() {
    return rideCase;
  }

  /** The deck. */
  public Deck deck() {
    return deck;
  }

  /** Front wing and stabilizer where they stand, in this order. */
  public List<PlacedWing> wings() {
    return wings;
  }

  /** Mass of board, battery and foil [kg]. */
  public double partsMass() {
    return weights.amount();
  }

  /**
   * Moment of inertia of board, battery and foil about the datum.
   *
   * @return [kg·m²]
   */
  public double partsInertia() {
    return CraftMasses.inertia(rideCase.setup(), deck);
  }

  /** Mass of what moves against the mast with its track: board and battery [kg]. */
  public double massOnDeck() {
    Setup s = rideCase.setup();
    return s.board().mass() + s.battery().map(Battery::mass).orElse(0.0);
  }

  /** Mass of mast, drive, fuselage and wings [kg]. */
  public double foilMass() {
    return foil.amount();
  }

  /** Their mass centre ahead of the datum along the fuselage [m]. */
  public double foilMassAhead() {
    return foil.aheadMoment() / foil.amount();
  }

  /** The same above the fuselage's axis [m]. */
  public double foilMassAbove() {
    return foil.aboveMoment() / foil.amount();
  }

  /**
   * Depth of the datum below the still surface, so that the front wing's root quarter chord keeps
   * its immersion.
   *
   * @param pitch of the fuselage [rad]
   * @return depth [m]
   */
  public double datumDepth(double pitch) {
    return datumDepth(Attitude.of(pitch));
  }

  /**
   * Depth of the datum below the still surface, so that the front wing's root quarter chord keeps
   * its immersion.
   *
   * @param at of the fuselage
   * @return depth [m]
   */
  public double datumDepth(Attitude at) {
    PlacedWing front = wings.get(0);
    return rideCase.immersion() + front.ahead() * at.sin() + front.above() * at.cos();
  }

  /**
   * Length of mast under water, from the datum up, between 0 and the mast's length.
   *
   * @param at of the fuselage
   * @param datumDepth depth of the datum below the still surface [m]
   * @return length [m]
   */
  public double wettedMast(Attitude at, double datumDepth) {
    return Math.max(0, Math.min(rideCase.setup().mast().length(), datumDepth / at.cosWith(rake)));
  }

  /** The mast's rake. */
  Attitude rake() {
    return rake;
  }

  /**
   * Weights of board, battery and foil.
   *
   * @param at of the fuselage
   * @return force and moment about the datum
   */
  public PlaneForce weights(Attitude at) {
    return weights.lifted(-GRAVITY, at);
  }

  /**
   * Weights of board, battery and foil.
   *
   * @param pitch of the fuselage [rad]
   * @return force and moment about the datum
   */
  public PlaneForce weights(double pitch) {
    return weights(Attitude.of(pitch));
  }

  /**
   * Mass centre of board, battery and foil ahead of the datum, in water axes.
   *
   * @param at of the fuselage
   * @return distance [m]
   */
  public double partsAhead(Attitude at) {
    return weights.ahead(at) / weights.amount();
  }

  /**
   * The same above the datum.
   *
   * @param at of the fuselage
   * @return distance [m]
   */
  public double partsAbove(Attitude at) {
    return weights.above(at) / weights.amount();
  }

  /**
   * Buoyancy of all that is under water, the front wing at its immersion.
   *
   * @param at of the fuselage
   * @return force and moment about the datum
   */
  public PlaneForce buoyancy(Attitude at) {
    return buoyancy(at, datumDepth(at));
  }

  /**
   * Buoyancy of all of foil, mast and pod that is under water, however deep.
   *
   * @param at of the fuselage
   * @param datumDepth depth of the datum below the still surface [m]
   * @return force and moment about the datum
   */
  public PlaneForce buoyancy(Attitude at, double datumDepth) {
    Mast m = rideCase.setup().mast();
    double wetted = wettedMast(at, datumDepth);
    double perLength =
        m.volume() > 0 ? m.volume() / m.length() : OUTLINE_FULLNESS * m.chord() * m.thickness();
    double middle = 0.5 * wetted;
    Moments all = buoyancy;
    if (rideCase.setup().drive().isPresent()) {
      Drive d = rideCase.setup().drive().get();
      double pod = d.volume() > 0 ? d.volume() : cylinder(d.diameter(), d.length());
      all = all.plus(podWet(at, datumDepth) * pod, podAhead, d.heightAboveFuselage());
    }
    all = all.plus(perLength * wetted, -middle * rake.sin(), middle * rake.cos());
    return all.lifted(GRAVITY * rideCase.water().density(), at);
  }

  /**
   * Buoyancy of all that is under water.
   *
   * @param pitch of the fuselage [rad]
   * @return force and moment about the datum
   */
  public PlaneForce buoyancy(double pitch) {
    return buoyancy(Attitude.of(pitch));
  }

  /**
   * Drags of mast, spray, corners, fuselage and pod at one speed.
   *
   * @param speed [m/s]
   * @return the drags over pitch
   */
  public CraftDrags drags(double speed) {
    return new CraftDrags(this, speed);
  }

  /**
   * Drag of mast, spray, corners, fuselage and pod.
   *
   * @param pitch of the fuselage [rad]
   * @param speed [m/s]
   * @return force and moment about the datum
   */
  public PlaneForce drags(double pitch, double speed) {
    return drags(speed).at(Attitude.of(pitch));
  }

  /**
   * Drag of the air on the rider.
   *
   * @param speed over the water [m/s]
   * @return force against the direction of travel [N]; negative where a tail wind pushes
   */
  public double airDrag(double speed) {
    double apparent = speed + rideCase.headWind();
    return 0.5
        * rideCase.airDensity()
        * rideCase.rider().airDragArea()
        * apparent
        * Math.abs(apparent);
  }
}
