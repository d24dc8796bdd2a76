package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.fitting.stock.PartState;
import trimwright.fitting.stock.Propulsion;
import trimwright.fitting.stock.SetupSpace;
import trimwright.kernel.band.KnownBy;

class StockReaderTest {
  /** One of each; 1 shim beside none and 3 places of the track: 6 setups. */
  static final String SMALL =
      """
      format: trimwright-stock/1
      name: Small stock
      boards:
        - {id: plank, mass_kg: 14, length_mm: 1650, width_mm: 660, thickness_mm: 120, volume_l: 95, mass_centre_mm: 60,
           track: {from_mm: -20, to_mm: 20, step_mm: 20}, mounts: {mast: [rail-90], battery: [bay-m]}}
      batteries:
        - {id: cells, mass_kg: 11, energy_wh: 2000, mass_centre_mm: 250, mounts: {board: [bay-m]}}
      masts:
        - {id: strut, length_mm: 750, chord_mm: 120, thickness_mm: 16, mass_kg: 3,
           mounts: {board: [rail-90], fuselage: [collar-32], drive: [clamp-120]}}
      drives:
        - {id: pod, height_above_fuselage_mm: 180, diameter_mm: 80, length_mm: 260, propeller_diameter_mm: 150,
           max_power_w: 5000, mass_kg: 3.5, mounts: {mast: [clamp-120]}}
      fuselages:
        - {id: tube, length_mm: 850, diameter_mm: 32, mass_kg: 1.2, front_wing_ahead_of_mast_mm: 150,
           stabilizer_behind_mast_mm: 560, mounts: {mast: [collar-32], front_wing: [seat-30], stabilizer: [tail-24]}}
      front_wings:
        - id: wing
          area_cm2: 1500
          span_mm: 900
          root_chord_mm: 215
          tip_chord_mm: 60
          section: naca2412
          mass_kg: 1.6
          known_by: calliper
          mounts: {fuselage: [seat-30]}
          count: 2
          state: new
          price: 440
      stabilizers:
        - {id: tail, area_cm2: 350, span_mm: 420, root_chord_mm: 105, tip_chord_mm: 45, section: naca0009,
           setting_deg: -2, mass_kg: 0.3, mounts: {fuselage: [tail-24], shim: [pad-25]}}
      shims:
        - {id: wedge, angle_deg: 0.5, mounts: {stabilizer: [pad-25]}}
      """;

  private static Reading<StockFile> read(String text) {
    return StockReader.read(text, SectionFiles.NONE);
  }

  private static StockFile accepted(String text) {
    Reading<StockFile> reading = read(text);
    assertThat(reading.problems()).isEmpty();
    return reading.findValue().orElseThrow();
  }

  private static List<String> refused(String from, String to) {
    assertThat(SMALL).contains(from);
    Reading<StockFile> reading = read(SMALL.replace(from, to));
    assertThat(reading.findValue()).isEmpty();
    return reading.problems().stream().map(Problem::text).toList();
  }

  @Test
  void readsWhatAShopSaysOfAPart() {
    StockFile file = accepted(SMALL);
    assertThat(file.name()).isEqualTo("Small stock");
    var wing = file.stock().frontWings().get(0);
    assertThat(wing.holding().count()).isEqualTo(2);
    assertThat(wing.holding().state()).isEqualTo(PartState.NEW);
    assertThat(wing.holding().price()).hasValue(440);
    assertThat(wing.holding().knownBy()).isEqualTo(KnownBy.CALLIPER);
    var board = file.stock().boards().get(0);
    assertThat(board.holding().count()).isEqualTo(1);
    assertThat(board.holding().state()).isEqualTo(PartState.DEMO);
    assertThat(board.holding().price()).isEmpty();
    assertThat(board.holding().knownBy()).isEqualTo(KnownBy.SHEET);
    assertThat(SetupSpace.of(file.stock(), Propulsion.DRIVEN).count()).isEqualTo(6);
    assertThat(SetupSpace.of(file.stock(), Propulsion.TOWED).count()).isEqualTo(6);
  }

