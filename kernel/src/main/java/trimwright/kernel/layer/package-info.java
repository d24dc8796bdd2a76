/**
 * Boundary layers and wakes by integral equations, alone or coupled with the flow outside that they
 * displace: laminar with Falkner-Skan closures, transition for a stated disturbance of the stream,
 * turbulent by lag entrainment, through separation.
 *
 * <p>Knows nothing of wing sections: stations along walls, edge speeds and the linear answer of
 * edge speeds to displacement come in ({@link trimwright.kernel.layer.LayerGeometry}), thicknesses
 * and places of transition and separation come out ({@link trimwright.kernel.layer.CoupledLayers}).
 * All lengths in one unit, all speeds in another, steady plane flow of constant density.
 *
 * <p>Sources: Falkner and Skan (1931), Stewartson (1954); Green, Weeks and Brooman, RAE TR 72231
 * (1972); Lock and Williams, Prog. Aerospace Sci. 24 (1987); Arnal, Habiballah and Coustols, Rech.
 * Aérosp. 1984-2; Roberts, AIAA J. 18 (1980); Veldman, AIAA J. 19 (1981). All but the similar
 * flows, which are solved anew, are from memory.
 */
package trimwright.kernel.layer;
