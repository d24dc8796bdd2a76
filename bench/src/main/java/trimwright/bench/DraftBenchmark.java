package trimwright.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseCode;
import trimwright.exchange.read.CaseDraft;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.DraftReading;
import trimwright.exchange.read.Reading;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Measures;

/** From the texts of a form to a case, as on every move of a slider. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class DraftBenchmark {
  private String text;
  private CaseFile caseFile;
  private Map<String, String> fields;
  private int move;

  @Setup
  public void read() {
    text = DemoCases.find("heavy-beginner").orElseThrow().text();
    caseFile = CaseReader.read(text, SectionFiles.NONE).findValue().orElseThrow();
    fields = new LinkedHashMap<>(CaseDraft.fields(caseFile));
  }

  private DraftReading moved(String path, double from, double step) {
    move = (move + 1) % 100;
    fields.put(path, Double.toString(from + move * step));
    return CaseDraft.of(fields).read(Measures.METRIC, SectionFiles.NONE);
  }

  /** The rider's mass moves: nothing of the wings changes. */
  @Benchmark
  public DraftReading mass() {
    return moved("rider.mass_kg", 60, 0.25);
  }

  /** The front wing's area moves: its planform is found anew. */
  @Benchmark
  public DraftReading area() {
    return moved("setup.front_wing.area_cm2", 1800, 1.37);
  }

  /** A text that is refused, with its message. */
  @Benchmark
  public DraftReading refused() {
    return moved("rider.mass_kg", 400, 0.25);
  }

  /** The same case as a file. */
  @Benchmark
  public Reading<CaseFile> file() {
    return CaseReader.read(text, SectionFiles.NONE);
  }

  /** The text of the code on the sheet. */
  @Benchmark
  public CaseCode code() {
    return CaseCode.of(caseFile);
  }
}
