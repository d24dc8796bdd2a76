package trimwright.kernel.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Polar;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.SectionShape;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.WingShape;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.ExampleCase;
import trimwright.kernel.trim.SurfaceTables;
import trimwright.kernel.trim.TrimPoint;

class BandSolverTest {
  private static final double KMH = 1 / 3.6;
  private static final RideCase CASE = ExampleCase.PLAIN.build();
  private static final List<Double> SPEEDS = List.of(8 * KMH, 22 * KMH, 25 * KMH);

  private static Bands sheets;

  @BeforeAll
  static void solve() {
    sheets = BandSolver.of(CASE, Knowledge.SHEETS, SPEEDS, SurfaceTables.ANEW);
  }

  private static Spread spread(Bands bands, int index, Quantity quantity) {
    return bands.find(index, quantity).orElseThrow();
  }

  @Test
  void whereNothingIsTrimmedThereIsNoBand() {
    assertThat(sheets.points().get(0)).isEmpty();
    assertThat(sheets.points().get(1)).isPresent();
  }

  @Test
  void whoIsCalledAwayGetsNone() {
    int[] asked = {0};
    assertThat(
            BandSolver.find(
                CASE, Knowledge.SHEETS, SPEEDS, SurfaceTables.ANEW, () -> ++asked[0] > 3))
        .isEmpty();
    assertThat(asked[0]).isEqualTo(4);
  }

  @Test
  void theMiddleOfABandIsTheTrimItself() {
    TrimPoint point = CaseSolver.of(CASE).trim(22 * KMH).findPoint().orElseThrow();
    for (Quantity quantity : Quantity.values()) {
      Spread spread = spread(sheets, 1, quantity);
      assertThat(spread.value()).isEqualTo(quantity.of(point));
      assertThat(spread.low()).isLessThan(spread.value());
      assertThat(0.5 * (spread.low() + spread.high())).isCloseTo(spread.value(), within(1e-9));
    }
  }

  @Test
  void thePartsOfTheVarianceAddUpAndTheLargestComesFirst() {
    List<Spread.Part> parts = spread(sheets, 1, Quantity.FOOT_SHARE).parts();
    assertThat(parts.stream().mapToDouble(Spread.Part::share).sum()).isCloseTo(1, within(1e-12));
    assertThat(parts.get(0).input()).isEqualTo(Input.STABILIZER_SETTING);
  }

  @Test
  void aPartMeasuredBetterNarrowsTheBandByItsOwnShare() {
    Knowledge measured = Knowledge.SHEETS.with(Origin.STABILIZER, KnownBy.CALLIPER);
    Bands bands = BandSolver.of(CASE, measured, SPEEDS, SurfaceTables.ANEW);
    Spread before = spread(sheets, 1, Quantity.FOOT_SHARE);
    Spread after = spread(bands, 1, Quantity.FOOT_SHARE);
    assertThat(after.deviation()).isLessThan(0.85 * before.deviation());
    double ratio = after.effect(Input.STABILIZER_SETTING) / before.effect(Input.STABILIZER_SETTING);
    assertThat(ratio).isCloseTo(1.0 / 3, within(0.01));
    assertThat(after.effect(Input.MAST_RAKE)).isEqualTo(before.effect(Input.MAST_RAKE));
  }

  @Test
  void theSpeedsThatPeopleAskForHaveBandsToo() {
    assertThat(sheets.levelSpeed()).isPresent();
    assertThat(sheets.evenFeetSpeeds()).hasSameSizeAs(sheets.curve().evenFeetSpeeds());
    assertThat(sheets.rideableFrom().orElseThrow().deviation()).isBetween(0.01, 1.0);
    assertThat(sheets.rideableTo().orElseThrow().deviation()).isBetween(0.1, 2.0);
    Spread level = sheets.levelSpeed().orElseThrow();
    RideCase turned = Input.MAST_BASE_ANGLE.moved(CASE, Math.toRadians(0.03));
    double moved = CaseSolver.of(turned).levelSpeed().orElseThrow() - level.value();
    assertThat(level.effect(Input.MAST_BASE_ANGLE)).isCloseTo(10 * moved, within(0.05));
  }

