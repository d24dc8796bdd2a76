package trimwright.exchange.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.Values;
import trimwright.exchange.read.internal.Words;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.section.Section;
import trimwright.kernel.surface.ContradictoryWing;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.WingShape;
import trimwright.kernel.surface.WingSheet;

/** Builds a wing's geometry from its keys, and says where they contradict each other. */
final class WingBuilder {
  /** Share by which the area of a measured wing may differ from what its sheet says. */
  private static final double AREA_PLAY = 0.02;

  private final Values wing;
  private final SectionChoice sections;
  private final Findings findings;

  private WingBuilder(Values wing, SectionChoice sections, Findings findings) {
    this.wing = wing;
    this.sections = sections;
    this.findings = findings;
  }

  /**
   * Builds a wing.
   *
   * @param wing its keys, with the defaults filled in
   * @param sections where its sections come from
   * @param findings takes the contradictions
   * @return the geometry; empty where a key of it has a problem, found now or before
   */
  static Optional<WingShape> build(Values wing, SectionChoice sections, Findings findings) {
    WingBuilder builder = new WingBuilder(wing, sections, findings);
    return wing.group().has("stations") ? builder.fromStations() : builder.fromSheet();
  }

  private Optional<WingShape> fromSheet() {
    Optional<Section> section = section(wing);
    boolean fits =
        fitsSpan(wing, "root_chord_mm") & fitsSpan(wing, "tip_chord_mm") & tipWithinRoot();
    if (!fits
        || !wing.has("area_cm2", "span_mm", "root_chord_mm", "tip_chord_mm")
        || !wing.has("sweep_mm", "tip_drop_mm", "twist_tip_deg")) {
      return Optional.empty();
    }
    WingSheet sheet =
        new WingSheet(
            wing.get("area_cm2"),
            wing.get("span_mm"),
            wing.get("root_chord_mm"),
            wing.get("tip_chord_mm"),
            wing.get("sweep_mm"),
            wing.get("tip_drop_mm"),
            wing.get("twist_tip_deg"));
    try {
      if (section.isPresent()) {
        return Optional.of(sheet.shape(section.get()));
      }
      sheet.exponent();
    } catch (ContradictoryWing e) {
      findings.report(wing.at("area_cm2"), contradiction(e));
    }
    return Optional.empty();
  }

  private String contradiction(ContradictoryWing wrong) {
    double area = written("area_cm2");
    double least = Unit.SQUARE_CENTIMETRE.fromSi(wrong.smallestArea());
    double most = Unit.SQUARE_CENTIMETRE.fromSi(wrong.largestArea());
    boolean large = area > most;
    return wing.at("area_cm2")
        + " is "
        + Words.number(area)
        + ", but span_mm "
        + Words.number(written("span_mm"))
        + ", root_chord_mm "
        + Words.number(written("root_chord_mm"))
        + " and tip_chord_mm "
        + Words.number(written("tip_chord_mm"))
        + " allow only "
        + Math.round(least)
        + " to "
        + Math.round(most)
        + " cm²: "
        + Math.max(1, Math.round(large ? area - most : least - area))
        + (large ? " cm² too much" : " cm² too little")
        + ". One of the four numbers is wrong.";
  }

  private boolean fitsSpan(Values place, String chord) {
    if (!place.has(chord) || !wing.has("span_mm")) {
      return true;
    }
    double value = place.findWritten(chord).getAsDouble();
    if (value <= written("span_mm")) {
      return true;
    }
    findings.report(
        place.at(chord),
        place.at(chord)
            + " is "
            + Words.number(value)
            + ", permitted is no more than "
            + wing.at("span_mm")
            + ", which is "
            + Words.number(written("span_mm"))
            + ".");
    return false;
  }

  private boolean tipWithinRoot() {
    if (!wing.has("root_chord_mm", "tip_chord_mm")
        || written("tip_chord_mm") <= written("root_chord_mm")
        || written("tip_chord_mm") > wing.findWritten("span_mm").orElse(Double.MAX_VALUE)) {
      return true;
    }
    findings.report(
        wing.at("tip_chord_mm"),
        wing.at("tip_chord_mm")
            + " is "
            + Words.number(written("tip_chord_mm"))
            + ", permitted is no more than "
            + wing.at("root_chord_mm")
            + ", which is "
            + Words.number(written("root_chord_mm"))
            + ".");
    return false;
  }

