package trimwright.web.match;

/** Looks for something that takes minutes. */
@FunctionalInterface
interface MatchWork {
  /**
   * Does it.
   *
   * @param watch told how far it is, asked whether to go on
   * @return the answer, JSON
   * @throws java.util.concurrent.CancellationException if it was stopped
   */
  String run(MatchJob watch);
}
