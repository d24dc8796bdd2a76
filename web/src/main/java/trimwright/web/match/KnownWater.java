package trimwright.web.match;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trimwright.desk.MatchQuestion.OtherWater;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.write.MatchPageWriter.WaterItem;
import trimwright.kernel.water.WaterModel;

/** Waters that riders go to beside their usual one; chosen to span what they meet. */
enum KnownWater {
  /** A lake in early spring. */
  COLD_LAKE("Cold lake", 5, 0.2),
  /** A lake in summer. */
  WARM_LAKE("Warm lake", 24, 0.2),
  /** A northern sea. */
  COLD_SEA("Cold sea", 6, 35),
  /** A southern sea. */
  WARM_SEA("Warm sea", 26, 37);

  private final String title;
  private final double celsius;
  private final double salinity;

  KnownWater(String title, double celsius, double salinity) {
    this.title = title;
    this.celsius = celsius;
    this.salinity = salinity;
  }

  private String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Optional<KnownWater> find(String code) {
    return Arrays.stream(values()).filter(water -> water.code().equals(code)).findFirst();
  }

  /** All of them as the page offers them. */
  static List<WaterItem> items() {
    return Arrays.stream(values())
        .map(water -> new WaterItem(water.code(), water.title, water.celsius, water.salinity))
        .toList();
  }

  /** The water as the search takes it. */
  OtherWater water() {
    double temperature = Unit.CELSIUS.toSi(celsius);
    return new OtherWater(
        "on a " + title.toLowerCase(Locale.ROOT),
        WaterModel.at(temperature, Unit.GRAM_PER_KILOGRAM.toSi(salinity)),
        temperature);
  }
}
