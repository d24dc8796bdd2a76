/**
 * From thrust to electric power and back: propeller, motor and controller, battery.
 *
 * <p>Answers: revolutions and electric power for a thrust at a speed; the greatest thrust at a
 * speed within power, revolutions, battery current and the maker's own limit; how much of a battery
 * is left in the cold and under load; where the blades cavitate and when the propeller draws air.
 *
 * <p>Assumed: a propeller in even flow, alone (no mast, pod or wing ahead of it), in steady
 * running; thrust forward. Where neither a propeller nor an efficiency is given, a share of the
 * ideal disc. Absolute watts are uncertain until a ride has measured them: {@link
 * trimwright.kernel.propel.PowerBasis} says by how much.
 *
 * <p>Sources: Rankine (1865) and Froude (1889) for the ideal disc; Oosterveld and van Oossanen
 * (1975) for the B-series; ITTC 1978 for its correction to smaller blades; Keller (1966) for
 * cavitation; Minsaas, Faltinsen and Persson (1983) for the loss near the surface; Bubulinca,
 * Enache and Buga (2016) for cold cells. Each class says what was read and what is from memory.
 */
package trimwright.kernel.propel;
