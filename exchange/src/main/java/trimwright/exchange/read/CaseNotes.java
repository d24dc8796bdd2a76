package trimwright.exchange.read;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.kernel.band.Knowledge;
import trimwright.kernel.band.KnownBy;
import trimwright.kernel.band.Origin;
import trimwright.kernel.range.WayHome;

/**
 * What a case file says that the trim does not read, but people and later steps do.
 *
 * @param skill how far the rider has come
 * @param posture how the rider holds the body
 * @param measuredPitch the deck's pitch as it was measured on the water, nose up positive [rad]
 * @param stabilizerMounting side of the fuselage on which the stabilizer is bolted
 * @param throttleRamp time in which the throttle goes from nothing to full or back [s]
 * @param parts notes of each part that the setup has
 * @param home the way home that the battery must reach for
 */
public record CaseNotes(
    Skill skill,
    Posture posture,
    OptionalDouble measuredPitch,
    Mounting stabilizerMounting,
    OptionalDouble throttleRamp,
    Map<Part, PartNotes> parts,
    Optional<WayHome> home) {
  /** Copies the map. */
  public CaseNotes {
    parts = Map.copyOf(parts);
  }

  /**
   * The notes of a part.
   *
   * @param part which one
   * @return its notes, where the setup has that part
   */
  public Optional<PartNotes> findPart(Part part) {
    return Optional.ofNullable(parts.get(part));
  }

  /** How each part is known, for the bands; from a sheet where the file says nothing. */
  public Knowledge knowledge() {
    Map<Origin, KnownBy> known = new EnumMap<>(Origin.class);
    parts.forEach(
        (part, notes) ->
            notes.knownBy().ifPresent(by -> known.put(Origin.valueOf(part.name()), by)));
    return new Knowledge(known);
  }
}
