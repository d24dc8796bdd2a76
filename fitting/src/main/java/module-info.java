/**
 * What a shop owns, which setups can be put together from it, and which of them suit a rider.
 *
 * <p>{@link trimwright.fitting.stock.Stock} holds the parts with their mounts; {@link
 * trimwright.fitting.stock.SetupSpace} counts and lists what mounts together; {@link
 * trimwright.fitting.wish.Wishes} says what a rider wishes and {@link
 * trimwright.fitting.judge.FullJudge} what a setup gives of it; {@link
 * trimwright.fitting.fleet.FitTable} is what hardware is chosen from for many riders.
 */
module trimwright.fitting {
  requires transitive trimwright.kernel;
  requires ojalgo;

  exports trimwright.fitting.fleet;
  exports trimwright.fitting.stock;
  exports trimwright.fitting.wish;
  exports trimwright.fitting.judge;
  exports trimwright.fitting.match;
  exports trimwright.fitting.change;
}
