/**
 * How far and how long a case rides on its battery: minutes and kilometres at each speed, the
 * speeds of longest ride and farthest way, and whether it gets home against current and wind.
 *
 * <p>Assumed: steady level riding, no starts, falls or turns; the battery as {@link
 * trimwright.kernel.propel.BatteryPack} has it. Watts are uncertain until a ride has measured them,
 * and minutes and kilometres with them: {@link trimwright.kernel.propel.PowerBasis}.
 */
package trimwright.kernel.range;
