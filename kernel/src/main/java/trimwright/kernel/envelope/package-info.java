/**
 * The limits of a case as speeds, banks, loads and times: what the ride can do before something
 * gives way. Nothing here says that a ride inside them is safe.
 *
 * <p>Sources: the balance of {@link trimwright.kernel.trim} and {@link trimwright.kernel.turn}; the
 * rest is elementary mechanics, stated at each class. Load cases of landing and fall are chosen, no
 * source.
 */
package trimwright.kernel.envelope;
