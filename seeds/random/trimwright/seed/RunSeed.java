package trimwright.seed;

/** Seed of the properties on random inputs. */
public final class RunSeed {
  /** None: each run of the long tests draws its own and prints it where a property fails. */
  public static final String VALUE = "";

  private RunSeed() {}
}
