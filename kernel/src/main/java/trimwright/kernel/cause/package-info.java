/** The cause of a trim: how much of it comes from the speed ridden and how much from the set. */
package trimwright.kernel.cause;
