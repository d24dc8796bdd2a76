/**
 * Second ways to the same figures, written apart from the shipped computation: plain formulas and
 * small programs that the evaluated figures of the tables come from.
 */
package trimwright.reference.second;
