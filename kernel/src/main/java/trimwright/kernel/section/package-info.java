/**
 * Wing sections: shapes, the flow about them, their lift, drag, moment and lift limit; friction of
 * plates.
 *
 * <p>{@link trimwright.kernel.section.Sections} makes them from NACA codes, outlines, or thickness
 * and camber alone; {@link trimwright.kernel.section.Section} is all that the rest of the kernel
 * knows of them. The inviscid flow is computed ({@link trimwright.kernel.section.PanelMethod});
 * drag, lift limit and the viscous share of lift slope and moment are fits to measured sections,
 * most of them recalled and not read, which each class states. They hold for Reynolds numbers of
 * 1e4 to 1e7 and thicknesses of 1 to 30 %, most surely for 9 to 15 % above 0.3 million.
 *
 * <p>Axes: x from the leading edge aft along the chord line, y up, lengths in chords. Angles of
 * attack from the chord line and moments are positive with the leading edge up.
 *
 * <p>Sources: Abbott and von Doenhoff, Theory of Wing Sections (1959); NACA Reports 460, 537, 586,
 * 824; Sheldahl and Klimas, SAND80-2114 (1981); Kuethe and Chow, Foundations of Aerodynamics
 * (1976); Schlichting, Boundary-Layer Theory (1979); Hoerner, Fluid-Dynamic Drag (1965).
 */
package trimwright.kernel.section;
