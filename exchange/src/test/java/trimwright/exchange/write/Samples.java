package trimwright.exchange.write;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseNotes;
import trimwright.exchange.read.Digest;
import trimwright.exchange.read.Mounting;
import trimwright.exchange.read.Posture;
import trimwright.exchange.read.Skill;
import trimwright.kernel.band.Bands;
import trimwright.kernel.band.Input;
import trimwright.kernel.band.PointBand;
import trimwright.kernel.band.Quantity;
import trimwright.kernel.band.SplitBands;
import trimwright.kernel.band.Spread;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.cause.CauseParts;
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
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.WingShape;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.EvenFeetSpeed;
import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.MomentTerms;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.SpeedInterval;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;
import trimwright.kernel.water.Water;

/**
 * Made-up cases and results. The numbers look like a ride's but obey only the laws that a writer
 * can see: legs sum to the weight, moment terms to zero.
 */
public final class Samples {
  public static final double KMH = 1 / 3.6;
  private static final double GRAVITY = 9.80665;
  private static final Section FRONT_SECTION = Sections.naca("2412");
  private static final Section BACK_SECTION = Sections.naca("0009");

  private Samples() {}

  public static CaseFile caseFile() {
    return caseFile(0.75, 0.85, true, 0.5, OptionalDouble.empty());
  }

  public static CaseFile measured(double degrees) {
    return caseFile(0.75, 0.85, true, 0.5, OptionalDouble.of(Math.toRadians(degrees)));
  }

  public static CaseFile caseFile(
      double mast,
      double fuselage,
      boolean powered,
      double shimDegrees,
      OptionalDouble measuredPitch) {
    Rider rider = new Rider(82, 6, 1.78, 0.5, 0.52, 0.04, 25 * KMH, 0.55, 0);
    WingShape front = wing(0.9, 0.215, 0.06, 0.04, 0.025, -1, FRONT_SECTION);
    WingShape back = wing(0.42, 0.105, 0.045, 0.02, 0, 0, BACK_SECTION);
    Setup setup =
        new Setup(
            new Board(14, 1.65, 0.66, 0.12, 0.095, 0.06, 0.05, 0),
            powered ? Optional.of(new Battery(11, 7.2e6, 0.8, 0.25, 0.05)) : Optional.empty(),
            new Mast(mast, 0.12, 0.016, Math.toRadians(-2.5), 0, 3, 0.1, 0, Finish.CLEAN),
            powered
                ? Optional.of(new Drive(0.18, 0, 0, 0.08, 0.26, 0.15, 5000, 0, 3.5, 0.1, 0))
                : Optional.empty(),
            new Fuselage(fuselage, 0.032, 0.15, fuselage - 0.29, 1.2, 0.1, 0),
            new FittedWing(front, 0, 0, 1.6, 0.1, 0, Finish.CLEAN),
            new FittedWing(back, Math.toRadians(-2), 0, 0.3, 0.1, 0, Finish.CLEAN),
            Math.toRadians(shimDegrees));
    RideCase rideCase =
        new RideCase(
            new Water(998.7, 1.05e-6, 2064),
            1.225,
            0,
            0.1,
            rider,
            setup,
            0.6 * mast,
            OptionalDouble.empty());
    CaseNotes notes =
        new CaseNotes(
            Skill.LINKING,
            Posture.STANDING,
            measuredPitch,
            Mounting.ABOVE,
            OptionalDouble.empty(),
            Map.of(),
            Optional.empty());
    return new CaseFile("Sample <rider> & \"board\"", Digest.of("sample"), rideCase, notes, "");
  }

