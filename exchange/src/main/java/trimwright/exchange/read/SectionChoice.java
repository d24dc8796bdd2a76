package trimwright.exchange.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tools.jackson.databind.JsonNode;
import trimwright.exchange.read.Reading.Accepted;
import trimwright.exchange.read.Reading.Refused;
import trimwright.exchange.read.internal.Recent;
import trimwright.exchange.read.internal.Values;
import trimwright.exchange.read.internal.Words;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;

/**
 * Turns the word {@code section} of a wing into a section. Building one takes some milliseconds, so
 * that sections are kept by their content for every text that names them; they are immutable, and
 * shared between threads.
 */
final class SectionChoice {
  /** Some 30 kB each; a shop has a few dozen wings with two or three sections between them. */
  private static final int MOST_KEPT = 64;

  private static final Recent<String, Section> KEPT = new Recent<>(MOST_KEPT);

  private final SectionFiles files;
  private final Map<String, Reading<Section>> built = new HashMap<>();
  private final Map<String, String> outlines = new HashMap<>();

  SectionChoice(SectionFiles files) {
    this.files = files;
  }

  /**
   * The section of a wing or station.
   *
   * @param wing the group that has the key
   * @return nothing where the group has no such key; problems carry the key below the section's
   *     own, no line, and a message that goes on after the section's name
   */
  Optional<Reading<Section>> find(Values wing) {
    JsonNode node = wing.group().get("section");
    if (node == null) {
      return Optional.empty();
    }
    return Optional.of(built.computeIfAbsent(node.toString(), key -> build(node)));
  }

  /** What stands for a section in the canonical form: a file by its content, not by its name. */
  Optional<String> findCanonical(JsonNode node) {
    if (node.isString()) {
      String text = node.stringValue();
      return Optional.of(
          isFile(text) ? "outline " + outlines.getOrDefault(text, text) : plain(text));
    }
    JsonNode file = node.get("file");
    return file == null
        ? Optional.empty()
        : Optional.of("outline " + outlines.getOrDefault(file.stringValue(), file.stringValue()));
  }

  /** A code as the sections know it. */
  static String plain(String code) {
    return code.toLowerCase(Locale.ROOT).replaceAll("[ -]", "");
  }

  /** Whether a section is the name of a coordinates file. */
  static boolean isFile(String text) {
    return text.matches(".+\\.(?i:dat|txt|csv)");
  }

  private Reading<Section> build(JsonNode node) {
    if (node.isString()) {
      String text = node.stringValue();
      return isFile(text) ? fromFile(text, "") : fromCode(text);
    }
    if (node.has("file")) {
      return fromFile(node.get("file").stringValue(), "file");
    }
    double thickness = node.get("thickness_percent").doubleValue() / 100;
    double camber = node.path("camber_percent").asDouble(0) / 100;
    try {
      return new Accepted<>(
          KEPT.get(
              "t" + thickness + "c" + camber,
              () -> Sections.fromThicknessAndCamber(thickness, camber)));
    } catch (IllegalArgumentException e) {
      return refuse("", "cannot be built: " + e.getMessage() + ".");
    }
  }

  private static Reading<Section> fromCode(String code) {
    String plain = plain(code);
    try {
      return new Accepted<>(KEPT.get(plain, () -> Sections.naca(plain)));
    } catch (IllegalArgumentException e) {
      return refuse("", "is " + code + ", which is no section: " + e.getMessage() + ".");
    }
  }

  private Reading<Section> fromFile(String name, String key) {
    Optional<String> text = files.find(name);
    if (text.isEmpty()) {
      return refuse(
          key,
          "names the file "
              + Words.shorten(name)
              + ", which cannot be read; wanted is a coordinates file beside the case file.");
    }
    String digest = Digest.of(text.get().replace("\r\n", "\n").strip());
    outlines.put(name, digest);
    // The name belongs to the section too: people read it
    String content = name + "\n" + digest;
    Optional<Section> kept = KEPT.find(content);
    if (kept.isPresent()) {
      return new Accepted<>(kept.get());
    }
    Reading<Section> section = SectionText.read(name, text.get());
    if (section instanceof Refused<Section> refused) {
      List<Problem> problems = new ArrayList<>();
      for (Problem p : refused.problems()) {
        problems.add(
            new Problem(
                key,
                OptionalInt.empty(),
                "names the file " + Words.shorten(name) + ", which cannot be used: " + p.text()));
      }
      return new Refused<>(problems);
    }
    return new Accepted<>(KEPT.keep(content, section.findValue().orElseThrow()));
  }

  private static Reading<Section> refuse(String key, String message) {
    return new Refused<>(List.of(new Problem(key, OptionalInt.empty(), message)));
  }
}
