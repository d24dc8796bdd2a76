package trimwright.kernel.surface;

import java.util.List;
import java.util.stream.DoubleStream;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.section.Section;

/**
 * The starboard half of one placed wing cut into strips, in foil axes: what does not depend on
 * pitch. Strips narrow towards the tip: edges at sin(pi k / 2n) of the half span, strip centres
 * half way between in that angle, which makes the induced drag of an elliptical loading exact at
 * every count.
 */
final class Strips {
  /**
   * Least chord of the last edge over the last strip's centre: an outline may run out in a point.
   */
  private static final double LEAST_TIP = 0.1;

  /**
   * How fast the chord may fall along the span [1]. A round or square tip falls without bound in
   * its last millimetre; panels that follow it there are so aslant that their control points meet
   * their neighbours' vortices. At 10 the outline is changed within a thousandth of the half span.
   */
  private static final double STEEPEST = 10;

  final int count;
  final int along;

  /** Distance from the plane of symmetry of edges and strip centres [m]. */
  final double[] edgeY;

  final double[] centreY;

  /** Width of each strip [m]. */
  final double[] width;

  /** Chord at strip centres [m]. */
  final double[] chord;

  /** Chord line against the fuselage at edges and centres, leading edge up positive [rad]. */
  private final double[] edgeIncidence;

  final double[] incidence;

  /** Quarter chord ahead of and above the datum, at edges and centres [m]. */
  private final double[] edgeAhead;

  private final double[] edgeAbove;
  private final double[] edgeChord;
  final double[] ahead;
  final double[] above;

  /** Section at each strip. */
  final Section[] section;

  /** Share in the outer of the two sections that a strip lies between, and that outer section. */
  final double[] blend;

  final Section[] outerSection;

  Strips(PlacedWing wing) {
    count = wing.size().stripsPerHalf();
    along = wing.size().panelsAlongChord();
    edgeY = new double[count + 1];
    edgeIncidence = new double[count + 1];
    edgeAhead = new double[count + 1];
    edgeAbove = new double[count + 1];
    edgeChord = new double[count + 1];
    centreY = new double[count];
    width = new double[count];
    chord = new double[count];
    incidence = new double[count];
    ahead = new double[count];
    above = new double[count];
    section = new Section[count];
    outerSection = new Section[count];
    blend = new double[count];
    double half = 0.5 * wing.shape().span();
    for (int k = 0; k <= count; k++) {
      double e = k == count ? 1 : fraction(k, wing.size());
      Place p = Place.at(wing.shape().stations(), e);
      edgeY[k] = half * e;
      edgeIncidence[k] = wing.incidence() + p.twist;
      edgeAhead[k] = wing.ahead() + p.ahead;
      edgeAbove[k] = wing.above() + p.above;
      edgeChord[k] = k == 0 ? p.chord : Math.max(p.chord, steepest(k));
    }
    for (int k = 0; k < count; k++) {
      double e = fraction(k + 0.5, wing.size());
      Place p = Place.at(wing.shape().stations(), e);
      centreY[k] = half * e;
      width[k] = edgeY[k + 1] - edgeY[k];
      section[k] = p.inner.section();
      outerSection[k] = p.outer.section();
      blend[k] = p.share;
      if (k == count - 1) {
        squareTip(wing, p);
      }
      // A strip is what lies between its edges: straight from one to the other, its centre too.
      // With the centre taken from a curved outline the control points of a short strip come to lie
      // on the next panel's vortex.
      chord[k] = between(edgeChord, k);
      incidence[k] = between(edgeIncidence, k);
      ahead[k] = between(edgeAhead, k);
      above[k] = between(edgeAbove, k);
    }
  }

  /**
   * The last edge stands where a straight line from the edge before through the outline's true
   * place at the last strip's centre arrives. An outline that is blunt to the tip, or runs out in a
   * point, would else end in a strip whose edges differ manifold in chord.
   */
  private void squareTip(PlacedWing wing, Place centre) {
    double t = (centreY[count - 1] - edgeY[count - 1]) / width[count - 1];
    double chord = through(edgeChord[count - 1], centre.chord, t);
    edgeChord[count] = Math.max(Math.max(LEAST_TIP * centre.chord, chord), steepest(count));
    edgeIncidence[count] = through(edgeIncidence[count - 1], wing.incidence() + centre.twist, t);
    edgeAhead[count] = through(edgeAhead[count - 1], wing.ahead() + centre.ahead, t);
    edgeAbove[count] = through(edgeAbove[count - 1], wing.above() + centre.above, t);
  }

