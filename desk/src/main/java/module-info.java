/** The shop's tasks: the place that joins reading, computing and writing for every face. */
module trimwright.desk {
  requires transitive trimwright.kernel;
  requires transitive trimwright.exchange;
  requires trimwright.cache;

  exports trimwright.desk;
}
