/**
 * Published values as data, and the runner that holds the computation against them.
 *
 * <p>{@link trimwright.reference.CheckRunner#runAll()} computes every check; {@link
 * trimwright.reference.Ledger} names those that are known to miss, and {@link
 * trimwright.reference.NotInHand} the sources that could not be obtained.
 */
module trimwright.reference {
  requires trimwright.kernel;
  requires org.apache.commons.csv;

  exports trimwright.reference;
}
