/**
 * The match: which setups of a stock suit a rider. A question begins a job that works behind the
 * Bench; the page asks how far it is and takes the answer along. Nothing about a rider or a stock
 * stays on the server longer than its job.
 */
package trimwright.web.match;
