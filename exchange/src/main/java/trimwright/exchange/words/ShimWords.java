package trimwright.exchange.words;

import java.util.List;
import trimwright.exchange.read.Mounting;

/**
 * A shim in words. The trade writes plus and minus both ways round, so no screen shows a bare sign:
 * the words say which edge goes up and where the thick end lies.
 *
 * @param headline which edge goes up, and by how much
 * @param fitting where the thick end lies
 * @param warning what the shim does to the bolts
 */
public record ShimWords(String headline, String fitting, String warning) {
  /** Angles below this are no shim at all: a twentieth of the trade's smallest step [degrees]. */
  private static final double NO_SHIM_DEGREES = 0.025;

  private static final String BOLTS =
      "A shim takes thread away from the bolts: use longer ones where fewer turns hold than the"
          + " maker asks for, and check that they still clamp.";

  /**
   * The words for turning the stabilizer from where it stands now.
   *
   * @param up whether its leading edge goes up
   * @param mounting side of the fuselage the stabilizer is bolted to
   * @return where the wedge goes, and what it does to the bolts
   */
  static List<String> turn(boolean up, Mounting mounting) {
    boolean above = mounting == Mounting.ABOVE;
    return List.of(
        "To turn that leading edge "
            + (up ? "up" : "down")
            + " the thick end of the added wedge goes to the "
            + end(up, mounting)
            + ", for your stabilizer sits "
            + (above ? "on top of" : "under")
            + " the fuselage.",
        BOLTS);
  }

  /**
   * Whether a shim is worth the name.
   *
   * @param angle of the shim [rad]
   */
  public static boolean isShim(double angle) {
    return Math.abs(Shown.degrees(angle)) >= NO_SHIM_DEGREES;
  }

  /**
   * Whether a shim's thick end lies in front.
   *
   * @param angle leading edge up positive [rad]
   * @param mounting side of the fuselage the stabilizer is bolted to
   */
  public static boolean thickEndInFront(double angle, Mounting mounting) {
    return thickEndInFront(angle > 0, mounting);
  }

  private static boolean thickEndInFront(boolean up, Mounting mounting) {
    // On top of the fuselage the shim lifts what it is thick under; below it, it pushes that down.
    return up == (mounting == Mounting.ABOVE);
  }

  private static String end(boolean up, Mounting mounting) {
    return thickEndInFront(up, mounting) ? "front" : "back";
  }

  /**
   * The words for a stabilizer's shim.
   *
   * @param angle leading edge up positive [rad]
   * @param mounting side of the fuselage the stabilizer is bolted to
   * @return the words
   */
  public static ShimWords of(double angle, Mounting mounting) {
    double degrees = Shown.degrees(angle);
    if (!isShim(angle)) {
      return new ShimWords(
          "No shim.",
          "The stabilizer sits straight on its seat.",
          "Check that the bolts are not too long now: they must clamp before they reach the end of"
              + " the thread.");
    }
    boolean up = degrees > 0;
    boolean above = mounting == Mounting.ABOVE;
    return new ShimWords(
        "Stabilizer's leading edge " + hundredths(degrees) + "° " + (up ? "up" : "down") + ".",
        "The stabilizer is bolted "
            + (above ? "on top of" : "under")
            + " the fuselage: the shim's thick end goes to the "
            + end(up, mounting)
            + ", between fuselage and stabilizer.",
        BOLTS);
  }

  /** With the second decimal only where there is one. */
  private static String hundredths(double degrees) {
    String text = Shown.decimals(Math.abs(degrees), 2);
    return text.endsWith("0") ? text.substring(0, text.length() - 1) : text;
  }

  /** The words one after another. */
  public List<String> sentences() {
    return List.of(headline, fitting, warning);
  }
}
