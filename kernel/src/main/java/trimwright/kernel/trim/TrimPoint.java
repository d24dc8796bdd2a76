package trimwright.kernel.trim;

import java.util.OptionalDouble;
import java.util.Set;

/**
 * The steady state of a case at one speed.
 *
 * @param speed through the water [m/s]
 * @param pitch deck against the horizontal, nose up positive [rad]
 * @param frontWingAngleOfAttack front wing's root chord against the undisturbed stream [rad]
 * @param footShare part of the vertical foot load on the front foot [1]
 * @param footPressureAheadOfMast foot-pressure centre ahead of the mast's axis, along the deck [m]
 * @param massCentreAheadOfMast rider's own mass centre ahead of the mast's axis [m]; air drag or a
 *     pull stands between
 * @param frontLeg vertical load on the front foot [kg]
 * @param backLeg vertical load on the back foot [kg]
 * @param forwardReserve how far the foot-pressure centre can still go forward [m]
 * @param thrust along the thrust line, or the level force needed where there is no drive [N]
 * @param drag all resistance, water and air, along the stream [N]
 * @param electricPower [W], where there is a drive
 * @param frontWingLift [N]
 * @param stabilizerLift [N]; negative where it presses down
 * @param frontWingLiftCoefficient front wing's lift on its area [1]
 * @param frontWingReynolds on the mean chord [1]
 * @param stallMargin nose-up change of pitch to the first stalled strip of either wing [rad]
 * @param staticMargin -dM/dL at fixed speed and thrust, moment about the mass centre of all, feet
 *     fixed [m]
 * @param deckLeverShare the part of the static margin that the deck's height makes [m]
 * @param footShareGrowth change of foot share with speed [s/m]
 * @param pitchPerShift change of pitch per metre of forward weight shift at fixed speed [rad/m];
 *     empty near neutral
 * @param forceResidual of the two force equations [N]
 * @param momentResidual of the moment equation [N·m]
 * @param sectionResidual largest difference of a lift coefficient between lattice and sections, see
 *     {@link trimwright.kernel.surface.CoupledFlow#residual} [1]
 * @param momentTerms about the datum
 * @param brokenLimits limits of the rideable window that this point breaks
 */
public record TrimPoint(
    double speed,
    double pitch,
    double frontWingAngleOfAttack,
    double footShare,
    double footPressureAheadOfMast,
    double massCentreAheadOfMast,
    double frontLeg,
    double backLeg,
    double forwardReserve,
    double thrust,
    double drag,
    OptionalDouble electricPower,
    double frontWingLift,
    double stabilizerLift,
    double frontWingLiftCoefficient,
    double frontWingReynolds,
    double stallMargin,
    double staticMargin,
    double deckLeverShare,
    double footShareGrowth,
    OptionalDouble pitchPerShift,
    double forceResidual,
    double momentResidual,
    double sectionResidual,
    MomentTerms momentTerms,
    Set<Limit> brokenLimits) {

  /** Copies the set. */
  public TrimPoint {
    brokenLimits = Set.copyOf(brokenLimits);
  }
}
