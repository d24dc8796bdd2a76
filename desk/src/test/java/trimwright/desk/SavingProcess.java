package trimwright.desk;

import java.nio.file.Path;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;

/** Saves one case after the other and says so, until it is killed. */
final class SavingProcess {
  private static final int CASES = 5;
  private static final int LIGHTEST_KG = 60;
  private static final int MASSES = 100;

  private SavingProcess() {}

  /**
   * Saves until it is killed.
   *
   * @param args the shop's folder
   */
  public static void main(String[] args) {
    CaseShelf shelf = new CaseShelf(Path.of(args[0]));
    for (int i = 0; ; i++) {
      String name = "case-" + i % CASES;
      int mass = LIGHTEST_KG + i % MASSES;
      shelf.save(named(name, mass), true);
      System.out.println(name + " " + mass);
      System.out.flush();
    }
  }

  private static CaseFile named(String name, int mass) {
    String text =
        DemoCases.list()
            .get(0)
            .text()
            .replaceAll("(?m)^name:.*$", "name: " + name)
            .replaceFirst("mass_kg: 105", "mass_kg: " + mass);
    return CaseReader.read(text, SectionFiles.NONE).findValue().orElseThrow();
  }
}
