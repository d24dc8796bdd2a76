package trimwright.kernel.section;

/**
 * The line half way between the surfaces of a section. It meets the chord line at the leading edge
 * (0) and at the trailing edge (1).
 */
public interface MeanLine {

  /** The mean line of a symmetrical section. */
  MeanLine STRAIGHT =
      new MeanLine() {
        @Override
        public double height(double x) {
          return 0;
        }

        @Override
        public double slope(double x) {
          return 0;
        }
      };

  /**
   * Height above the chord line [chords].
   *
   * @param x distance behind the leading edge [chords], 0 to 1
   */
  double height(double x);

  /**
   * Slope against the chord line [1].
   *
   * @param x distance behind the leading edge [chords], 0 to 1
   */
  double slope(double x);
}
