package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trimwright.exchange.read.Mounting;
import trimwright.kernel.wedge.ShimWedge;

/**
 * How a wedge goes in on one side of the fuselage, and how much longer its bolts have to be.
 *
 * @param mounting side of the fuselage the stabilizer is bolted to
 * @param thickEndInFront whether the thick end lies in front
 * @param frontBolt how much longer the front bolt: the thickness it crosses [m]
 * @param backBolt how much longer the back bolt [m]
 * @param fitting where the thick end goes, in words
 */
public record WedgeFit(
    Mounting mounting, boolean thickEndInFront, double frontBolt, double backBolt, String fitting) {

  /**
   * The fit of a wedge.
   *
   * @param angle that the stabilizer's leading edge goes up by, negative for down [rad]
   * @param wedge its sizes
   * @param mounting side of the fuselage the stabilizer is bolted to
   */
  public static WedgeFit of(double angle, ShimWedge wedge, Mounting mounting) {
    boolean front = ShimWords.thickEndInFront(angle, mounting);
    return new WedgeFit(
        mounting,
        front,
        front ? wedge.thickBoltThickness() : wedge.thinBoltThickness(),
        front ? wedge.thinBoltThickness() : wedge.thickBoltThickness(),
        ShimWords.of(angle, mounting).fitting());
  }

  /**
   * The fit in words.
   *
   * @param boltLength of the bolts that hold without a shim [m], if it was told
   * @return where the thick end goes, and the bolts it asks for
   */
  public List<String> words(OptionalDouble boltLength) {
    List<String> words = new ArrayList<>(List.of(fitting));
    words.add(
        "The front bolt has to be "
            + tenths(frontBolt)
            + " mm longer, the back bolt "
            + tenths(backBolt)
            + " mm, to hold with as many turns as without a shim.");
    if (boltLength.isPresent()) {
      double now = boltLength.getAsDouble();
      words.add(
          "Bolts of "
              + tenths(now)
              + " mm become "
              + tenths(now + frontBolt)
              + " mm in front and "
              + tenths(now + backBolt)
              + " mm behind.");
    }
    return words;
  }

  private static String tenths(double length) {
    return Shown.decimals(Shown.mm(length), 1);
  }
}
