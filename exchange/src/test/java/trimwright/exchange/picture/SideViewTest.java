package trimwright.exchange.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.Samples;
import trimwright.kernel.trim.TrimPoint;
import trimwright.seed.RunSeed;

class SideViewTest {
  /** Coordinates are written with two decimals; a length has two ends in two directions. */
  private static final double WRITTEN = 0.02;

  private final TrimPoint point = Samples.point(20, 2.9, 0.6);
  private final Drawn drawn =
      Drawn.of(
          SideView.svg(Samples.caseFile(), point, Measures.METRIC, PictureStyle.light(820, 300)));
  private final double scale = Drawn.number(drawn.root(), "data-pixels-per-metre");
  private final double perNewton = Drawn.number(drawn.root(), "data-pixels-per-newton");

  @Test
  void mastIsAsLongAsItIs() {
    List<Dot> mast = drawn.points("mast");
    Dot foot = middle(mast.get(0), mast.get(1));
    Dot head = middle(mast.get(2), mast.get(3));
    assertThat(foot.distance(head) / scale).isCloseTo(0.75, within(WRITTEN / scale));
    assertThat(mast.get(0).distance(mast.get(1)) / scale).isCloseTo(0.12, within(WRITTEN / scale));
  }

  @Test
  void boardStandsAtItsPitchWithTheBowToTheRight() {
    List<Dot> board = drawn.points("board");
    Dot tail = board.get(0);
    Dot bow = board.get(1);
    double pitch = Math.atan2(tail.y() - bow.y(), bow.x() - tail.x());
    assertThat(Math.toDegrees(pitch)).isCloseTo(2.9, within(0.02));
    assertThat(tail.distance(board.get(2)) / scale).isCloseTo(1.65, within(0.001));
  }

  @Test
  void wingsStandAsFarApartAsOnTheFuselageAndAsDeepAsTheyRun() {
    double y = Drawn.number(drawn.one("waterline"), "y1");
    Element lift = drawn.one("front-wing-lift");
    assertThat((Drawn.number(lift, "y1") - y) / scale).isCloseTo(0.45, within(WRITTEN / scale));
    Element back = drawn.one("stabilizer-lift");
    double apart =
        Math.hypot(
            Drawn.number(lift, "x1") - Drawn.number(back, "x1"),
            Drawn.number(lift, "y1") - Drawn.number(back, "y1"));
    assertThat(apart / scale).isCloseTo(0.15 + 0.56, within(WRITTEN / scale));
  }

  @Test
  void arrowsAreAsLongAsTheirForces() {
    assertThat(length("front-wing-lift")).isCloseTo(point.frontWingLift(), within(0.1));
    assertThat(length("front-foot-load")).isCloseTo(point.frontLeg() * 9.80665, within(0.1));
    assertThat(length("thrust")).isCloseTo(point.thrust(), within(0.1));
    assertThat(length("scale-force")).isEqualTo(0);
  }

  /** From an arrow's start to its point [N]; two decimals of a pixel are about 0.1 N. */
  private double length(String kind) {
    List<Element> heads = drawn.kind(kind + "-head");
    if (heads.isEmpty()) {
      return 0;
    }
    Dot head = drawn.points(kind + "-head").get(0);
    Element shaft = drawn.one(kind);
    Dot tail = new Dot(Drawn.number(shaft, "x1"), Drawn.number(shaft, "y1"));
    return tail.distance(head) / perNewton;
  }

  @Test
  void scaleBarsAreAsLongAsTheySay() {
    List<Dot> metres = drawn.points("scale-length");
    List<Dot> newtons = drawn.points("scale-force");
    assertThat(drawn.texts()).extracting(Drawn.Text::text).contains("500mm", "1000N");
    assertThat(metres.get(1).distance(metres.get(2)) / scale).isCloseTo(0.5, within(0.001));
    assertThat(newtons.get(1).distance(newtons.get(2)) / perNewton).isCloseTo(1000, within(0.2));
  }

  @Test
  void frontIsSolidAndBackIsDashed() {
    for (String front : List.of("front-foot-load", "front-wing-lift")) {
      assertThat(drawn.one(front).getAttribute("stroke")).isEqualTo(Palette.LIGHT.front());
      assertThat(drawn.one(front).hasAttribute("stroke-dasharray")).isFalse();
    }
    Element back = drawn.one("back-foot-load");
    assertThat(back.getAttribute("stroke")).isEqualTo(Palette.LIGHT.back());
    assertThat(back.hasAttribute("stroke-dasharray")).isTrue();
  }

  @Test
  void saysTheKilogramsUnderEachFoot() {
    assertThat(drawn.texts()).extracting(Drawn.Text::text).contains("53kg", "35kg");
    assertThat(drawn.texts()).extracting(Drawn.Text::text).anyMatch(t -> t.startsWith("2.9°"));
  }

  @Test
  void scaleAndWaterlineStayWhileTheTrimChanges() {
    for (double pitch = -5; pitch <= 5; pitch += 1) {
      Drawn other =
          Drawn.of(
              SideView.svg(
                  Samples.caseFile(),
                  Samples.point(22, pitch, 0.5 + pitch / 50),
                  Measures.METRIC,
                  PictureStyle.light(820, 300)));
      assertThat(Drawn.number(other.root(), "data-pixels-per-metre")).isEqualTo(scale);
      assertThat(Drawn.number(other.one("waterline"), "y1"))
          .isEqualTo(Drawn.number(drawn.one("waterline"), "y1"));
    }
  }

  @Test
  void aSpeedWithoutTrimShowsTheCraftAlone() {
    Drawn alone =
        Drawn.of(
            SideView.withoutTrim(Samples.caseFile(), Measures.METRIC, PictureStyle.dark(390, 220)));
    assertThat(alone.kind("mast")).hasSize(1);
    assertThat(alone.kind("front-foot")).hasSize(1);
    assertThat(alone.kind("front-wing-lift")).isEmpty();
  }

  @Property(tries = 300, seed = RunSeed.VALUE)
  void labelsNeverOverlapAndNeverLeaveThePicture(
      @ForAll @DoubleRange(min = 0.3, max = 1.1) double mast,
      @ForAll @DoubleRange(min = 0.55, max = 1.3) double fuselage,
      @ForAll @DoubleRange(min = -15, max = 15) double pitch,
      @ForAll @DoubleRange(min = -0.2, max = 1.2) double share,
      @ForAll boolean powered,
      @ForAll @IntRange(min = 0, max = 3) int size) {
    CaseFile caseFile = Samples.caseFile(mast, fuselage, powered, 0.5, OptionalDouble.empty());
    double[][] sizes = {{390, 220}, {820, 300}, {1280, 300}, {680, 300}};
    PictureStyle style = PictureStyle.page(sizes[size][0], sizes[size][1]);
    Drawn any =
        Drawn.of(SideView.svg(caseFile, Samples.point(20, pitch, share), Measures.METRIC, style));
    assertThat(any.overlap()).isEmpty();
    assertThat(any.outside()).isEmpty();
    assertThat(any.texts())
        .extracting(Drawn.Text::text)
        .filteredOn(t -> t.endsWith("kg"))
        .hasSize(2);
    assertThat(any.points("mast")).allMatch(d -> d.x() >= 0 && d.x() <= style.width());
  }

  private static Dot middle(Dot a, Dot b) {
    return new Dot((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
  }
}
