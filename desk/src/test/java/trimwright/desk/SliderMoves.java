package trimwright.desk;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;

/** The heavy beginner's case with its sliders moved. */
final class SliderMoves {
  /** A slider of the Bench, or an input that moves like one. */
  enum Slider {
    SHIM(true, -4, 4, "\nride:", "  shim:\n    angle_deg: %s\n\nride:"),
    IMMERSION(true, 200, 650, "mast_immersion_mm: 420", "mast_immersion_mm: %s"),
    FRONT_SETTING(true, -2, 2, "setting_deg: 0.0", "setting_deg: %s"),
    STABILIZER_PLACE(true, 400, 700, "behind_mast_mm: 580", "behind_mast_mm: %s"),
    TRACK(false, -100, 100, "volume_l: 150", "volume_l: 150\n    track_mm: %s"),
    WEDGE(false, -6, 4, "base_angle_deg: -2.5", "base_angle_deg: %s"),
    RAKE(false, -5, 8, "chord_mm: 125", "chord_mm: 125\n    rake_deg: %s"),
    STANCE(false, 350, 700, "front_foot_mm: 505", "front_foot_mm: %s"),
    MASS(false, 40, 120, "mass_kg: 105", "mass_kg: %s"),
    WIND(false, -30, 40, "temperature_c: 24", "wind_kmh: %s\n  temperature_c: 24"),
    WISHED_SPEED(false, 12, 45, "wished_speed_kmh: 21", "wished_speed_kmh: %s"),
    SALT(false, 0, 38, "salinity_g_kg: 0.2", "salinity_g_kg: %s");

    private final boolean surfaces;
    private final double least;
    private final double most;
    private final String from;
    private final String to;

    Slider(boolean surfaces, double least, double most, String from, String to) {
      this.surfaces = surfaces;
      this.least = least;
      this.most = most;
      this.from = from;
      this.to = to;
    }

    /** Whether it alters what the lifting surfaces' table is computed from. */
    boolean surfaces() {
      return surfaces;
    }
  }

  private final Map<Slider, Double> places = new EnumMap<>(Slider.class);

  /** Puts a slider at a share of its way, in tenths of its unit. */
  void move(Slider slider, double share) {
    double value = slider.least + share * (slider.most - slider.least);
    places.put(slider, Math.rint(10 * value) / 10);
  }

  CaseFile caseFile() {
    String text = DemoCases.find("heavy-beginner").orElseThrow().text();
    for (Map.Entry<Slider, Double> place : places.entrySet()) {
      Slider s = place.getKey();
      if (!text.contains(s.from)) {
        throw new IllegalStateException("the demo case has no " + s.from);
      }
      String value = String.format(Locale.ROOT, "%.1f", place.getValue());
      text = text.replaceFirst(s.from, s.to.replace("%s", value));
    }
    return CaseReader.read(text, SectionFiles.NONE).findValue().orElseThrow();
  }
}
