package trimwright.kernel.cause;

import java.util.OptionalDouble;

/**
 * One quantity's split. Ridden minus wanted is speed part plus set part, exactly; with a
 * measurement, measured minus wanted is speed part plus set part plus unexplained part, exactly.
 *
 * @param ridden computed at the speed ridden
 * @param atWishedSpeed computed at the wished speed
 * @param wanted the rider's wish
 * @param speedPart ridden - at wished speed
 * @param setPart at wished speed - wanted
 * @param measured as logged, where there is a log
 * @param unexplainedPart measured - ridden, where there is a log
 */
public record CauseParts(
    double ridden,
    double atWishedSpeed,
    double wanted,
    double speedPart,
    double setPart,
    OptionalDouble measured,
    OptionalDouble unexplainedPart) {

  static CauseParts of(
      double ridden, double atWishedSpeed, double wanted, OptionalDouble measured) {
    return new CauseParts(
        ridden,
        atWishedSpeed,
        wanted,
        ridden - atWishedSpeed,
        atWishedSpeed - wanted,
        measured,
        measured.isPresent()
            ? OptionalDouble.of(measured.getAsDouble() - ridden)
            : OptionalDouble.empty());
  }
}
