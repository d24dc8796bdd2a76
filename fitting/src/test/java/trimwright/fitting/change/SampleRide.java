package trimwright.fitting.change;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.judge.RideSpan;
import trimwright.fitting.stock.Holding;
import trimwright.fitting.stock.Joint;
import trimwright.fitting.stock.Mounts;
import trimwright.fitting.stock.PartKind;
import trimwright.fitting.stock.PartState;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.wish.RidingKind;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.Wishes;
import trimwright.kernel.band.KnownBy;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.propel.Powerplant;
import trimwright.kernel.rig.Battery;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Fuselage;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;
import trimwright.kernel.surface.ResponseKey;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.SurfaceResponse;
import trimwright.kernel.surface.WingShape;
import trimwright.kernel.trim.Responses;
import trimwright.kernel.trim.SurfaceTables;
import trimwright.kernel.water.WaterModel;

/**
 * A made-up ride and parts for it.
 *
 * @param riderMass with kit [kg]
 * @param frontFoot ahead of the mast [m]; the back foot stands 0.48 m behind it
 * @param wishedSpeed [m/s]
 * @param wishedShare of the front foot [1]
 * @param wishedPitch [rad]
 * @param baseAngle of the mast [rad]
 * @param shim [rad]
 */
record SampleRide(
    double riderMass,
    double frontFoot,
    double wishedSpeed,
    double wishedShare,
    double wishedPitch,
    double baseAngle,
    double shim) {
  static final double KMH = 1 / 3.6;
  static final double DEGREE = Math.toRadians(1);

  /** Feet as wished, deck level at 25 km/h. */
  static final SampleRide LEVEL =
      new SampleRide(88, 0.435, 25 * KMH, 0.57, 0, -3 * DEGREE, 0.5 * DEGREE);

  private static final double STANCE = 0.48;

  /** Speeds at which rides are judged: fewer than usual, for quick tests. */
  private static final int SPEEDS = 4;

  /** Tables that all tests share. */
  private static final Map<ResponseKey, SurfaceResponse> KEPT = new HashMap<>();

  static final SurfaceTables TABLES =
      craft -> {
        synchronized (KEPT) {
          return KEPT.computeIfAbsent(Responses.key(craft), key -> Responses.tabulated(craft));
        }
      };

  SampleRide withBase(double other) {
    return new SampleRide(riderMass, frontFoot, wishedSpeed, wishedShare, wishedPitch, other, shim);
  }

  SampleRide withShim(double other) {
    return new SampleRide(
        riderMass, frontFoot, wishedSpeed, wishedShare, wishedPitch, baseAngle, other);
  }

  SampleRide wishing(double share, double pitch) {
    return new SampleRide(riderMass, frontFoot, wishedSpeed, share, pitch, baseAngle, shim);
  }

  RideCase ride() {
    return new RideCase(
        WaterModel.at(291.15, 2e-4),
        1.225,
        0,
        0.1,
        new Rider(
            riderMass - 6,
            6,
            1.78,
            0.5,
            frontFoot,
            frontFoot - STANCE,
            wishedSpeed,
            wishedShare,
            wishedPitch),
        setup(),
        0.45,
        OptionalDouble.empty());
  }

  private Setup setup() {
    return new Setup(
        board(1.65),
        Optional.of(new Battery(11, 7.2e6, 0.9, 0.25, 0.05)),
        mast(0.75, baseAngle),
        Optional.of(
            new Drive(0.18, 0, 0, 0.08, 0.26, 0.15, 5000, 0, 3.5, 0.1, 0, Powerplant.UNKNOWN)),
        new Fuselage(0.85, 0.032, 0.15, 0.56, 1.2, 0.1, 0),
        wing(0.9, 0.215, 0.06, "naca2412", 0, 1.6),
        wing(0.42, 0.105, 0.045, "naca0009", -2 * DEGREE, 0.3),
        shim);
  }

  static Board board(double length) {
    return new Board(14, length, 0.66, 0.12, 0.095, 0.06, 0.05, 0);
  }

  static Mast mast(double length, double baseAngle) {
    return new Mast(length, 0.12, 0.016, baseAngle, 0, 3, 0.1, 0, Finish.CLEAN);
  }

  static FittedWing wing(
      double span, double root, double tip, String section, double setting, double mass) {
    Section of = Sections.naca(section);
    List<Station> stations =
        DoubleStream.of(0, 0.25, 0.5, 0.75, 0.9, 1)
            .mapToObj(
                eta ->
                    new Station(
                        eta,
                        tip + (root - tip) * Math.sqrt(Math.max(0, 1 - eta * eta)),
                        -0.04 * eta * eta,
                        -0.02 * eta * eta,
                        -DEGREE * eta,
                        of))
            .toList();
    return new FittedWing(new WingShape(span, stations), setting, 0, mass, 0, 0, Finish.CLEAN);
  }

  RideAsked asked() {
    RideSpan about = RideSpan.about(wishedSpeed);
    return new RideAsked(
        ride(),
        new RideSpan(about.from(), about.to(), SPEEDS),
        Wishes.of(RidingKind.LINKING),
        RideAsked.USUAL_REACH,
        Posture.STANDING,
        Optional.empty());
  }

  ChangeAdvice advice() {
    return advice(asked());
  }

  /** The same asked with other wishes. */
  ChangeAdvice advice(RideAsked asked) {
    SetupChanger changer = new SetupChanger(ride(), OwnParts.NONE);
    return new ChangeSearch(
            asked, OwnParts.NONE, ChangedRide.computed(changer), TABLES, step -> {}, () -> false)
        .find();
  }

  /** What is asked by somebody who wishes for nothing but level and feet. */
  RideAsked askedForTrimAlone() {
    Wishes wishes = Wishes.of(RidingKind.LINKING);
    for (Wish wish : Wish.values()) {
      wishes = wish == Wish.LEVEL || wish == Wish.FEET ? wishes : wishes.weighing(wish, 0);
    }
    RideAsked asked = asked();
    return new RideAsked(
        asked.base(),
        asked.span(),
        wishes,
        asked.feetReach(),
        asked.posture(),
        asked.firstFlights());
  }

  static <P> StockPart<P> part(String id, PartKind kind, P piece) {
    return part(id, kind, piece, "one", 1, PartState.DEMO);
  }

  static <P> StockPart<P> part(
      String id, PartKind kind, P piece, String standard, int count, PartState state) {
    Map<Joint, Set<String>> mounts = new EnumMap<>(Joint.class);
    Joint.of(kind).forEach(joint -> mounts.put(joint, Set.of(standard)));
    return new StockPart<>(
        id,
        piece,
        new Mounts(mounts),
        new Holding(count, state, OptionalDouble.empty(), KnownBy.SHEET));
  }
}
