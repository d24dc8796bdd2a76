package trimwright.desk;

import java.util.OptionalDouble;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.Part;
import trimwright.exchange.read.PartNotes;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.trim.CaseSolver;

/** What a case can do before something gives way. */
public final class EnvelopeStudy {
  private EnvelopeStudy() {}

  /**
   * The envelope of a case, with the makers' ratings that its file gives.
   *
   * @param caseFile the case as it was read
   * @return its limits
   */
  public static Envelope of(CaseFile caseFile) {
    return Envelope.of(
        CaseSolver.of(caseFile.rideCase()),
        ratings(caseFile),
        caseFile.notes().home(),
        caseFile.notes().posture().body());
  }

  /** Makers' ratings of a case's parts. */
  static Envelope.Ratings ratings(CaseFile caseFile) {
    return new Envelope.Ratings(
        rating(caseFile, Part.MAST),
        rating(caseFile, Part.FRONT_WING),
        rating(caseFile, Part.STABILIZER));
  }

  private static OptionalDouble rating(CaseFile caseFile, Part part) {
    return caseFile
        .notes()
        .findPart(part)
        .map(PartNotes::ratedMoment)
        .orElse(OptionalDouble.empty());
  }
}
