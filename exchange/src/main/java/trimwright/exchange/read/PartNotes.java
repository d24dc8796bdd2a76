package trimwright.exchange.read;

import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.kernel.band.KnownBy;
import trimwright.kernel.section.Finish;

/**
 * What a case file says about a part beside its geometry and mass.
 *
 * @param knownBy how its geometry is known, where the file says so
 * @param finish state of its surface
 * @param ratedMoment the maker's rating for the bending moment at its root [N·m], where given
 */
public record PartNotes(Optional<KnownBy> knownBy, Finish finish, OptionalDouble ratedMoment) {}
