package trimwright.fitting.match;

/** Told how far long work is, and asked whether it shall go on. May be called by any thread. */
public interface Progress {
  /** Tells nobody and never stops. */
  Progress NONE =
      new Progress() {
        @Override
        public void at(Stage stage, int done, int all) {
          // Nobody listens.
        }

        @Override
        public boolean isStopped() {
          return false;
        }
      };

  /** Parts of the work. */
  enum Stage {
    /** Pairs of wings, from tables. */
    SCREEN,
    /** Setups by the full solution. */
    CONFIRM,
    /** What errors, waters and weights do to the rows. */
    ROBUST
  }

  /**
   * How far it is.
   *
   * @param stage in which part
   * @param done how much is done
   * @param all of how much at most
   */
  void at(Stage stage, int done, int all);

  /** Whether to stop. */
  boolean isStopped();
}
