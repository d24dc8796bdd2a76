/**
 * The one table of conversion factors between the shop's units and SI, and which of them a person
 * reads: {@link trimwright.exchange.unit.Measures} metric or imperial. Only the edge of the program
 * uses them; the computation knows SI alone.
 */
package trimwright.exchange.unit;
