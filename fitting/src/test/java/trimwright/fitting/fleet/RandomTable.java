package trimwright.fitting.fleet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Small made-up tables: sets of one part of each of some kinds, marks that follow hidden fits of
 * rider and part, so that sets are alike in the way real ones are, with ties.
 */
final class RandomTable {
  private final Random random;
  private final int kinds;
  private final int[] ofKind;

  RandomTable(long seed, int mostKinds, int mostOfKind) {
    random = new Random(seed);
    kinds = 1 + random.nextInt(mostKinds);
    ofKind = new int[kinds];
    for (int kind = 0; kind < kinds; kind++) {
      ofKind[kind] = 1 + random.nextInt(mostOfKind);
    }
  }

  FitTable table(int mostRiders) {
    List<List<String>> hardware = hardware();
    List<RiderLine> riders = new ArrayList<>();
    int count = 1 + random.nextInt(mostRiders);
    double[][] marks = new double[count][hardware.size()];
    double strict = 0.3 + 1.2 * random.nextDouble();
    for (int rider = 0; rider < count; rider++) {
      riders.add(new RiderLine("rider-" + rider, 1 + random.nextInt(4)));
      Map<String, Double> off = new HashMap<>();
      for (int set = 0; set < hardware.size(); set++) {
        double sum = 0;
        for (String part : hardware.get(set)) {
          sum += off.computeIfAbsent(part, absent -> random.nextDouble());
        }
        double mark = Math.round(8 * sum / kinds + 2 * random.nextDouble()) / 8.0;
        marks[rider][set] = mark > strict ? Double.NaN : mark;
      }
    }
    return new FitTable(riders, hardware, marks);
  }

  /** All sets of one part of each kind, some left out. */
  private List<List<String>> hardware() {
    List<List<String>> all = List.of(List.of());
    for (int kind = 0; kind < kinds; kind++) {
      List<List<String>> longer = new ArrayList<>();
      for (List<String> some : all) {
        for (int part = 0; part < ofKind[kind]; part++) {
          List<String> more = new ArrayList<>(some);
          more.add("part-" + kind + "-" + part);
          longer.add(more);
        }
      }
      all = longer;
    }
    return all.stream().filter(set -> random.nextInt(5) > 0).toList();
  }

  List<String> parts(FitTable table) {
    return table.hardware().stream().flatMap(List::stream).distinct().sorted().toList();
  }

  Map<String, Integer> counts(FitTable table, int most) {
    Map<String, Integer> counts = new HashMap<>();
    parts(table).forEach(part -> counts.put(part, random.nextInt(most + 1)));
    return counts;
  }

  Map<String, Double> prices(FitTable table) {
    Map<String, Double> prices = new HashMap<>();
    for (String part : parts(table)) {
      if (random.nextInt(12) > 0) {
        prices.put(part, 10.0 * random.nextInt(12));
      }
    }
    return prices;
  }

  Random random() {
    return random;
  }
}
