package trimwright.fitting.judge;

import trimwright.kernel.quick.PairTable;
import trimwright.kernel.rig.Craft;

/** Where the table of a front wing with a stabilizer comes from: made anew, or kept by someone. */
@FunctionalInterface
public interface PairTables {
  /** Makes every table anew. */
  PairTables ANEW = PairTable::of;

  /**
   * The table of a craft's wings.
   *
   * @param craft the craft; its shim does not count
   * @return what {@link PairTable#of} gives for it
   */
  PairTable of(Craft craft);
}
