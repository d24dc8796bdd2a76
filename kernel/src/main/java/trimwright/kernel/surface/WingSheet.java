package trimwright.kernel.surface;

import java.util.ArrayList;
import java.util.List;
import trimwright.kernel.section.Section;

/**
 * A wing as a spec sheet gives it. Area, span, root chord and tip chord fix the planform: with e
 * the fraction of the half span, {@code chord = tip + (root - tip) (1 - e^n)^(1/n)}, where the
 * exponent n (1 a straight taper, 2 an ellipse, more a fuller tip) is what makes the area come out.
 *
 * @param area planform [m²]
 * @param span between the tips [m]
 * @param rootChord [m]
 * @param tipChord [m]
 * @param sweep how far the tip's quarter chord lies behind the root's [m]; grows with the fraction
 *     squared
 * @param tipDrop how far the tip's quarter chord lies below the root's [m]; grows with the fraction
 *     squared
 * @param tipTwist tip's chord line against the root's, leading edge up positive [rad]; grows
 *     linearly
 */
public record WingSheet(
    double area,
    double span,
    double rootChord,
    double tipChord,
    double sweep,
    double tipDrop,
    double tipTwist) {

  /** Exponent of a straight taper, the leanest planform of the family. */
  private static final double LEANEST = 1;

  /** Exponent of the fullest planform of the family. */
  private static final double FULLEST = 8;

  /**
   * Relative play of the area, so that rounding on a sheet of a straight taper is not a
   * contradiction.
   */
  private static final double AREA_PLAY = 2e-3;

  /**
   * Stations along the half span; between them the outline is straight. 0.02 % of area at this
   * count.
   */
  private static final int STATIONS = 64;

  /**
   * Checks the physical invariants.
   *
   * @throws IllegalArgumentException if area, span or a chord is not above 0 or a value is not
   *     finite
   */
  public WingSheet {
    if (!(area > 0 && span > 0 && rootChord > 0 && tipChord > 0)) {
      throw new IllegalArgumentException(
          "area, span and chords must be above 0, were "
              + area
              + " m², "
              + span
              + " m, "
              + rootChord
              + " m, "
              + tipChord
              + " m");
    }
    if (!Double.isFinite(area + span + rootChord + tipChord + sweep + tipDrop + tipTwist)) {
      throw new IllegalArgumentException("every value of a wing sheet must be finite");
    }
  }

  /**
   * The exponent that makes the area come out.
   *
   * @return exponent n, 1 to 8 [1]
   * @throws ContradictoryWing if no exponent from 1 to 8 does
   */
  public double exponent() {
    double atLeanest = areaWith(LEANEST);
    double atFullest = areaWith(FULLEST);
    double least = Math.min(atLeanest, atFullest);
    double most = Math.max(atLeanest, atFullest);
    if (area < least * (1 - AREA_PLAY) || area > most * (1 + AREA_PLAY)) {
      throw new ContradictoryWing(area, least, most);
    }
    double low = LEANEST;
    double high = FULLEST;
    boolean growing = atFullest >= atLeanest;
    // Bisection: the area is monotonic in the exponent, and sixty halvings exhaust the digits.
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      if (areaWith(middle) < area == growing) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  /**
   * The geometry, with one section along the whole span.
   *
   * @param section the section
   * @return the wing by stations
   * @throws ContradictoryWing if the four numbers contradict each other
   */
  public WingShape shape(Section section) {
    double n = exponent();
    List<Station> stations = new ArrayList<>(STATIONS + 1);
    for (int i = 0; i <= STATIONS; i++) {
      double e = i == STATIONS ? 1 : Math.sin(0.5 * Math.PI * i / STATIONS);
      stations.add(
          new Station(e, chordAt(e, n), -sweep * e * e, -tipDrop * e * e, tipTwist * e, section));
    }
    return new WingShape(span, stations);
  }

  private double chordAt(double e, double n) {
    return tipChord + (rootChord - tipChord) * Math.pow(Math.max(0, 1 - Math.pow(e, n)), 1 / n);
  }

  private double areaWith(double n) {
    // The same straight pieces as shape(), so that the area of the geometry is the area of the
    // sheet to the last digit.
    double sum = 0;
    double before = 0;
    double chordBefore = chordAt(0, n);
    for (int i = 1; i <= STATIONS; i++) {
      double e = i == STATIONS ? 1 : Math.sin(0.5 * Math.PI * i / STATIONS);
      double chord = chordAt(e, n);
      sum += 0.5 * (chordBefore + chord) * (e - before);
      before = e;
      chordBefore = chord;
    }
    return sum * span;
  }
}
