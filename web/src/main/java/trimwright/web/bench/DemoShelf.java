package trimwright.web.bench;

import java.util.List;
import org.springframework.stereotype.Component;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.write.BenchPageWriter;

/** The cases that can be opened by name. */
@Component
class DemoShelf {
  private final List<CaseOnShelf> items = Holder.ITEMS;

  /** Read on first use, by whichever thread comes first. */
  private static final class Holder {
    static final List<CaseOnShelf> ITEMS = DemoCases.list().stream().map(DemoShelf::item).toList();
  }

  private static CaseOnShelf item(DemoCase demo) {
    return new CaseOnShelf(
        new BenchPageWriter.Item(demo.id(), demo.title(), demo.story(), "demo"),
        CaseReader.read(demo.text(), SectionFiles.NONE).findValue().orElseThrow());
  }

  /** All of them, the same order each time. */
  List<CaseOnShelf> list() {
    return items;
  }

  /**
   * A case.
   *
   * @throws UnknownCase if there is none of that name
   */
  CaseOnShelf get(String id) {
    return items.stream()
        .filter(item -> item.item().id().equals(id))
        .findFirst()
        .orElseThrow(() -> new UnknownCase(id));
  }
}
