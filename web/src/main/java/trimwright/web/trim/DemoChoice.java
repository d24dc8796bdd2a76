package trimwright.web.trim;

/**
 * A demo case that can be chosen.
 *
 * @param id its name in addresses
 * @param title name of the case
 * @param story what it is about
 * @param icons planforms of its wings as SVG markup
 * @param chosen whether the page shows it
 */
public record DemoChoice(String id, String title, String story, String icons, boolean chosen) {}
