/** Polars of wing sections, kept between runs: what the kernel builds and a store keeps. */
package trimwright.cache.polar;
