package trimwright.cache;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * A program of its own for the tests: asks a shared folder for values in a random order and checks
 * each. Arguments: folder, limit [byte], keys, rounds, seed, time a build takes [ms], and a folder
 * where each build leaves a mark while it lasts, or a minus sign. Prints a line for each value that
 * it built, and a last one.
 */
final class CacheProgram {
  /** A wrong value came back. */
  static final int WRONG = 3;

  /** Two built the same at once. */
  static final int TWO_BUILDERS = 4;

  /** Numbers in a value: some hundred kilobytes, written in more than one go of the disk. */
  private static final int NUMBERS = 20_000;

  private CacheProgram() {}

  static CacheKey key(int number) {
    return CacheKey.of("program", "1").whole("number", number).key();
  }

  static NamedArrays value(int number) {
    double[] values = new double[NUMBERS];
    Arrays.setAll(values, i -> number + 1.0 / (1 + i));
    return NamedArrays.maker().doubles("x", values).arrays();
  }

  static boolean isRight(int number, NamedArrays value) throws DamagedEntryException {
    return Arrays.equals(value.doubles("x"), value(number).doubles("x"));
  }

  public static void main(String[] args) throws Exception {
    CacheStore store = CacheStore.in(Path.of(args[0]), Long.parseLong(args[1]));
    int keys = Integer.parseInt(args[2]);
    int rounds = Integer.parseInt(args[3]);
    SplittableRandom random = new SplittableRandom(Long.parseLong(args[4]));
    long millis = Long.parseLong(args[5]);
    System.out.println("ready");
    for (int i = 0; i < rounds; i++) {
      int number = random.nextInt(keys);
      Obtained<NamedArrays> obtained =
          store.obtain(
              key(number),
              NamedArrays.CODEC,
              watch -> build(number, millis, args[6]),
              BuildWatch.NONE);
      if (!isRight(number, obtained.value())) {
        System.exit(WRONG);
      }
      if (obtained.origin() != Obtained.Origin.KEPT) {
        System.out.println(obtained.origin() + " " + number + " " + obtained.reason());
      }
    }
    System.out.println("done");
  }

  private static NamedArrays build(int number, long millis, String marks) {
    try {
      Path mark = marks.equals("-") ? null : Path.of(marks, "building-" + number);
      if (mark != null) {
        Files.createFile(mark);
      }
      Thread.sleep(millis);
      if (mark != null) {
        Files.delete(mark);
      }
      return value(number);
    } catch (FileAlreadyExistsException e) {
      System.exit(TWO_BUILDERS);
      throw new IllegalStateException(e);
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
