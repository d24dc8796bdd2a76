package trimwright.exchange.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds places for labels: never outside the frame, never on one another, rather not on lines, and
 * as near as may be to what they belong to. Labels are placed in the order they are given, so the
 * most important comes first; one that fits nowhere is left out (the table behind the picture still
 * holds its number).
 */
final class LabelPlacer {
  /** Distances tried between text and place [px]. */
  private static final double[] RINGS = {5, 9, 14, 20, 28, 38, 50, 64, 80, 100, 124};

  private static final int DIRECTIONS = 24;

  /** A leader is drawn from this distance on; nearer, text and place are seen together [px]. */
  private static final double LEADER_FROM = 12;

  /** Cost of one pixel of a covered line, in pixels of distance. */
  private static final double COVERED = 4;

  /** Cost of a leader that crosses a line, in pixels of distance. */
  private static final double CROSSED = 7;

  /** Cost of giving up the fuller wording, in pixels of distance. */
  private static final double SHORTER = 40;

  /** Cost of standing at a right angle to the wanted side, in pixels of distance. */
  private static final double TURNED = 10;

  /** Room kept between two texts [px]. */
  private static final double APART = 2;

  private final Box frame;
  private final double fontSize;
  private final List<Stroke> lines = new ArrayList<>();
  private final List<Box> taken = new ArrayList<>();
  private final List<Stroke> leaders = new ArrayList<>();

  LabelPlacer(Box frame, double fontSize) {
    this.frame = frame;
    this.fontSize = fontSize;
  }

  /** Lines that labels had better not cover. */
  void avoid(List<Stroke> strokes) {
    lines.addAll(strokes);
  }

  /** A box that no label may touch. */
  void keepFree(Box box) {
    taken.add(box);
  }

  /**
   * Places one label.
   *
   * @param label what to place
   * @return where it stands, or nothing where there is no room
   */
  Optional<PlacedLabel> place(Label label) {
    PlacedLabel best = null;
    double least = Double.POSITIVE_INFINITY;
    for (int w = 0; w < label.wordings().size(); w++) {
      String wording = label.wordings().get(w);
      double width = width(wording, label.unit());
      for (double ring : RINGS) {
        if (!label.leader() && ring > LEADER_FROM) {
          break;
        }
        for (int d = 0; d < DIRECTIONS; d++) {
          double dx = Math.cos(2 * Math.PI * d / DIRECTIONS);
          double dy = Math.sin(2 * Math.PI * d / DIRECTIONS);
          Box box = box(label.place(), ring, dx, dy, width);
          double cost = ring + w * SHORTER + TURNED * label.rather().against(dx, dy);
          if (cost < least && isFree(box)) {
            cost += cost(box, label.place());
            if (cost < least) {
              least = cost;
              best = new PlacedLabel(label, wording, box);
            }
          }
        }
      }
    }
    if (best != null) {
      taken.add(best.box().grown(APART));
      findLeader(best).ifPresent(leaders::add);
    }
    return Optional.ofNullable(best);
  }

  /** The thin line from a placed label to what it belongs to, where they stand apart. */
  Optional<Stroke> findLeader(PlacedLabel placed) {
    Dot end = placed.box().nearest(placed.label().place());
    return end.distance(placed.label().place()) >= LEADER_FROM
        ? Optional.of(new Stroke(end, placed.label().place()))
        : Optional.empty();
  }

  double width(String wording, String unit) {
    return TextSize.width(unit.isEmpty() ? wording : wording + " " + unit, fontSize);
  }

  private Box box(Dot place, double ring, double dx, double dy, double width) {
    double height = TextSize.LINE * fontSize;
    // The box hangs outward from the ring, so that its nearest side stands about a ring away.
    double x = place.x() + dx * ring + (dx - 1) * width / 2;
    double y = place.y() + dy * ring + (dy - 1) * height / 2;
    return new Box(x, y, width, height);
  }

  private boolean isFree(Box box) {
    if (!frame.holds(box)) {
      return false;
    }
    for (Box other : taken) {
      if (box.overlaps(other)) {
        return false;
      }
    }
    for (Stroke leader : leaders) {
      if (leader.lengthInside(box) > 0) {
        return false;
      }
    }
    return true;
  }

  private double cost(Box box, Dot place) {
    double cost = 0;
    for (Stroke line : lines) {
      cost += COVERED * line.lengthInside(box);
    }
    Dot end = box.nearest(place);
    if (end.distance(place) >= LEADER_FROM) {
      Stroke leader = new Stroke(end, place);
      for (Stroke line : lines) {
        cost += leader.crosses(line) ? CROSSED : 0;
      }
      for (Box other : taken) {
        // A leader through another text would strike it out.
        cost += leader.lengthInside(other) > 0 ? 1000 : 0;
      }
    }
    return cost;
  }
}
