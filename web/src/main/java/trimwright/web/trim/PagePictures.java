package trimwright.web.trim;

import java.util.function.Function;
import trimwright.exchange.picture.CurvePicture;
import trimwright.exchange.picture.PictureStyle;
import trimwright.exchange.picture.SideView;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.TrimPoint;

/**
 * The pictures of the page in the sizes at which it shows them, and in the one in which they are
 * saved.
 */
final class PagePictures {
  // Widths are what the style sheet's columns leave inside their frames on screens of 390, 820 and
  // 1280 px.
  private static final int PHONE_WIDTH = 356;
  private static final int TABLET_WIDTH = 770;
  private static final int TABLET_COLUMN = 452;
  private static final int DESK_COLUMN = 582;

  private static final PictureStyle SAVED_SIDE_VIEW = PictureStyle.light(1000, 480);
  private static final PictureStyle SAVED_CURVES = PictureStyle.light(1000, 800);

  private PagePictures() {}

  static Answer.Picture sideView(CaseFile caseFile, TrimPoint point) {
    return drawn(
        style -> SideView.svg(caseFile, point, style),
        PictureStyle.page(PHONE_WIDTH, 220),
        PictureStyle.page(TABLET_WIDTH, 300),
        PictureStyle.page(DESK_COLUMN, 300));
  }

  static Answer.Picture curves(CaseFile caseFile, Curve curve, double speed) {
    return drawn(
        style -> CurvePicture.sheet(caseFile, curve, speed, style),
        PictureStyle.page(PHONE_WIDTH, 560),
        PictureStyle.page(TABLET_COLUMN, 560),
        PictureStyle.page(DESK_COLUMN, 440));
  }

  static String savedSideView(CaseFile caseFile, TrimPoint point) {
    return SideView.svg(caseFile, point, SAVED_SIDE_VIEW);
  }

  static String savedCurves(CaseFile caseFile, Curve curve, double speed) {
    return CurvePicture.sheet(caseFile, curve, speed, SAVED_CURVES);
  }

  private static Answer.Picture drawn(
      Function<PictureStyle, String> draw,
      PictureStyle phone,
      PictureStyle tablet,
      PictureStyle desk) {
    return new Answer.Picture(draw.apply(phone), draw.apply(tablet), draw.apply(desk));
  }
}
