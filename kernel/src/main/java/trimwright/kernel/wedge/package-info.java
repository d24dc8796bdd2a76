/**
 * A shim as a body to print: its sizes from the wanted angle and the bolts' spacing ({@link
 * trimwright.kernel.wedge.ShimWedge}), its surface by triangles ({@link
 * trimwright.kernel.wedge.Solid}), and whether such a surface encloses a body at all ({@link
 * trimwright.kernel.wedge.SolidCheck}).
 *
 * <p>Axes of a wedge: x along its length, towards the thick end; y across; z away from the
 * fuselage's seat, on which it lies at z = 0; origin in the middle between the bolts. A wedge knows
 * neither front nor back: how it goes in depends on where the stabilizer is bolted.
 *
 * <p>Geometry alone: nothing here knows what the material bears.
 */
package trimwright.kernel.wedge;
