/** Tables of pairs of wings, kept between runs: what the kernel builds and a store keeps. */
package trimwright.cache.pair;
