package trimwright.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.LimitsFile;
import trimwright.exchange.read.LimitsReader;
import trimwright.exchange.read.Problem;
import trimwright.exchange.read.ReadSection;
import trimwright.exchange.read.Reading;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.read.SectionFolder;
import trimwright.exchange.read.SectionText;
import trimwright.exchange.read.WingFile;
import trimwright.exchange.read.WingReader;

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
    SectionFiles outlines = outlines(input);
    SectionFiles noting =
        outline -> {
          Optional<String> text = outlines.find(outline);
          text.flatMap(found -> input.folder())
              .ifPresent(folder -> files.add(folder.resolve(outline)));
          return text;
        };
    CaseFile read = accept(input.name(), CaseReader.read(input.text(), noting));
    return new CaseSource(read, files);
  }

  /** The wing in a file. */
  static WingFile readWing(String name, Console console) {
    TextInput input = TextInput.read(name, console);
    return accept(input.name(), WingReader.read(input.text(), outlines(input)));
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
