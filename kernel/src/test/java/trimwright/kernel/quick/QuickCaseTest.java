package trimwright.kernel.quick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.surface.Couplings;
import trimwright.kernel.surface.SolvedLoads;
import trimwright.kernel.surface.SurfaceResponse;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.ExampleCase;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.Responses;
import trimwright.kernel.trim.TrimPoint;
import trimwright.kernel.trim.WingCouplings;

class QuickCaseTest {
  /** The search's own tolerance of pitch, some hundred newton metres per radian over it. */
  private static final double SEARCH = 1e-6;

  private static final ExampleCase PLAIN = ExampleCase.PLAIN;

  /** Loads at four pitches close together about a trim: no table's error is in them. */
  private static PairLoads around(Craft craft, double pitch, double speed) {
    SurfaceResponse response = Responses.unfrozen(craft);
    Couplings couplings = WingCouplings.of(craft, response);
    SolvedLoads loads = new SolvedLoads(response, couplings.at(speed));
    double[] pitches = new double[4];
    double[] row = new double[14];
    for (int i = 0; i < 4; i++) {
      pitches[i] = pitch + 1e-3 * (i - 1.4);
      PlaneForce both = loads.force(0, pitches[i]).plus(loads.force(1, pitches[i]));
      row[i] = both.up();
      row[4 + i] = both.forward();
      row[8 + i] = both.noseUp();
    }
    row[12] = 1;
    row[13] = -1;
    return new PairLoads(new PitchNodes(pitches), row);
  }

  @Test
  void theBalanceIsThatOfTheFullSolver() {
    int compared = 0;
    for (ExampleCase example :
        new ExampleCase[] {
          PLAIN,
          PLAIN.withWind(20).withTrack(0.03),
          PLAIN.withoutDrive(OptionalDouble.empty()),
          PLAIN.withoutDrive(OptionalDouble.of(1.2))
        }) {
      Craft craft = new Craft(example.build());
      CaseSolver full = CaseSolver.of(craft, Responses.unfrozen(craft));
      for (double speed : new double[] {4.5, 6, 7, 8.5, 10}) {
        Optional<TrimPoint> point = full.trim(speed).findPoint();
        if (point.isEmpty()) {
          // Not every one of them can be held at every speed; most can.
          continue;
        }
        compared++;
        TrimPoint exact = point.get();
        double pitch = exact.pitch() - craft.deck().baseAngle();
        QuickTrim trim = new QuickCase(craft).at(speed).trim(around(craft, pitch, speed));
        QuickBalance b = trim.balance().orElseThrow();
        assertThat(trim.trimmed()).isTrue();
        assertThat(b.pitch()).isCloseTo(pitch, within(SEARCH));
        assertThat(b.thrust()).isCloseTo(exact.thrust(), within(1e3 * SEARCH));
        assertThat(b.footPressure())
            .isCloseTo(exact.footPressureAheadOfMast(), within(10 * SEARCH));
        assertThat(b.footShare()).isCloseTo(exact.footShare(), within(20 * SEARCH));
        assertThat(b.power()).isCloseTo(exact.electricPower().orElse(0), within(1e4 * SEARCH));
      }
    }
    assertThat(compared).isGreaterThan(12);
  }

  @Test
  void theMastMovesInItsTrackWithoutAnotherTrim() {
    PairTable table = PairTable.of(new Craft(PLAIN.build()));
    PairLoads loads = table.at(7, 0);
    QuickCase here = new QuickCase(new Craft(PLAIN.build()));
    QuickCase moved = new QuickCase(new Craft(PLAIN.withTrack(0.04).build()));
    QuickBalance a = here.at(7).trim(loads).balance().orElseThrow();
    QuickBalance b = moved.at(7).trim(loads).balance().orElseThrow();
    assertThat(a.pitch()).isCloseTo(b.pitch(), within(1e-9));
    assertThat(here.footShare(a, 0.04)).isCloseTo(b.footShare(), within(1e-9));
    assertThat(here.footShare(a, 0)).isCloseTo(a.footShare(), within(1e-12));
  }

