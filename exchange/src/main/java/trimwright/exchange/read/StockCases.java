package trimwright.exchange.read;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.read.Reading.Accepted;
import trimwright.exchange.read.Reading.Refused;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.KeyNames;
import trimwright.exchange.read.internal.SchemaBook;
import trimwright.exchange.read.internal.Values;
import trimwright.exchange.read.internal.YamlParser;
import trimwright.exchange.unit.Unit;
import trimwright.fitting.stock.BoardSet;
import trimwright.fitting.stock.FoilSet;
import trimwright.fitting.stock.PartKind;
import trimwright.fitting.stock.Propulsion;
import trimwright.fitting.stock.SetupSpace;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.stock.StockSetup;
import trimwright.kernel.rig.RideCase;

/**
 * One rider's case on the setups of a stock. Rider, water and ride are the case's; its setup gives
 * way. Immutable and safe for several threads.
 */
public final class StockCases {
  /** Where mast and feet stand is told to a thousandth of a micrometre [1/mm]. */
  private static final double PLACE_GRAIN = 1e6;

  /** Two places of a mast in its track that nobody can tell apart [m]. */
  private static final double SAME_PLACE = 1e-6;

  private final CaseFile base;
  private final StockFile stock;
  private final ObjectNode document;
  private final double waterTemperature;

  private StockCases(CaseFile base, StockFile stock) {
    this.base = base;
    this.stock = stock;
    document =
        YamlParser.parse(base.text())
            .root()
            .orElseThrow(
                () -> new IllegalArgumentException("the case's text is no longer a case file"));
    waterTemperature = new Values("", document, Set.of()).getGroup("water").get("temperature_c");
  }

  /**
   * The cases of a rider on a stock.
   *
   * @param base rider, water and ride
   * @param stock the parts
   * @throws IllegalArgumentException if the case's text is not one that the reader accepts
   */
  public static StockCases of(CaseFile base, StockFile stock) {
    return new StockCases(base, stock);
  }

  /** Rider, water and ride. */
  public CaseFile base() {
    return base;
  }

  /** The parts. */
  public StockFile stock() {
    return stock;
  }

  /** Temperature of the base's water [K]. */
  public double waterTemperature() {
    return waterTemperature;
  }

  /** The setups that suit the way the case is ridden: without a drive where a handle pulls. */
  public SetupSpace space() {
    Propulsion propulsion =
        base.rideCase().pullAboveDeck().isPresent() ? Propulsion.TOWED : Propulsion.DRIVEN;
    return SetupSpace.of(stock.stock(), propulsion);
  }

  /**
   * The case on a setup, as the kernel reads it: quick, and without the checks of a case file,
   * which {@link #caseFile} makes.
   *
   * @param setup a setup of the stock
   */
  public RideCase rideCase(StockSetup setup) {
    return setup.rideCase(base.rideCase(), waterTemperature);
  }

  /**
   * The case on a setup as a case file, with digest, notes and text.
   *
   * @param setup a setup of the stock
   * @return the case, held against the base's limits; refused where the ride is not possible on the
   *     setup, such as on a mast that is too short for the depth
   */
  public Reading<CaseFile> caseFile(StockSetup setup) {
    return caseFile(setup, 0);
  }

  /**
   * The same with both feet moved.
   *
   * @param setup a setup of the stock
   * @param feet how far they are moved forward [m]
   * @return the case; refused where the ride is not possible on the setup
   */
  public Reading<CaseFile> caseFile(StockSetup setup, double feet) {
    ObjectNode whole = document.deepCopy();
    whole.set("setup", keys(stock, setup));
    if (feet != 0) {
      ObjectNode rider = (ObjectNode) whole.get("rider");
      for (String foot : List.of("front_foot_mm", "back_foot_mm")) {
        double place = rider.get(foot).asDouble() + Unit.MILLIMETRE.fromSi(feet);
        rider.put(foot, Math.rint(place * PLACE_GRAIN) / PLACE_GRAIN);
      }
    }
    Findings findings = new Findings(KeyNames.INSTANCE);
    return CaseAssembly.of(whole, () -> CaseWriter.yaml(whole), stock.files(), findings)
        .map(file -> file.within(base.rideCase().limits()))
        .<Reading<CaseFile>>map(Accepted::new)
        .orElseGet(() -> new Refused<>(Problem.all(findings)));
  }

