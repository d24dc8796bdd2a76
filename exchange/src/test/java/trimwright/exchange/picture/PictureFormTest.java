package trimwright.exchange.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.Samples;
import trimwright.kernel.surface.WingShape;

class PictureFormTest {
  private static final WingShape WING = Samples.caseFile().rideCase().setup().frontWing().shape();

  private static List<String> pictures(PictureStyle style) {
    List<String> all = new ArrayList<>();
    all.add(SideView.svg(Samples.caseFile(), Samples.pointAt(20), Measures.METRIC, style));
    all.add(
        CurvePicture.sheet(
            Samples.caseFile(), Samples.bands(Samples.curve()), 5, Measures.METRIC, style));
    for (CurveQuantity quantity : CurveQuantity.values()) {
      all.add(
          CurvePicture.svg(
              Samples.caseFile(),
              Samples.bands(Samples.curve()),
              quantity,
              5,
              Measures.METRIC,
              style));
    }
    all.add(PlanformPicture.svg("wing <1>", WING, PlanformPicture.Role.FRONT, style));
    return all;
  }

  @Test
  void everyPictureIsWellFormedAndNamesItself() {
    for (String svg : pictures(PictureStyle.light(820, 300))) {
      Drawn drawn = Drawn.of(svg);
      assertThat(drawn.root().getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
      assertThat(drawn.root().getAttribute("role")).isEqualTo("img");
      Node first = drawn.root().getElementsByTagName("title").item(0);
      assertThat(first.getTextContent()).isNotBlank();
      assertThat(drawn.root().getElementsByTagName("desc").item(0).getTextContent()).isNotBlank();
    }
  }

  @Test
  void noPictureReachesOutOrCarriesIdsStylesOrScripts() {
    for (String svg : pictures(PictureStyle.page(820, 300))) {
      assertThat(svg.replace("http://www.w3.org/2000/svg", "")).doesNotContain("http", "url(");
      for (Element element : Drawn.of(svg).all()) {
        assertThat(element.getTagName()).isNotIn("style", "script", "image", "use", "a");
        for (String name : List.of("id", "style", "href", "onclick")) {
          assertThat(element.hasAttribute(name)).isFalse();
        }
      }
    }
  }

  @Test
  void onAPageAllColoursAreTheThemes() {
    for (String svg : pictures(PictureStyle.page(820, 300))) {
      assertThat(svg).contains("var(--").doesNotContain("\"#");
    }
    assertThat(
            SideView.svg(
                Samples.caseFile(),
                Samples.pointAt(20),
                Measures.METRIC,
                PictureStyle.page(820, 300)))
        .contains("var(--front)", "var(--back)", "var(--ink)", "var(--line)");
  }

  @Test
  void noTextIsTooSmallOnAPhoneOrInTheSun() {
    assertThat(PictureStyle.light(390, 220).fontSize()).isGreaterThanOrEqualTo(16);
    assertThat(PictureStyle.sun(1280, 300).fontSize()).isGreaterThanOrEqualTo(16);
    assertThat(PictureStyle.page(390, 220).fontSize()).isGreaterThanOrEqualTo(16);
    assertThat(PictureStyle.light(1280, 300).fontSize()).isGreaterThanOrEqualTo(14);
  }

  @Test
  void planformIsTheWingsOwn() {
    Drawn drawn =
        Drawn.of(
            PlanformPicture.svg(
                "wing", WING, PlanformPicture.Role.BACK, PictureStyle.light(200, 100)));
    double scale = Drawn.number(drawn.root(), "data-pixels-per-metre");
    List<Dot> outline = drawn.points("planform");
    double left = outline.stream().mapToDouble(Dot::x).min().orElseThrow();
    double right = outline.stream().mapToDouble(Dot::x).max().orElseThrow();
    assertThat((right - left) / scale).isCloseTo(WING.span(), within(1e-4));
    assertThat(Math.abs(area(outline)) / scale / scale).isCloseTo(WING.area(), within(1e-4));
  }

  /** The shoelace formula. */
  private static double area(List<Dot> outline) {
    double twice = 0;
    for (int i = 0; i < outline.size(); i++) {
      Dot a = outline.get(i);
      Dot b = outline.get((i + 1) % outline.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return twice / 2;
  }

  @Test
  void tablesBehindThePicturesAreWellFormedToo() {
    Drawn curve =
        Drawn.of(PictureTable.curve(Samples.caseFile(), Samples.curve(), Measures.METRIC));
    assertThat(curve.root().getTagName()).isEqualTo("table");
    assertThat(curve.root().getElementsByTagName("tr").getLength()).isEqualTo(32);
    assertThat(curve.root().getElementsByTagName("caption").item(0).getTextContent())
        .contains("Sample <rider>");
    Drawn side =
        Drawn.of(PictureTable.sideView(Samples.caseFile(), Samples.pointAt(20), Measures.METRIC));
    assertThat(side.root().getTextContent()).contains("2.9° nose-up", "Front foot");
  }

  @Test
  void ticksAreRound() {
    assertThat(Ticks.between(0, 5300, 3)).containsExactly(0.0, 2000.0, 4000.0);
    assertThat(Ticks.roundAbove(2)).isEqualTo(2);
    assertThat(Ticks.roundAbove(2.1)).isEqualTo(5);
    assertThat(Ticks.roundAbove(0.7)).isEqualTo(1);
    assertThat(Ticks.roundBelow(0.7)).isEqualTo(0.5);
    assertThat(Ticks.decimals(0.5)).isEqualTo(1);
    assertThat(Ticks.decimals(20)).isZero();
  }
}
