package trimwright.exchange.write;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.read.Mounting;
import trimwright.exchange.words.WedgeFit;
import trimwright.kernel.wedge.ShimWedge;
import trimwright.kernel.wedge.SolidCheck;

/**
 * What the shim document holds.
 *
 * @param digest of what it was computed from
 * @param angle that the stabilizer's leading edge goes up by, negative for down [rad]
 * @param boltDiameter [m]
 * @param boltLength of the bolts that hold without a shim [m], if it was told
 * @param mountings sides of the fuselage to speak of
 * @param wedge its sizes
 * @param check of the body as it stands in the file
 * @param file that holds it, as it was named, if it was wanted
 */
public record ShimTable(
    String digest,
    double angle,
    double boltDiameter,
    OptionalDouble boltLength,
    List<Mounting> mountings,
    ShimWedge wedge,
    SolidCheck check,
    Optional<String> file) {

  /** Copies the list. */
  public ShimTable {
    Objects.requireNonNull(digest, "digest");
    mountings = List.copyOf(mountings);
  }

  /** How it goes in, for each mounting. */
  List<WedgeFit> fits() {
    return mountings.stream().map(mounting -> WedgeFit.of(angle, wedge, mounting)).toList();
  }

  /**
   * The same, with the name of the file that was written.
   *
   * @param name as it was named
   */
  public ShimTable withFile(String name) {
    return new ShimTable(
        digest, angle, boltDiameter, boltLength, mountings, wedge, check, Optional.of(name));
  }
}
