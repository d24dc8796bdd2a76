package trimwright.exchange.write;

import trimwright.kernel.water.Water;

/**
 * What the water document holds.
 *
 * @param digest of what it was computed from
 * @param temperature [K]
 * @param salinity salt's share of the mass [kg/kg]
 * @param water its properties
 */
public record WaterTable(String digest, double temperature, double salinity, Water water) {}
