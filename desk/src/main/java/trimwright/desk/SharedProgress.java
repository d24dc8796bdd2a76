package trimwright.desk;

/** Told how far a choice for many riders is, and asked whether it shall go on. Any thread calls. */
public interface SharedProgress {
  /** Tells nobody and never stops. */
  SharedProgress NONE =
      new SharedProgress() {
        @Override
        public void riders(int done, int all) {
          // Nobody listens.
        }

        @Override
        public void confirmed(int done) {
          // Nobody listens.
        }

        @Override
        public void found(String words) {
          // Nobody listens.
        }

        @Override
        public boolean isStopped() {
          return false;
        }
      };

  /** Riders for whom the whole stock was looked through. */
  void riders(int done, int all);

  /** Cards solved in full so far. */
  void confirmed(int done);

  /** Something found on the way. */
  void found(String words);

  /** Whether to stop. */
  boolean isStopped();
}
