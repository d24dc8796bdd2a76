package trimwright.kernel.section;

import java.util.Locale;

/**
 * A section of the NACA 4- or 5-digit family: a thickness distribution wrapped round a mean line.
 *
 * <p>Thickness is laid off at right angles to the mean line: half thickness = 5 t (0.2969 √x -
 * 0.1260 x - 0.3516 x² + 0.2843 x³ - 0.1036 x⁴). The last coefficient closes the trailing edge; the
 * report's own -0.1015 leaves it open by 0.0021 t each side. Sources: NACA Reports 460 (1933) and
 * 537 (1935).
 *
 * @param name such as {@code naca2412}
 * @param thickness largest thickness [chords]
 * @param meanLine the line the thickness is wrapped round
 */
record NacaShape(String name, double thickness, MeanLine meanLine) {
  /** Thinnest and thickest sections that the models here are meant for [chords]. */
  static final double THINNEST = 0.01;

  static final double THICKEST = 0.30;

  /**
   * Codes such as 63-412, 63(1)-412, 63,1-412, 64A010 and 65-410 a=0.5. Without dash or letter five
   * digits are a 5-digit section, as 63012 of NACA Report 610 is.
   */
  private static final String SIX_SERIES =
      "6[3-7](?:\\([0-9]+\\)|[,_]?[0-9])?\\s*(?:-|a-?)\\s*[0-9]{3}(?:\\s*a\\s*=.*)?";

  /** Design lift coefficient of a 5-digit section is 3/20 of its first digit. */
  private static final double DESIGN_LIFT_PER_DIGIT = 0.15;

  NacaShape {
    if (!(thickness >= THINNEST - 1e-12 && thickness <= THICKEST + 1e-12)) {
      throw new IllegalArgumentException(
          "section thickness must be "
              + THINNEST
              + " to "
              + THICKEST
              + " chords, was "
              + thickness
              + " in "
              + name);
    }
  }

  /**
   * Reads a code such as {@code 2412}, {@code naca2412} or {@code NACA 23012}.
   *
   * @throws IllegalArgumentException if it is none of the family, naming what is wrong
   */
  static NacaShape parse(String code) {
    String digits = code.strip().toLowerCase(Locale.ROOT);
    if (digits.startsWith("naca")) {
      digits = digits.substring(4).strip();
    }
    if (digits.matches(SIX_SERIES)) {
      throw new IllegalArgumentException(
          "a section code of the NACA 6-series is not built here, for its published ordinates are not"
              + " in hand: give its coordinates as a file; was "
              + code);
    }
    if (!digits.matches("[0-9]{4,5}")) {
      throw new IllegalArgumentException(
          "a section code must be NACA with 4 or 5 digits, such as naca2412 or naca23012, was "
              + code);
    }
    double thickness = Integer.parseInt(digits.substring(digits.length() - 2)) / 100.0;
    String name = "naca" + digits;
    MeanLine line = digits.length() == 4 ? fourDigitLine(digits) : fiveDigitLine(digits);
    return new NacaShape(name, thickness, line);
  }

  private static MeanLine fourDigitLine(String digits) {
    int camber = digits.charAt(0) - '0';
    int place = digits.charAt(1) - '0';
    if (camber == 0 && place == 0) {
      return MeanLine.STRAIGHT;
    }
    if (camber == 0 || place == 0) {
      throw new IllegalArgumentException(
          "the first two digits of a 4-digit section code must both be 0 or both be above 0, were "
              + digits.substring(0, 2)
              + " in naca"
              + digits);
    }
    return new TwoParabolas(camber / 100.0, place / 10.0);
  }

  private static MeanLine fiveDigitLine(String digits) {
    int lift = digits.charAt(0) - '0';
    int place = digits.charAt(1) - '0';
    int kind = digits.charAt(2) - '0';
    int first = kind == 1 ? 2 : 1;
    if (lift == 0 || kind > 1 || place < first || place > 5) {
      throw new IllegalArgumentException(
          "the first three digits of a 5-digit section code must be a design lift 1 to 9 followed by"
              + " 10, 20, 30, 40, 50, 21, 31, 41 or 51, were "
              + digits.substring(0, 3)
              + " in naca"
              + digits);
    }
    double designLift = DESIGN_LIFT_PER_DIGIT * lift;
    return kind == 0
        ? CubicLine.standard(place, designLift)
        : CubicLine.reflexed(place, designLift);
  }

  /**
   * The outline.
   *
   * @param panelsPerSide number of steps from edge to edge on each surface [1]
   * @return outline with points spaced as equal angles of a circle over the chord, dense at both
   *     edges
   */
  SectionShape outline(int panelsPerSide) {
    int n = panelsPerSide;
    double[] x = new double[2 * n + 1];
    double[] y = new double[2 * n + 1];
    x[0] = 1;
    x[2 * n] = 1;
    for (int k = 1; k < n; k++) {
      double s = 0.5 * (1 - Math.cos(Math.PI * k / n));
      double half = halfThickness(s);
      double slope = meanLine.slope(s);
      double cos = 1 / Math.hypot(1, slope);
      double sin = slope * cos;
      double height = meanLine.height(s);
      x[n - k] = s - half * sin;
      y[n - k] = height + half * cos;
      x[n + k] = s + half * sin;
      y[n + k] = height - half * cos;
    }
    return new SectionShape(x, y);
  }

  double halfThickness(double x) {
    return 5
        * thickness
        * (0.2969 * Math.sqrt(x) + x * (-0.1260 + x * (-0.3516 + x * (0.2843 - 0.1036 * x))));
  }
}
