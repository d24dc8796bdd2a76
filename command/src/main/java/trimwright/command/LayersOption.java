package trimwright.command;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import trimwright.desk.LayeredCase;
import trimwright.desk.SectionPolars;
import trimwright.exchange.read.CaseFile;

/** Lets a case's wings stand on computed boundary layers. */
final class LayersOption {
  @Option(
      names = "--layers",
      description = {
        "Computes the boundary layers on both wings' sections instead of taking fitted lift, drag and",
        "lift limits. A new section takes a while; its polars are then kept."
      })
  private boolean layers;

  @Option(
      names = "--cache-folder",
      paramLabel = "FOLDER",
      description =
          "Where --layers keeps polars (what TRIMWRIGHT_CACHE names, else the user's cache folder).")
  private Path cacheFolder;

  /** The case as asked for. */
  CaseFile of(CaseFile caseFile, Console console) {
    if (!layers) {
      return caseFile;
    }
    PolarProgress progress = new PolarProgress(console);
    return LayeredCase.of(
        caseFile,
        new SectionPolars(Optional.ofNullable(cacheFolder)),
        progress::say,
        progress::remark);
  }
}
