/**
 * The one table of conversion factors between the shop's units and SI. Only the edge of the program
 * uses it; the computation knows SI alone.
 */
package trimwright.exchange.unit;
