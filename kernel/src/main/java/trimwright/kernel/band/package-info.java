/**
 * How sure the numbers of a trim are: each input's tolerance, by how it was known, carried through
 * to pitch, foot load, power and the speeds that people ask for.
 *
 * <p>A band is 95 %: two standard deviations either way. Inputs are taken to be independent and
 * normal, and the answer to be linear in each of them over its tolerance; a test draws cases at
 * random and compares. Errors of the method, as far as checks against published values show them,
 * are inputs like any other, each part of the model on its own: sections, downwash, waves, wake,
 * mast, spray, corners, bodies. What is left out of the model altogether (slipstream, chop, walls
 * and bottom) is in no band, nor are the small errors of the lattice itself and of the surface's
 * image.
 *
 * <p>The tolerances stand in {@link trimwright.kernel.band.Tolerance}. No published source exists
 * for most; they are chosen, with their reasons beside them. Method: first-order propagation as in
 * the Guide to the Expression of Uncertainty in Measurement (JCGM 100:2008, section 5.1.2; from
 * memory).
 */
package trimwright.kernel.band;
