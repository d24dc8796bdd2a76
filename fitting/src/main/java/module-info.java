/**
 * What a shop owns, and which setups can be put together from it.
 *
 * <p>{@link trimwright.fitting.stock.Stock} holds the parts with their mounts; {@link
 * trimwright.fitting.stock.SetupSpace} counts and lists what mounts together.
 */
module trimwright.fitting {
  requires transitive trimwright.kernel;

  exports trimwright.fitting.stock;
}
