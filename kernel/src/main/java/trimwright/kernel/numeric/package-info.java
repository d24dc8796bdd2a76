/**
 * Numerical tools that the field's packages share: dense linear systems, interpolation, roots and
 * extremes. The only package that knows a numerical library.
 */
package trimwright.kernel.numeric;
