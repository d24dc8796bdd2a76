package trimwright.reference.topic;

import java.util.Map;
import trimwright.kernel.hull.Planing;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.section.SkinFriction;

/**
 * A planing hull in the paper's own units: pound, foot, slug and second go together as newton,
 * metre, kilogram and second do, and nothing in the formulas has a unit of its own.
 */
public final class PlaningChecks {
  private static final double METRES_PER_FOOT = 0.3048;

  /** Allowance for roughness on top of Schoenherr's line, as the paper has it [1]. */
  private static final double ROUGHNESS = 0.0004;

  private PlaningChecks() {}

  /** The evaluations of this topic by name. */
  public static Map<String, Computation> computations() {
    return Map.of(
        "planing speed coefficient", c -> new Hull(c).coefficient(),
        "planing lift coefficient", c -> new Hull(c).lift(),
        "planing lift coefficient of a flat bottom", c -> new Hull(c).flatLift(),
        "planing wetted length", c -> new Hull(c).wettedLength(trim(c)),
        "planing trim in balance", c -> Math.toDegrees(new Balance(c).trim()),
        "planing frictional drag", c -> new Friction(c).drag(trim(c)));
  }

  private static double trim(Conditions c) {
    return Math.toRadians(c.number("trim_deg"));
  }

  /** Speed, width, load. */
  private static class Hull {
    final Conditions conditions;
    final double speed;
    final double beam;

    Hull(Conditions conditions) {
      this.conditions = conditions;
      speed = conditions.number("speed_ft_s");
      beam = conditions.number("beam_ft");
    }

    double coefficient() {
      return Planing.speedCoefficient(speed, beam, Craft.GRAVITY / METRES_PER_FOOT);
    }

    double pressure() {
      return 0.5 * conditions.number("density_slug_ft3") * speed * speed;
    }

    double lift() {
      return conditions.number("load_lb") / (pressure() * beam * beam);
    }

    double deadrise() {
      return Math.toRadians(conditions.number("deadrise_deg"));
    }

    double flatLift() {
      return Planing.flatLiftFor(lift(), deadrise());
    }

    double wettedLength(double trim) {
      return Planing.wettedLength(flatLift(), trim, coefficient());
    }
  }

  /** Friction on the mean wetted length at the mean speed under the bottom. */
  private static class Friction extends Hull {
    Friction(Conditions conditions) {
      super(conditions);
    }

    double drag(double trim) {
      double length = wettedLength(trim);
      double ratio = Planing.bottomSpeed(trim, length, deadrise());
      double reynolds = ratio * speed * length * beam / conditions.number("viscosity_ft2_s");
      double friction = SkinFriction.schoenherr(reynolds) + ROUGHNESS;
      return pressure() * ratio * ratio * length * beam * beam * friction / Math.cos(deadrise());
    }
  }

  /**
   * The trim at which the pressure on the bottom, its friction and the propeller's thrust leave no
   * moment about the centre of gravity.
   */
  private static final class Balance extends Friction {
    private static final double LEAST = Math.toRadians(1);
    private static final double MOST = Math.toRadians(8);
    private static final int HALVINGS = 40;

    Balance(Conditions conditions) {
      super(conditions);
    }

    double trim() {
      double low = LEAST;
      double high = MOST;
      // More trim shortens the wetted length, so that the pressure moves aft: bow up turns bow
      // down.
      for (int i = 0; i < HALVINGS; i++) {
        double middle = 0.5 * (low + high);
        if (bowUp(middle) > 0) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return 0.5 * (low + high);
    }

    private double bowUp(double trim) {
      double load = conditions.number("load_lb");
      double shaft = Math.toRadians(conditions.number("shaft_deg"));
      double shaftArm = conditions.number("shaft_arm_ft");
      double height = conditions.number("centre_height_ft");
      double ahead = conditions.number("centre_ahead_of_transom_ft");
      double length = wettedLength(trim);
      double drag = drag(trim);
      double frictionArm = height - 0.25 * beam * Math.tan(deadrise());
      double pressureArm = ahead - Planing.centreOfPressure(length, coefficient()) * length * beam;
      // Along the keel and square to it.
      double thrust = (load * Math.sin(trim) + drag) / Math.cos(shaft);
      double normal = load * Math.cos(trim) - thrust * Math.sin(shaft);
      return thrust * shaftArm - drag * frictionArm - normal * pressureArm;
    }
  }
}
