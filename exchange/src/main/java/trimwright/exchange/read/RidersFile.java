package trimwright.exchange.read;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.read.Reading.Accepted;
import trimwright.exchange.read.Reading.Refused;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.KeyNames;
import trimwright.exchange.read.internal.Values;
import trimwright.fitting.stock.Propulsion;
import trimwright.fitting.stock.SetupSpace;
import trimwright.fitting.stock.StockSetup;

/** A riders file that was accepted. Immutable. */
public final class RidersFile {
  /** What this file says of a rider and a case does not. */
  private static final List<String> OF_RIDERS = List.of("id", "count", "water");

  private static final List<String> SHARED = List.of("water", "ride", "pull");

  /** What a case may be called at most [characters]. */
  private static final int LONGEST_NAME = 120;

  private final String name;
  private final String digest;
  private final String text;
  private final ObjectNode filled;
  private final List<Line> lines;

  /**
   * A rider, or several alike.
   *
   * @param id what they are called
   * @param persons how many they are
   */
  public record Line(String id, int persons) {}

  RidersFile(String name, String text, Values root) {
    this.name = name;
    this.text = text;
    filled = root.group().deepCopy();
    digest = Digest.of(Canonical.text(filled, new SectionChoice(SectionFiles.NONE)));
    List<Line> all = new ArrayList<>();
    for (Values rider : root.listGroups("riders")) {
      all.add(new Line(rider.findText("id").orElseThrow(), (int) rider.get("count")));
    }
    lines = List.copyOf(all);
  }

  /** What people call these riders; "unnamed riders" where the file has no name. */
  public String name() {
    return name;
  }

  /**
   * SHA-256 of the canonical form in lower-case hexadecimal: the same for every order of keys,
   * every comment and every way of writing a number. The order of riders counts.
   */
  public String digest() {
    return digest;
  }

  /** The original text. */
  public String text() {
    return text;
  }

  /** The riders, in the file's order. */
  public List<Line> lines() {
    return lines;
  }

  /**
   * A rider's cases on a stock.
   *
   * @param line the rider's place among the lines
   * @param stock the parts
   * @return the cases, whose base stands on some setup of the stock; refused where the ride is
   *     possible on none, with what is wrong on the first
   */
  public Reading<StockCases> cases(int line, StockFile stock) {
    ObjectNode document = document(line);
    Propulsion propulsion = document.has("pull") ? Propulsion.TOWED : Propulsion.DRIVEN;
    SetupSpace space = SetupSpace.of(stock.stock(), propulsion);
    Iterator<StockSetup> some = oneOfEachUpper(space).iterator();
    List<Problem> problems = new ArrayList<>();
    while (some.hasNext()) {
      document.set("setup", StockCases.keys(stock, some.next()));
      ObjectNode whole = document;
      Findings findings = new Findings(KeyNames.INSTANCE);
      var base = CaseAssembly.of(whole, () -> CaseWriter.yaml(whole), stock.files(), findings);
      if (base.isPresent()) {
        return new Accepted<>(StockCases.of(base.get(), stock));
      }
      if (problems.isEmpty()) {
        problems.addAll(Problem.all(findings));
      }
    }
    if (problems.isEmpty()) {
      String none = "No parts of the stock mount together for this ride.";
      problems.add(new Problem("", OptionalInt.empty(), none));
    }
    return new Refused<>(problems);
  }

  private static Stream<StockSetup> oneOfEachUpper(SetupSpace space) {
    return space
        .boardSets()
        .flatMap(
            upper ->
                space
                    .foilSetsOn(upper.mast())
                    .limit(1)
                    .map(
                        foil ->
                            new StockSetup(
                                upper,
                                foil,
                                upper.board().piece().track().places().findFirst().orElse(0))));
  }

  private ObjectNode document(int line) {
    ObjectNode rider = (ObjectNode) filled.get("riders").get(line).deepCopy();
    ObjectNode document = JsonNodeFactory.instance.objectNode();
    String called = lines.get(line).id() + ", " + name;
    document.put("name", called.substring(0, Math.min(LONGEST_NAME, called.length())));
    for (String key : SHARED) {
      if (filled.has(key)) {
        document.set(key, filled.get(key).deepCopy());
      }
    }
    if (rider.has("water")) {
      document.set("water", rider.get("water"));
    }
    rider.remove(OF_RIDERS);
    document.set("rider", rider);
    return document;
  }
}
