package trimwright.exchange.write;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.demo.DemoStock;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.ChangedCases;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.read.StockReader;
import trimwright.exchange.words.ChangeAnswer;
import trimwright.fitting.change.ChangeAdvice;
import trimwright.fitting.change.ChangeSearch;
import trimwright.fitting.change.ChangedRide;
import trimwright.fitting.change.OwnParts;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.judge.RideSpan;
import trimwright.fitting.wish.RidingKind;
import trimwright.fitting.wish.Wishes;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.fall.FallDrive;
import trimwright.kernel.surface.ResponseKey;
import trimwright.kernel.surface.SurfaceResponse;
import trimwright.kernel.trim.Responses;
import trimwright.kernel.trim.SurfaceTables;

/** Advice on changes, searched for on fitted sections. */
public final class ChangeSamples {
  /** Speeds at which the samples are judged: fewer than usual, for quick tests. */
  private static final int SPEEDS = 4;

  private ChangeSamples() {}

  /** A deck that points up, with the demo stock beside it. */
  public static ChangeAnswer noseUp() {
    return of(
        text("nose-up-mismatch"),
        Optional.of(
            StockReader.read(DemoStock.text(), SectionFiles.NONE).findValue().orElseThrow()),
        Optional.empty());
  }

  /** Feet that have gone back, a shim that presses them there: two changes are needed. */
  public static ChangeAnswer shimmed() {
    return of(shimmedText(), Optional.empty(), Optional.empty());
  }

  static String shimmedText() {
    return text("nose-up-mismatch").replace("shim: {angle_deg: 0.5}", "shim: {angle_deg: 2.5}");
  }

  /** A demo case. */
  public static String text(String demo) {
    return DemoCases.find(demo).orElseThrow().text();
  }

  /** Advice on a case's text. */
  public static ChangeAnswer of(String text, Optional<StockFile> stock, Optional<FallDrive> falls) {
    CaseFile base = CaseReader.read(text, SectionFiles.NONE).findValue().orElseThrow();
    ChangedCases cases = ChangedCases.of(base, SectionFiles.NONE, stock);
    OwnParts parts = stock.map(s -> cases.parts(s.stock())).orElse(OwnParts.NONE);
    RidingKind kind = RidingKind.valueOf(base.notes().skill().name());
    double wished = base.rideCase().rider().wishedSpeed();
    RideSpan about = RideSpan.about(wished);
    RideAsked asked =
        new RideAsked(
            base.rideCase(),
            new RideSpan(about.from(), about.to(), SPEEDS),
            Wishes.of(kind),
            RideAsked.USUAL_REACH,
            base.notes().posture().body(),
            falls);
    ChangedRide confirmed =
        changes ->
            cases
                .caseFile(changes)
                .findValue()
                .map(file -> new ChangedRide.Rated(file.rideCase(), Envelope.Ratings.NONE));
    ChangeAdvice advice =
        new ChangeSearch(asked, parts, confirmed, kept(), step -> {}, () -> false).find();
    return new ChangeAnswer(base, stock, kind, advice, cases);
  }

  private static SurfaceTables kept() {
    Map<ResponseKey, SurfaceResponse> tables = new HashMap<>();
    return craft -> tables.computeIfAbsent(Responses.key(craft), key -> Responses.tabulated(craft));
  }
}