  /** The chord that the edge before, falling as fast as a lattice can follow, leaves at an edge. */
  private double steepest(int k) {
    return edgeChord[k - 1] - STEEPEST * (edgeY[k] - edgeY[k - 1]);
  }

  private static double through(double inner, double centre, double t) {
    return inner + (centre - inner) / t;
  }

  private double between(double[] edge, int k) {
    double t = (centreY[k] - edgeY[k]) / width[k];
    return edge[k] + t * (edge[k + 1] - edge[k]);
  }

  /**
   * Appends every number from which a lattice of these strips works out its flow. All else here
   * follows from these.
   */
  void write(DoubleStream.Builder out) {
    out.add(count).add(along);
    for (int k = 0; k <= count; k++) {
      out.add(edgeY[k]).add(edgeIncidence[k]).add(edgeAhead[k]).add(edgeAbove[k]).add(edgeChord[k]);
    }
    for (int k = 0; k < count; k++) {
      out.add(centreY[k]).add(zeroLiftAngle(k)).add(liftSlope(k)).add(momentAtZeroLift(k));
    }
  }

  private static double fraction(double k, LatticeSize size) {
    double share = k / size.stripsPerHalf();
    return size.even() ? share : Math.sin(0.5 * Math.PI * share);
  }

  double zeroLiftAngle(int k) {
    return mix(k, section[k].zeroLiftAngle(), outerSection[k].zeroLiftAngle());
  }

  double liftSlope(int k) {
    return mix(k, section[k].liftSlope(), outerSection[k].liftSlope());
  }

  double momentAtZeroLift(int k) {
    return mix(k, section[k].momentAtZeroLift(), outerSection[k].momentAtZeroLift());
  }

  /** Area of a strip, both halves [m²]. */
  double area(int k) {
    return 2 * chord[k] * width[k];
  }

  /** How far above the datum a strip's quarter chord lies, water axes [m]. */
  double above(int k, Attitude at) {
    return ahead[k] * at.sin() + above[k] * at.cos();
  }

  /** How far ahead of it [m]. */
  double ahead(int k, Attitude at) {
    return ahead[k] * at.cos() - above[k] * at.sin();
  }

  double mix(int k, double inner, double outer) {
    return inner + blend[k] * (outer - inner);
  }

  /**
   * How far ahead of the datum a point of edge k's chord line lies, a share of the chord behind its
   * nose [m].
   */
  double edgeAhead(int k, double share) {
    return edgeAhead[k] + (0.25 - share) * edgeChord[k] * Math.cos(edgeIncidence[k]);
  }

  /** The same point's height above the datum [m]. */
  double edgeAbove(int k, double share) {
    return edgeAbove[k] + (0.25 - share) * edgeChord[k] * Math.sin(edgeIncidence[k]);
  }

  /** The same of the chord line at a strip's centre. */
  double centreAhead(int k, double share) {
    return ahead[k] + (0.25 - share) * chord[k] * Math.cos(incidence[k]);
  }

  double centreAbove(int k, double share) {
    return above[k] + (0.25 - share) * chord[k] * Math.sin(incidence[k]);
  }

  /** Values between two stations. */
  private record Place(
      double chord,
      double ahead,
      double above,
      double twist,
      Station inner,
      Station outer,
      double share) {
    static Place at(List<Station> stations, double e) {
      int i = 1;
      while (i < stations.size() - 1 && stations.get(i).fraction() < e) {
        i++;
      }
      Station a = stations.get(i - 1);
      Station b = stations.get(i);
      double t = (e - a.fraction()) / (b.fraction() - a.fraction());
      return new Place(
          a.chord() + t * (b.chord() - a.chord()),
          a.ahead() + t * (b.ahead() - a.ahead()),
          a.above() + t * (b.above() - a.above()),
          a.twist() + t * (b.twist() - a.twist()),
          a,
          b,
          t);
    }
  }
}
