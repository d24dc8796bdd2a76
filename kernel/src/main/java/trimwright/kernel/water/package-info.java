/** Density, viscosity and vapour pressure of fresh and salt water. */
package trimwright.kernel.water;
