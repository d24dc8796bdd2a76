package trimwright.exchange.write;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** The JSON Schema (draft 2020-12) of each document that this package writes. */
public enum OutputSchema {
  /** Of {@link CurveWriter}. */
  CURVE,
  /** Of {@link CauseWriter}. */
  CAUSE,
  /** Of {@link BenchWriter}. */
  BENCH,
  /** Of {@link BenchBandsWriter}. */
  BENCH_BANDS,
  /** Of {@link BenchEnvelopeWriter}. */
  BENCH_ENVELOPE,
  /** Of {@link BenchMotionWriter}. */
  BENCH_MOTION,
  /** Of {@link SheetWriter}. */
  SHEET,
  /** Of {@link ShimWriter}. */
  SHIM,
  /** Of {@link EnvelopeWriter}. */
  ENVELOPE,
  /** Of {@link ChangeWriter}. */
  CHANGE,
  /** Of {@link MotionWriter}. */
  MOTION,
  /** Of {@link FallWriter}. */
  FALLS,
  /** Of {@link MatchWriter}. */
  MATCH,
  /** Of {@link FleetWriter}. */
  FLEET,
  /** Of {@link BudgetWriter}. */
  BUDGET,
  /** Of {@link LimitsWriter}. */
  LIMITS,
  /** Of {@link WaterWriter}. */
  WATER,
  /** Of {@link SectionWriter}. */
  SECTION,
  /** Of {@link WingWriter}. */
  WING;

  /** The name of its file. */
  public String fileName() {
    return name().toLowerCase(Locale.ROOT) + ".schema.json";
  }

  /**
   * The schema itself.
   *
   * @return JSON text
   * @throws IllegalStateException if the program was packed without it
   */
  public String text() {
    String path = "/trimwright/exchange/output/" + fileName();
    try (InputStream in = OutputSchema.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("the schema " + fileName() + " is missing");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
