/**
 * The Bench: one case, live. The browser holds the case as a flat map of texts and sends all of it
 * with every question; one answer carries the whole curve with its words and geometry. Nothing
 * about a rider stays on the server.
 */
package trimwright.web.bench;
