package trimwright.desk;

import java.util.HashMap;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.UnaryOperator;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.ViscousSection;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.WingShape;

/**
 * A case whose wings stand on polars by boundary layers instead of fitted lift, drag and limits: a
 * second way to every number of it.
 */
public final class LayeredCase {
  private LayeredCase() {}

  /**
   * The same case with other sections.
   *
   * @param caseFile the case as it was read
   * @param polars where polars come from
   * @param progress told a section's name and how far its polars are, 0 to 1; not asked where they
   *     are read
   * @param remarks told a section's name and what its reader should know
   * @return the case
   * @throws java.util.concurrent.CancellationException if the running thread was interrupted
   */
  public static CaseFile of(
      CaseFile caseFile,
      SectionPolars polars,
      BiConsumer<String, Double> progress,
      BiConsumer<String, String> remarks) {
    Map<Section, Section> made = new HashMap<>();
    UnaryOperator<Section> layered =
        section -> made.computeIfAbsent(section, s -> layered(s, polars, progress, remarks));
    RideCase c = caseFile.rideCase();
    Setup s = c.setup();
    Setup setup =
        new Setup(
            s.board(),
            s.battery(),
            s.mast(),
            s.drive(),
            s.fuselage(),
            wing(s.frontWing(), layered),
            wing(s.stabilizer(), layered),
            s.shim());
    RideCase rideCase =
        new RideCase(
            c.water(),
            c.airDensity(),
            c.headWind(),
            c.chopHeight(),
            c.rider(),
            setup,
            c.immersion(),
            c.pullAboveDeck());
    return new CaseFile(
        caseFile.name(), caseFile.digest(), rideCase, caseFile.notes(), caseFile.text());
  }

  private static Section layered(
      Section section,
      SectionPolars polars,
      BiConsumer<String, Double> progress,
      BiConsumer<String, String> remarks) {
    SectionPolars.Found found =
        polars.of(section.shape(), share -> progress.accept(section.name(), share));
    if (!found.remark().isEmpty()) {
      remarks.accept(section.name(), found.remark());
    }
    return new ViscousSection(section.name(), section.shape(), found.table());
  }

  private static FittedWing wing(FittedWing wing, UnaryOperator<Section> layered) {
    WingShape shape =
        new WingShape(
            wing.shape().span(),
            wing.shape().stations().stream()
                .map(
                    s ->
                        new Station(
                            s.fraction(),
                            s.chord(),
                            s.ahead(),
                            s.above(),
                            s.twist(),
                            layered.apply(s.section())))
                .toList());
    return new FittedWing(
        shape,
        wing.setting(),
        wing.height(),
        wing.mass(),
        wing.massAboveAxis(),
        wing.volume(),
        wing.finish());
  }
}
