package trimwright.kernel.surface;

import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Polar;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.SectionShape;

/**
 * A section whose polar is a straight line other than the one that the lattice is built with.
 *
 * @param liftSlope of the lattice [1/rad]
 * @param zeroLiftAngle of the lattice [rad]
 * @param ownSlope of the polar [1/rad]
 * @param ownZero of the polar [rad]
 */
record BentSection(double liftSlope, double zeroLiftAngle, double ownSlope, double ownZero)
    implements Section {
  @Override
  public String name() {
    return "bent";
  }

  @Override
  public SectionShape shape() {
    throw new UnsupportedOperationException("no outline");
  }

  @Override
  public double momentAtZeroLift() {
    return 0;
  }

  @Override
  public double aerodynamicCentre() {
    return 0.25;
  }

  @Override
  public double minimumPressure(double liftCoefficient) {
    return 0;
  }

  @Override
  public Polar polar(double reynolds, Finish finish) {
    return new StraightPolar(ownSlope, ownZero);
  }
}
