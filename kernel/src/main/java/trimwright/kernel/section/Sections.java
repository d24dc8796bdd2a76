package trimwright.kernel.section;

/** Makes sections. Each call computes the flow anew (a few milliseconds); keep the result. */
public final class Sections {
  /** Panels on each surface: lift, moment and zero-lift angle within about 3e-4 of their limits. */
  static final int PANELS_PER_SIDE = 80;

  /**
   * Where the mean line of a section known by thickness and camber alone has its crown [chords].
   */
  private static final double USUAL_CAMBER_POSITION = 0.4;

  private static final double LARGEST_CAMBER = 0.10;

  private Sections() {}

  /**
   * A section of the NACA 4- or 5-digit family, closed at the trailing edge.
   *
   * @param code such as {@code naca2412}, {@code 0009} or {@code NACA 23012}
   * @return the section
   * @throws IllegalArgumentException if the code is none of the family or its thickness is not 1 to
   *     30 %
   */
  public static Section naca(String code) {
    return of(NacaShape.parse(code));
  }

  /**
   * The mean line of a section of the NACA 4- or 5-digit family.
   *
   * @param code as for {@link #naca(String)}
   * @return the line that thickness is wrapped round
   * @throws IllegalArgumentException as {@link #naca(String)} does
   */
  public static MeanLine meanLine(String code) {
    return NacaShape.parse(code).meanLine();
  }

  /**
   * A section known by thickness and camber alone: the thickness distribution and mean line of the
   * NACA 4-digit family with the largest camber at 40 % of the chord.
   *
   * @param thickness largest thickness [chords], 0.01 to 0.30
   * @param camber largest height of the mean line [chords], -0.10 to 0.10; negative below the chord
   *     line
   * @return the section
   * @throws IllegalArgumentException if either lies outside its range
   */
  public static Section fromThicknessAndCamber(double thickness, double camber) {
    if (!(Math.abs(camber) <= LARGEST_CAMBER)) {
      throw new IllegalArgumentException(
          "section camber must be -"
              + LARGEST_CAMBER
              + " to "
              + LARGEST_CAMBER
              + " chords, was "
              + camber);
    }
    MeanLine line =
        camber == 0 ? MeanLine.STRAIGHT : new TwoParabolas(camber, USUAL_CAMBER_POSITION);
    String name = "t" + percent(thickness) + "c" + percent(camber);
    return of(new NacaShape(name, thickness, line));
  }

  private static String percent(double share) {
    double rounded = Math.round(share * 10000) / 100.0;
    String text = Double.toString(rounded);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  private static Section of(NacaShape shape) {
    return new CorrelatedSection(
        shape.name(), shape.outline(PANELS_PER_SIDE), shape.thickness(), shape.meanLine());
  }

  /**
   * A section from the points of its outline, given from the trailing edge round the leading edge
   * to the trailing edge again.
   *
   * <p>The points may run over the upper or the lower surface first, repeat themselves, be in any
   * unit, and lie at an angle. An outline that holds the point (0, 0) and has its trailing edge at
   * (1, 0) is taken to be drawn on its chord line and keeps it; any other is measured from the
   * chord line between its trailing edge and the middle of the nose's bend, where its mean line
   * ends. Angles of attack refer to this chord line. An open trailing edge, up to 3 % of the chord,
   * is closed by a wedge over the whole chord.
   *
   * @param name short name for people
   * @param x distances towards the trailing edge, any unit
   * @param y heights, same unit
   * @return the section
   * @throws IllegalArgumentException if the points do not describe one section, saying what is
   *     wrong
   */
  public static Section fromOutline(String name, double[] x, double[] y) {
    return readOutline(name, x, y).section();
  }

  /**
   * A section from the points of its outline, as {@link #fromOutline} makes it, with all that was
   * put right in the points.
   *
   * @param name short name for people
   * @param x distances towards the trailing edge, any unit
   * @param y heights, same unit
   * @return section and repairs
   * @throws IllegalArgumentException as {@link #fromOutline} does
   */
  public static ReadOutline readOutline(String name, double[] x, double[] y) {
    CoordinateOutline outline = CoordinateOutline.of(x, y);
    SectionShape shape = outline.shape(PANELS_PER_SIDE);
    Section section = new CorrelatedSection(name, shape, shape.thickness(), outline.meanLine());
    return new ReadOutline(section, outline.repairs());
  }

  /**
   * What lies between two sections, at one Reynolds number.
   *
   * @param inner the one
   * @param outer the other
   * @param share 0 for the one, 1 for the other [1]
   * @param reynolds Reynolds number on the chord [1]
   * @param finish surface state
   * @return the polar of the section between; its line of no lift and its slope are the straight
   *     lines between theirs
   */
  public static Polar between(
      Section inner, Section outer, double share, double reynolds, Finish finish) {
    Polar a = inner.polar(reynolds, finish);
    return inner == outer
        ? a
        : new BlendedPolar(inner, a, outer, outer.polar(reynolds, finish), share);
  }
}
