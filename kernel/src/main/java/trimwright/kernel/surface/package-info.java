/**
 * Lifting surfaces: planforms, the multi-surface vortex lattice, its forces and its far wake.
 *
 * <p>Assumed: thin symmetric wings without sideslip, wakes along the chord and then along the
 * stream, a free surface of constant pressure with small waves on deep water beside it (depths
 * above about half a chord, wings wholly under water), lift, drag and moment of each strip those of
 * its section, and behind a wing its viscous wake.
 *
 * <p>Sources: Katz and Plotkin, Low-Speed Aerodynamics (2001); Munk, NACA Report 121 (1921);
 * Wadlin, Shuford and McGehee, NACA Report 1232 (1955); Silverstein, Katzoff and Bullivant, NACA
 * Report 651 (1939); Anderson, NACA Report 572 (1936); each class says what was in hand and what
 * was recalled.
 */
package trimwright.kernel.surface;
