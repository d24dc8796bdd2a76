package trimwright.exchange.write;

import java.util.List;
import java.util.OptionalDouble;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.PrintedShimWords;
import trimwright.exchange.words.ShimWords;
import trimwright.exchange.words.Shown;
import trimwright.exchange.words.WedgeFit;
import trimwright.kernel.wedge.ShimWedge;
import trimwright.kernel.wedge.SolidCheck;

/** A wedge to print, in sizes and words. */
public final class ShimWriter {
  /** Name and number of the JSON document. */
  public static final String FORMAT = "trimwright-shim/1";

  private ShimWriter() {}

  /**
   * The JSON document.
   *
   * @param table what to write
   * @return text that satisfies {@code shim.schema.json}
   */
  public static String json(ShimTable table) {
    ShimWedge wedge = table.wedge();
    JsonDocument document = JsonDocument.start(FORMAT, table.digest());
    JsonFields fields =
        document
            .fields()
            .number("angle_deg", Shown.degrees(table.angle()))
            .text("leading_edge", table.angle() > 0 ? "up" : "down")
            .number("bolt_spacing_mm", Shown.mm(wedge.boltSpacing()))
            .number("bolt_diameter_mm", Shown.mm(table.boltDiameter()))
            .number("bolt_length_mm", mm(table.boltLength()))
            .number("hole_diameter_mm", Shown.mm(wedge.holeDiameter()))
            .number("length_mm", Shown.mm(wedge.length()))
            .number("width_mm", Shown.mm(wedge.width()))
            .number("thin_end_mm", Shown.mm(wedge.leastThickness()))
            .number("thin_bolt_mm", Shown.mm(wedge.thinBoltThickness()))
            .number("thick_bolt_mm", Shown.mm(wedge.thickBoltThickness()))
            .number("thick_end_mm", Shown.mm(wedge.greatestThickness()))
            .number("bolt_difference_mm", Shown.mm(difference(wedge)))
            .list("fits", table.fits(), (fit, of) -> write(fit, of, table.boltLength()));
    SolidCheck check = table.check();
    fields
        .object("body")
        .whole("triangles", check.triangles())
        .whole("edges", check.edges())
        .whole("corners", check.corners())
        .flag("closed", check.closed())
        .flag("facing_outward", check.oriented() && check.volume() > 0)
        .whole("holes", check.holes())
        .number("volume_mm3", cubicMillimetres(check.volume()));
    fields
        .text("file", table.file().orElse(null))
        .text("headline", headline(table))
        .texts("words", PrintedShimWords.making(wedge))
        .texts("cautions", PrintedShimWords.cautions());
    return document.text();
  }

  private static void write(JsonFields fields, WedgeFit fit, OptionalDouble boltLength) {
    fields
        .text("mounted", fit.mounting().code())
        .text("thick_end", fit.thickEndInFront() ? "front" : "back")
        .number("front_bolt_longer_mm", Shown.mm(fit.frontBolt()))
        .number("back_bolt_longer_mm", Shown.mm(fit.backBolt()))
        .number("front_bolt_mm", mm(plus(boltLength, fit.frontBolt())))
        .number("back_bolt_mm", mm(plus(boltLength, fit.backBolt())))
        .texts("words", fit.words(boltLength));
  }

  private static OptionalDouble plus(OptionalDouble length, double more) {
    return length.isPresent() ? OptionalDouble.of(length.getAsDouble() + more) : length;
  }

  private static OptionalDouble mm(OptionalDouble length) {
    return length.isPresent() ? OptionalDouble.of(Shown.mm(length.getAsDouble())) : length;
  }

  private static double difference(ShimWedge wedge) {
    return wedge.thickBoltThickness() - wedge.thinBoltThickness();
  }

  private static double cubicMillimetres(double volume) {
    double millimetre = Unit.MILLIMETRE.toSi(1);
    return volume / (millimetre * millimetre * millimetre);
  }

  private static String headline(ShimTable table) {
    return ShimWords.of(table.angle(), table.mountings().get(0)).headline();
  }

  /**
   * Sizes and words for a terminal.
   *
   * @param table what to write
   * @return the text
   */
  public static String table(ShimTable table) {
    ShimWedge wedge = table.wedge();
    StringBuilder out = new StringBuilder(headline(table)).append("\n\n");
    TextTable sizes = new TextTable().words("wedge").number("mm", "");
    row(sizes, "thin end", wedge.leastThickness());
    row(sizes, "at the thin end's bolt", wedge.thinBoltThickness());
    row(sizes, "at the thick end's bolt", wedge.thickBoltThickness());
    row(sizes, "thick end", wedge.greatestThickness());
    row(sizes, "difference between the bolts", difference(wedge));
    row(sizes, "between the bolts", wedge.boltSpacing());
    row(sizes, "holes", wedge.holeDiameter());
    row(sizes, "length", wedge.length());
    row(sizes, "width", wedge.width());
    out.append(sizes.text()).append('\n');
    if (table.mountings().size() > 1) {
      out.append("Which way it goes in depends on where the stabilizer is bolted:\n");
    }
    for (WedgeFit fit : table.fits()) {
      fit.words(table.boltLength()).forEach(line -> out.append(line).append('\n'));
      out.append('\n');
    }
    PrintedShimWords.making(wedge).forEach(line -> out.append(line).append('\n'));
    out.append('\n');
    PrintedShimWords.cautions().forEach(line -> out.append(line).append('\n'));
    SolidCheck check = table.check();
    table
        .file()
        .ifPresent(
            name ->
                out.append("\nWritten to ")
                    .append(name)
                    .append(": ")
                    .append(check.triangles())
                    .append(" triangles, sizes in millimetres. Checked: one closed body with ")
                    .append(check.holes())
                    .append(" holes, every triangle facing outward.\n"));
    return out.toString();
  }

  private static void row(TextTable table, String name, double length) {
    table.row(List.of(name, Shown.decimals(Shown.mm(length), 2)));
  }
}
