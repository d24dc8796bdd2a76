package trimwright.exchange.words;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.Mounting;
import trimwright.exchange.unit.Measures;
import trimwright.fitting.change.Change;
import trimwright.fitting.change.ChangeKind;
import trimwright.fitting.change.Effect;

/** Changes as orders to whoever makes them. No angle stands alone with a plus or minus. */
public final class ChangeOrders {
  /**
   * Bolt spacing over which a shim's thickness is told [m]; spacings are measured on the fuselage.
   */
  private static final double SPACING = 0.01;

  private final ChangeAnswer answer;
  private final Amounts amounts;

  /**
   * The orders of an answer.
   *
   * @param answer what was found
   * @param measures that the reader reads
   */
  public ChangeOrders(ChangeAnswer answer, Measures measures) {
    this.answer = answer;
    amounts = Amounts.of(measures);
  }

  /** A kind of change in a few words. */
  public static String title(ChangeKind kind) {
    return switch (kind) {
      case SPEED -> "Speed";
      case STANCE -> "Both feet";
      case TRACK -> "Mast in its track";
      case SHIM -> "Shim";
      case WEDGE -> "Wedge under the mast";
      case STABILIZER -> "Stabilizer";
      case FRONT_WING -> "Front wing";
      case MAST -> "Mast";
      case BOARD -> "Board";
    };
  }

  /** All of an effect's changes in one sentence without a full stop. */
  public String order(Effect effect) {
    return Sentence.upperFirst(
        effect.changes().stream()
            .map(change -> order(change, effect))
            .collect(Collectors.joining(", and ")));
  }

  private String order(Change change, Effect effect) {
    double amount = change.amount();
    return switch (change.kind()) {
      case SPEED ->
          "ride "
              + amounts.speed(Math.abs(amount))
              + (amount > 0 ? " faster" : " slower")
              + ", at "
              + amounts.speed(effect.judged().wished().speed());
      case STANCE -> "move both feet " + move(amount);
      case TRACK -> "move the mast " + move(amount) + " in its track";
      case SHIM ->
          "turn the stabilizer's leading edge " + (amount > 0 ? "up " : "down ") + turn(amount);
      case WEDGE ->
          "put "
              + wedge(amount)
              + " under the mast's base, thick end to the "
              + (amount < 0 ? "back" : "front");
      case STABILIZER, FRONT_WING -> "bolt on the " + name(change);
      case MAST, BOARD -> "take the " + name(change);
    };
  }

  private static String name(Change change) {
    return title(change.kind()).toLowerCase(Locale.ROOT) + " " + change.part().orElseThrow();
  }

  private String move(double amount) {
    return amounts.length(Math.abs(amount)) + (amount > 0 ? " forward" : " back");
  }

  private static String wedge(double amount) {
    return "a " + plain(amount) + "° wedge";
  }

  private static String plain(double angle) {
    return Amounts.plain(Shown.rounded(Math.abs(Shown.degrees(angle)), 2));
  }

  private static String turn(double angle) {
    BigDecimal degrees = Shown.rounded(Math.abs(Shown.degrees(angle)), 2);
    return switch (Amounts.plain(degrees)) {
      case "0.5" -> "half a degree";
      case "1" -> "one degree";
      default -> Amounts.plain(degrees) + " degrees";
    };
  }

  /**
   * What to know for making an effect's changes.
   *
   * @param effect of the answer
   * @return sentences; none where the order says it all
   */
  public List<String> details(Effect effect) {
    CaseFile after = answer.caseFile(effect);
    List<String> all = new ArrayList<>();
    for (Change change : effect.changes()) {
      switch (change.kind()) {
        case SPEED ->
            all.add(
                "This moves the speed that you ride, not what you wish of it: deck and feet are judged"
                    + " at the new speed, and all your speeds go along with it.");
        case SHIM -> all.addAll(shim(change, after));
        case WEDGE -> all.add(base(after));
        case STABILIZER -> all.add(kept(after));
        case MAST -> all.add("The wedge that belongs to this mast comes with it. " + base(after));
        case BOARD -> all.add("Battery and mast move over; the mast stands " + place(after) + ".");
        default -> {}
      }
    }
    return all;
  }

  private String base(CaseFile after) {
    return "Measured against the fuselage the deck then stands "
        + stand(after)
        + "; now it stands "
        + stand(answer.base())
        + ".";
  }

  private static String stand(CaseFile file) {
    return Shown.nose(Shown.degrees(file.rideCase().setup().mast().baseAngle()));
  }

  private String place(CaseFile after) {
    double track = after.rideCase().setup().board().track();
    return track == 0 ? "in the middle of its track" : move(track) + " of its track's middle";
  }

  private String kept(CaseFile after) {
    double shim = after.rideCase().setup().shim();
    if (ShimWords.isShim(shim)) {
      return "Your shim fits it and stays.";
    }
    return ShimWords.isShim(answer.base().rideCase().setup().shim())
        ? "Your shim is not known to fit it and stays out."
        : "No shim goes under it.";
  }

  private static List<String> shim(Change change, CaseFile after) {
    double angle = after.rideCase().setup().shim();
    Mounting mounting = after.notes().stabilizerMounting();
    List<String> all = new ArrayList<>();
    boolean isShim = ShimWords.isShim(angle);
    all.add(
        !isShim
            ? "Take the shim out."
            : change
                .part()
                .map(id -> "Take " + id + " from the stock, alone under the stabilizer.")
                .orElse(
                    "One shim does it, alone under the stabilizer; none is at hand, so make it."));
    all.addAll(ShimWords.of(angle, mounting).sentences());
    if (isShim) {
      all.add(
          "For each "
              + Shown.decimals(Shown.mm(SPACING), 0)
              + " mm between the bolts it is "
              + Shown.decimals(Shown.mm(SPACING * Math.tan(Math.abs(angle))), 2)
              + " mm thicker at the thick end's bolt.");
    }
    return all;
  }

  /**
   * The command that makes a shim as a body to print.
   *
   * @param after the case with the shim
   * @return the line; SPACING stands for the bolts' spacing on the fuselage
   */
  public static String command(CaseFile after) {
    return "./run shim --angle-deg "
        + Amounts.plain(Shown.rounded(Shown.degrees(after.rideCase().setup().shim()), 3))
        + " --bolt-spacing-mm SPACING --mounted "
        + after.notes().stabilizerMounting().code()
        + " --stl wedge.stl";
  }
}
