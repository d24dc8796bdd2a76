package trimwright.web.trim;

import java.util.List;
import org.springframework.stereotype.Component;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.picture.PictureStyle;
import trimwright.exchange.picture.PlanformPicture;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.surface.WingShape;

/**
 * The demo cases as they stand on the shelf: read once, each with the planforms of its wings to one
 * scale.
 */
@Component
class DemoShelf {
  /** What an icon's width stands for [m]: wide enough for the widest wing on the shelf. */
  private static final double WIDTH_SHOWN = 1.3;

  private static final PictureStyle ICON = PictureStyle.page(180, 100);

  private final List<Item> items = Holder.ITEMS;

  /** Read on first use, by whichever thread comes first. */
  private static final class Holder {
    static final List<Item> ITEMS = DemoCases.list().stream().map(DemoShelf::item).toList();
  }

  private record Item(DemoCase demo, CaseFile caseFile, String icons) {}

  private static Item item(DemoCase demo) {
    CaseFile caseFile = HandedIn.ofText(demo.id(), demo.text()).getCase();
    Setup setup = caseFile.rideCase().setup();
    String icons =
        icon("Front wing", setup.frontWing().shape(), PlanformPicture.Role.FRONT)
            + icon("Stabilizer", setup.stabilizer().shape(), PlanformPicture.Role.BACK);
    return new Item(demo, caseFile, icons);
  }

  private static String icon(String name, WingShape shape, PlanformPicture.Role role) {
    return PlanformPicture.svg(name, shape, role, WIDTH_SHOWN, ICON);
  }

  /** What can be chosen, with the chosen one marked. */
  List<DemoChoice> choices(String chosenId) {
    return items.stream()
        .map(
            item ->
                new DemoChoice(
                    item.demo().id(),
                    item.demo().title(),
                    item.demo().story(),
                    item.icons(),
                    item.demo().id().equals(chosenId)))
        .toList();
  }

  /**
   * A demo case, read.
   *
   * @throws UnknownDemoCase if there is none of that name
   */
  CaseFile getCase(String id) {
    return items.stream()
        .filter(item -> item.demo().id().equals(id))
        .findFirst()
        .map(Item::caseFile)
        .orElseThrow(() -> new UnknownDemoCase(id));
  }

  /**
   * A demo case as it was written.
   *
   * @throws UnknownDemoCase if there is none of that name
   */
  DemoCase getDemo(String id) {
    return DemoCases.find(id).orElseThrow(() -> new UnknownDemoCase(id));
  }
}
