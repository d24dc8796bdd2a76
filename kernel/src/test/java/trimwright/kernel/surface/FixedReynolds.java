package trimwright.kernel.surface;

import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Polar;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.SectionShape;

/** A section that is the same at every Reynolds number, so that chords do not matter. */
record FixedReynolds(Section section, double reynolds) implements Section {
  @Override
  public String name() {
    return section.name();
  }

  @Override
  public SectionShape shape() {
    return section.shape();
  }

  @Override
  public double zeroLiftAngle() {
    return section.zeroLiftAngle();
  }

  @Override
  public double liftSlope() {
    return section.liftSlope();
  }

  @Override
  public double momentAtZeroLift() {
    return section.momentAtZeroLift();
  }

  @Override
  public double aerodynamicCentre() {
    return section.aerodynamicCentre();
  }

  @Override
  public double minimumPressure(double liftCoefficient) {
    return section.minimumPressure(liftCoefficient);
  }

  @Override
  public Polar polar(double any, Finish finish) {
    return section.polar(reynolds, finish);
  }
}