  /** Each part of the model has its own doubt, and it shows where that part acts. */
  @Test
  void everyPartOfTheModelHasItsOwnPartInABand() {
    Spread power = spread(sheets, 2, Quantity.ELECTRIC_POWER);
    for (Input input :
        List.of(
            Input.MAST_DRAG,
            Input.SPRAY_DRAG,
            Input.CORNER_DRAG,
            Input.BODY_DRAG,
            Input.MAST_THICKNESS)) {
      assertThat(power.effect(input)).as(input.name()).isPositive();
    }
    Spread slow = spread(sheets, 1, Quantity.PITCH);
    assertThat(Math.abs(slow.effect(Input.WAVES)))
        .isGreaterThan(Math.abs(spread(sheets, 2, Quantity.PITCH).effect(Input.WAVES)))
        .isGreaterThan(1e-5);
    // What turns the nose up must be held down in front.
    assertThat(spread(sheets, 1, Quantity.FOOT_SHARE).effect(Input.SECTION_MOMENT)).isPositive();
    assertThat(spread(sheets, 1, Quantity.STABILIZER_LIFT).effect(Input.SPRAY_DRAG)).isNotZero();
  }

  @Test
  void aCaseDoesNotDifferFromItself() {
    Set<Input> shared = SharedInputs.between(CASE, Knowledge.SHEETS, CASE, Knowledge.SHEETS);
    assertThat(shared).containsExactlyInAnyOrderElementsOf(SharedInputs.ALL);
    Spread spread = spread(sheets, 1, Quantity.PITCH);
    Spread.Difference none = spread.minus(spread, shared);
    assertThat(none.reach()).isZero();
    assertThat(none.distinct()).isFalse();
  }

  @Test
  void whatActsOnBothCancelsInTheirDifference() {
    Spread slow = spread(sheets, 1, Quantity.PITCH);
    Spread fast = spread(sheets, 2, Quantity.PITCH);
    Spread.Difference difference = slow.minus(fast, SharedInputs.ALL);
    // Setting angles and the wedge move both alike.
    assertThat(difference.reach()).isLessThan(0.2 * slow.reach());
    assertThat(difference.distinct()).isTrue();
    assertThat(slow.holds(fast.value())).isFalse();
    assertThat(slow.minus(fast, Set.of()).reach())
        .isCloseTo(Math.hypot(slow.reach(), fast.reach()), within(1e-12));
  }

  @Test
  void anotherWedgeSharesEverythingElse() {
    RideCase wedge = ExampleCase.PLAIN.withBase(-2).build();
    Set<Input> shared = SharedInputs.between(CASE, Knowledge.SHEETS, wedge, Knowledge.SHEETS);
    assertThat(shared).doesNotContain(Input.MAST_BASE_ANGLE).hasSize(Input.values().length - 1);
  }

  @Test
  void anotherStabilizerTakesItsOwnErrorsAlong() {
    RideCase other = ExampleCase.PLAIN.withStabilizer(-1).build();
    Set<Input> shared = SharedInputs.between(CASE, Knowledge.SHEETS, other, Knowledge.SHEETS);
    assertThat(shared)
        .doesNotContain(Input.STABILIZER_SETTING, Input.STABILIZER_AREA, Input.STABILIZER_ZERO_LIFT)
        .contains(Input.FRONT_WING_SETTING, Input.DOWNWASH, Input.RIDER_MASS);
    Knowledge taped = Knowledge.SHEETS.with(Origin.FRONT_WING, KnownBy.TAPE);
    assertThat(SharedInputs.between(CASE, Knowledge.SHEETS, CASE, taped))
        .doesNotContain(Input.FRONT_WING_SETTING)
        .contains(Input.STABILIZER_SETTING);
  }

