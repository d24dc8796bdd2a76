/**
 * How a craft with its rider moves about its trims and away from them: modes, manners, chop, and
 * motions over time.
 *
 * <p>In the plane of symmetry, waves from ahead or behind. Equations, what they leave out, and
 * sources: {@link trimwright.kernel.motion.CraftMotion}.
 */
package trimwright.kernel.motion;
