/**
 * Which setups of a stock suit a rider: a screen by tables over every setup, then the full solution
 * for what is shown.
 *
 * <p>Nothing is left out of the screen but what a proof leaves out: pitch and thrust do not depend
 * on track and stance, so that they are solved once per rig and shim, and a limit that falls there
 * falls at every place of the track.
 */
package trimwright.fitting.match;
