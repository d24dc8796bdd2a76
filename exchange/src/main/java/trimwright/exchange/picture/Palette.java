package trimwright.exchange.picture;

/**
 * The colours of a picture, each a value that SVG takes as paint.
 *
 * @param ground behind everything
 * @param surface of a card, and of a picture
 * @param ink text and outlines
 * @param muted units and remarks
 * @param edge lines that part things
 * @param action thrust, and what can be moved
 * @param onAction text on action
 * @param front front foot and front wing
 * @param back back foot and stabilizer
 * @param good inside limits
 * @param warn near a limit
 * @param bad outside
 * @param window tint of the rideable window
 */
public record Palette(
    String ground,
    String surface,
    String ink,
    String muted,
    String edge,
    String action,
    String onAction,
    String front,
    String back,
    String good,
    String warn,
    String bad,
    String window) {

  /** By day, indoors; printed sheets too. */
  public static final Palette LIGHT =
      new Palette(
          "#F4F1EA", "#FFFFFF", "#1C2420", "#55605A", "#747E78", "#7A3B12", "#FFFFFF", "#8A2E5B",
          "#1F5C7A", "#2F6B3A", "#8A5A00", "#A3231F", "#DCE8D2");

  /** By night. */
  public static final Palette DARK =
      new Palette(
          "#161A17", "#20261F", "#EEF0E8", "#B3BBB0", "#8A958B", "#F0A36B", "#161A17", "#EE9CC4",
          "#84C4E6", "#8FD19A", "#F2C14E", "#FF9A8F", "#2F4030");

  /** In sunlight: the strongest contrasts. */
  public static final Palette SUN =
      new Palette(
          "#FFFFFF", "#FFFFFF", "#000000", "#262626", "#3A3A3A", "#4A1E00", "#FFFFFF", "#5E0F3A",
          "#003A57", "#0B4417", "#573700", "#7A0000", "#DADADA");

  /**
   * Custom properties that a page sets: {@code --ground}, {@code --surface}, {@code --ink}, {@code
   * --muted}, {@code --edge}, {@code --action}, {@code --on-action}, {@code --front}, {@code
   * --back}, {@code --good}, {@code --warn}, {@code --bad}, {@code --window}.
   */
  public static final Palette VARIABLES =
      new Palette(
          "var(--ground)",
          "var(--surface)",
          "var(--ink)",
          "var(--muted)",
          "var(--edge)",
          "var(--action)",
          "var(--on-action)",
          "var(--front)",
          "var(--back)",
          "var(--good)",
          "var(--warn)",
          "var(--bad)",
          "var(--window)");
}
