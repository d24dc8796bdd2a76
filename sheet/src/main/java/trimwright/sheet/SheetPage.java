package trimwright.sheet;

import java.util.List;
import java.util.Optional;

/**
 * Everything that the sheet says, ready for its template.
 *
 * @param head the top
 * @param settings what is set with a spanner or marked on the deck, in large figures
 * @param shimPicture which way the shim lies
 * @param shimWords the same in words, with the warning
 * @param shimNote what to know of that picture's scale
 * @param deckPicture mast and feet from above
 * @param deckNote what the deck's picture does not know
 * @param ruler the speeds along one line
 * @param sidePicture the craft at the sheet's speed
 * @param speeds the speeds in figures, then the state at the sheet's speed
 * @param feel what to feel for
 * @param cause what to do, and why
 * @param parts the setup
 * @param cautions what comes before any number
 * @param cautionsLeft whether they stand in the left column of words
 * @param code the case to read with a telephone, where it is short enough
 * @param codeNote what the code is, or why there is none
 * @param foot model and case, and what the sheet is not
 * @param drawn whether the pictures are there; else their places are empty, to see what fits
 */
public record SheetPage(
    Head head,
    List<Setting> settings,
    PrintedPicture shimPicture,
    List<String> shimWords,
    String shimNote,
    PrintedPicture deckPicture,
    String deckNote,
    PrintedPicture ruler,
    PrintedPicture sidePicture,
    List<Row> speeds,
    List<String> feel,
    Cause cause,
    List<Row> parts,
    List<String> cautions,
    boolean cautionsLeft,
    Optional<CodePicture> code,
    String codeNote,
    String foot,
    boolean drawn) {
  /** Copies the lists. */
  public SheetPage {
    settings = List.copyOf(settings);
    shimWords = List.copyOf(shimWords);
    speeds = List.copyOf(speeds);
    feel = List.copyOf(feel);
    parts = List.copyOf(parts);
    cautions = List.copyOf(cautions);
  }

  /**
   * The top of the sheet.
   *
   * @param title the case's name
   * @param rider whose sheet; blank for a line to write on
   * @param date of the print
   * @param speed that the sheet is for, with its unit
   * @param facts rider, water and wind in one line
   */
  public record Head(String title, String rider, String date, String speed, String facts) {}

  /**
   * A setting in large figures.
   *
   * @param name what is set
   * @param figure the number
   * @param unit of the number; may be empty
   * @param place where it is measured from, or which way round
   * @param hue {@code front}, {@code back}, {@code action} or {@code ink}
   */
  public record Setting(String name, String figure, String unit, String place, String hue) {}

  /**
   * A name and what belongs to it.
   *
   * @param name left
   * @param value right
   * @param leads whether it is the row to read first
   */
  public record Row(String name, String value, boolean leads) {}

  /**
   * Why it rides so.
   *
   * @param headline what to do first
   * @param sentences the explanation
   * @param ruleOut plain faults to look for first, in order
   */
  public record Cause(String headline, List<String> sentences, List<String> ruleOut) {
    /** Copies the lists. */
    public Cause {
      sentences = List.copyOf(sentences);
      ruleOut = List.copyOf(ruleOut);
    }
  }
}
