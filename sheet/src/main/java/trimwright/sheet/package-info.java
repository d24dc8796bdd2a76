/**
 * The setup sheet: what a rider takes home, on one page of paper. Words, numbers and pictures come
 * from {@code exchange} and {@code desk}; this package arranges and prints them.
 */
package trimwright.sheet;
