package trimwright.sheet;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A QR code (ISO/IEC 18004) as large as it must be to be read from paper, with the most error
 * correction that leaves it so.
 *
 * @param svg the code with its quiet zone
 * @param size of its side, quiet zone included [mm]
 * @param module side of one module [mm]
 */
public record CodePicture(String svg, double size, double module) {
  /** Smallest side of a module that a telephone reads from paper without care [mm]. */
  static final double LEAST_MODULE = 0.35;

  /** Larger ones only take room [mm]. */
  private static final double LARGEST_MODULE = 0.55;

  /** Modules of white on every side, as the standard asks. */
  static final int QUIET = 4;

  private static final List<ErrorCorrectionLevel> MOST_CORRECTION_FIRST =
      List.of(
          ErrorCorrectionLevel.H,
          ErrorCorrectionLevel.Q,
          ErrorCorrectionLevel.M,
          ErrorCorrectionLevel.L);

  /**
   * The code of a text.
   *
   * @param text what it carries
   * @param alternative what it is, for a screen reader
   * @param largest side that it may take [mm]
   * @return the code, or nothing where the text is too long for it
   */
  static Optional<CodePicture> find(String text, String alternative, double largest) {
    for (ErrorCorrectionLevel level : MOST_CORRECTION_FIRST) {
      Optional<ByteMatrix> matrix = findMatrix(text, level);
      if (matrix.isPresent() && (matrix.get().getWidth() + 2 * QUIET) * LEAST_MODULE <= largest) {
        return Optional.of(draw(matrix.get(), alternative, largest));
      }
    }
    return Optional.empty();
  }

  private static Optional<ByteMatrix> findMatrix(String text, ErrorCorrectionLevel level) {
    try {
      boolean plain = text.chars().allMatch(c -> c < 0x80);
      QRCode code =
          Encoder.encode(
              text, level, plain ? Map.of() : Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"));
      return Optional.of(code.getMatrix());
    } catch (WriterException e) {
      // No version of the standard holds so much at this level
      return Optional.empty();
    }
  }

  private static CodePicture draw(ByteMatrix matrix, String alternative, double largest) {
    int side = matrix.getWidth() + 2 * QUIET;
    double module = Math.min(LARGEST_MODULE, largest / side);
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < matrix.getHeight(); y++) {
      int x = 0;
      while (x < matrix.getWidth()) {
        int run = 0;
        while (x + run < matrix.getWidth() && matrix.get(x + run, y) == 1) {
          run++;
        }
        if (run > 0) {
          path.append('M').append(x + QUIET).append(' ').append(y + QUIET);
          path.append('h').append(run).append("v1h-").append(run).append('z');
        }
        x += Math.max(1, run);
      }
    }
    String millimetres = String.format(Locale.ROOT, "%.3fmm", side * module);
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" alt=\""
            + alternative
            + "\" width=\""
            + millimetres
            + "\" height=\""
            + millimetres
            + "\" viewBox=\"0 0 "
            + side
            + " "
            + side
            + "\"><rect x=\"0\" y=\"0\" width=\""
            + side
            + "\" height=\""
            + side
            + "\" fill=\"#FFFFFF\"/><path fill=\"#000000\" d=\""
            + path
            + "\"/></svg>";
    return new CodePicture(svg, side * module, module);
  }
}