  @Test
  void whatIsOutMakesNoSetup() {
    StockFile file = accepted(SMALL.replace("state: new", "state: out"));
    assertThat(SetupSpace.of(file.stock(), Propulsion.DRIVEN).count()).isZero();
    StockFile none = accepted(SMALL.replace("count: 2", "count: 0"));
    assertThat(SetupSpace.of(none.stock(), Propulsion.DRIVEN).count()).isZero();
  }

  @Test
  void anEmptyStockIsAStock() {
    StockFile file = accepted("format: trimwright-stock/1\n");
    assertThat(SetupSpace.of(file.stock(), Propulsion.DRIVEN).count()).isZero();
  }

  @Test
  void theDigestIsThatOfTheContent() {
    String digest = accepted(SMALL).digest();
    String shuffled =
        "# as it was\n"
            + SMALL.replace("- {id: wedge, angle_deg: 0.5,", "- {angle_deg: 0.50, id: wedge,");
    assertThat(accepted(shuffled).digest()).isEqualTo(digest);
    assertThat(accepted(SMALL.replace("price: 440", "price: 450")).digest()).isNotEqualTo(digest);
    assertThat(accepted(SMALL.replace("count: 2", "count: 3")).digest()).isNotEqualTo(digest);
    String more = "  - {id: other, angle_deg: -0.5, mounts: {stabilizer: [pad-25]}}\n";
    String after = SMALL + more;
    String before = SMALL.replace("shims:\n", "shims:\n" + more);
    assertThat(accepted(after).digest()).isEqualTo(accepted(before).digest()).isNotEqualTo(digest);
  }

  @Test
  void anUnknownKeyIsNamedWithTheOneThatIsMeant() {
    assertThat(refused("span_mm: 900", "span_m: 900"))
        .anyMatch(
            p ->
                p.startsWith("line 20: front_wings[0].span_m is not a known key")
                    && p.contains("did you mean front_wings[0].span_mm?"))
        .anyMatch(p -> p.contains("front_wings[0].span_mm is missing"));
  }

  @Test
  void theTrackIsNoSettingHere() {
    assertThat(refused("track: {", "track_mm: 0, track: {"))
        .singleElement()
        .asString()
        .contains("boards[0].track_mm is not a known key");
  }

  @Test
  void aMissingKeyIsNamedWithItsRange() {
    assertThat(refused("id: strut, length_mm: 750,", "id: strut,"))
        .containsExactly(
            "line 9: masts[0].length_mm is missing; wanted is a number from 250 to 1500 mm.");
  }

  @Test
  void aValueOutOfItsRangeIsNamedWithIt() {
    assertThat(refused("price: 440", "price: -1"))
        .containsExactly(
            "line 29: front_wings[0].price is -1, permitted is a number from 0 to 1000000.");
    assertThat(refused("state: new", "state: lent"))
        .singleElement()
        .asString()
        .startsWith("line 28: front_wings[0].state is \"lent\"; wanted is one of")
        .contains("demo, new, out");
    assertThat(refused("count: 2", "count: 1.5"))
        .containsExactly(
            "line 27: front_wings[0].count is 1.5, permitted is a whole number from 0 to 1000.");
  }

  @Test
  void twoPartsOfOneNameAreRefused() {
    assertThat(refused("id: wedge", "id: plank"))
        .containsExactly(
            "line 34: shims[0].id is \"plank\", and so is boards[0].id; wanted is another name for"
                + " each part of the stock.");
  }

  @Test
  void aNameIsAPlainWord() {
    assertThat(refused("id: wedge", "id: \"half a degree\""))
        .singleElement()
        .asString()
        .contains("shims[0].id is \"half a degree\"")
        .contains("small letters, digits, dots and hyphens");
  }

