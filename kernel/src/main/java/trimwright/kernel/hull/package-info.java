/**
 * From rest to flying: a board in the water, planing, and the take-off.
 *
 * <p>Assumed: quasi-steady at every speed, flat water, straight ahead, a flat bottom without
 * rocker, the rider's mass where the feet press. Absolute drags and with them length and time of a
 * run are rough; results say how rough.
 *
 * <p>Sources: Savitsky (1964) for planing, Havelock and Newman and Poole for waves, ITTC (1957) for
 * friction, Lamb (1932) for added mass, Winter and Dempster for a body's volumes; what is from
 * memory says so where it stands.
 */
package trimwright.kernel.hull;
