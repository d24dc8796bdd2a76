package trimwright.desk;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import trimwright.fitting.stock.Stock;
import trimwright.fitting.stock.StockPart;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.section.Section;

/**
 * A stock whose wings stand on polars by boundary layers, as every answer does. All its sections do
 * or none does, as in a {@link LayeredCase}.
 */
public final class LayeredStock {
  private LayeredStock() {}

  /**
   * The same stock on its sections' polars, which are built where there are none.
   *
   * @param stock the stock
   * @param polars where polars come from
   * @param progress told a section's name and how far its polars are, 0 to 1
   * @param remarks told a section's name and what its reader should know
   * @return the stock; as it was where layers cannot follow one of its sections, with a remark
   * @throws java.util.concurrent.CancellationException if the running thread was interrupted
   */
  public static Stock of(
      Stock stock,
      SectionPolars polars,
      BiConsumer<String, Double> progress,
      BiConsumer<String, String> remarks) {
    Set<Section> sections = new LinkedHashSet<>();
    Stream.concat(stock.frontWings().stream(), stock.stabilizers().stream())
        .flatMap(part -> part.piece().shape().stations().stream())
        .forEach(station -> sections.add(station.section()));
    Optional<Map<Section, Section>> built = LayeredCase.built(sections, polars, progress, remarks);
    return built
        .map(
            layered ->
                new Stock(
                    stock.boards(),
                    stock.batteries(),
                    stock.masts(),
                    stock.drives(),
                    stock.fuselages(),
                    wings(stock.frontWings(), layered),
                    wings(stock.stabilizers(), layered),
                    stock.shims()))
        .orElse(stock);
  }

  private static List<StockPart<FittedWing>> wings(
      List<StockPart<FittedWing>> parts, Map<Section, Section> layered) {
    return parts.stream()
        .map(
            part ->
                new StockPart<>(
                    part.id(),
                    LayeredCase.wing(part.piece(), layered::get),
                    part.mounts(),
                    part.holding()))
        .toList();
  }
}
