package trimwright.exchange.read;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.unit.Unit;

/**
 * One input of a case as a form shows it.
 *
 * @param path where it stands in a draft, such as {@code rider.mass_kg}; in a list a {@code *}
 *     stands for the place in it, counted from 0
 * @param group path of the group that it is shown in, such as {@code setup.front_wing}; empty at
 *     the top
 * @param groupLabel what people call that group, such as {@code Front wing}
 * @param groupOptional whether the whole group may be left out, as a battery may; a field of it
 *     that is not optional is needed only where another field of the group is given
 * @param label what people call the field below that heading, such as {@code Span}
 * @param name what people call it in a sentence, such as {@code front wing's span}
 * @param help a sentence or two on what it is and what counts when it is left out
 * @param unit the case file's own unit of a {@link Kind#NUMBER}; empty for everything else
 * @param minimum smallest number permitted, in that unit
 * @param maximum largest number permitted, in that unit
 * @param signs words that stand for the sign of a number that is never shown as a bare plus or
 *     minus; empty for most
 * @param fallback what counts when it is left out, as the case file writes it
 * @param kind what may be written
 * @param choices the words of a {@link Kind#CHOICE}, in the order to show
 * @param optional whether it may be left blank; what measured stations replace, such as the area of
 *     a wing, counts as needed
 */
public record CaseField(
    String path,
    String group,
    String groupLabel,
    boolean groupOptional,
    String label,
    String name,
    String help,
    Optional<Unit> unit,
    OptionalDouble minimum,
    OptionalDouble maximum,
    Optional<Signs> signs,
    Optional<String> fallback,
    Kind kind,
    List<Choice> choices,
    boolean optional) {
  /** Copies the list. */
  public CaseField {
    choices = List.copyOf(choices);
  }

  /** What may be written. */
  public enum Kind {
    /** A number. */
    NUMBER,
    /** Any text. */
    TEXT,
    /** One of a few words. */
    CHOICE
  }

  /**
   * One word of a choice.
   *
   * @param code as the case file writes it
   * @param label as people read it
   */
  public record Choice(String code, String label) {}

  /**
   * Words for the sign of a number.
   *
   * @param below what a number below 0 means, such as {@code leading edge down}
   * @param above what a number above 0 means, such as {@code leading edge up}
   */
  public record Signs(String below, String above) {}

  /** Whether it stands in a list, once per entry. */
  public boolean repeated() {
    return path.contains("*");
  }
}
