/**
 * The Bench: one case, live. The browser holds the case as a flat map of texts and sends all of it
 * with every question; one answer carries the whole curve with its words and geometry. The server
 * keeps no session: of a rider it has what was saved on the shelf, and nothing else.
 */
package trimwright.web.bench;
