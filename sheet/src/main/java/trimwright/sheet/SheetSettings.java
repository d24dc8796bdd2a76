package trimwright.sheet;

import java.util.ArrayList;
import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.Mounting;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.ShimWords;
import trimwright.exchange.words.Shown;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.Setup;
import trimwright.sheet.SheetPage.Row;
import trimwright.sheet.SheetPage.Setting;

/** What is set and bolted together, in the sheet's figures. */
final class SheetSettings {
  /** A wing's setting below this needs no word [degrees]. */
  private static final double NO_ANGLE = 0.05;

  private final CaseFile caseFile;
  private final Setup setup;
  private final SheetNumbers numbers;

  SheetSettings(CaseFile caseFile, SheetNumbers numbers) {
    this.caseFile = caseFile;
    this.setup = caseFile.rideCase().setup();
    this.numbers = numbers;
  }

  /** The settings that people look for with wet hands. */
  List<Setting> large() {
    return List.of(shim(), foot(true), foot(false), track());
  }

  private Setting shim() {
    double shim = setup.shim();
    if (!ShimWords.isShim(shim)) {
      return new Setting("Shim", "none", "", "stabilizer straight on its seat", "action");
    }
    boolean up = shim > 0;
    boolean above = caseFile.notes().stabilizerMounting() == Mounting.ABOVE;
    return new Setting(
        "Shim",
        angle(shim) + "°",
        up ? "up" : "down",
        "leading edge "
            + (up ? "up" : "down")
            + ", thick end "
            + (up == above ? "front" : "back")
            + ", stabilizer "
            + (above ? "on top" : "underneath"),
        "action");
  }

  private Setting foot(boolean front) {
    Rider rider = caseFile.rideCase().rider();
    double ahead = (front ? rider.frontFoot() : rider.backFoot()) - setup.board().track();
    return new Setting(
        front ? "Front foot" : "Back foot",
        numbers.bareLength(Math.abs(ahead)),
        numbers.lengthUnit(),
        ahead < 0 ? "behind the mast's axis" : "ahead of the mast's axis",
        front ? "front" : "back");
  }

  private Setting track() {
    double track = setup.board().track();
    if (Math.abs(Shown.mm(track)) < 0.5) {
      return new Setting("Mast in its track", "middle", "", "of the track", "ink");
    }
    return new Setting(
        "Mast in its track",
        numbers.bareLength(Math.abs(track)),
        numbers.lengthUnit(),
        (track > 0 ? "forward" : "back") + " from the track's middle",
        "ink");
  }

  /** The parts, each with the numbers that tell it from its neighbours on the shelf. */
  List<Row> parts() {
    List<Row> rows = new ArrayList<>();
    rows.add(row("Front wing", wing(setup.frontWing())));
    rows.add(row("Stabilizer", wing(setup.stabilizer())));
    rows.add(row("Fuselage", numbers.length(setup.fuselage().length())));
    rows.add(row("Mast", mast(setup.mast())));
    rows.add(row("Board", board(setup.board())));
    setup.drive().ifPresent(drive -> rows.add(row("Drive", drive(drive))));
    setup
        .battery()
        .ifPresent(
            b ->
                rows.add(
                    row("Battery", numbers.wattHours(b.energy()) + ", " + numbers.mass(b.mass()))));
    return rows;
  }

  private static Row row(String name, String value) {
    return new Row(name, value, false);
  }

  private String wing(FittedWing wing) {
    return numbers.area(wing.shape().area())
        + ", span "
        + numbers.length(wing.shape().span())
        + ", root "
        + numbers.length(wing.shape().stations().get(0).chord())
        + set(wing.setting(), ", set ", "leading edge up", "leading edge down");
  }

  private String mast(Mast mast) {
    return numbers.length(mast.length())
        + ", chord "
        + numbers.length(mast.chord())
        + set(mast.baseAngle(), ", base ", "nose-up", "nose-down");
  }

  private String board(Board board) {
    return numbers.bareLength(board.length())
        + " × "
        + numbers.bareLength(board.width())
        + " × "
        + numbers.length(board.thickness())
        + ", "
        + numbers.litres(board.volume());
  }

  private String drive(Drive drive) {
    return numbers.watts(drive.maximumPower())
        + ", propeller "
        + numbers.length(drive.propellerDiameter());
  }

  private static String set(double angle, String before, String up, String down) {
    return Math.abs(Shown.degrees(angle)) < NO_ANGLE
        ? ""
        : before + angle(angle) + "° " + (angle > 0 ? up : down);
  }

  /** A bare size in degrees; which way is said in words. */
  private static String angle(double angle) {
    return Shown.decimals(Math.abs(Unit.DEGREE.fromSi(angle)), 2).replaceAll("0$", "");
  }
}
