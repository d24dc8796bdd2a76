/**
 * How fast the kernel is, measured with JMH. Not shipped and never part of a test; figures and the
 * command that made them stand in {@code docs/performance.md}.
 */
package trimwright.bench;