  public static WingShape wing(
      double span,
      double root,
      double tip,
      double sweep,
      double drop,
      double twistDegrees,
      Section section) {
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i <= 20; i++) {
      double eta = i / 20.0;
      stations.add(
          new Station(
              eta,
              tip + (root - tip) * Math.sqrt(1 - eta * eta),
              -sweep * eta * eta,
              -drop * eta * eta,
              Math.toRadians(twistDegrees) * eta,
              section));
    }
    return new WingShape(span, stations);
  }

  /** A trim point at a speed [km/h]: nose-up when slow, more front foot when fast. */
  public static TrimPoint point(double kmh, double pitchDegrees, double share, Limit... limits) {
    double kilograms = 88;
    double lift = 121 * GRAVITY + 60;
    double feet = -kilograms * GRAVITY * (0.04 + share * 0.48);
    double lever = kilograms * GRAVITY * 0.87 * Math.sin(Math.toRadians(pitchDegrees));
    double frontWing = lift * 0.15;
    double stabilizer = 33.4;
    double rest = -(frontWing + stabilizer - 20.1 - 8.7 + 1.3 - 12.2 + 4.4 + lever);
    MomentTerms terms =
        new MomentTerms(frontWing, stabilizer, -20.1, -8.7, -12.2, rest, lever, 1.3, 4.4);
    return new TrimPoint(
        kmh * KMH,
        Math.toRadians(pitchDegrees),
        Math.toRadians(pitchDegrees + 2.5),
        share,
        0.04 + share * 0.48,
        0.04 + share * 0.48 - 0.02,
        share * kilograms,
        (1 - share) * kilograms,
        (1 - share) * 0.48,
        90 + 0.12 * kmh * kmh,
        90 + 0.12 * kmh * kmh,
        OptionalDouble.of((90 + 0.12 * kmh * kmh) * kmh * KMH / 0.5),
        lift,
        60 - 0.2 * kmh * kmh,
        feet / feet * 0.4,
        kmh * KMH * 0.1667 / 1.05e-6,
        Math.toRadians(Math.max(0.1, 9 - pitchDegrees)),
        0.031,
        -0.044,
        0.021 * 3.6,
        OptionalDouble.of(Math.toRadians(0.31) / 0.01),
        3.2e-10,
        -4.5e-11,
        2.1e-10,
        terms,
        limits.length == 0 ? Set.of() : EnumSet.copyOf(List.of(limits)));
  }

  public static TrimPoint pointAt(double kmh) {
    double pitch = 2600 / (kmh * kmh) - 3.6;
    double share = 1.15 - 330 / (kmh * kmh) - 0.008 * (kmh - 20);
    return kmh < 17
        ? point(kmh, pitch, share, Limit.STALL_MARGIN, Limit.PITCH)
        : kmh > 34 ? point(kmh, pitch, share, Limit.FOOT_SHARE) : point(kmh, pitch, share);
  }

  public static TrimOutcome outcomeAt(double kmh) {
    if (kmh < 14) {
      return new TrimOutcome.NoTrim(kmh * KMH, NoTrimReason.TOO_SLOW, Optional.empty());
    }
    if (kmh < 15) {
      return new TrimOutcome.NoTrim(kmh * KMH, NoTrimReason.STALLED, Optional.empty());
    }
    if (kmh > 38) {
      return new TrimOutcome.NoTrim(
          kmh * KMH, NoTrimReason.THRUST_SHORT, Optional.of(pointAt(kmh)));
    }
    if (kmh > 36) {
      return new TrimOutcome.NoTrim(
          kmh * KMH,
          NoTrimReason.FEET_CANNOT_REACH,
          Optional.of(point(kmh, -2, 1.12, Limit.FOOT_SHARE)));
    }
    return new TrimOutcome.Trimmed(pointAt(kmh));
  }

  public static Curve curve() {
    List<TrimOutcome> outcomes = new ArrayList<>();
    for (int kmh = 10; kmh <= 40; kmh++) {
      outcomes.add(outcomeAt(kmh));
    }
    return new Curve(
        outcomes,
        List.of(new EvenFeetSpeed(21.35 * KMH, true), new EvenFeetSpeed(33.2 * KMH, false)),
        OptionalDouble.of(26.87 * KMH),
        List.of(new SpeedInterval(17 * KMH, 34 * KMH)),
        Optional.of(new SpeedInterval(17 * KMH, 34 * KMH)));
  }

  /** The bands of a sample point: a degree of pitch, a twelfth of the load, a seventh of power. */
  public static PointBand band(TrimPoint p) {
    Map<Quantity, Spread> spreads = new EnumMap<>(Quantity.class);
    for (Quantity quantity : Quantity.values()) {
      double value = quantity.of(p);
      double effect =
          switch (quantity) {
            case PITCH, STALL_MARGIN -> Math.toRadians(0.3);
            case FOOT_SHARE -> 0.025;
            case FOOT_PRESSURE -> 0.012;
            default -> 0.04 * Math.abs(value);
          };
      spreads.put(
          quantity,
          Spread.of(
              value, Map.of(Input.STABILIZER_SETTING, effect, Input.DOWNWASH, -4 * effect / 3)));
    }
    return new PointBand(spreads);
  }

  /** The curve with bands, where there is a trim. */
  public static Bands bands(Curve curve) {
    Optional<Spread> speed = Optional.of(Spread.of(20 * KMH, Map.of(Input.MAST_BASE_ANGLE, KMH)));
    List<Optional<Spread>> even = new ArrayList<>(Collections.nCopies(1, Optional.empty()));
    even.add(speed);
    return new Bands(
        curve,
        curve.outcomes().stream().map(o -> o.findPoint().map(Samples::band)).toList(),
        curve.levelSpeed().isPresent() ? speed : Optional.empty(),
        even.subList(0, curve.evenFeetSpeeds().size()),
        curve.rideableWindow().flatMap(w -> speed),
        Optional.empty());
  }

  /** The bands of the split between 18 and 25 km/h. */
  public static SplitBands splitBands() {
    return new SplitBands(band(pointAt(18)), band(pointAt(25)));
  }

  /** A curve on which nothing trims. */
  public static Curve emptyCurve() {
    List<TrimOutcome> outcomes = new ArrayList<>();
    for (int kmh = 4; kmh <= 8; kmh++) {
      outcomes.add(new TrimOutcome.NoTrim(kmh * KMH, NoTrimReason.TOO_SLOW, Optional.empty()));
    }
    return new Curve(outcomes, List.of(), OptionalDouble.empty(), List.of(), Optional.empty());
  }

  /** No split: one speed [km/h] has no trim, and it flies from 14 km/h on. */
  public static CauseOutcome.NoSplit noSplit(double kmh, boolean wished, NoTrimReason reason) {
    Optional<TrimOutcome.NoTrim> none =
        Optional.of(
            new TrimOutcome.NoTrim(
                kmh * KMH,
                reason,
                switch (reason) {
                  case TOO_SLOW, STALLED -> Optional.empty();
                  case THRUST_SHORT -> Optional.of(point(kmh, 0, 0.5));
                  case FEET_CANNOT_REACH -> Optional.of(point(kmh, 0, 1.12));
                }));
    return new CauseOutcome.NoSplit(
        wished ? Optional.empty() : none,
        wished ? none : Optional.empty(),
        OptionalDouble.of(14 * KMH));
  }

  /** No split: too slow as ridden at 12 km/h, not the power for the 39 km/h wished for. */
  public static CauseOutcome.NoSplit bothFail() {
    return new CauseOutcome.NoSplit(
        noSplit(12, false, NoTrimReason.TOO_SLOW).ridden(),
        noSplit(39, true, NoTrimReason.THRUST_SHORT).wished(),
        OptionalDouble.of(14 * KMH));
  }

  /** A split between two points, with the sample rider's wishes. */
  public static CauseOutcome.Split split(CaseFile caseFile, TrimPoint ridden, TrimPoint wished) {
    Rider rider = caseFile.rideCase().rider();
    OptionalDouble none = OptionalDouble.empty();
    return new CauseOutcome.Split(
        ridden,
        wished,
        parts(
            ridden.pitch(), wished.pitch(), rider.wishedPitch(), caseFile.notes().measuredPitch()),
        parts(ridden.footShare(), wished.footShare(), rider.wishedFootShare(), none),
        parts(
            ridden.footPressureAheadOfMast(),
            wished.footPressureAheadOfMast(),
            rider.backFoot() + rider.wishedFootShare() * rider.stance(),
            none));
  }

  private static CauseParts parts(
      double ridden, double wished, double wanted, OptionalDouble measured) {
    return new CauseParts(
        ridden,
        wished,
        wanted,
        ridden - wished,
        wished - wanted,
        measured,
        measured.isPresent()
            ? OptionalDouble.of(measured.getAsDouble() - ridden)
            : OptionalDouble.empty());
  }
}
