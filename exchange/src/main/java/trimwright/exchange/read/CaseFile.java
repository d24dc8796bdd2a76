package trimwright.exchange.read;

import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.rig.RideCase;

/**
 * A case file that was accepted.
 *
 * @param name what people call the case; "unnamed case" where the file has no name
 * @param digest SHA-256 of the canonical form in lower-case hexadecimal: the same for every order
 *     of keys, every comment and every way of writing a number
 * @param rideCase what the computation reads
 * @param notes the rest
 * @param text the original text
 */
public record CaseFile(
    String name, String digest, RideCase rideCase, CaseNotes notes, String text) {
  /**
   * The same case held against other limits. Its digest stays: it is that of the case.
   *
   * @param limits what the ride is held against
   */
  public CaseFile within(RideLimits limits) {
    return new CaseFile(name, digest, rideCase.within(limits), notes, text);
  }
}
