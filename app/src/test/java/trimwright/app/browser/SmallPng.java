package trimwright.app.browser;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import javax.imageio.ImageIO;

/**
 * Saves a picture of a page with its 256 most frequent colours, which is a third of the size and
 * looks the same.
 */
final class SmallPng {
  private static final int COLOURS = 256;
  private static final int OPAQUE = 0xff000000;

  private SmallPng() {}

  /** Reads a PNG and writes it small. */
  static void write(byte[] png, Path file) throws IOException {
    BufferedImage full = ImageIO.read(new ByteArrayInputStream(png));
    int width = full.getWidth();
    int height = full.getHeight();
    int[] pixels = full.getRGB(0, 0, width, height, null, 0, width);
    int[] palette = mostFrequent(pixels);
    IndexColorModel model = new IndexColorModel(8, palette.length, palette, 0, false, -1, 0);
    BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_INDEXED, model);
    Map<Integer, Integer> nearest = new HashMap<>();
    int[] indices = new int[pixels.length];
    for (int i = 0; i < pixels.length; i++) {
      indices[i] = nearest.computeIfAbsent(pixels[i], colour -> nearest(palette, colour));
    }
    small.getRaster().setSamples(0, 0, width, height, 0, indices);
    ImageIO.write(small, "png", file.toFile());
  }

  private static int[] mostFrequent(int[] pixels) {
    Map<Integer, Integer> counts = new HashMap<>();
    for (int pixel : pixels) {
      counts.merge(pixel | OPAQUE, 1, Integer::sum);
    }
    return counts.entrySet().stream()
        .sorted(
            Map.Entry.<Integer, Integer>comparingByValue()
                .reversed()
                .thenComparing(Map.Entry.comparingByKey()))
        .limit(COLOURS)
        .mapToInt(Map.Entry::getKey)
        .toArray();
  }

  private static int nearest(int[] palette, int colour) {
    int[] distances = Arrays.stream(palette).map(other -> distance(other, colour)).toArray();
    int best = 0;
    for (int i = 1; i < distances.length; i++) {
      best = distances[i] < distances[best] ? i : best;
    }
    return best;
  }

  private static int distance(int a, int b) {
    int sum = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      int step = (a >> shift & 0xff) - (b >> shift & 0xff);
      sum += step * step;
    }
    return sum;
  }
}
