package trimwright.bench;

import java.util.ArrayList;
import java.util.List;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.Reading;
import trimwright.exchange.read.SectionFiles;
import trimwright.kernel.rig.RideCase;

/** The case that is measured: the shop's heavy beginner. */
final class BenchCase {
  private BenchCase() {}

  static RideCase rideCase() {
    return caseFile(0, 0).rideCase();
  }

  /** The case with a shim [degrees] and the mast moved in its track [mm]. */
  static CaseFile caseFile(double shimDegrees, double trackMillimetres) {
    String text =
        DemoCases.find("heavy-beginner")
            .orElseThrow()
            .text()
            .replace("\nride:", "  shim:\n    angle_deg: " + shimDegrees + "\n\nride:")
            .replace("volume_l: 150", "volume_l: 150\n    track_mm: " + trackMillimetres);
    if (CaseReader.read(text, SectionFiles.NONE) instanceof Reading.Accepted<CaseFile> accepted) {
      return accepted.value();
    }
    throw new IllegalStateException("the demo case does not read");
  }

  /** Thirty speeds from 12 to 41 km/h [m/s]. */
  static List<Double> thirtySpeeds() {
    List<Double> speeds = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      speeds.add((12 + i) / 3.6);
    }
    return speeds;
  }

  /** The Bench's metric grid, 10 to 40 km/h [m/s]. */
  static List<Double> gridSpeeds() {
    List<Double> speeds = new ArrayList<>();
    for (int kmh = 10; kmh <= 40; kmh++) {
      speeds.add(kmh / 3.6);
    }
    return speeds;
  }
}
