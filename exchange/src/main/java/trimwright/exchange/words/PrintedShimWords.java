package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.List;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.wedge.ShimWedge;

/** What to know of a printed wedge before it goes under a stabilizer. */
public final class PrintedShimWords {
  /** A usual layer of printers that lay threads of plastic [m]. From memory. */
  private static final double LAYER = 2e-4;

  /** What a calliper shows without doubt [m]. From memory. */
  private static final double CALLIPER = 1e-4;

  private static final double TEN_MILLIMETRES = 0.01;

  private PrintedShimWords() {}

  /**
   * On making it and on its bolts.
   *
   * @param wedge its sizes
   * @return sentences
   */
  public static List<String> making(ShimWedge wedge) {
    List<String> words = new ArrayList<>();
    long layers = Math.round((wedge.greatestThickness() - wedge.leastThickness()) / LAYER);
    String lying =
        "lying flat, layers of "
            + Shown.decimals(Shown.mm(LAYER), 1)
            + " mm make "
            + (layers <= 1 ? "one step" : layers + " steps")
            + " of the tilted face";
    words.add(
        wedge.length() > wedge.width()
            ? "Print it solid, standing on a long side: " + lying + "."
            : "Print it solid, in thin layers: " + lying + ". Rub it smooth on a flat plate.");
    words.add(
        "Measure the print with a calliper: "
            + Shown.decimals(Shown.mm(wedge.thinBoltThickness()), 2)
            + " mm at the middle of the thin end's hole, "
            + Shown.decimals(Shown.mm(wedge.thickBoltThickness()), 2)
            + " mm at the other. A tenth of a millimetre between them is "
            + Shown.decimals(Unit.DEGREE.fromSi(Math.atan(CALLIPER / wedge.boltSpacing())), 2)
            + "°.");
    words.add(
        "The holes are square to the face on the fuselage, where the bolts' thread is taken to be. In"
            + " the stabilizer's holes they lean by the wedge's angle: that takes "
            + Shown.decimals(Shown.mm(TEN_MILLIMETRES * Math.tan(wedge.angle())), 2)
            + " mm of play in 10 mm of depth, and their heads bear on one side. If one binds, do"
            + " not force it.");
    words.add(
        "Lengths are counted from a stabilizer without a shim: where one comes out, its thickness"
            + " goes off again. Too short a bolt holds by too few turns, too long a one meets the"
            + " end of its hole before it clamps.");
    return words;
  }

  /** What comes before the first ride. */
  public static List<String> cautions() {
    return List.of(
        "Only the wedge's shape is computed, not what it bears: nobody has tested it. Take a"
            + " material that neither softens in a hot car nor creeps under a clamped bolt.",
        "Ask the maker whether a shim is permitted, how many turns of thread must hold and how"
            + " hard to tighten. The maker's limits come first.",
        "Before the ride look from the side that the leading edge went the wanted way, and feel"
            + " that nothing rocks.",
        "Make the first ride slow, in calm water deeper than the mast, away from people, with"
            + " helmet and impact vest. Check afterwards that the bolts are tight, and look at bolts"
            + " and wedge before every ride: a crack or a dent means a new one.",
        "None of this says that a setup is safe.");
  }
}
