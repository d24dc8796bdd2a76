/**
 * Computed tables on disk, found by what they were computed from.
 *
 * <p>{@link trimwright.cache.CacheStore} gives a value that was kept, or has it built and keeps it.
 * Any number of programs may share a folder, and any of them may be killed at any moment.
 */
module trimwright.cache {
  requires transitive trimwright.kernel;

  exports trimwright.cache;
  exports trimwright.cache.pair;
  exports trimwright.cache.polar;
}
