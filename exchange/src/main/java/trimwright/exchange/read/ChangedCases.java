package trimwright.exchange.read;

import java.util.List;
import java.util.Optional;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.read.Reading.Accepted;
import trimwright.exchange.read.Reading.Refused;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.KeyNames;
import trimwright.exchange.read.internal.SchemaBook;
import trimwright.exchange.read.internal.YamlParser;
import trimwright.exchange.unit.Unit;
import trimwright.fitting.change.Change;
import trimwright.fitting.change.ChangeKind;
import trimwright.fitting.change.OwnParts;
import trimwright.fitting.change.SetupChanger;
import trimwright.fitting.stock.Stock;

/** A case as a file after changes. Immutable and safe for several threads. */
public final class ChangedCases {
  /** Places, angles and speeds are told to a millionth of their unit in the file. */
  private static final double GRAIN = 1e6;

  private static final String RIDER = "rider";
  private static final String SETUP = "setup";

  private final CaseFile base;
  private final SectionFiles files;
  private final Optional<StockFile> stock;
  private final OwnParts parts;
  private final SetupChanger changer;
  private final ObjectNode document;
  private final ObjectNode filled;

  private ChangedCases(CaseFile base, SectionFiles files, Optional<StockFile> stock) {
    this.base = base;
    this.files = files;
    this.stock = stock;
    document =
        YamlParser.parse(base.text())
            .root()
            .orElseThrow(
                () -> new IllegalArgumentException("the case's text is no longer a case file"));
    filled = SchemaBook.CASE.filled(document);
    parts = stock.map(s -> parts(s, s.stock())).orElse(OwnParts.NONE);
    changer = new SetupChanger(base.rideCase(), parts);
  }

  /**
   * The cases that changes make of a case.
   *
   * @param base the case as it is
   * @param files finds the coordinates files that it names
   * @param stock where other parts come from
   * @throws IllegalArgumentException if the case's text is not one that the reader accepts
   */
  public static ChangedCases of(CaseFile base, SectionFiles files, Optional<StockFile> stock) {
    return new ChangedCases(base, files, stock);
  }

  /**
   * The stock with what of it the case is made of.
   *
   * @param pieces the same stock, perhaps on other sections
   */
  public OwnParts parts(Stock pieces) {
    return stock.map(s -> parts(s, pieces)).orElse(OwnParts.NONE);
  }

  private OwnParts parts(StockFile file, Stock pieces) {
    return new OwnParts(pieces, StockCases.of(base, file).ownByKind());
  }

  /**
   * The case after changes. What was measured on the present setup is left out, for it holds no
   * longer.
   *
   * @param changes at most one of a kind; none gives the case itself
   * @return the case, held against the base's limits; refused where no such case is possible
   */
  public Reading<CaseFile> caseFile(List<Change> changes) {
    if (changes.isEmpty()) {
      return new Accepted<>(base);
    }
    ObjectNode whole = document.deepCopy();
    if (whole.get("ride") instanceof ObjectNode ride) {
      ride.remove("measured_pitch_deg");
    }
    ObjectNode now = filled.deepCopy();
    for (Change change : SetupChanger.partsFirst(changes)) {
      make(change, whole, now);
    }
    if (has(changes, ChangeKind.STABILIZER)
        && !has(changes, ChangeKind.SHIM)
        && changes.stream()
            .anyMatch(c -> c.kind() == ChangeKind.STABILIZER && !changer.shimGoesAlong(c))) {
      group(whole, SETUP).remove(Part.SHIM.key());
    }
    Findings findings = new Findings(KeyNames.INSTANCE);
    return CaseAssembly.of(whole, () -> CaseWriter.yaml(whole), files(changes), findings)
        .map(file -> file.within(base.rideCase().limits()))
        .<Reading<CaseFile>>map(Accepted::new)
        .orElseGet(() -> new Refused<>(Problem.all(findings)));
  }

  private static boolean has(List<Change> changes, ChangeKind kind) {
    return changes.stream().anyMatch(c -> c.kind() == kind);
  }

  /** Where both know a file by one name and it says two things, a wing from the stock has none. */
  private SectionFiles files(List<Change> changes) {
    if (!has(changes, ChangeKind.FRONT_WING) && !has(changes, ChangeKind.STABILIZER)) {
      return files;
    }
    SectionFiles others = stock.orElseThrow().files();
    return name -> {
      Optional<String> mine = files.find(name);
      Optional<String> theirs = others.find(name);
      return mine.isPresent() && theirs.isPresent() && !mine.equals(theirs)
          ? Optional.empty()
          : mine.or(() -> theirs);
    };
  }

  /**
   * Makes one change.
   *
   * @param whole the case's keys as they are written
   * @param now the same with defaults
   */
  private void make(Change change, ObjectNode whole, ObjectNode now) {
    switch (change.kind()) {
      case SPEED ->
          add(whole, now, List.of(RIDER), "wished_speed_kmh", Unit.KILOMETRE_PER_HOUR, change);
      case STANCE -> {
        add(whole, now, List.of(RIDER), "front_foot_mm", Unit.MILLIMETRE, change);
        add(whole, now, List.of(RIDER), "back_foot_mm", Unit.MILLIMETRE, change);
      }
      case TRACK ->
          add(whole, now, List.of(SETUP, Part.BOARD.key()), "track_mm", Unit.MILLIMETRE, change);
      case WEDGE ->
          add(whole, now, List.of(SETUP, Part.MAST.key()), "base_angle_deg", Unit.DEGREE, change);
      case SHIM -> shim(change, whole, now);
      case STABILIZER, FRONT_WING, MAST ->
          put(Part.valueOf(change.kind().name()), change, whole, now);
      case BOARD -> {
        put(Part.BOARD, change, whole, now);
        double place = grain(Unit.MILLIMETRE.fromSi(changer.place(change)));
        for (ObjectNode keys : List.of(whole, now)) {
          group(group(keys, SETUP), Part.BOARD.key()).put("track_mm", place);
        }
      }
    }
  }

  private void put(Part part, Change change, ObjectNode whole, ObjectNode now) {
    ObjectNode keys = stock.orElseThrow().part(change.part().orElseThrow());
    group(whole, SETUP).set(part.key(), keys.deepCopy());
    group(now, SETUP).set(part.key(), keys.deepCopy());
  }

  private void shim(Change change, ObjectNode whole, ObjectNode now) {
    double angle =
        grain(now.at("/setup/shim/angle_deg").asDouble(0) + Unit.DEGREE.fromSi(change.amount()));
    ObjectNode setup = group(whole, SETUP);
    if (angle == 0) {
      setup.remove(Part.SHIM.key());
    } else {
      ObjectNode keys =
          change
              .part()
              .map(id -> stock.orElseThrow().part(id).deepCopy())
              .orElseGet(JsonNodeFactory.instance::objectNode);
      keys.put("angle_deg", angle);
      setup.set(Part.SHIM.key(), keys);
    }
  }

  private static void add(
      ObjectNode whole, ObjectNode now, List<String> path, String key, Unit unit, Change change) {
    ObjectNode from = now;
    ObjectNode to = whole;
    for (String step : path) {
      from = group(from, step);
      to = group(to, step);
    }
    to.put(key, grain(from.path(key).asDouble(0) + unit.fromSi(change.amount())));
  }

  private static ObjectNode group(ObjectNode in, String key) {
    return (ObjectNode) in.get(key);
  }

  private static double grain(double value) {
    return Math.rint(value * GRAIN) / GRAIN + 0.0;
  }
}
