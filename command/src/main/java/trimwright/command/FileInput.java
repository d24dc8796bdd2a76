package trimwright.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.LimitsFile;
import trimwright.exchange.read.LimitsReader;
import trimwright.exchange.read.Problem;
import trimwright.exchange.read.ReadSection;
import trimwright.exchange.read.Reading;
import trimwright.exchange.read.RidersFile;
import trimwright.exchange.read.RidersReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.read.SectionFolder;
import trimwright.exchange.read.SectionText;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.read.StockReader;
import trimwright.exchange.read.WingFile;
import trimwright.exchange.read.WingReader;
import trimwright.exchange.words.RepairWords;

/** Reads a handed-in file to the end of its meaning, or says everything that is wrong with it. */
final class FileInput {
  private FileInput() {}

  /**
   * A case and where it came from.
   *
   * @param value the case
   * @param files the files that were read for it: its own and the outlines that it names
   */
  record CaseSource(CaseFile value, List<Path> files) {
    /** Copies the list. */
    CaseSource {
      files = List.copyOf(files);
    }
  }

  /** The case in a file. */
  static CaseFile readCase(String name, Console console) {
    return readCaseSource(name, console).value();
  }

  /** The case in a file, with the files that were read for it. */
  static CaseSource readCaseSource(String name, Console console) {
    TextInput input = TextInput.read(name, console);
    List<Path> files = new ArrayList<>();
    TextInput.findPath(name).ifPresent(files::add);
    Map<String, String> named = new LinkedHashMap<>();
    CaseFile read = accept(input.name(), CaseReader.read(input.text(), noting(input, named)));
    for (String outline : named.keySet()) {
      input.folder().ifPresent(folder -> files.add(folder.resolve(outline)));
    }
    sayRepairs(named, console);
    return new CaseSource(read, files);
  }

  /**
   * A case and where the outlines that it names are found.
   *
   * @param value the case
   * @param outlines files beside it
   */
  record NamedCase(CaseFile value, SectionFiles outlines) {}

  /** The case in a file, with where its outlines are found. */
  static NamedCase readNamedCase(String name, Console console) {
    TextInput input = TextInput.read(name, console);
    Map<String, String> named = new LinkedHashMap<>();
    CaseFile read = accept(input.name(), CaseReader.read(input.text(), noting(input, named)));
    sayRepairs(named, console);
    return new NamedCase(read, outlines(input));
  }

  /** The stock in a file. */
  static StockFile readStock(String name, Console console) {
    TextInput input = TextInput.read(name, console);
    Map<String, String> named = new LinkedHashMap<>();
    StockFile read = accept(input.name(), StockReader.read(input.text(), noting(input, named)));
    sayRepairs(named, console);
    return read;
  }

  /** The riders in a file. */
  static RidersFile readRiders(String name, Console console) {
    TextInput input = TextInput.read(name, console);
    return accept(input.name(), RidersReader.read(input.text()));
  }

  /** The wing in a file. */
  static WingFile readWing(String name, Console console) {
    TextInput input = TextInput.read(name, console);
    Map<String, String> named = new LinkedHashMap<>();
    WingFile read = accept(input.name(), WingReader.read(input.text(), noting(input, named)));
    sayRepairs(named, console);
    return read;
  }

  /** The limits in a file. */
  static LimitsFile readLimits(String name, Console console) {
    TextInput input = TextInput.read(name, console);
    return accept(input.name(), LimitsReader.read(input.text()));
  }

  /** The section in a coordinates file, and what was put right in it. */
  static ReadSection readSection(String name, Console console) {
    TextInput input = TextInput.read(name, console);
    return accept(input.name(), SectionText.readMended(input.name(), input.text()));
  }

  /** The outlines that a file names, each noted with its text when it is read. */
  private static SectionFiles noting(TextInput input, Map<String, String> named) {
    SectionFiles outlines = outlines(input);
    return outline -> {
      Optional<String> text = outlines.find(outline);
      text.ifPresent(found -> named.put(outline, found));
      return text;
    };
  }

  /** What was put right in the outlines, on standard error: results stay alone on their own. */
  private static void sayRepairs(Map<String, String> named, Console console) {
    named.forEach(
        (outline, text) ->
            SectionText.readMended(outline, text)
                .findValue()
                .map(RepairWords::of)
                .orElse(List.of())
                .forEach(
                    sentence ->
                        console.err().println("Coordinates file " + outline + ": " + sentence)));
  }

  /** Outlines that a file names lie beside it or below; a text without a place names none. */
  private static SectionFiles outlines(TextInput input) {
    return input.folder().<SectionFiles>map(SectionFolder::new).orElse(SectionFiles.NONE);
  }

  private static <T> T accept(String name, Reading<T> reading) {
    if (reading instanceof Reading.Accepted<T> accepted) {
      return accepted.value();
    }
    throw new BadInput(lines(name, reading.problems()));
  }

  /**
   * One line per problem, in the form that editors follow to the place: {@code FILE:LINE: words}.
   */
  private static List<String> lines(String name, List<Problem> problems) {
    return problems.stream()
        .map(
            problem ->
                name
                    + ":"
                    + (problem.line().isPresent() ? problem.line().getAsInt() + ":" : "")
                    + " "
                    + problem.message())
        .toList();
  }
}