  @Test
  void aMountThatNothingFitsIsRefused() {
    assertThat(refused("mounts: {fuselage: [seat-30]}", "mounts: {fuselage: [seat-3]}"))
        .containsExactly(
            "line 16: fuselages[0].mounts.front_wing[0] is \"seat-30\", which no front wing of this"
                + " stock fits; wanted is one of seat-3 (did you mean seat-3?).",
            "line 26: front_wings[0].mounts.fuselage[0] is \"seat-3\", which no fuselage of this"
                + " stock fits; wanted is one of seat-30 (did you mean seat-30?).");
  }

  @Test
  void aMountForPartsThatAreNotInTheStockIsRefused() {
    String none = SMALL.substring(0, SMALL.indexOf("shims:"));
    assertThat(read(none).problems().stream().map(Problem::message))
        .containsExactly(
            "stabilizers[0].mounts.shim[0] is \"pad-25\", which no shim of this stock fits; wanted is a"
                + " shim that names it in mounts.stabilizer.");
  }

  @Test
  void aWingThatContradictsItselfIsRefused() {
    assertThat(refused("area_cm2: 1500", "area_cm2: 2500"))
        .singleElement()
        .asString()
        .startsWith("line 19: front_wings[0].area_cm2 is 2500, but")
        .contains("too much");
  }

  @Test
  void partsThatContradictThemselvesAreRefused() {
    assertThat(refused("chord_mm: 120, thickness_mm: 16", "chord_mm: 40, thickness_mm: 45"))
        .singleElement()
        .asString()
        .contains("masts[0].thickness_mm is 45");
    assertThat(refused("volume_l: 95", "volume_l: 595"))
        .singleElement()
        .asString()
        .contains("boards[0].volume_l is 595");
    assertThat(refused("energy_wh: 2000", "energy_wh: 2000, max_current_a: 100"))
        .singleElement()
        .asString()
        .contains("batteries[0].max_current_a is 100");
    assertThat(
            refused(
                "max_power_w: 5000", "max_power_w: 5000, propeller: {blades: 2.5, pitch_mm: 150}"))
        .singleElement()
        .asString()
        .contains("drives[0].propeller.blades is 2.5");
  }

  @Test
  void aTrackOfBrokenStepsIsRefused() {
    assertThat(refused("step_mm: 20", "step_mm: 30"))
        .containsExactly(
            "line 5: boards[0].track.to_mm is 20, permitted is -20 (from_mm) and whole steps of 30"
                + " (step_mm) ahead of it.");
  }

  @Test
  void noShimIsNoShim() {
    assertThat(refused("angle_deg: 0.5", "angle_deg: 0"))
        .singleElement()
        .asString()
        .contains("shims[0].angle_deg is 0, permitted is another angle");
  }

  @Test
  void everythingWrongIsSaidAtOnce() {
    String text =
        SMALL
            .replace("id: wedge", "id: plank")
            .replace("mass_kg: 1.6", "mass_kg: -1")
            .replace("chord_mm: 120", "chrod_mm: 120")
            .replace("rail-90]}", "rail-91]}");
    assertThat(read(text).problems()).hasSizeGreaterThanOrEqualTo(4);
  }

  @Test
  void aCaseFileIsNoStock() {
    String text = trimwright.exchange.demo.DemoCases.list().get(0).text();
    assertThat(read(text).problems())
        .singleElement()
        .extracting(Problem::message)
        .asString()
        .startsWith("This looks like a case file");
  }

  @Test
  void aRideThatIsNotPossibleIsRefusedInTheWordsOfACaseFile() {
    CaseFile base =
        CaseReader.read(
                trimwright.exchange.demo.DemoCases.find("nose-up-mismatch")
                    .orElseThrow()
                    .text()
                    .replace("mast_immersion_mm: 450", "mast_immersion_mm: 700"),
                SectionFiles.NONE)
            .findValue()
            .orElseThrow();
    StockCases cases =
        StockCases.of(base, accepted(SMALL.replace("length_mm: 750", "length_mm: 650")));
    assertThat(cases.findOwn()).isEmpty();
    assertThat(cases.caseFile(cases.space().setups().findFirst().orElseThrow()).problems())
        .singleElement()
        .extracting(Problem::message)
        .asString()
        .startsWith("ride.mast_immersion_mm is 700");
  }
}
