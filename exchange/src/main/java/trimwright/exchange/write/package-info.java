/**
 * Results as documents: JSON with one schema per document, CSV with the same names, and tables for
 * a terminal. One writer serves every face.
 *
 * <p>The kernel's SI units and radians become the units that the names carry. Numbers never depend
 * on the locale and are never NaN or infinite: what does not exist is null.
 */
package trimwright.exchange.write;
