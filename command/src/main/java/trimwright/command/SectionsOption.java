package trimwright.command;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import trimwright.desk.LayeredCase;
import trimwright.desk.SectionPolars;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.WingFile;

/** What a case's wings stand on: computed boundary layers, or on request fitted sections. */
final class SectionsOption {
  @Option(
      names = "--fitted-sections",
      description = {
        "Takes lift, drag and lift limits of wing sections from fits to measurements instead of their",
        "computed boundary layers: a second way to every number."
      })
  private boolean fitted;

  @Option(
      names = "--cache-folder",
      paramLabel = "FOLDER",
      description =
          "Where the polars of sections are kept once they were computed, which takes some seconds"
              + " each (what TRIMWRIGHT_CACHE names, else the user's cache folder).")
  private Path cacheFolder;

  /** Whether fitted sections were asked for. */
  boolean fitted() {
    return fitted;
  }

  /** Where tables are kept; empty for the usual place. */
  Optional<Path> folder() {
    return Optional.ofNullable(cacheFolder);
  }

  /** Where polars come from. */
  SectionPolars polars() {
    return new SectionPolars(folder());
  }

  /** The case as asked for. */
  CaseFile of(CaseFile caseFile, Console console) {
    PolarProgress progress = new PolarProgress(console);
    return fitted ? caseFile : LayeredCase.of(caseFile, polars(), progress::say, progress::remark);
  }

  /** The wing as asked for. */
  WingFile of(WingFile file, Console console) {
    PolarProgress progress = new PolarProgress(console);
    return fitted ? file : LayeredCase.of(file, polars(), progress::say, progress::remark);
  }
}
