package trimwright.exchange.words;

import trimwright.kernel.band.Input;

/** What people call the inputs of a computation, and how each is measured best. */
public final class InputWords {
  private InputWords() {}

  /**
   * An input's name in the middle of a sentence.
   *
   * @param input the input
   * @return such as {@code the stabilizer's angle}
   */
  public static String of(Input input) {
    return switch (input) {
      case WATER_TEMPERATURE -> "the water's temperature";
      case WIND -> "the wind";
      case RIDER_MASS -> "the rider's weight";
      case KIT_MASS -> "the weight of suit and vest";
      case AIR_DRAG -> "the rider's drag in the air";
      case FRONT_FOOT -> "where the front foot stands";
      case BACK_FOOT -> "where the back foot stands";
      case IMMERSION -> "how deep the front wing runs";
      case BOARD_MASS -> "the board's weight";
      case BOARD_MASS_CENTRE -> "the board's mass centre";
      case TRACK -> "the mast's place in its track";
      case BATTERY_MASS -> "the battery's weight";
      case BATTERY_MASS_CENTRE -> "the battery's mass centre";
      case MAST_LENGTH -> "the mast's length";
      case MAST_BASE_ANGLE -> "the angle between deck and fuselage";
      case MAST_RAKE -> "the angle between mast and fuselage";
      case MAST_CHORD -> "the mast's chord";
      case MAST_THICKNESS -> "the mast's thickness";
      case MAST_MASS -> "the mast's weight";
      case THRUST_HEIGHT -> "the height of the thrust line";
      case THRUST_ANGLE -> "the angle of the thrust line";
      case DRIVE_EFFICIENCY -> "the drive's efficiency";
      case DRIVE_MASS -> "the drive's weight";
      case FRONT_WING_PLACE -> "how far the front wing stands ahead of the mast";
      case STABILIZER_PLACE -> "how far the stabilizer stands behind the mast";
      case FUSELAGE_MASS -> "the fuselage's weight";
      case FRONT_WING_ZERO_LIFT -> "the method's zero-lift angle of the front wing's section";
      case STABILIZER_ZERO_LIFT -> "the method's zero-lift angle of the stabilizer's section";
      case FRONT_WING_LIFT_SLOPE -> "the method's lift slope of the front wing's section";
      case STABILIZER_LIFT_SLOPE -> "the method's lift slope of the stabilizer's section";
      case DOWNWASH -> "the method's downwash at the stabilizer";
      case SECTION_DRAG -> "the method's drag of the wings' sections";
      case SECTION_MOMENT -> "the method's moment of the wings' sections";
      case MAST_DRAG -> "the method's drag of the mast";
      case SPRAY_DRAG -> "the method's spray at the mast";
      case CORNER_DRAG -> "the method's drag where parts meet";
      case BODY_DRAG -> "the method's drag of fuselage and drive";
      case WAVES -> "the method's waves";
      case WAKE -> "the method's wake of the front wing";
      case LIFT_LIMIT -> "the method's lift limit of the wings' sections";
      case SHIM_ANGLE -> "the shim's angle";
      default -> ofWing(input);
    };
  }

  private static String ofWing(Input input) {
    return switch (input) {
      case FRONT_WING_SETTING -> "the front wing's angle";
      case FRONT_WING_HEIGHT -> "the front wing's height on the fuselage";
      case FRONT_WING_AREA -> "the front wing's area";
      case FRONT_WING_SPAN -> "the front wing's span";
      case FRONT_WING_CHORDS -> "the front wing's chords";
      case FRONT_WING_SWEEP -> "the front wing's sweep";
      case FRONT_WING_TIP_DROP -> "how far the front wing's tips hang";
      case FRONT_WING_TWIST -> "the front wing's twist";
      case FRONT_WING_THICKNESS -> "the front wing's thickness";
      case FRONT_WING_CAMBER -> "the front wing's camber";
      case FRONT_WING_MASS -> "the front wing's weight";
      case STABILIZER_SETTING -> "the stabilizer's angle";
      case STABILIZER_HEIGHT -> "the stabilizer's height on the fuselage";
      case STABILIZER_AREA -> "the stabilizer's area";
      case STABILIZER_SPAN -> "the stabilizer's span";
      case STABILIZER_CHORDS -> "the stabilizer's chords";
      case STABILIZER_SWEEP -> "the stabilizer's sweep";
      case STABILIZER_TIP_DROP -> "how far the stabilizer's tips hang";
      case STABILIZER_TWIST -> "the stabilizer's twist";
      case STABILIZER_THICKNESS -> "the stabilizer's thickness";
      case STABILIZER_CAMBER -> "the stabilizer's camber";
      case STABILIZER_MASS -> "the stabilizer's weight";
      default -> throw new IllegalStateException("no words for " + input);
    };
  }

  /** How it is measured best, behind "measure" and its name. */
  static String how(Input input) {
    return switch (input) {
      case BOARD_MASS_CENTRE, BATTERY_MASS_CENTRE -> "by balancing it on an edge";
      case BOARD_MASS,
          BATTERY_MASS,
          MAST_MASS,
          DRIVE_MASS,
          FUSELAGE_MASS,
          FRONT_WING_MASS,
          STABILIZER_MASS ->
          "on a scale";
      case FRONT_WING_CAMBER, STABILIZER_CAMBER -> "with a calliper off a straight edge";
      default -> "with a calliper";
    };
  }
}
