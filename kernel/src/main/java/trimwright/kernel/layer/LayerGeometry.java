package trimwright.kernel.layer;

/**
 * Where the layers of one flow run and how the flow outside answers them. Stations are counted
 * along the first wall from its stagnation point to the trailing edge, then along the second wall,
 * then along the wake behind the trailing edge. The arrays are not copied.
 *
 * @param first arc lengths of the first wall's stations from the stagnation point [chords]
 * @param second the same of the second wall
 * @param wake distances of the wake's stations from the trailing edge
 * @param onset edge speeds without displacement, positive along the flow, all stations
 * @param response edge speed per unit of edge speed times displacement thickness, row per receiving
 *     station
 * @param stretch gradient of the edge speed at the stagnation point
 * @param forcedFirst arc length of forced transition on the first wall; infinite for none
 * @param forcedSecond the same on the second wall
 */
public record LayerGeometry(
    double[] first,
    double[] second,
    double[] wake,
    double[] onset,
    double[][] response,
    double stretch,
    double forcedFirst,
    double forcedSecond) {

  /** Number of stations [1]. */
  public int stations() {
    return first.length + second.length + wake.length;
  }
}
