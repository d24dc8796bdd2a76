/**
 * Results in words: second person, what to do first, then the numbers, in the trade's own terms.
 *
 * <p>Nothing here declares a setup fit for anybody; the words say what the computation gives and
 * what to look at before believing it.
 */
package trimwright.exchange.words;
