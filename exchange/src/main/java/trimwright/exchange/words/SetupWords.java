package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.fitting.judge.Placement;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.stock.StockSetup;

/** A setup of a stock in words. */
public final class SetupWords {
  private SetupWords() {}

  /** Its parts by name, from the board down, the shim left out. */
  public static String parts(StockSetup setup) {
    return Stream.concat(
            setup.upper().parts(),
            Stream.of(setup.foil().fuselage(), setup.foil().frontWing(), setup.foil().stabilizer()))
        .map(StockPart::id)
        .collect(Collectors.joining(", "));
  }

  /** The shim: which edge goes up, and by how much. */
  public static String shim(StockSetup setup) {
    double angle = setup.foil().shimAngle();
    return angle == 0
        ? "no shim"
        : "shim "
            + Shown.decimals(Math.abs(Shown.degrees(angle)), 1)
            + "°, leading edge "
            + (angle > 0 ? "up" : "down");
  }

  /** Where mast and feet stand. */
  public static List<String> places(Placement placement, Measures measures) {
    return places(placement.track(), placement.feet(), measures);
  }

  /**
   * Where mast and feet stand.
   *
   * @param track the mast forward of its track's middle [m]
   * @param feet how far both feet are moved forward [m]
   * @param measures in which units
   */
  public static List<String> places(double track, double feet, Measures measures) {
    List<String> places = new ArrayList<>();
    places.add(
        track == 0
            ? "mast in the middle of its track"
            : "mast "
                + length(track, measures)
                + (track > 0 ? " forward of" : " behind")
                + " its track's middle");
    places.add(
        feet == 0
            ? "feet where they are"
            : "both feet "
                + length(feet, measures)
                + (feet > 0 ? " further forward" : " further back"));
    return places;
  }

  private static String length(double value, Measures measures) {
    return Shown.decimals(
            measures.unit(Unit.MILLIMETRE).fromSi(Math.abs(value)),
            measures.shown(Unit.MILLIMETRE).decimals())
        + " "
        + measures.shown(Unit.MILLIMETRE).symbol();
  }
}
