package trimwright.kernel.band;

import java.util.List;
import java.util.stream.Stream;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.ViscousSection;
import trimwright.kernel.surface.Station;

/** Which tolerance of the method a wing has, by what its sections stand on. */
final class SectionTolerances {
  /** A section this thin and straight counts as thin and symmetrical [chords]. Chosen. */
  private static final double THIN = 0.13;

  private static final double STRAIGHT = 0.002;

  private SectionTolerances() {}

  /** Of the zero-lift angle. */
  static Tolerance zeroLift(FittedWing wing) {
    return sections(wing).allMatch(SectionTolerances::thinAndStraight)
        ? Tolerance.ZERO_LIFT_THIN_SYMMETRICAL
        : Tolerance.ZERO_LIFT_CAMBERED;
  }

  /** Of the lift slope. */
  static Tolerance liftSlope(FittedWing wing) {
    return onLayers(wing) ? Tolerance.LIFT_SLOPE_LAYERS : Tolerance.LIFT_SLOPE;
  }

  /** Of the lift limit of both wings. */
  static Tolerance liftLimit(Setup setup) {
    List<FittedWing> wings = List.of(setup.frontWing(), setup.stabilizer());
    if (wings.stream().noneMatch(SectionTolerances::onLayers)) {
      return Tolerance.LIFT_LIMIT;
    }
    return wings.stream().anyMatch(wing -> wing.finish() == Finish.SCUFFED)
        ? Tolerance.LIFT_LIMIT_SCUFFED_LAYERS
        : Tolerance.LIFT_LIMIT_LAYERS;
  }

  private static boolean onLayers(FittedWing wing) {
    return sections(wing).anyMatch(ViscousSection.class::isInstance);
  }

  private static boolean thinAndStraight(Section section) {
    return section.shape().thickness() <= THIN && Math.abs(section.shape().camber()) <= STRAIGHT;
  }

  private static Stream<Section> sections(FittedWing wing) {
    return wing.shape().stations().stream().map(Station::section);
  }
}
