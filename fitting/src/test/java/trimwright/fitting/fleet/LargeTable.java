package trimwright.fitting.fleet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/**
 * A made-up table too large to try every choice: {@value #RIDERS} lines, {@value #SETS} sets of one
 * part of each of five kinds. Riders like sets of a size near their own. Marks are whole 128ths, so
 * that many are equal and unequal means lie far apart.
 */
final class LargeTable {
  static final int RIDERS = 12;
  static final int SETS = 60;
  private static final int[] OF_KIND = {3, 3, 4, 5, 5};
  private static final double[] WEIGHT = {0.5, 0.3, 0.6, 1.0, 0.6};
  private static final double[] PRICE = {1500, 900, 300, 400, 150};

  final FitTable table;
  final Map<String, Integer> counts = new HashMap<>();
  final Map<String, Double> prices = new HashMap<>();
  final Set<String> owned = new HashSet<>();
  final int fleet;
  final double budget;

  LargeTable(long seed) {
    Random random = new Random(seed);
    List<List<String>> hardware = hardware(random);
    Map<String, Double> sizes = new HashMap<>();
    for (String part : new TreeSet<>(hardware.stream().flatMap(List::stream).toList())) {
      sizes.put(part, random.nextDouble());
      counts.put(part, random.nextInt(8) == 0 ? 0 : 1 + random.nextInt(2));
      double price = Math.rint(PRICE[kind(part)] * (0.7 + 0.6 * random.nextDouble()));
      if (random.nextInt(10) > 0) {
        prices.put(part, price);
      }
      if (random.nextInt(8) == 0) {
        owned.add(part);
      }
    }
    fleet = 3 + random.nextInt(3);
    budget = 2500 + 100 * random.nextInt(30);
    table = table(random, hardware, sizes);
  }

  private static int kind(String part) {
    return part.charAt("part-".length()) - '0';
  }

  private static List<List<String>> hardware(Random random) {
    List<List<String>> all = List.of(List.of());
    for (int kind = 0; kind < OF_KIND.length; kind++) {
      List<List<String>> longer = new ArrayList<>();
      for (List<String> some : all) {
        for (int part = 0; part < OF_KIND[kind]; part++) {
          List<String> more = new ArrayList<>(some);
          more.add("part-" + kind + "-" + part);
          longer.add(more);
        }
      }
      all = longer;
    }
    List<List<String>> mixed = new ArrayList<>(all);
    Collections.shuffle(mixed, random);
    return mixed.subList(0, SETS);
  }

  private static FitTable table(
      Random random, List<List<String>> hardware, Map<String, Double> sizes) {
    List<RiderLine> riders = new ArrayList<>();
    double[][] marks = new double[RIDERS][SETS];
    for (int rider = 0; rider < RIDERS; rider++) {
      riders.add(new RiderLine("rider-" + rider, 1 + random.nextInt(5)));
      double liked = 0.5 + 2.0 * rider / (RIDERS - 1);
      for (int set = 0; set < SETS; set++) {
        double size = 0;
        for (String part : hardware.get(set)) {
          size += WEIGHT[kind(part)] * sizes.get(part);
        }
        double off = Math.abs(size - liked) + 0.2 * random.nextDouble();
        marks[rider][set] = off > 0.35 ? Double.NaN : Math.rint(128 * off) / 128;
      }
    }
    return new FitTable(riders, hardware, marks);
  }
}
