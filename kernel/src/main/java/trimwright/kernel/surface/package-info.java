/** Lifting surfaces: planforms, the multi-surface vortex lattice, its forces and its far wake. */
package trimwright.kernel.surface;