  private double written(String key) {
    return wing.findWritten(key).orElseThrow();
  }

  private Optional<Section> section(Values place) {
    if (findings.bad().stream().anyMatch(p -> p.startsWith(place.at("section")))) {
      return Optional.empty();
    }
    Optional<Reading<Section>> reading = sections.find(place);
    reading
        .map(Reading::problems)
        .orElse(List.of())
        .forEach(p -> findings.report(p.key(), p.message()));
    return reading.flatMap(Reading::findValue);
  }

  private Optional<WingShape> fromStations() {
    Optional<Section> whole = section(wing);
    List<Station> stations = new ArrayList<>();
    List<Values> places = wing.listGroups("stations");
    boolean allGroups =
        places.size() == wing.group().get("stations").size()
            && !findings.bad().contains(wing.at("stations"));
    boolean good = allGroups;
    double before = -1;
    for (int i = 0; i < places.size(); i++) {
      Values place = places.get(i);
      good &= fitsSpan(place, "chord_mm");
      OptionalDouble eta = place.findWritten("eta");
      if (eta.isPresent() && allGroups) {
        good &= inOrder(place, eta.getAsDouble(), before, i, places.size());
        before = eta.getAsDouble();
      }
      Optional<Section> section = place.group().has("section") ? section(place) : whole;
      if (!place.group().has("section") && !wing.group().has("section")) {
        findings.report(
            place.at("section"),
            place.at("section")
                + " is missing; wanted is a section here or one for the whole wing ("
                + wing.at("section")
                + ").");
      }
      if (section.isEmpty()
          || !place.has("eta", "chord_mm", "quarter_chord_mm", "height_mm", "twist_deg")) {
        good = false;
      } else {
        stations.add(
            new Station(
                place.get("eta"),
                place.get("chord_mm"),
                place.get("quarter_chord_mm"),
                place.get("height_mm"),
                place.get("twist_deg"),
                section.get()));
      }
    }
    if (!good || !wing.has("span_mm")) {
      return Optional.empty();
    }
    WingShape shape = new WingShape(wing.get("span_mm"), fromRoot(stations));
    return areaAgrees(shape) ? Optional.of(shape) : Optional.empty();
  }

  /** Positions are counted from the root's quarter chord, wherever the tape was laid on. */
  private static List<Station> fromRoot(List<Station> stations) {
    Station root = stations.get(0);
    return stations.stream()
        .map(
            s ->
                new Station(
                    s.fraction(),
                    s.chord(),
                    s.ahead() - root.ahead(),
                    s.above() - root.above(),
                    s.twist(),
                    s.section()))
        .toList();
  }

  private boolean inOrder(Values place, double eta, double before, int index, int count) {
    String wanted = null;
    if (index == 0 && eta != 0) {
      wanted = "0, as the list begins at the root";
    } else if (index == count - 1 && eta != 1) {
      wanted = "1, as the list ends at the tip";
    } else if (index > 0 && eta <= before) {
      wanted = "above the one before, which is " + Words.number(before);
    }
    if (wanted == null) {
      return true;
    }
    findings.report(
        place.at("eta"),
        place.at("eta") + " is " + Words.number(eta) + ", wanted is " + wanted + ".");
    return false;
  }

  private boolean areaAgrees(WingShape shape) {
    OptionalDouble sheet = wing.find("area_cm2");
    if (sheet.isEmpty()
        || Math.abs(shape.area() - sheet.getAsDouble()) <= AREA_PLAY * shape.area()) {
      return true;
    }
    double measured = Unit.SQUARE_CENTIMETRE.fromSi(shape.area());
    findings.report(
        wing.at("area_cm2"),
        wing.at("area_cm2")
            + " is "
            + Words.number(written("area_cm2"))
            + ", but the stations give "
            + Math.round(measured)
            + " cm²; permitted is a difference of 2 %, or leave area_cm2 out.");
    return false;
  }
}
