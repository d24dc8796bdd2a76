package trimwright.kernel.surface;

import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Polar;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.SectionShape;

/** A thin flat plate without friction or stall: what textbook wings are made of. */
record FlatSection(double liftSlope) implements Section {
  static final FlatSection THIN = new FlatSection(2 * Math.PI);

  @Override
  public String name() {
    return "flat";
  }

  @Override
  public SectionShape shape() {
    throw new UnsupportedOperationException("a flat plate has no outline");
  }

  @Override
  public double zeroLiftAngle() {
    return 0;
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
  public Polar polar(double reynolds, Finish finish) {
    return new StraightPolar(liftSlope, 0);
  }

  @Override
  public double minimumPressure(double liftCoefficient) {
    return 0;
  }
}
