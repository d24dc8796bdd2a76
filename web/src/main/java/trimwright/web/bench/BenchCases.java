package trimwright.web.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.desk.CaseShelf;
import trimwright.desk.ShelfException;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.Problem;
import trimwright.exchange.read.Reading;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.write.ShelfWriter.Item;

/** What can be opened by name: the shop's own cases, the newest first, and the made-up ones. */
public final class BenchCases {
  /** No made-up case is called so, and no saved one can take a made-up one's address. */
  private static final String OWN = "saved-";

  private static final String DEMO = "demo";
  private static final String SAVED = "saved";
  private static final String DAMAGED = "damaged";

  private final CaseShelf shelf;

  BenchCases(CaseShelf shelf) {
    this.shelf = shelf;
  }

  /**
   * A case that can be opened.
   *
   * @param item how the shelf shows it
   * @param caseFile the case
   */
  public record Opened(Item item, CaseFile caseFile) {}

  /** Read on first use, by whichever thread comes first. */
  private static final class Demos {
    static final List<Opened> ALL = DemoCases.list().stream().map(BenchCases::demo).toList();
  }

  private static Opened demo(DemoCase demo) {
    return new Opened(
        new Item(demo.id(), demo.title(), demo.story(), DEMO),
        CaseReader.read(demo.text(), SectionFiles.NONE).findValue().orElseThrow());
  }

  /** The case that the page opens with where none is named: the one saved last, else a made-up. */
  public Opened first() {
    try {
      return shelf.list().stream()
          .flatMap(listed -> own(OWN + listed.id()).stream())
          .findFirst()
          .orElseGet(() -> Demos.ALL.get(0));
    } catch (ShelfException e) {
      // The list of what can be opened says so; the page itself must open.
      return Demos.ALL.get(0);
    }
  }

  /** Everything that can be opened, and what is damaged, with a word why. */
  public List<Item> items() {
    List<Item> all = new ArrayList<>();
    try {
      shelf.list().forEach(listed -> all.add(item(listed)));
    } catch (ShelfException e) {
      all.add(new Item("", "The shop's own cases", e.getMessage(), DAMAGED));
    }
    Demos.ALL.forEach(demo -> all.add(demo.item()));
    return all;
  }

  /**
   * A case.
   *
   * @throws UnknownCase if none of that name can be opened
   */
  public Opened get(String id) {
    return Demos.ALL.stream()
        .filter(demo -> demo.item().id().equals(id))
        .findFirst()
        .or(() -> own(id))
        .orElseThrow(UnknownCase::new);
  }

  /** How a case is shown that was just saved. */
  Item saved(String shelfId, CaseFile caseFile) {
    return new Item(OWN + shelfId, caseFile.name(), "", SAVED);
  }

  /** Why a file of the shelf cannot be opened; empty where it can, or where there is none. */
  List<Problem> problems(String id) {
    return find(id).map(Reading::problems).orElse(List.of());
  }

  private Optional<Opened> own(String id) {
    return find(id)
        .flatMap(Reading::findValue)
        .map(c -> new Opened(saved(id.substring(OWN.length()), c), c));
  }

  private Optional<Reading<CaseFile>> find(String id) {
    return id.startsWith(OWN) ? shelf.find(id.substring(OWN.length())) : Optional.empty();
  }

  private static Item item(CaseShelf.Listed listed) {
    String id = OWN + listed.id();
    return listed
        .name()
        .findValue()
        .map(name -> new Item(id, name, "", SAVED))
        .orElseGet(() -> new Item(id, listed.id(), words(listed.name().problems()), DAMAGED));
  }

  private static String words(List<Problem> problems) {
    String first = "This file cannot be opened: " + problems.get(0).text();
    return problems.size() == 1 ? first : first + " And " + (problems.size() - 1) + " more.";
  }
}
