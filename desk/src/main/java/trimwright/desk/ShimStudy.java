package trimwright.desk;

import java.util.Locale;
import java.util.Optional;
import trimwright.exchange.read.Digest;
import trimwright.exchange.read.StlReader;
import trimwright.exchange.words.Shown;
import trimwright.exchange.write.ShimTable;
import trimwright.exchange.write.StlWriter;
import trimwright.kernel.wedge.ShimWedge;
import trimwright.kernel.wedge.SolidCheck;

/**
 * A wedge to print: its sizes, and the file for the printer, which is read back and checked to be
 * one closed body before anybody gets it.
 */
public final class ShimStudy {
  private static final int HOLES = 2;

  private final ShimTable table;
  private final byte[] stl;

  private ShimStudy(ShimTable table, byte[] stl) {
    this.table = table;
    this.stl = stl;
  }

  /** Sizes and check, to be written in words. */
  public ShimTable table() {
    return table;
  }

  /** The file's bytes. */
  public byte[] stl() {
    return stl.clone();
  }

  /**
   * Works out a wedge.
   *
   * @param question what is wanted
   * @return sizes, words, file
   * @throws IllegalStateException if the file's triangles are not one closed body with two holes,
   *     which would be a fault of this program
   */
  public static ShimStudy of(ShimQuestion question) {
    ShimWedge wedge = question.wedge();
    byte[] stl = StlWriter.bytes(wedge.solid(), title(wedge));
    SolidCheck check = SolidCheck.of(StlReader.read(stl));
    if (!check.isSolid() || check.holes() != HOLES) {
      throw new IllegalStateException("the wedge is no body to print: " + check);
    }
    return new ShimStudy(
        new ShimTable(
            Digest.of(canonical(question)),
            question.angle(),
            question.boltDiameter(),
            question.boltLength(),
            question.mountings(),
            wedge,
            check,
            Optional.empty()),
        stl);
  }

  private static String title(ShimWedge wedge) {
    return String.format(
        Locale.ROOT,
        "Trimwright wedge, %s deg, bolts %s mm apart, sizes in mm",
        Shown.decimals(Shown.degrees(wedge.angle()), 2),
        Shown.decimals(Shown.mm(wedge.boltSpacing()), 1));
  }

  private static String canonical(ShimQuestion question) {
    ShimWedge wedge = question.wedge();
    return String.format(
        Locale.ROOT,
        "shim %s %s %s %s %s %s %s %s %s",
        question.angle(),
        question.boltDiameter(),
        question.boltLength(),
        question.mountings(),
        wedge.boltSpacing(),
        wedge.holeDiameter(),
        wedge.length(),
        wedge.width(),
        wedge.leastThickness());
  }
}
