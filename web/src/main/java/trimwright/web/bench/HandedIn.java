package trimwright.web.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import trimwright.desk.CaseShelf;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.Problem;
import trimwright.exchange.read.Reading;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.read.StockReader;
import trimwright.exchange.write.ShelfWriter.LineProblem;

/**
 * A text that was handed in: a case or a stock, or the reasons why it is none.
 *
 * @param value what it is, where it is one
 * @param problems what is wrong; empty where there is a value
 * @param tooLarge whether its size is what is wrong
 * @param <T> a case or a stock
 */
public record HandedIn<T>(Optional<T> value, List<LineProblem> problems, boolean tooLarge) {
  private static final int LONGEST_LINE_SHOWN = 120;
  private static final int KILOBYTE = 1024;

  /** What a browser puts in place of bytes that are no UTF-8. */
  private static final char UNREADABLE = '\ufffd';

  /** Copies the list. */
  public HandedIn {
    problems = List.copyOf(problems);
  }

  /** Reads the text of a case file. */
  static HandedIn<CaseFile> ofCase(String raw) {
    return of(raw, "case", text -> CaseReader.read(text, SectionFiles.NONE));
  }

  /** Reads the text of a stock file. */
  public static HandedIn<StockFile> ofStock(String raw) {
    return of(raw, "stock", text -> StockReader.read(text, SectionFiles.NONE));
  }

  private static <T> HandedIn<T> of(String raw, String kind, Function<String, Reading<T>> reader) {
    long bytes = Utf8.bytes(raw).length;
    if (bytes > CaseShelf.LARGEST_BYTES) {
      return refused(
          "The file holds "
              + (bytes + KILOBYTE - 1) / KILOBYTE
              + " kB; a "
              + kind
              + " file may hold at most "
              + CaseShelf.LARGEST_BYTES / KILOBYTE
              + " kB. Check that you chose the right file.",
          true);
    }
    if (raw.isBlank()) {
      return refused("The file is empty. Check that you chose the right file.", false);
    }
    String text = raw.replace("\r\n", "\n").replace('\r', '\n');
    String[] lines = text.split("\n", -1);
    List<LineProblem> problems = new ArrayList<>();
    int unreadable = text.indexOf(UNREADABLE);
    if (unreadable >= 0) {
      int line = (int) text.substring(0, unreadable).chars().filter(c -> c == '\n').count() + 1;
      problems.add(
          problem(
              OptionalInt.of(line),
              lines,
              "There are letters here that are not UTF-8: save the file as UTF-8 text and open it"
                  + " again."));
    }
    Reading<T> reading = reader.apply(text);
    for (Problem problem : reading.problems()) {
      problems.add(problem(problem.line(), lines, problem.message()));
    }
    return new HandedIn<>(
        problems.isEmpty() ? reading.findValue() : Optional.empty(), problems, false);
  }

  private static LineProblem problem(OptionalInt at, String[] lines, String message) {
    int line = at.orElse(0);
    String text = line >= 1 && line <= lines.length ? lines[line - 1].strip() : "";
    String shown =
        text.length() > LONGEST_LINE_SHOWN ? text.substring(0, LONGEST_LINE_SHOWN) + "…" : text;
    return new LineProblem(at, shown, message);
  }

  private static <T> HandedIn<T> refused(String message, boolean tooLarge) {
    return new HandedIn<>(
        Optional.empty(), List.of(new LineProblem(OptionalInt.empty(), "", message)), tooLarge);
  }
}
