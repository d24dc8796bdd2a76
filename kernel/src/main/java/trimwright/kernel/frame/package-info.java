/**
 * Axes, signs and the small value types that carry them. This page is the only place that defines
 * them.
 *
 * <p><b>Foil axes</b> (body axes): right-handed, x forward along the fuselage, y to starboard, z
 * down. The origin, called the datum, is where the mast's axis meets the fuselage's axis. Height
 * above the fuselage's axis is -z.
 *
 * <p><b>Water axes</b>: the same origin, x forward and level, y to starboard, z straight down. The
 * foil axes are turned from the water axes by the fuselage's pitch about y, nose up positive. The
 * undisturbed water streams along -x.
 *
 * <p><b>Angles.</b> Pitch, incidence, twist and angle of attack are positive with the leading edge
 * (the nose) up. The pitch that people see is the deck's: fuselage pitch = deck pitch - mast-base
 * angle.
 *
 * <p><b>Moments</b> about y are positive nose up. Depth is positive below the still surface. Lift
 * is across the stream, positive up; drag is along the stream, positive aft.
 *
 * <p><b>Deck coordinate.</b> Places on the deck are distances along the deck ahead of the point
 * where the mast's axis, prolonged, pierces the deck; negative behind it.
 */
package trimwright.kernel.frame;
