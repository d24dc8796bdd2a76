package trimwright.exchange.picture;

import java.util.List;

/**
 * A text that belongs to a place in a picture.
 *
 * @param wordings what to say, the fullest first; a shorter one is taken where that does not fit
 * @param unit follows in muted ink; may be empty
 * @param place what it belongs to
 * @param colour paint of the text
 * @param leader whether a thin line may join text and place
 */
record Label(List<String> wordings, String unit, Dot place, String colour, boolean leader) {
  static Label of(String wording, Dot place, String colour) {
    return new Label(List.of(wording), "", place, colour, true);
  }
}
