package trimwright.reference;

import java.util.List;
import java.util.Locale;

/** The page of sources, written from the tables. */
final class ReferencesPage {
  private ReferencesPage() {}

  /** The page as Markdown. */
  static String markdown(List<Source> sources, List<NotInHand> notInHand) {
    StringBuilder page = new StringBuilder();
    page.append(
        """
        # References

        One numbered list for the whole program. How a source came here: *read*, seen in a copy or a page that gives
        the figures; *second hand*, its figures seen quoted by others; *memory*, recalled and not seen; *evaluated*, worked
        out for these tables by other means than the shipped code. Javadoc names the source beside each formula; the
        figures held against the program stand in [validation.md](validation.md).

        This page is written from the tables in the module `reference`; a test fails when it is out of date.

        """);
    page.append("| no. | source | what it gives | how it came here | used by |\n");
    page.append("| --- | --- | --- | --- | --- |\n");
    for (Source s : sources) {
      page.append(
          String.format(
              Locale.ROOT,
              "| %d | %s | %s | %s | %s |%n",
              s.number(),
              s.citation(),
              s.gives(),
              s.seen(),
              s.usedBy()));
    }
    page.append(
        """

        ## Not in hand

        Sources that would serve and could not be obtained. Nothing is recalled from them as met.

        """);
    page.append("| source | what it would give | where it was looked for |\n| --- | --- | --- |\n");
    for (NotInHand n : notInHand) {
      page.append(
          String.format(
              Locale.ROOT, "| %s | %s | %s |%n", n.source(), n.wouldGive(), n.whereLooked()));
    }
    return page.toString();
  }
}
