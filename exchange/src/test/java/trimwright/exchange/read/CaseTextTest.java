package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.kernel.band.KnownBy;
import trimwright.kernel.band.Origin;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.section.Finish;

/** Ways of writing the same case, its optional keys, its digest, and writing it back. */
class CaseTextTest {
  /** Area of stations that stand for a straight taper: exact but for rounding. */
  private static final double ROUNDING = 1e-12;

  static List<DemoCase> demos() {
    return DemoCases.list();
  }

  @Test
  void digestKnowsNoCommentsOrderOrSpelling() {
    String digest = Texts.accepted(Texts.EXAMPLE).digest();
    assertThat(digest).matches("[0-9a-f]{64}");
    assertThat(same("# a comment\n" + Texts.EXAMPLE)).isEqualTo(digest);
    assertThat(same(Texts.with("mass_kg: 82, kit_mass_kg: 6", "kit_mass_kg: 6.0, mass_kg: 8.2e1")))
        .isEqualTo(digest);
    assertThat(same(Texts.with(", wind_kmh: 0}", "}"))).isEqualTo(digest);
    assertThat(same("format: trimwright-case/1\n" + Texts.EXAMPLE)).isEqualTo(digest);
    assertThat(same(Texts.with("naca2412", "NACA 2412"))).isEqualTo(digest);
    assertThat(same(Texts.with("wind_kmh: 0", "wind_kmh: -0.0"))).isEqualTo(digest);
    assertThat(same(Texts.with("mass_kg: 82,", "mass_kg: 82.1,"))).isNotEqualTo(digest);
    assertThat(same("name: other\n" + Texts.EXAMPLE)).isNotEqualTo(digest);
  }

  private static String same(String text) {
    return Texts.accepted(text).digest();
  }

  @Test
  void takesTheTextsThatProgramsWrite() {
    String digest = Texts.accepted(Texts.EXAMPLE).digest();
    assertThat(same("\uFEFF" + Texts.EXAMPLE)).isEqualTo(digest);
    assertThat(same(Texts.EXAMPLE.replace("\n", "\r\n"))).isEqualTo(digest);
    assertThat(same(Texts.with("          skill", "\tskill"))).isEqualTo(digest);
    assertThat(same(Texts.with("rider:   {", "rider:\t{"))).isEqualTo(digest);
    assertThat(same("---\n" + Texts.EXAMPLE + "...\n")).isEqualTo(digest);
  }

  @Test
  void takesTabsAsIndentationWhereNothingElseIndents() {
    String yaml = CaseWriter.yaml(Texts.accepted(Texts.EXAMPLE));
    assertThat(same(yaml.replace("  ", "\t"))).isEqualTo(Texts.accepted(Texts.EXAMPLE).digest());
    assertThat(CaseReader.read(yaml.replaceFirst("  ", "\t"), SectionFiles.NONE).problems())
        .singleElement()
        .satisfies(p -> assertThat(p.text()).contains("tabs").startsWith("line 3"));
  }

  @Test
  void takesJson() {
    String json =
        """
        {
        \t"water": {"temperature_c": 18, "salinity_g_kg": 0.2},
        \t"rider": {"mass_kg": 82, "front_foot_mm": 520, "back_foot_mm": 40,
        \t\t"wished_speed_kmh": 2.5E1},
        \t"setup": {
        \t\t"board": {"mass_kg": 14, "length_mm": 1650, "width_mm": 660, "thickness_mm": 120,
        \t\t\t"volume_l": 95, "mass_centre_mm": 60},
        \t\t"mast": {"length_mm": 750, "chord_mm": 120, "thickness_mm": 16, "mass_kg": 3.0},
        \t\t"fuselage": {"length_mm": 850, "diameter_mm": 32, "mass_kg": 1.2,
        \t\t\t"front_wing_ahead_of_mast_mm": 150, "stabilizer_behind_mast_mm": 560},
        \t\t"front_wing": {"area_cm2": 1500, "span_mm": 900, "root_chord_mm": 215,
        \t\t\t"tip_chord_mm": 60, "section": "naca2412", "mass_kg": 1.6},
        \t\t"stabilizer": {"area_cm2": 350, "span_mm": 420, "root_chord_mm": 105,
        \t\t\t"tip_chord_mm": 45, "section": "naca0009", "setting_deg": -2.0, "mass_kg": 0.3}},
        \t"pull": {"height_above_deck_mm": 1200},
        \t"ride": {"mast_immersion_mm": 450}
        }
        """;
    RideCase least = Texts.accepted(json).rideCase();
    assertThat(least.setup().battery()).isEmpty();
    assertThat(least.setup().drive()).isEmpty();
    assertThat(least.pullAboveDeck()).hasValue(1.2);
    assertThat(least.airDensity()).isEqualTo(1.225);
    assertThat(least.chopHeight()).isZero();
    assertThat(least.headWind()).isZero();
    assertThat(least.rider().kitMass()).isZero();
    assertThat(least.rider().height()).isEqualTo(1.75);
    assertThat(least.rider().airDragArea()).isEqualTo(0.5);
    assertThat(least.rider().wishedFootShare()).isEqualTo(0.5);
    assertThat(least.rider().wishedPitch()).isZero();
    assertThat(least.setup().board().massCentreBelowDeck()).isEqualTo(0.05);
    assertThat(least.setup().mast().baseAngle()).isZero();
    assertThat(least.setup().mast().rake()).isZero();
    assertThat(least.setup().mast().massAboveAxis()).isEqualTo(0.1);
    assertThat(least.setup().shim()).isZero();
  }

