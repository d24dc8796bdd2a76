package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a person reads who hands in something wrong: one row per kind of mistake. */
class BadInputTest {

  /** A piece of the contract's example, what stands in its place, and all messages that follow. */
  record Row(String piece, String other, String... messages) {
    @Override
    public String toString() {
      return piece + " -> " + other;
    }
  }

  static Stream<Row> rows() {
    return Stream.of(
        // Ranges
        new Row(
            "salinity_g_kg: 0.2",
            "salinity_g_kg: 80",
            "line 1: water.salinity_g_kg is 80, permitted is a number from 0 to 42 g/kg."),
        new Row(
            "temperature_c: 18",
            "temperature_c: -2.1",
            "line 1: water.temperature_c is -2.1, permitted is a number from -2 to 40 °C."),
        new Row(
            "rider:   {mass_kg: 82",
            "rider:   {mass_kg: -82",
            "line 2: rider.mass_kg is -82, permitted is a number from 15 to 250 kg."),
        new Row(
            "mass_kg: 3.0",
            "mass_kg: -3",
            "line 7: setup.mast.mass_kg is -3, permitted is a number from 0.1 to 20 kg."),
        new Row(
            "span_mm: 900",
            "span_mm: 9000",
            "line 12: setup.front_wing.span_mm is 9000, permitted is a number from 100 to 3000 mm."),
        new Row(
            "wished_foot_share: 0.55",
            "wished_foot_share: 55",
            "line 3: rider.wished_foot_share is 55, permitted is a number from 0 to 1."),
        new Row(
            "angle_deg: 0.5",
            "angle_deg: 50",
            "line 16: setup.shim.angle_deg is 50, permitted is a number from -6 to 6 °."),
        new Row(
            "mast_immersion_mm: 450",
            "mast_immersion_mm: 0",
            "line 17: ride.mast_immersion_mm is 0, permitted is a number from 20 to 1500 mm."),
        // Kinds of values
        new Row(
            "rider:   {mass_kg: 82",
            "rider:   {mass_kg: heavy",
            "line 2: rider.mass_kg is \"heavy\", a text; wanted is a number from 15 to 250 kg."),
        new Row(
            "rider:   {mass_kg: 82",
            "rider:   {mass_kg: \"82\"",
            "line 2: rider.mass_kg is \"82\", a text (write the number without quotes); wanted is a"
                + " number from 15 to 250 kg."),
        new Row(
            "rider:   {mass_kg: 82",
            "rider:   {mass_kg: 82 kg",
            "line 2: rider.mass_kg is \"82 kg\", a text (the key names the unit: write the number"
                + " alone); wanted is a number from 15 to 250 kg."),
        new Row(
            "height_m: 1.78",
            "height_m: '1,78'",
            "line 2: rider.height_m is \"1,78\", a text (write a decimal point); wanted is a number"
                + " from 0.9 to 2.4 m."),
        new Row(
            "height_m: 1.78",
            "height_m: 1,78",
            "line 2: rider.height_m is \"1,78\", a text (write a decimal point)."),
        new Row(
            "kit_mass_kg: 6, height_m: 1.78",
            "kit_mass_kg: 3,5, height_m: 1,78",
            "line 2: rider.kit_mass_kg is \"3,5\", a text (write a decimal point).",
            "line 2: rider.height_m is \"1,78\", a text (write a decimal point)."),
        new Row(
            "skill: linking",
            "skill: \"lin\\x85king\"",
            "line 3: rider.skill holds a control character (U+0085); write plain text on one line."),
        new Row(
            "skill: linking",
            "skill: \"lin\\u202Eking\"",
            "line 3: rider.skill holds a control character (U+202E); write plain text on one line."),
        new Row(
            "skill: linking",
            "skill: lin\u001bking",
            "line 3: This line holds a control character (U+001B); remove it."),
        new Row(
            "skill: linking",
            "skill: linking, skill: surf",
            "line 3: rider.skill stands twice on line 3."),
        new Row(
            "height_m: 1.78",
            "height_m: ",
            "line 2: rider.height_m has no value; wanted is a number from 0.9 to 2.4 m."),
        new Row(
            "height_m: 1.78",
            "height_m: null",
            "line 2: rider.height_m has no value; wanted is a number from 0.9 to 2.4 m."),
        new Row(
            "height_m: 1.78",
            "height_m: true",
            "line 2: rider.height_m is true; wanted is a number from 0.9 to 2.4 m."),
        new Row(
            "height_m: 1.78",
            "height_m: [1, 2]",
            "line 2: rider.height_m is a list; wanted is a number from 0.9 to 2.4 m."),
        new Row(
            "height_m: 1.78",
            "height_m: {a: 1}",
            "line 2: rider.height_m is a group of keys; wanted is a number from 0.9 to 2.4 m."),
        new Row(
            "height_m: 1.78",
            "height_m: .nan",
            "line 2: rider.height_m is .nan, which is not finite; wanted is a number from 0.9 to"
                + " 2.4 m."),
        new Row(
            "height_m: 1.78",
            "height_m: -.INF",
            "line 2: rider.height_m is -.INF, which is not finite; wanted is a number from 0.9 to"
                + " 2.4 m."),
        new Row(
            "height_m: 1.78",
            "height_m: 1e999",
            "line 2: rider.height_m is 1e999, which is not finite; wanted is a number from 0.9 to"
                + " 2.4 m."),
        new Row(
            "ride:    {mast_immersion_mm: 450}",
            "ride:    450",
            "line 17: ride is 450; wanted is a group of keys (mast_immersion_mm,"
                + " measured_pitch_deg, home)."),
        new Row(
            "skill: linking",
            "skill: carvin",
            "line 3: rider.skill is \"carvin\"; wanted is one of first-flights, linking, carving,"
                + " surf (did you mean carving?)."),
        new Row(
            "skill: linking",
            "skill: 3",
            "line 3: rider.skill is 3; wanted is one of first-flights, linking, carving, surf."),
        new Row(
            "mounted: above",
            "mounted: top",
            "line 15: setup.stabilizer.mounted is \"top\"; wanted is one of above, below."),
        new Row(
            "section: naca0009",
            "section: naca09",
            "line 15: setup.stabilizer.section is \"naca09\"; wanted is a code such as naca2412, a"
                + " coordinates file (.dat, .txt, .csv), or {thickness_percent: 12, camber_percent:"
                + " 2}."),
        new Row(
            "section: naca0009",
            "section: {thickness_percent: 50}",
            "line 15: setup.stabilizer.section.thickness_percent is 50, permitted is a number from 3"
                + " to 30 % of chord."),
        new Row(
            "section: naca0009",
            "section: {camber_percent: 2}",
            "line 15: setup.stabilizer.section.thickness_percent is missing; wanted is a number from"
                + " 3 to 30 % of chord."),
        new Row(
            "section: naca0009",
            "section: {file: wing.dat, camber_percent: 2}",
            "line 15: setup.stabilizer.section.camber_percent must not stand beside"
                + " setup.stabilizer.section.file."),
        new Row(
            "section: naca0009",
            "section: wing.dat",
            "line 15: setup.stabilizer.section names the file wing.dat, which cannot be read; wanted"
                + " is a coordinates file beside the case file."),
        // Keys
        new Row(
            "rider:   {mass_kg: 82, ",
            "rider:   {",
            "line 2: rider.mass_kg is missing; wanted is a number from 15 to 250 kg."),
        new Row(
            "ride:    {mast_immersion_mm: 450}",
            "",
            "ride is missing; wanted is a group of keys (mast_immersion_mm, measured_pitch_deg, home)."),
        new Row(
            "height_m: 1.78",
            "heigth_m: 1.78",
            "line 2: rider.heigth_m is not a known key; did you mean rider.height_m?"),
        new Row(
            "height_m: 1.78",
            "height: 1.78",
            "line 2: rider.height is not a known key; did you mean rider.height_m?"),
        new Row(
            "height_m: 1.78",
            "track_mm: 10",
            "line 2: rider.track_mm does not belong here; its place is setup.board."),
        new Row(
            "angle_deg: 0.5",
            "angle_deg: 0.5, colour: red",
            "line 16: setup.shim.colour is not a known key; known below setup.shim are angle_deg,"
                + " volume_l, known_by, finish, rating_nm."),
        new Row(
            "height_m: 1.78",
            "height_m: 1.78, height_m: 1.80",
            "line 2: rider.height_m stands twice on line 2."),
        new Row(
            "ride:    {mast_immersion_mm: 450}",
            "ride:    {mast_immersion_mm: 450}\nwater: {}",
            "line 18: water stands twice, on line 1 and on line 18."),
        // YAML that is not taken
        new Row(
            "height_m: 1.78",
            "height_m: &tall 1.78",
            "line 2: rider.height_m carries an anchor (&), which is not permitted."),
        new Row(
            "height_m: 1.78",
            "height_m: *tall",
            "line 2: rider.height_m uses an alias (*); write the value out instead."),
        new Row(
            "height_m: 1.78",
            "height_m: !!float 1.78",
            "line 2: rider.height_m carries a type tag (!), which is not permitted."),
        // Keys that contradict each other
        new Row(
            "front_foot_mm: 520",
            "front_foot_mm: 20",
            "line 2: rider.front_foot_mm is 20 and rider.back_foot_mm is 40; the front foot must"
                + " stand at least 100 mm ahead of the back foot."),
        new Row(
            "mast_immersion_mm: 450",
            "mast_immersion_mm: 750",
            "line 17: ride.mast_immersion_mm is 750, permitted is below 750: with"
                + " setup.mast.length_mm 750 the board would be in the water."),
        new Row(
            "height_above_fuselage_mm: 180",
            "height_above_fuselage_mm: 450",
            "line 8: setup.drive.height_above_fuselage_mm is 450, permitted is below 450: with"
                + " ride.mast_immersion_mm 450 the thrust line would be out of the water."),
        new Row(
            "area_cm2: 1500",
            "area_cm2: 2500",
            "line 12: setup.front_wing.area_cm2 is 2500, but span_mm 900, root_chord_mm 215 and"
                + " tip_chord_mm 60 allow only 1238 to 1905 cm²: 595 cm² too much. One of the four"
                + " numbers is wrong."),
        new Row(
            "area_cm2: 350",
            "area_cm2: 250",
            "line 14: setup.stabilizer.area_cm2 is 250, but span_mm 420, root_chord_mm 105 and"
                + " tip_chord_mm 45 allow only 315 to 436 cm²: 65 cm² too little. One of the four"
                + " numbers is wrong."),
        new Row(
            "tip_chord_mm: 60",
            "tip_chord_mm: 260",
            "line 12: setup.front_wing.tip_chord_mm is 260, permitted is no more than"
                + " setup.front_wing.root_chord_mm, which is 215."),
        new Row(
            "span_mm: 420, root_chord_mm: 105, tip_chord_mm: 45",
            "span_mm: 420, root_chord_mm: 105, tip_chord_mm: 450",
            "line 14: setup.stabilizer.tip_chord_mm is 450, permitted is no more than"
                + " setup.stabilizer.span_mm, which is 420."),
        new Row(
            "thickness_mm: 16",
            "thickness_mm: 48, chord_mm: 40",
            "line 7: setup.mast.chord_mm stands twice on line 7."),
        new Row(
            "chord_mm: 120, thickness_mm: 16",
            "chord_mm: 41, thickness_mm: 48",
            "line 7: setup.mast.thickness_mm is 48, permitted is no more than setup.mast.chord_mm,"
                + " which is 41."),
        new Row(
            "volume_l: 95",
            "volume_l: 200",
            "line 5: setup.board.volume_l is 200, permitted is no more than 131 l: length_mm times"
                + " width_mm times thickness_mm has no room for more."),
        new Row(
            "front_wing_ahead_of_mast_mm: 150",
            "front_wing_ahead_of_mast_mm: -400",
            "line 11: setup.fuselage.front_wing_ahead_of_mast_mm and"
                + " setup.fuselage.stabilizer_behind_mast_mm put the wings' quarter chords 160 mm"
                + " apart, permitted is above 187.5: the wings would overlap."),
        new Row(
            "ride:    {mast",
            "pull:    {height_above_deck_mm: 1200}\nride:    {mast",
            "line 17: pull and setup.drive stand together; permitted is one of them: leave out the"
                + " drive for a ride under a wing, kite or tow line, or leave out pull."),
        // Several at once
        new Row(
            "salinity_g_kg: 0.2, chop_height_m: 0.10",
            "salinity_g_kg: 80, chop_hight_m: 0.10, temprature: 4",
            "line 1: water.salinity_g_kg is 80, permitted is a number from 0 to 42 g/kg.",
            "line 1: water.chop_hight_m is not a known key; did you mean water.chop_height_m?",
            "line 1: water.temprature is not a known key; did you mean water.temperature_c?"));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void saysWhatIsWrong(Row row) {
    assertThat(messages(Texts.with(row.piece(), row.other())))
        .containsExactlyInAnyOrder(row.messages());
  }

  @Test
  void reportsProblemsOfEveryKindTogether() {
    String text =
        Texts.with("salinity_g_kg: 0.2", "salinity_g_kg: 80")
            .replace("mass_kg: 3.0", "mass_kg: -3")
            .replace("tip_chord_mm: 60", "tip_chord_mm: 690")
            .replace("span_mm: 900", "span_mm: 680")
            .replace("section: naca0009", "section: naca29999")
            .replace("skill: linking", "skil: linking");
    assertThat(messages(text))
        .satisfiesExactly(
            m -> assertThat(m).contains("water.salinity_g_kg is 80"),
            m -> assertThat(m).contains("rider.skil is not a known key"),
            m -> assertThat(m).contains("setup.mast.mass_kg is -3"),
            m -> assertThat(m).contains("setup.front_wing.tip_chord_mm is 690"),
            m -> assertThat(m).contains("setup.stabilizer.section is naca29999"));
  }

  @Test
  void refusesTextsThatAreNoGroupOfKeys() {
    assertThat(messages("")).containsExactly("The text is empty.");
    assertThat(messages("# nothing\n")).containsExactly("The text is empty.");
    assertThat(messages("- 1\n- 2\n")).singleElement().asString().contains("not a group of keys");
    assertThat(messages("hello")).singleElement().asString().contains("not a group of keys");
    assertThat(messages(Texts.EXAMPLE + "\n---\na: 1\n"))
        .singleElement()
        .asString()
        .contains("more than one document");
    assertThat(messages("a: [1, 2\nb: 3"))
        .singleElement()
        .asString()
        .startsWith("line 2: This line cannot be read as YAML");
  }

  @Test
  void refusesHostileTexts() {
    assertThat(messages("a: " + "[".repeat(50) + "]".repeat(50)))
        .singleElement()
        .asString()
        .contains("nested more than 12 levels deep");
    assertThat(messages("[".repeat(100_000))).singleElement().asString().contains("12 levels");
    assertThat(messages("a: b\n".repeat(100_000)))
        .singleElement()
        .asString()
        .contains("permitted are up to 262144");
    assertThat(messages("a:\n" + " - 1\n".repeat(20_000)))
        .singleElement()
        .asString()
        .contains("more than 10000 values");
    StringBuilder laughs = new StringBuilder("a0: &a0 [x, x]\n");
    for (int i = 1; i < 30; i++) {
      laughs.append("a" + i + ": &a" + i + " [*a" + (i - 1) + ", *a" + (i - 1) + "]\n");
    }
    assertThat(messages(laughs.toString())).hasSizeLessThanOrEqualTo(61).isNotEmpty();
  }

  private static List<String> messages(String text) {
    return CaseReader.read(text, SectionFiles.NONE).problems().stream().map(Problem::text).toList();
  }
}
