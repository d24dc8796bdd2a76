package trimwright.web.bench;

import trimwright.exchange.read.CaseFile;
import trimwright.exchange.write.BenchPageWriter;

/**
 * A case that can be opened.
 *
 * @param item how the shelf shows it
 * @param caseFile the case
 */
record CaseOnShelf(BenchPageWriter.Item item, CaseFile caseFile) {}
