package trimwright.web.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import trimwright.exchange.read.BenchRequest;
import trimwright.exchange.read.CaseDraft;
import trimwright.exchange.read.DraftReading;
import trimwright.exchange.read.SectionFiles;

/** Cases that come as fields. */
final class Drafts {
  private Drafts() {}

  /**
   * The case of a request.
   *
   * @throws BadQuestion if it carries no fields
   */
  static DraftReading read(BenchRequest request) {
    return read(request, request.findFields().orElseThrow(BadQuestion::new));
  }

  /**
   * The case of a request under another name.
   *
   * @throws BadQuestion if it carries no fields
   */
  static DraftReading named(BenchRequest request, String name) {
    Map<String, String> fields =
        new LinkedHashMap<>(request.findFields().orElseThrow(BadQuestion::new));
    fields.put("name", name);
    return read(request, fields);
  }

  private static DraftReading read(BenchRequest request, Map<String, String> fields) {
    return CaseDraft.of(fields).read(request.measures(), SectionFiles.NONE);
  }
}
