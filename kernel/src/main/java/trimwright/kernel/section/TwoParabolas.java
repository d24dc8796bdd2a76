package trimwright.kernel.section;

/**
 * The mean line of the NACA 4-digit sections: two parabolas with their common vertex at the place
 * of largest camber.
 *
 * <p>Source: Jacobs, Ward and Pinkerton, NACA Report 460 (1933).
 *
 * @param camber largest height [chords]; negative below the chord line
 * @param position distance of it behind the leading edge [chords], above 0 and below 1
 */
record TwoParabolas(double camber, double position) implements MeanLine {

  @Override
  public double height(double x) {
    double reach = x < position ? position : 1 - position;
    double away = (x - position) / reach;
    return camber * (1 - away * away);
  }

  @Override
  public double slope(double x) {
    double reach = x < position ? position : 1 - position;
    return 2 * camber * (position - x) / (reach * reach);
  }
}