  /** A setup's keys as a case file has them. */
  static ObjectNode keys(StockFile stock, StockSetup setup) {
    ObjectNode keys = JsonNodeFactory.instance.objectNode();
    put(stock, keys, Part.BOARD, setup.upper().board());
    setup.upper().battery().ifPresent(part -> put(stock, keys, Part.BATTERY, part));
    put(stock, keys, Part.MAST, setup.upper().mast());
    setup.upper().drive().ifPresent(part -> put(stock, keys, Part.DRIVE, part));
    put(stock, keys, Part.FUSELAGE, setup.foil().fuselage());
    put(stock, keys, Part.FRONT_WING, setup.foil().frontWing());
    put(stock, keys, Part.STABILIZER, setup.foil().stabilizer());
    setup.foil().shim().ifPresent(part -> put(stock, keys, Part.SHIM, part));
    double track = Unit.MILLIMETRE.fromSi(setup.track());
    ((ObjectNode) keys.get(Part.BOARD.key()))
        .put("track_mm", Math.rint(track * PLACE_GRAIN) / PLACE_GRAIN);
    return keys;
  }

  private static void put(StockFile stock, ObjectNode keys, Part part, StockPart<?> from) {
    keys.set(part.key(), stock.part(from.id()).deepCopy());
  }

  /**
   * The base's own setup among those of the stock: the setup that makes the very same case.
   *
   * @return the setup, where the stock has it
   */
  public Optional<StockSetup> findOwn() {
    ObjectNode own = (ObjectNode) SchemaBook.CASE.filled(document).get("setup");
    double track = base.rideCase().setup().board().track();
    Map<PartKind, Set<String>> alike = new EnumMap<>(PartKind.class);
    for (PartKind kind : PartKind.values()) {
      alike.put(kind, alike(own, kind));
    }
    SetupSpace space = space();
    return space
        .boardSets()
        .filter(set -> set.parts().allMatch(part -> isAlike(alike, part)))
        .flatMap(
            set ->
                space
                    .foilSetsOn(set.mast())
                    .filter(foil -> foil.parts().allMatch(part -> isAlike(alike, part)))
                    .flatMap(foil -> places(set, foil, track)))
        .filter(setup -> caseFile(setup).findValue().filter(this::isBase).isPresent())
        .findFirst();
  }

  /** The names of the stock's parts that the base's own setup has, or others alike. */
  public Set<String> ownParts() {
    ObjectNode own = (ObjectNode) SchemaBook.CASE.filled(document).get("setup");
    return Stream.of(PartKind.values())
        .flatMap(kind -> alike(own, kind).stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  /**
   * The parts of the stock that the base's own setup is made of, as far as the stock has them:
   * those that agree with its own in every key but the track's.
   *
   * @return names by kind; of several alike the first that is there
   */
  public Map<PartKind, String> ownByKind() {
    ObjectNode own = (ObjectNode) SchemaBook.CASE.filled(document).get("setup");
    Map<PartKind, String> names = new EnumMap<>(PartKind.class);
    for (PartKind kind : PartKind.values()) {
      Set<String> ids = alike(own, kind);
      stock.stock().list(kind).stream()
          .filter(part -> ids.contains(part.id()))
          .min(Comparator.comparing(part -> !part.holding().isThere()))
          .ifPresent(part -> names.put(kind, part.id()));
    }
    return names;
  }

  private boolean isBase(CaseFile file) {
    return file.digest().equals(base.digest());
  }

  private static boolean isAlike(Map<PartKind, Set<String>> alike, StockPart<?> part) {
    return alike.values().stream().anyMatch(ids -> ids.contains(part.id()));
  }

  private static Stream<StockSetup> places(BoardSet set, FoilSet foil, double track) {
    return set.board()
        .piece()
        .track()
        .places()
        .filter(place -> Math.abs(place - track) <= SAME_PLACE)
        .mapToObj(place -> new StockSetup(set, foil, place));
  }

  /** The names of the parts that agree with the base's own in every key but the track's. */
  private Set<String> alike(ObjectNode own, PartKind kind) {
    if (!(own.get(StockList.key(kind)) instanceof ObjectNode keys)) {
      return Set.of();
    }
    ObjectNode mine = keys.deepCopy();
    mine.remove("track_mm");
    String wanted = canonical(mine);
    return stock.stock().list(kind).stream()
        .<String>map(StockPart::id)
        .filter(id -> canonical(stock.part(id)).equals(wanted))
        .collect(Collectors.toSet());
  }

  private String canonical(ObjectNode part) {
    return Canonical.text(part, new SectionChoice(stock.files()));
  }
}
