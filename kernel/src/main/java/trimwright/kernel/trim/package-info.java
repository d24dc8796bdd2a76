/** Steady states: one trim point, a curve of them, the speeds that people ask for. */
package trimwright.kernel.trim;
