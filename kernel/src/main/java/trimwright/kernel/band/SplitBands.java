package trimwright.kernel.band;

import java.util.Optional;

/**
 * The bands of a cause split: of the trim at the speed ridden, of that at the wished speed, and of
 * the parts between them. Both trims are of one case, so that what errs alike in both cancels in
 * the speed's part; the set's part is as sure as the trim at the wished speed.
 *
 * @param ridden bands at the speed ridden
 * @param wished bands at the wished speed
 */
public record SplitBands(PointBand ridden, PointBand wished) {

  /**
   * The speed's part, ridden less at the wished speed.
   *
   * @param quantity of which number
   * @return with the band of the difference, where both have a band
   */
  public Optional<Spread.Difference> speedPart(Quantity quantity) {
    return ridden
        .find(quantity)
        .flatMap(r -> wished.find(quantity).map(w -> r.minus(w, SharedInputs.ALL)));
  }

  /**
   * The set's part, at the wished speed less what was wanted.
   *
   * @param quantity of which number
   * @param wanted the wish, which has no band
   * @return with its band, where there is one
   */
  public Optional<Spread.Difference> setPart(Quantity quantity, double wanted) {
    return wished.find(quantity).map(w -> new Spread.Difference(w.value() - wanted, w.reach()));
  }
}
