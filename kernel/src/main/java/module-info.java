/**
 * The computation: water, sections, lifting surfaces, the rest of the craft, trim, the cause of a
 * trim, and the band about it.
 *
 * <p>SI units and radians throughout. Nothing here reads a file, a clock or the network, logs, or
 * knows of a framework. Axes and signs are stated once, in {@link trimwright.kernel.frame}.
 */
@SuppressWarnings("module") // The module that checks it is built later.
module trimwright.kernel {
  requires ojalgo;
  requires hipparchus.core;
  requires hipparchus.ode;

  exports trimwright.kernel.frame;
  exports trimwright.kernel.limit;
  exports trimwright.kernel.water;
  exports trimwright.kernel.layer;
  exports trimwright.kernel.section;
  exports trimwright.kernel.surface;
  exports trimwright.kernel.propel;
  exports trimwright.kernel.rig;
  exports trimwright.kernel.trim;
  exports trimwright.kernel.turn;
  exports trimwright.kernel.envelope;
  exports trimwright.kernel.quick;
  exports trimwright.kernel.cause;
  exports trimwright.kernel.range;
  exports trimwright.kernel.hull;
  exports trimwright.kernel.motion;
  exports trimwright.kernel.fall;
  exports trimwright.kernel.play;
  exports trimwright.kernel.band;
  exports trimwright.kernel.wedge;
  exports trimwright.kernel.numeric to
      trimwright.reference;
}