  @Test
  void readsEveryOptionalKey() {
    String text =
        Texts.with("wind_kmh: 0", "wind_kmh: 36, air_density_kg_m3: 1.3")
            .replace("skill: linking", "skill: surf, posture: prone, wished_pitch_deg: 1")
            .replace("track_mm: 0", "track_mm: -20, mass_below_deck_mm: 70, known_by: tape")
            .replace("energy_wh: 2000", "energy_wh: 2000, usable_share: 0.7, rating_nm: 9")
            .replace("rake_deg: 0", "rake_deg: 2, volume_l: 0.9, finish: scuffed, rating_nm: 900")
            .replace(
                "max_power_w: 5000", "max_power_w: 5000, efficiency: 0.5, throttle_ramp_s: 1.5")
            .replace("diameter_mm: 32", "diameter_mm: 32, mass_above_axis_mm: 10, known_by: scan")
            .replace("setting_deg: 0.0", "setting_deg: 1, height_mm: 30, known_by: calliper")
            .replace("mounted: above", "mounted: below, finish: scuffed, volume_l: 0.2")
            .replace("ion_mm: 450", "ion_mm: 400, measured_pitch_deg: 3");
    CaseFile file = Texts.accepted("name: All keys\n" + text);
    RideCase ride = file.rideCase();
    assertThat(file.name()).isEqualTo("All keys");
    assertThat(ride.headWind()).isEqualTo(10);
    assertThat(ride.airDensity()).isEqualTo(1.3);
    assertThat(ride.rider().wishedPitch()).isCloseTo(Math.toRadians(1), within(ROUNDING));
    assertThat(ride.setup().board().track()).isEqualTo(-0.02);
    assertThat(ride.setup().board().massCentreBelowDeck()).isEqualTo(0.07);
    assertThat(ride.setup().battery().orElseThrow().usableShare()).isEqualTo(0.7);
    assertThat(ride.setup().mast().rake()).isCloseTo(Math.toRadians(2), within(ROUNDING));
    assertThat(ride.setup().mast().volume()).isEqualTo(0.0009);
    assertThat(ride.setup().mast().finish()).isEqualTo(Finish.SCUFFED);
    assertThat(ride.setup().drive().orElseThrow().efficiency()).isEqualTo(0.5);
    assertThat(ride.setup().fuselage().massAboveAxis()).isEqualTo(0.01);
    assertThat(ride.setup().frontWing().height()).isEqualTo(0.03);
    assertThat(ride.setup().stabilizer().volume()).isEqualTo(0.0002);
    assertThat(ride.setup().stabilizer().finish()).isEqualTo(Finish.SCUFFED);
    assertThat(ride.immersion()).isEqualTo(0.4);
    CaseNotes notes = file.notes();
    assertThat(notes.skill()).isEqualTo(Skill.SURF);
    assertThat(notes.posture()).isEqualTo(Posture.PRONE);
    assertThat(notes.stabilizerMounting()).isEqualTo(Mounting.BELOW);
    assertThat(notes.throttleRamp()).hasValue(1.5);
    assertThat(notes.measuredPitch().orElseThrow()).isCloseTo(Math.toRadians(3), within(ROUNDING));
    assertThat(notes.findPart(Part.MAST).orElseThrow().ratedMoment()).hasValue(900);
    assertThat(notes.knowledge().of(Origin.FUSELAGE)).isEqualTo(KnownBy.SCAN);
    assertThat(notes.knowledge().of(Origin.SHIM)).isEqualTo(KnownBy.SHEET);
    assertThat(notes.findPart(Part.BOARD).orElseThrow().knownBy()).contains(KnownBy.TAPE);
    assertThat(notes.findPart(Part.FUSELAGE).orElseThrow().knownBy()).contains(KnownBy.SCAN);
    assertThat(notes.findPart(Part.FRONT_WING).orElseThrow().knownBy()).contains(KnownBy.CALLIPER);
  }

  @ParameterizedTest
  @MethodSource("demos")
  void writtenCaseReadsTheSame(DemoCase demo) {
    CaseFile file = Texts.accepted(demo.text());
    String yaml = CaseWriter.yaml(file);
    assertThat(yaml).startsWith("format: trimwright-case/1\nname: ");
    CaseFile again = Texts.accepted(yaml);
    assertThat(again.digest()).isEqualTo(file.digest());
    assertThat(again.name()).isEqualTo(file.name());
    assertThat(again.notes()).isEqualTo(file.notes());
    assertThat(again.rideCase().rider()).isEqualTo(file.rideCase().rider());
    assertThat(again.rideCase().setup().mast()).isEqualTo(file.rideCase().setup().mast());
    assertThat(CaseWriter.yaml(again)).isEqualTo(yaml);
  }

  @Test
  void writtenNamesSurvive() {
    for (String name :
        List.of("true", "null", "12", "a: b", "\\\"quoted\\\"", "#x", "Zoë \\u2028", "-", " ")) {
      CaseFile file = Texts.accepted("name: \"" + name + "\"\n" + Texts.EXAMPLE);
      CaseFile again = Texts.accepted(CaseWriter.yaml(file));
      assertThat(again.name()).isEqualTo(file.name());
    }
  }
}