  /**
   * An error of the zero-lift angle is carried as a turn of the wing: within 3 % of its effect. A
   * wing that is turned takes the place of its wake at the stabilizer along.
   */
  @Test
  void anotherZeroLiftAngleActsAsATurnOfTheWing() {
    double by = Math.toRadians(0.2);
    TrimPoint base = CaseSolver.of(CASE).trim(25 * KMH).findPoint().orElseThrow();
    for (boolean front : new boolean[] {true, false}) {
      CaseChange shifted =
          front
              ? CaseChange.frontWing(BandSolverTest::lower)
              : CaseChange.stabilizer(BandSolverTest::lower);
      CaseChange turned =
          front
              ? CaseChange.frontWing(WingChange::setting)
              : CaseChange.stabilizer(WingChange::setting);
      TrimPoint a = CaseSolver.of(shifted.of(CASE, by)).trim(25 * KMH).findPoint().orElseThrow();
      TrimPoint b = CaseSolver.of(turned.of(CASE, by)).trim(25 * KMH).findPoint().orElseThrow();
      double effect = b.footShare() - base.footShare();
      assertThat(a.footShare() - base.footShare())
          .isCloseTo(effect, within(0.03 * Math.abs(effect)));
      assertThat(a.pitch()).isCloseTo(b.pitch(), within(Math.toRadians(0.005)));
    }
  }

  /** The wing with sections whose lift begins at an angle lower by so much. */
  private static FittedWing lower(FittedWing w, double by) {
    List<Station> stations =
        w.shape().stations().stream()
            .map(
                s ->
                    new Station(
                        s.fraction(),
                        s.chord(),
                        s.ahead(),
                        s.above(),
                        s.twist(),
                        new Lowered(s.section(), by)))
            .toList();
    return new FittedWing(
        new WingShape(w.shape().span(), stations),
        w.setting(),
        w.height(),
        w.mass(),
        w.massAboveAxis(),
        w.volume(),
        w.finish());
  }

  private record Lowered(Section base, double by) implements Section {
    @Override
    public String name() {
      return base.name();
    }

    @Override
    public SectionShape shape() {
      return base.shape();
    }

    @Override
    public double zeroLiftAngle() {
      return base.zeroLiftAngle() - by;
    }

    @Override
    public double liftSlope() {
      return base.liftSlope();
    }

    @Override
    public double momentAtZeroLift() {
      return base.momentAtZeroLift();
    }

    @Override
    public double aerodynamicCentre() {
      return base.aerodynamicCentre();
    }

    @Override
    public Polar polar(double reynolds, Finish finish) {
      return new LoweredPolar(base.polar(reynolds, finish), by);
    }

    @Override
    public double minimumPressure(double liftCoefficient) {
      return base.minimumPressure(liftCoefficient);
    }
  }

  private record LoweredPolar(Polar base, double by) implements Polar {
    @Override
    public double lift(double angle) {
      return base.lift(angle + by);
    }

    @Override
    public double dragAt(double angle) {
      return base.dragAt(angle + by);
    }

    @Override
    public double moment(double angle) {
      return base.moment(angle + by);
    }

    @Override
    public double angleOfMaximumLift() {
      return base.angleOfMaximumLift() - by;
    }

    @Override
    public double angleOfMinimumLift() {
      return base.angleOfMinimumLift() - by;
    }

    @Override
    public double drag(double liftCoefficient) {
      return base.drag(liftCoefficient);
    }

    @Override
    public double maximumLift() {
      return base.maximumLift();
    }

    @Override
    public double minimumLift() {
      return base.minimumLift();
    }
  }

  @Test
  void withoutADriveOrABatteryTheirInputsAreNoneAndPowerHasNoBand() {
    RideCase glide = ExampleCase.PLAIN.withoutDrive(OptionalDouble.empty()).build();
    Bands bands = BandSolver.of(glide, Knowledge.SHEETS, SPEEDS, SurfaceTables.ANEW);
    assertThat(bands.find(1, Quantity.ELECTRIC_POWER)).isEqualTo(Optional.empty());
    assertThat(spread(bands, 1, Quantity.THRUST).effect(Input.DRIVE_EFFICIENCY)).isZero();
  }
}
