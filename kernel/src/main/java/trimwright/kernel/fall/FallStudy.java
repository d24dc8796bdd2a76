package trimwright.kernel.fall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.motion.MotionTrim;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.SpeedInterval;

/**
 * Falls over the rideable speeds of a case, and the caps that bring it inside the limits of first
 * flights.
 *
 * @param speeds that were looked at, the rideable ones [m/s]; none where nothing is rideable
 * @param drive the remote's settings with which the points hold
 * @param points every posture at every speed: standing first, each from the slowest speed on
 * @param caps at most one per posture; none for a posture that no cap brings inside
 */
public record FallStudy(
    List<Double> speeds, FallDrive drive, List<FallPoint> points, List<FallCaps> caps) {
  /** Between the speeds [m/s]: 2 km/h, less for a narrow window. */
  private static final double SPACING = 2 / 3.6;

  private static final int FEWEST = 3;

  /** Copies the lists. */
  public FallStudy {
    speeds = List.copyOf(speeds);
    points = List.copyOf(points);
    caps = List.copyOf(caps);
  }

  /**
   * The falls of a case.
   *
   * @param falls of the case
   * @param drive the remote's settings
   * @param isStopped asked between the speeds
   * @return empty where it was stopped
   */
  public static Optional<FallStudy> find(
      FallSolver falls, FallDrive drive, BooleanSupplier isStopped) {
    CaseSolver solver = falls.model().solver();
    Optional<SpeedInterval> window = solver.curve(List.of()).rideableWindow();
    if (window.isEmpty()) {
      return Optional.of(new FallStudy(List.of(), drive, List.of(), List.of()));
    }
    RideLimits limits = solver.rideCase().limits();
    List<Double> speeds = speeds(window.get());
    List<FallPoint> points = new ArrayList<>();
    List<FallCaps> caps = new ArrayList<>();
    for (Posture posture : Posture.values()) {
      List<MotionTrim> trims = new ArrayList<>();
      for (double speed : speeds) {
        if (isStopped.getAsBoolean()) {
          return Optional.empty();
        }
        Optional<MotionTrim> trim = falls.findTrim(speed);
        if (trim.isPresent()) {
          trims.add(trim.get());
          points.add(falls.at(trim.get(), posture, drive));
        }
      }
      new CapSearch(falls, limits, posture, drive, trims).find(isStopped).ifPresent(caps::add);
      if (isStopped.getAsBoolean()) {
        return Optional.empty();
      }
    }
    return Optional.of(new FallStudy(speeds, drive, points, caps));
  }

  /**
   * The caps of one posture alone, without the falls of each speed.
   *
   * @param falls of the case
   * @param drive the remote's settings
   * @param posture of the rider
   * @param isStopped asked between the speeds
   * @return empty where no cap brings it inside, nothing is rideable, or it was stopped
   */
  public static Optional<FallCaps> findCaps(
      FallSolver falls, FallDrive drive, Posture posture, BooleanSupplier isStopped) {
    CaseSolver solver = falls.model().solver();
    Optional<SpeedInterval> window = solver.curve(List.of()).rideableWindow();
    if (window.isEmpty()) {
      return Optional.empty();
    }
    List<MotionTrim> trims = new ArrayList<>();
    for (double speed : speeds(window.get())) {
      if (isStopped.getAsBoolean()) {
        return Optional.empty();
      }
      falls.findTrim(speed).ifPresent(trims::add);
    }
    return new CapSearch(falls, solver.rideCase().limits(), posture, drive, trims).find(isStopped);
  }

  private static List<Double> speeds(SpeedInterval window) {
    double width = window.to() - window.from();
    int parts = Math.max(FEWEST - 1, (int) Math.ceil(width / SPACING));
    List<Double> speeds = new ArrayList<>();
    // The ends themselves may lie outside by rounding.
    for (int i = 0; i <= parts; i++) {
      double share = Math.max(1e-6, Math.min(1 - 1e-6, (double) i / parts));
      speeds.add(window.from() + share * width);
    }
    return speeds;
  }

  /** The points of one posture, from the slowest speed on. */
  public List<FallPoint> of(Posture posture) {
    return points.stream().filter(p -> p.posture() == posture).toList();
  }

  /** The caps of a posture; empty where none brings it inside. */
  public Optional<FallCaps> findCaps(Posture posture) {
    return caps.stream().filter(c -> c.posture() == posture).findFirst();
  }
}
