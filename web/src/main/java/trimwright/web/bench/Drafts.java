package trimwright.web.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import trimwright.exchange.read.BenchRequest;
import trimwright.exchange.read.CaseDraft;
import trimwright.exchange.read.CaseFile;
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

  /** The pinned reference of a request, where there is a good one. */
  static Optional<CaseFile> pinned(BenchRequest request) {
    return request.findPinned().flatMap(fields -> read(request, fields).caseFile());
  }

  private static DraftReading read(BenchRequest request, Map<String, String> fields) {
    return CaseDraft.of(fields).read(request.measures(), SectionFiles.NONE);
  }
}
