package trimwright.exchange.write;

import trimwright.exchange.read.CaseFile;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.ViscousSection;

/** What sections stand on, in a word of the documents. */
public final class SectionCode {
  /** Polars by boundary layers. */
  public static final String LAYERS = "layers";

  /** Lift, drag and limits fitted to measurements. */
  public static final String FITTED = "fitted";

  /** Flow without friction. */
  public static final String INVISCID = "inviscid";

  private SectionCode() {}

  /** What a section stands on. */
  public static String of(Section section) {
    return section instanceof ViscousSection ? LAYERS : FITTED;
  }

  /** What a case's wings stand on: all their sections on the same. */
  public static String of(CaseFile caseFile) {
    return of(caseFile.rideCase().setup().frontWing().shape().stations().get(0).section());
  }
}