  @Test
  void anEasierShimMovesTheFeetAndLeavesTheSignRight() {
    Craft craft = new Craft(PLAIN.build());
    PairTable table = PairTable.of(craft);
    QuickSpeed at = new QuickCase(craft).at(7);
    double before = Double.POSITIVE_INFINITY;
    for (double degrees = -2; degrees <= 2; degrees++) {
      double feet =
          at.trim(table.at(7, Math.toRadians(degrees))).balance().orElseThrow().footPressure();
      // Leading edge up lifts the stern: the nose goes down and the feet must press further back.
      assertThat(feet).isLessThan(before);
      before = feet;
    }
  }

  @Test
  void tooSlowAndTooFastSayWhy() {
    Craft craft = new Craft(PLAIN.build());
    PairTable table = PairTable.of(craft);
    QuickCase quick = new QuickCase(craft);
    assertThat(quick.at(2).trim(table.at(2, 0)).reason()).contains(NoTrimReason.TOO_SLOW);
    assertThat(quick.at(14).trim(table.at(14, 0)).trimmed()).isFalse();
    assertThatThrownBy(() -> quick.at(0)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void theTableDoesNotDependOnTheCraftsOwnShim() {
    RideCase c = PLAIN.build();
    Setup s = c.setup();
    Setup shimmed =
        new Setup(
            s.board(),
            s.battery(),
            s.mast(),
            s.drive(),
            s.fuselage(),
            s.frontWing(),
            s.stabilizer(),
            Math.toRadians(1.5));
    RideCase other =
        new RideCase(
            c.water(),
            c.airDensity(),
            c.headWind(),
            c.chopHeight(),
            c.rider(),
            shimmed,
            c.immersion(),
            c.pullAboveDeck());
    PairTable a = PairTable.of(new Craft(c));
    PairTable b = PairTable.of(new Craft(other));
    assertThat(b.pitches()).isEqualTo(a.pitches());
    assertThat(b.values()).isEqualTo(a.values());
    assertThat(PairContent.of(new Craft(other))).isEqualTo(PairContent.of(new Craft(c)));
  }

  @Test
  void aTablesNumbersMakeTheSameTable() {
    RideCase rideCase = PLAIN.build();
    PairTable table = PairTable.of(new Craft(rideCase));
    PairTable again = new PairTable(table.pitches(), table.values());
    PairLoads a = table.at(6.3, 0.01);
    PairLoads b = again.at(6.3, 0.01);
    assertThat(b.up(0.05)).isEqualTo(a.up(0.05));
    assertThat(b.noseUp(0.05)).isEqualTo(a.noseUp(0.05));
    assertThat(b.forward(0.05)).isEqualTo(a.forward(0.05)).isNegative();
    assertThat(b.stallPitch()).isEqualTo(a.stallPitch()).isGreaterThan(b.lowestPitch());
    assertThat(table.bytes()).isLessThan(16_000);
  }

  @Test
  void aTableIsNotReadOutsideItsRangeNorMadeOfWrongNumbers() {
    PairTable table = PairTable.of(new Craft(PLAIN.build()));
    assertThatThrownBy(() -> table.at(1.9, 0)).hasMessageContaining("within 2.0 to 14.0 m/s");
    assertThatThrownBy(() -> table.at(15, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> table.at(7, 0.08)).hasMessageContaining("shim");
    double[] pitches = table.pitches();
    assertThatThrownBy(() -> new PairTable(pitches, new float[3])).hasMessageContaining("values");
    float[] broken = table.values();
    broken[7] = Float.NaN;
    assertThatThrownBy(() -> new PairTable(pitches, broken)).hasMessageContaining("finite");
    pitches[3] = pitches[2];
    assertThatThrownBy(() -> new PairTable(pitches, table.values())).hasMessageContaining("rise");
  }
}
