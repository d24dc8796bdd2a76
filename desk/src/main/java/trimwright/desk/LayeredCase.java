package trimwright.desk;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.UnaryOperator;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.WingFile;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.section.Section;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.WingShape;

/**
 * A case whose wings stand on polars by boundary layers, as every answer does, instead of fitted
 * lift, drag and limits. All its sections do or none does: two models in one balance would show
 * their difference as if it were the setup's.
 */
public final class LayeredCase {
  private LayeredCase() {}

  /**
   * The same case on its sections' polars, which are built where there are none.
   *
   * @param caseFile the case as it was read
   * @param polars where polars come from
   * @param progress told a section's name and how far its polars are, 0 to 1; not asked where they
   *     are read
   * @param remarks told a section's name and what its reader should know
   * @return the case; as it was read where layers cannot follow one of its sections, with a remark
   * @throws java.util.concurrent.CancellationException if the running thread was interrupted
   */
  public static CaseFile of(
      CaseFile caseFile,
      SectionPolars polars,
      BiConsumer<String, Double> progress,
      BiConsumer<String, String> remarks) {
    return built(sections(caseFile), polars, progress, remarks)
        .map(layered -> with(caseFile, layered))
        .orElse(caseFile);
  }

  /**
   * The same case where all its polars are there.
   *
   * @param caseFile the case as it was read
   * @param polars where polars come from
   * @return the case; empty where polars have to be built
   */
  public static Optional<CaseFile> find(CaseFile caseFile, SectionPolars polars) {
    Map<Section, Section> layered = new HashMap<>();
    for (Section section : sections(caseFile)) {
      Optional<Section> ready = polars.find(section);
      if (ready.isEmpty()) {
        return Optional.empty();
      }
      layered.put(section, ready.get());
    }
    return Optional.of(with(caseFile, layered));
  }

  /**
   * The same of one wing alone; see {@link #of(CaseFile, SectionPolars, BiConsumer, BiConsumer)}.
   */
  public static WingFile of(
      WingFile file,
      SectionPolars polars,
      BiConsumer<String, Double> progress,
      BiConsumer<String, String> remarks) {
    Set<Section> sections = new LinkedHashSet<>();
    file.shape().stations().forEach(s -> sections.add(s.section()));
    return built(sections, polars, progress, remarks)
        .map(
            layered ->
                new WingFile(
                    file.name(), file.digest(), shape(file.shape(), layered::get), file.finish()))
        .orElse(file);
  }

  /** All sections of both wings, each once, from the front wing's root on. */
  public static Set<Section> sections(CaseFile caseFile) {
    Set<Section> sections = new LinkedHashSet<>();
    Setup setup = caseFile.rideCase().setup();
    setup.frontWing().shape().stations().forEach(s -> sections.add(s.section()));
    setup.stabilizer().shape().stations().forEach(s -> sections.add(s.section()));
    return sections;
  }

  static Optional<Map<Section, Section>> built(
      Set<Section> sections,
      SectionPolars polars,
      BiConsumer<String, Double> progress,
      BiConsumer<String, String> remarks) {
    Map<Section, Section> layered = new HashMap<>();
    for (Section section : sections) {
      SectionPolars.Found found =
          polars.of(section, share -> progress.accept(section.name(), share));
      if (found.section().isEmpty()) {
        remarks.accept(
            section.name(),
            "none, so that fitted sections stand in their place: " + found.remark());
        return Optional.empty();
      }
      if (!found.remark().isEmpty()) {
        remarks.accept(section.name(), found.remark());
      }
      layered.put(section, found.section().get());
    }
    return Optional.of(layered);
  }

  private static CaseFile with(CaseFile caseFile, Map<Section, Section> layered) {
    RideCase c = caseFile.rideCase();
    Setup s = c.setup();
    Setup setup =
        new Setup(
            s.board(),
            s.battery(),
            s.mast(),
            s.drive(),
            s.fuselage(),
            wing(s.frontWing(), layered::get),
            wing(s.stabilizer(), layered::get),
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
            c.pullAboveDeck(),
            c.limits());
    return new CaseFile(
        caseFile.name(), caseFile.digest(), rideCase, caseFile.notes(), caseFile.text());
  }

  static FittedWing wing(FittedWing wing, UnaryOperator<Section> layered) {
    return new FittedWing(
        shape(wing.shape(), layered),
        wing.setting(),
        wing.height(),
        wing.mass(),
        wing.massAboveAxis(),
        wing.volume(),
        wing.finish());
  }

  private static WingShape shape(WingShape shape, UnaryOperator<Section> layered) {
    return new WingShape(
        shape.span(),
        shape.stations().stream()
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
  }
}
