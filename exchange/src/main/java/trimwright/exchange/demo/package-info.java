/**
 * Made-up demo cases: invented riders, gear and waters, kept as case files that teach the format.
 */
package trimwright.exchange.demo;
