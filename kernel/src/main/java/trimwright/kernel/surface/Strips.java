package trimwright.kernel.surface;

import java.util.List;
import trimwright.kernel.section.Section;

/**
 * The starboard half of one placed wing cut into strips, in foil axes: what does not depend on
 * pitch. Strips narrow towards the tip: edges at sin(pi k / 2n) of the half span, strip centres
 * half way between in that angle, which makes the induced drag of an elliptical loading exact at
 * every count.
 */
final class Strips {
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
      edgeChord[k] = p.chord;
    }
    for (int k = 0; k < count; k++) {
      double e = fraction(k + 0.5, wing.size());
      Place p = Place.at(wing.shape().stations(), e);
      centreY[k] = half * e;
      width[k] = edgeY[k + 1] - edgeY[k];
      chord[k] = p.chord;
      incidence[k] = wing.incidence() + p.twist;
      ahead[k] = wing.ahead() + p.ahead;
      above[k] = wing.above() + p.above;
      section[k] = p.inner.section();
      outerSection[k] = p.outer.section();
      blend[k] = p.share;
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
