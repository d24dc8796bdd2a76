/** Helpers of the reading package; not offered to other modules. */
package trimwright.exchange.read.internal;
