package trimwright.desk;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import trimwright.exchange.read.Digest;

/**
 * File names made from what people call a case: lower-case letters, digits and hyphens only, so
 * that every file system takes them and none reads a path in them. Where a name has letters of
 * other scripts, a few digits of its digest keep it apart from others.
 */
final class ShelfName {
  private static final int LONGEST = 80;
  private static final int DIGEST_DIGITS = 8;

  /** Names that one widespread system keeps for its devices. */
  private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|com[0-9]|lpt[0-9]");

  private ShelfName() {}

  /**
   * The file name for a case's name, without its ending.
   *
   * @param name what people call it
   * @return empty where the name has neither letter nor digit
   */
  static Optional<String> of(String name) {
    if (name.codePoints().noneMatch(Character::isLetterOrDigit)) {
      return Optional.empty();
    }
    String composed = Normalizer.normalize(name.strip(), Normalizer.Form.NFC);
    String plain =
        composed.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
    boolean lossy =
        plain.length() > LONGEST
            || composed.codePoints().anyMatch(c -> c >= 0x80 && Character.isLetterOrDigit(c));
    if (lossy) {
      String cut = plain.substring(0, Math.min(LONGEST, plain.length()));
      String digest = Digest.of(composed.toLowerCase(Locale.ROOT)).substring(0, DIGEST_DIGITS);
      return Optional.of((cut.isEmpty() ? "case" : cut.replaceAll("-$", "")) + "-" + digest);
    }
    return Optional.of(DEVICE.matcher(plain).matches() ? plain + "-case" : plain);
  }
}
