package trimwright.web.trim;

import java.util.ArrayList;
import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.ShimWords;
import trimwright.exchange.words.Shown;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.Setup;

/**
 * The figures of a case that a person at the counter wants to see again before believing an answer.
 */
final class CaseFacts {
  /** Areas are shown to this step [cm²]. */
  private static final double AREA_STEP = 10;

  private CaseFacts() {}

  static List<CaseInHand.Fact> of(CaseFile caseFile) {
    Rider rider = caseFile.rideCase().rider();
    Setup setup = caseFile.rideCase().setup();
    List<CaseInHand.Fact> facts = new ArrayList<>();
    facts.add(fact("Rider with kit", rider.allMass(), 0, "kg"));
    facts.add(fact("Stance", Shown.mm(rider.stance()), 0, "mm"));
    facts.add(fact("Wished speed", Shown.kmh(rider.wishedSpeed()), 0, "km/h"));
    facts.add(fact("Front wing", squareCentimetres(setup.frontWing().shape().area()), 0, "cm²"));
    facts.add(fact("Stabilizer", squareCentimetres(setup.stabilizer().shape().area()), 0, "cm²"));
    facts.add(fact("Mast", Shown.mm(setup.mast().length()), 0, "mm"));
    facts.add(fact("Water density", caseFile.rideCase().water().density(), 0, "kg/m³"));
    ShimWords shim = ShimWords.of(setup.shim(), caseFile.notes().stabilizerMounting());
    facts.add(new CaseInHand.Fact("Shim", shim.headline() + " " + shim.fitting(), ""));
    return facts;
  }

  private static double squareCentimetres(double area) {
    // A planform rebuilt from four figures of a sheet comes back to within a few square
    // centimetres.
    return Math.round(Unit.SQUARE_CENTIMETRE.fromSi(area) / AREA_STEP) * AREA_STEP;
  }

  private static CaseInHand.Fact fact(String name, double value, int decimals, String unit) {
    return new CaseInHand.Fact(name, Figures.fixed(value, decimals), unit);
  }
}
