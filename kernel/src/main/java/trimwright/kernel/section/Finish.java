package trimwright.kernel.section;

/** State of a wing's surface. */
public enum Finish {
  /** As new: laminar flow as far as the shape and the Reynolds number let it go. */
  CLEAN,
  /** Scratched or dirty near the leading edge: turbulent from there on. */
  SCUFFED
}
