/**
 * Density, viscosity and vapour pressure of fresh and salt water at one atmosphere; the waves of a
 * wind sea on it ({@link trimwright.kernel.water.ChopSpectrum}).
 *
 * <p>{@link trimwright.kernel.water.WaterModel} is the way into the first. Range: -2 to 40 °C
 * (271.15 to 313.15 K, ITS-90) and 0 to 42 g of salt per kg of water. Fresh water below 0 °C is
 * taken as supercooled liquid.
 *
 * <p>Sources: EOS-80 at one atmosphere (Millero and Poisson 1981; UNESCO Technical Papers in Marine
 * Science 44, 1983); IAPWS R12-08, viscosity of ordinary water substance; IAPWS-IF97, region 4;
 * Sharqawy, Lienhard and Zubair, Desalination and Water Treatment 16 (2010) 354-380 for what salt
 * does to viscosity and vapour pressure; Millero, Feistel, Wright and McDougall, Deep-Sea Research
 * I 55 (2008) 50-72 for the reference composition of sea salt.
 */
package trimwright.kernel.water;
