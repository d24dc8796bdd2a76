/**
 * What a setup gives of a rider's wishes and which limits it breaks: from the full solution, and in
 * microseconds from tables.
 *
 * <p>Both go by the same definitions: the wish values of {@link trimwright.fitting.wish.Wish}, over
 * the same speeds, and the grounds of {@link trimwright.fitting.judge.Ground} in the same order.
 */
package trimwright.fitting.judge;
