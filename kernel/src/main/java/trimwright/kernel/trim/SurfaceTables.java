package trimwright.kernel.trim;

import trimwright.kernel.rig.Craft;
import trimwright.kernel.surface.SurfaceResponse;

/**
 * Where a solver gets the table of its lifting surfaces over pitch: made anew, or kept by someone.
 * The kernel keeps none; who keeps them goes by {@link Responses#key}.
 */
@FunctionalInterface
public interface SurfaceTables {
  /** Makes every table anew. */
  SurfaceTables ANEW = Responses::tabulated;

  /**
   * The table of a craft.
   *
   * @param craft the craft
   * @return what {@link Responses#tabulated} gives for it, bit for bit
   */
  SurfaceResponse of(Craft craft);
}
