package trimwright.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * One face of the family that the sheet ships: its file, which characters it has, and how wide they
 * run. Source Sans 3, regular and bold: Latin, Greek and Cyrillic, figures of one width. Safe for
 * several threads.
 */
final class SheetFont {
  /** Name of the family in the style sheet. */
  static final String FAMILY = "Sheet Sans";

  /** Names are cut after so many letters: the longest that a case file may give. */
  private static final int LONGEST = 120;

  /** Where the list of an OpenType file's tables begins, and how long each entry is [bytes]. */
  private static final int FIRST_TABLE = 12;

  private static final int TABLE_ENTRY = 16;

  /** Stands for a character that the family lacks: a hollow square. */
  static final String REPLACEMENT = "\u25a1";

  static final SheetFont REGULAR = new SheetFont("SourceSans3-Regular.ttf");
  static final SheetFont BOLD = new SheetFont("SourceSans3-Bold.ttf");

  private final byte[] file;
  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final double unitsPerEm;

  private SheetFont(String name) {
    try (InputStream in = SheetFont.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the font " + name + " is missing from the program");
      }
      file = withoutLigatures(in.readAllBytes());
      font = new TTFParser(true).parse(new RandomAccessReadBuffer(file));
      glyphs = font.getUnicodeCmapLookup();
      unitsPerEm = font.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The same font without its table of substitutions: the PDF library would print "ft" and the like
   * as one glyph that stands for no letters, so that copying or reading aloud would lose them. The
   * table keeps its place and gets a name that nobody looks for.
   */
  private static byte[] withoutLigatures(byte[] file) {
    int tables = (file[4] & 0xff) << 8 | file[5] & 0xff;
    for (int i = 0; i < tables; i++) {
      int at = FIRST_TABLE + i * TABLE_ENTRY;
      if (file[at] == 'G' && file[at + 1] == 'S' && file[at + 2] == 'U' && file[at + 3] == 'B') {
        file[at] = 'x';
      }
    }
    return file;
  }

  /** The font's file. */
  byte[] file() {
    return file.clone();
  }

  /** The parsed font. */
  TrueTypeFont font() {
    return font;
  }

  /** Whether a character has a glyph. */
  synchronized boolean has(int codePoint) {
    return glyphs.getGlyphId(codePoint) != 0;
  }

  /** Width of a line of text over the size of its letters, kerning left aside [1]. */
  synchronized double width(String text) {
    double units = 0;
    try {
      for (int c : text.codePoints().toArray()) {
        units += font.getAdvanceWidth(glyphs.getGlyphId(c));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return units / unitsPerEm;
  }

  /**
   * A text that every face can print.
   *
   * @param text on one line
   * @param replaced whether a character had to be replaced
   */
  record Printable(String text, boolean replaced) {}

  /**
   * Makes a name printable: composed, on one line, not too long, characters without a glyph
   * replaced.
   *
   * @param text as somebody typed it
   * @return the text to print
   */
  static Printable printable(String text) {
    StringBuilder out = new StringBuilder();
    boolean replaced = false;
    String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
    for (int c : composed.codePoints().toArray()) {
      if (Character.isWhitespace(c) || Character.isSpaceChar(c) || Character.isISOControl(c)) {
        out.append(c == 0xa0 ? "\u00a0" : " ");
      } else if (REGULAR.has(c) && BOLD.has(c)) {
        out.appendCodePoint(c);
      } else if (Character.getType(c) != Character.FORMAT
          && Character.getType(c) != Character.NON_SPACING_MARK) {
        out.append(REPLACEMENT);
        replaced = true;
      }
    }
    String tidy = out.toString().strip().replaceAll(" +", " ");
    if (tidy.codePointCount(0, tidy.length()) > LONGEST) {
      tidy = tidy.substring(0, tidy.offsetByCodePoints(0, LONGEST - 1)).strip() + "…";
    }
    return new Printable(tidy, replaced);
  }
}
