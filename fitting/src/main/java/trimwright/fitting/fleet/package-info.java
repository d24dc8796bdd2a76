/**
 * One hardware set for a household, a small fleet for a school, a demo stock within a budget: exact
 * choices over a table of riders and hardware.
 *
 * <p>A table says for each rider and each hardware set how the best card on it falls short of what
 * was wished, or that none keeps the limits; who fills it, and how well it holds, is not this
 * package's business. Choices are the best ones, or say how far the best can lie from them at most.
 * Linear programmes and those in whole numbers are solved by ojAlgo; bounds that leave columns out
 * are sums of our own over all of them.
 */
package trimwright.fitting.fleet;
