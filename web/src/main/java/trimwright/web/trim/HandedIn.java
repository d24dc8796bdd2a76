package trimwright.web.trim;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.web.multipart.MultipartFile;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.Problem;
import trimwright.exchange.read.Reading;
import trimwright.exchange.read.SectionFiles;

/** What came in by a form: a case, or the reasons why it is none. */
final class HandedIn {
  /** Largest case file [byte]; an ordinary one has about 2 kB. */
  static final int LARGEST_BYTES = 256 * 1024;

  private static final int LONGEST_NAME = 80;
  private static final int LONGEST_LINE_SHOWN = 120;

  private final String text;
  private final HttpStatus status;
  private final Optional<CaseFile> caseFile;
  private final Optional<Refusal> refusal;

  private HandedIn(
      String text, HttpStatus status, Optional<CaseFile> caseFile, Optional<Refusal> refusal) {
    this.text = text;
    this.status = status;
    this.caseFile = caseFile;
    this.refusal = refusal;
  }

  /** Reads a file. */
  static HandedIn ofFile(MultipartFile file) {
    String name = shortName(file.getOriginalFilename());
    if (file.isEmpty()) {
      return refused(
          name,
          "",
          HttpStatus.UNPROCESSABLE_CONTENT,
          "Choose a case file first: none was handed in, or it is empty.");
    }
    if (file.getSize() > LARGEST_BYTES) {
      return tooLarge(name, file.getSize());
    }
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(file.getBytes()))
              .toString();
      return ofText(name, text);
    } catch (CharacterCodingException e) {
      return refused(
          name,
          "",
          HttpStatus.UNPROCESSABLE_CONTENT,
          "The file is not plain text in UTF-8: save it as a text file and hand it in again.");
    } catch (IOException e) {
      throw new UncheckedIOException("file handed in cannot be read", e);
    }
  }

  /** Reads a text. */
  static HandedIn ofText(String name, String raw) {
    // Forms send line ends as two characters; a file that is saved again should have its own back.
    String text = raw.replace("\r\n", "\n").replace('\r', '\n');
    long bytes = text.getBytes(StandardCharsets.UTF_8).length;
    if (bytes > LARGEST_BYTES) {
      return tooLarge(shortName(name), bytes);
    }
    Reading<CaseFile> reading = CaseReader.read(text, SectionFiles.NONE);
    if (reading.findValue().isPresent()) {
      return new HandedIn(text, HttpStatus.OK, reading.findValue(), Optional.empty());
    }
    String[] lines = text.split("\n", -1);
    List<Refusal.Item> items =
        reading.problems().stream().map(problem -> item(problem, lines)).toList();
    return new HandedIn(
        text,
        HttpStatus.UNPROCESSABLE_CONTENT,
        Optional.empty(),
        Optional.of(new Refusal(shortName(name), text, items)));
  }

  private static Refusal.Item item(Problem problem, String[] lines) {
    int line = problem.line().orElse(0);
    String lineText = line >= 1 && line <= lines.length ? lines[line - 1].strip() : "";
    String shown =
        lineText.length() > LONGEST_LINE_SHOWN
            ? lineText.substring(0, LONGEST_LINE_SHOWN) + "…"
            : lineText;
    return new Refusal.Item(problem.message(), line, shown);
  }

  private static HandedIn tooLarge(String name, long bytes) {
    return refused(
        name,
        "",
        HttpStatus.CONTENT_TOO_LARGE,
        "The file holds "
            + Figures.grouped(Math.ceil(bytes / 1024.0))
            + " kB; a case file may hold at most "
            + LARGEST_BYTES / 1024
            + " kB. Check that you chose the right file.");
  }

  private static HandedIn refused(String name, String text, HttpStatus status, String message) {
    return new HandedIn(
        text,
        status,
        Optional.empty(),
        Optional.of(new Refusal(name, text, List.of(new Refusal.Item(message, 0, "")))));
  }

  /** The last step of a path, cut to what fits a line. */
  private static String shortName(String name) {
    String given = name == null ? "" : name;
    String last = given.substring(Math.max(given.lastIndexOf('/'), given.lastIndexOf('\\')) + 1);
    return last.length() > LONGEST_NAME ? last.substring(0, LONGEST_NAME) + "…" : last;
  }

  /** The text as it came in, with plain line ends. */
  String text() {
    return text;
  }

  /** How the page answers. */
  HttpStatus status() {
    return status;
  }

  /** Why it is no case, where it is none. */
  Optional<Refusal> findRefusal() {
    return refusal;
  }

  /**
   * The case.
   *
   * @throws IllegalStateException if it was refused
   */
  CaseFile getCase() {
    return caseFile.orElseThrow(() -> new IllegalStateException("the case was refused"));
  }
}
