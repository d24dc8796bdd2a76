package trimwright.cache;

/** Whoever waits for a build: sees how far it is and may stop it. */
public interface BuildWatch {
  /** Looks at nothing and stops nothing. */
  BuildWatch NONE =
      new BuildWatch() {
        @Override
        public void advanced(double share) {
          // Nobody looks.
        }

        @Override
        public boolean isStopped() {
          return false;
        }
      };

  /**
   * The work came further.
   *
   * @param share done so far, 0 to 1 [1]
   */
  void advanced(double share);

  /** Whether the work shall stop; asked again and again. */
  boolean isStopped();
}
