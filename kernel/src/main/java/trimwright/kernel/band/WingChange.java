package trimwright.kernel.band;

import java.util.List;
import java.util.function.UnaryOperator;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.section.AdjustedSection;
import trimwright.kernel.section.Section;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.WingShape;

/** A wing with one of its numbers moved by an amount, or by a share of itself. */
@FunctionalInterface
interface WingChange {
  /** The least that a chord may shrink to, as a share of itself [1]. */
  double LEAST_CHORD = 0.2;

  /** The wing with the number moved. */
  FittedWing of(FittedWing wing, double by);

  /** Turned on the fuselage [rad]. */
  static FittedWing setting(FittedWing w, double by) {
    return fitted(w, w.shape(), by, 0, 0);
  }

  /** Higher over the fuselage's axis [m]. */
  static FittedWing height(FittedWing w, double by) {
    return fitted(w, w.shape(), 0, by, 0);
  }

  /** Heavier by a share [1]. */
  static FittedWing mass(FittedWing w, double by) {
    return fitted(w, w.shape(), 0, 0, by);
  }

  /** Larger by a share of the area at the same span [1]. */
  static FittedWing area(FittedWing w, double by) {
    return stations(
        w, w.shape().span(), s -> moved(s, s.chord() * (1 + by), s.ahead(), s.above(), s.twist()));
  }

  /** Wider by a length at the same area [m]. */
  static FittedWing span(FittedWing w, double by) {
    double factor = 1 + by / w.shape().span();
    return stations(
        w,
        w.shape().span() * factor,
        s -> moved(s, s.chord() / factor, s.ahead(), s.above(), s.twist()));
  }

  /**
   * Root chord longer by a length and tip chord shorter by the same, so that the area stays [m]: a
   * change that falls evenly along the half span.
   */
  static FittedWing taper(FittedWing w, double by) {
    return stations(
        w,
        w.shape().span(),
        s -> {
          double chord = s.chord() + by * (1 - 2 * s.fraction());
          return moved(
              s, Math.max(LEAST_CHORD * s.chord(), chord), s.ahead(), s.above(), s.twist());
        });
  }

  /** Tip further back [m], growing with the square of the half span's fraction. */
  static FittedWing sweep(FittedWing w, double by) {
    return stations(
        w,
        w.shape().span(),
        s -> moved(s, s.chord(), s.ahead() - by * square(s), s.above(), s.twist()));
  }

  /** Tip lower [m], growing likewise. */
  static FittedWing tipDrop(FittedWing w, double by) {
    return stations(
        w,
        w.shape().span(),
        s -> moved(s, s.chord(), s.ahead(), s.above() - by * square(s), s.twist()));
  }

  /** Tip turned leading edge up against the root [rad], growing with the fraction. */
  static FittedWing twist(FittedWing w, double by) {
    return stations(
        w,
        w.shape().span(),
        s -> moved(s, s.chord(), s.ahead(), s.above(), s.twist() + by * s.fraction()));
  }

  /** Thicker sections [chords]. */
  static FittedWing thickness(FittedWing w, double by) {
    return sections(w, s -> AdjustedSection.thickness(s, by));
  }

  /** More cambered sections [chords]. */
  static FittedWing camber(FittedWing w, double by) {
    return sections(w, s -> AdjustedSection.camber(s, by));
  }

  /** Sections of a steeper lift slope, by a share [1]. */
  static FittedWing slope(FittedWing w, double by) {
    return sections(w, s -> AdjustedSection.slope(s, 1 + by));
  }

  /** Sections of more drag, by a share [1]. */
  static FittedWing drag(FittedWing w, double by) {
    return sections(w, s -> AdjustedSection.drag(s, 1 + by));
  }

  /** Sections of another moment, nose up positive [1]. */
  static FittedWing moment(FittedWing w, double by) {
    return sections(w, s -> AdjustedSection.moment(s, by));
  }

  /** Sections of higher lift limits, by a share [1]. */
  static FittedWing limit(FittedWing w, double by) {
    return sections(w, s -> AdjustedSection.limit(s, 1 + by));
  }

  private static double square(Station s) {
    return s.fraction() * s.fraction();
  }

  private static Station moved(Station s, double chord, double ahead, double above, double twist) {
    return new Station(s.fraction(), chord, ahead, above, twist, s.section());
  }

  private static FittedWing stations(FittedWing w, double span, UnaryOperator<Station> change) {
    List<Station> stations = w.shape().stations().stream().map(change).toList();
    return fitted(w, new WingShape(span, stations), 0, 0, 0);
  }

  private static FittedWing sections(FittedWing w, UnaryOperator<Section> change) {
    // One section mostly runs along the whole wing; neighbours that are the same must stay the
    // same, or every strip would be mixed from two.
    Section[] last = new Section[2];
    return stations(
        w,
        w.shape().span(),
        s -> {
          if (s.section() != last[0]) {
            last[0] = s.section();
            last[1] = change.apply(s.section());
          }
          return new Station(s.fraction(), s.chord(), s.ahead(), s.above(), s.twist(), last[1]);
        });
  }

  private static FittedWing fitted(
      FittedWing w, WingShape shape, double turned, double higher, double heavier) {
    return new FittedWing(
        shape,
        w.setting() + turned,
        w.height() + higher,
        w.mass() * (1 + heavier),
        w.massAboveAxis(),
        w.volume(),
        w.finish());
  }
}
