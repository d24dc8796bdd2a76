package trimwright.exchange.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.Naming;
import trimwright.exchange.read.internal.Paths;
import trimwright.exchange.read.internal.Recent;
import trimwright.exchange.read.internal.Values;
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

  /** Some 5 kB each; moving a slider changes one of two wings at most. */
  private static final int MOST_KEPT = 64;

  /** The exponent of a sheet's planform takes a quarter of a millisecond to find. */
  private static final Recent<SheetKey, WingShape> KEPT = new Recent<>(MOST_KEPT);

  private record SheetKey(WingSheet sheet, Section section) {}

  private final Values wing;
  private final SectionChoice sections;
  private final Findings findings;
  private final Naming names;

  private WingBuilder(Values wing, SectionChoice sections, Findings findings) {
    this.wing = wing;
    this.sections = sections;
    this.findings = findings;
    names = findings.naming();
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
        Section whole = section.get();
        return Optional.of(KEPT.get(new SheetKey(sheet, whole), () -> sheet.shape(whole)));
      }
      sheet.exponent();
    } catch (ContradictoryWing e) {
      contradiction(e);
    }
    return Optional.empty();
  }

  private void contradiction(ContradictoryWing wrong) {
    double area = written("area_cm2");
    double least = Unit.SQUARE_CENTIMETRE.fromSi(wrong.smallestArea());
    double most = Unit.SQUARE_CENTIMETRE.fromSi(wrong.largestArea());
    boolean large = area > most;
    String key = wing.at("area_cm2");
    String span = wing.at("span_mm");
    String root = wing.at("root_chord_mm");
    String tip = wing.at("tip_chord_mm");
    findings.report(
        List.of(key, span, root, tip),
        names.opening(key)
            + " is "
            + names.value(key, area)
            + ", but "
            + named(span, "span_mm")
            + ", "
            + named(root, "root_chord_mm")
            + " and "
            + named(tip, "tip_chord_mm")
            + " allow only "
            + names.range(key, Math.round(least), Math.round(most))
            + ": "
            + names.amount(key, Math.max(1, Math.round(large ? area - most : least - area)))
            + (large ? " too much" : " too little")
            + ". One of the four numbers is wrong.");
  }

  private String named(String path, String key) {
    return names.brief(path) + " " + names.value(path, written(key));
  }

  private boolean fitsSpan(Values place, String chord) {
    return TooLarge.check(place, chord, wing, "span_mm", findings);
  }

  private boolean tipWithinRoot() {
    return wing.has("tip_chord_mm")
            && written("tip_chord_mm") > wing.findWritten("span_mm").orElse(Double.MAX_VALUE)
        || TooLarge.check(wing, "tip_chord_mm", wing, "root_chord_mm", findings);
  }

  private double written(String key) {
    return wing.findWritten(key).orElseThrow();
  }

  private Optional<Section> section(Values place) {
    if (findings.bad().stream().anyMatch(p -> p.startsWith(place.at("section")))) {
      return Optional.empty();
    }
    Optional<Reading<Section>> reading = sections.find(place);
    for (Problem problem : reading.map(Reading::problems).orElse(List.of())) {
      String path = place.at("section");
      findings.report(
          problem.key().isEmpty() ? path : Paths.child(path, problem.key()),
          names.opening(path) + " " + problem.message());
    }
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
            List.of(place.at("section"), wing.at("section")),
            names.opening(place.at("section"))
                + " is missing; wanted is a section here or one for the whole wing ("
                + names.name(wing.at("section"))
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
      wanted = names.value(place.at("eta"), 0) + ", as the list begins at the root";
    } else if (index == count - 1 && eta != 1) {
      wanted = names.value(place.at("eta"), 1) + ", as the list ends at the tip";
    } else if (index > 0 && eta <= before) {
      wanted = "above the one before, which is " + names.value(place.at("eta"), before);
    }
    if (wanted == null) {
      return true;
    }
    findings.report(
        place.at("eta"),
        names.opening(place.at("eta"))
            + " is "
            + names.value(place.at("eta"), eta)
            + ", wanted is "
            + wanted
            + ".");
    return false;
  }

  private boolean areaAgrees(WingShape shape) {
    OptionalDouble sheet = wing.find("area_cm2");
    if (sheet.isEmpty()
        || Math.abs(shape.area() - sheet.getAsDouble()) <= AREA_PLAY * shape.area()) {
      return true;
    }
    double measured = Unit.SQUARE_CENTIMETRE.fromSi(shape.area());
    String area = wing.at("area_cm2");
    findings.report(
        List.of(area, wing.at("span_mm"), wing.at("stations")),
        names.opening(area)
            + " is "
            + names.value(area, written("area_cm2"))
            + ", but the stations give "
            + names.amount(area, Math.round(measured))
            + "; permitted is a difference of 2 %, or leave "
            + names.brief(area)
            + " out.");
    return false;
  }
}
