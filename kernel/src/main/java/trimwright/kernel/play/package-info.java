/** What can happen on a ride, played over time from a trim. */
package trimwright.kernel.play;
