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
import trimwright.exchange.read.internal.Paths;
import trimwright.exchange.read.internal.Values;
import trimwright.exchange.read.internal.Words;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;

/** Turns the word {@code section} of a wing into a section; builds each one once per text. */
final class SectionChoice {
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
   * @return nothing where the group has no such key; problems carry the key's path and no line
   */
  Optional<Reading<Section>> find(Values wing) {
    JsonNode node = wing.group().get("section");
    if (node == null) {
      return Optional.empty();
    }
    String path = wing.at("section");
    Reading<Section> reading = built.computeIfAbsent(node.toString(), key -> build(node));
    return Optional.of(
        reading instanceof Refused<Section> refused
            ? new Refused<>(
                refused.problems().stream()
                    .map(
                        p ->
                            new Problem(
                                p.key().isEmpty() ? path : Paths.child(path, p.key()),
                                OptionalInt.empty(),
                                path + " " + p.message()))
                    .toList())
            : reading);
  }

  /** What stands for a section in the canonical form: a file by its content, not by its name. */
  Optional<String> findCanonical(JsonNode node) {
    if (node.isString()) {
      String text = node.stringValue();
      return Optional.of(
          isFile(text)
              ? "outline " + outlines.getOrDefault(text, text)
              : text.toLowerCase(Locale.ROOT).replaceAll("[ -]", ""));
    }
    JsonNode file = node.get("file");
    return file == null
        ? Optional.empty()
        : Optional.of("outline " + outlines.getOrDefault(file.stringValue(), file.stringValue()));
  }

  private static boolean isFile(String text) {
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
      return new Accepted<>(Sections.fromThicknessAndCamber(thickness, camber));
    } catch (IllegalArgumentException e) {
      return refuse("", "cannot be built: " + e.getMessage() + ".");
    }
  }

  private static Reading<Section> fromCode(String code) {
    try {
      return new Accepted<>(Sections.naca(code.toLowerCase(Locale.ROOT).replaceAll("[ -]", "")));
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
    outlines.put(name, Digest.of(text.get().replace("\r\n", "\n").strip()));
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
    return section;
  }

  private static Reading<Section> refuse(String key, String message) {
    return new Refused<>(List.of(new Problem(key, OptionalInt.empty(), message)));
  }
}
