package trimwright.exchange.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import tools.jackson.databind.JsonNode;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.Naming;
import trimwright.exchange.read.internal.NearestKey;
import trimwright.exchange.read.internal.Paths;
import trimwright.exchange.read.internal.Values;
import trimwright.exchange.read.internal.Words;
import trimwright.fitting.stock.Joint;
import trimwright.fitting.stock.PartKind;

/** Checks that join several keys or several parts of a stock file. */
final class StockChecks {
  /** Share of a step by which rounding may miss a track's last place. */
  private static final double ROUNDING = 1e-3;

  private final Values root;
  private final Findings findings;
  private final Naming names;

  private StockChecks(Values root, Findings findings) {
    this.root = root;
    this.findings = findings;
    names = findings.naming();
  }

  /** Runs all checks on a filled document. */
  static void run(Values root, Findings findings) {
    StockChecks checks = new StockChecks(root, findings);
    Map<String, String> ids = new HashMap<>();
    for (StockList list : StockList.values()) {
      for (Values part : root.listGroups(list.key())) {
        checks.name(part, ids);
        checks.count(part);
        checks.part(list.kind(), part);
        Joint.of(list.kind()).forEach(joint -> checks.joint(list.kind(), part, joint));
      }
    }
  }

  private void name(Values part, Map<String, String> ids) {
    String path = part.at("id");
    if (part.bad().contains(path) || part.findText("id").isEmpty()) {
      return;
    }
    String id = part.findText("id").get();
    String first = ids.putIfAbsent(id, path);
    if (first != null) {
      findings.report(
          List.of(path, first),
          names.opening(path)
              + " is \""
              + id
              + "\", and so is "
              + names.name(first)
              + "; wanted is another name for each part of the stock.");
    }
  }

  private void count(Values part) {
    if (part.has("count")) {
      double count = part.findWritten("count").getAsDouble();
      if (count != Math.rint(count)) {
        wrong(part.at("count"), count, "a whole number from 0 to 1000");
      }
    }
  }

  private void part(PartKind kind, Values part) {
    switch (kind) {
      case BOARD -> {
        CaseChecks.volume(part, findings);
        part.findGroup("track").ifPresent(this::track);
      }
      case BATTERY -> DriveChecks.battery(part, findings);
      case MAST -> CaseChecks.mast(part, findings);
      case DRIVE -> DriveChecks.drive(part, findings);
      case SHIM -> {
        if (part.has("angle_deg") && part.get("angle_deg") == 0) {
          wrong(part.at("angle_deg"), 0, "another angle: no shim is always at hand");
        }
      }
      default -> {
        // Wings are checked where they are built; a fuselage has nothing to contradict
      }
    }
  }

  private void track(Values track) {
    if (!track.has("from_mm", "to_mm", "step_mm")) {
      return;
    }
    double from = track.findWritten("from_mm").getAsDouble();
    double to = track.findWritten("to_mm").getAsDouble();
    double steps = (to - from) / track.findWritten("step_mm").getAsDouble();
    if (!(steps >= 0 && Math.abs(steps - Math.rint(steps)) <= ROUNDING)) {
      String key = track.at("to_mm");
      List<String> keys = List.of(key, track.at("from_mm"), track.at("step_mm"));
      findings.report(
          keys,
          names.opening(key)
              + " is "
              + names.value(key, to)
              + ", permitted is "
              + names.value(keys.get(1), from)
              + " ("
              + names.brief(keys.get(1))
              + ") and whole steps of "
              + names.value(keys.get(2), track.findWritten("step_mm").getAsDouble())
              + " ("
              + names.brief(keys.get(2))
              + ") ahead of it.");
    }
  }

  /** Each standard of a part must be one of a part on the far side. */
  private void joint(PartKind kind, Values part, Joint joint) {
    PartKind across = joint.across(kind);
    String key = StockList.key(across);
    String path = Paths.child(part.at("mounts"), key);
    Set<String> known = standards(across, StockList.key(kind));
    List<String> given = texts(part, key);
    for (int i = 0; i < given.size(); i++) {
      String element = Paths.element(path, i);
      String name = given.get(i);
      if (name.isEmpty() || findings.bad().contains(element) || known.contains(name)) {
        continue;
      }
      String meant =
          NearestKey.find(name, known).map(near -> " (did you mean " + near + "?)").orElse("");
      findings.report(
          element,
          names.opening(element)
              + " is \""
              + Words.shorten(name)
              + "\", which no "
              + key.replace('_', ' ')
              + " of this stock fits; "
              + (known.isEmpty()
                  ? "wanted is a "
                      + key.replace('_', ' ')
                      + " that names it in mounts."
                      + StockList.key(kind)
                      + "."
                  : "wanted is one of " + Words.list(known) + meant + "."));
    }
  }

  private Set<String> standards(PartKind kind, String key) {
    Set<String> all = new TreeSet<>();
    for (Values part : root.listGroups(StockList.of(kind).key())) {
      all.addAll(texts(part, key));
    }
    all.remove("");
    return all;
  }

  /** The standards of a part; an empty text where an entry is none. */
  static List<String> texts(Values part, String key) {
    List<String> texts = new ArrayList<>();
    JsonNode list = part.group().path("mounts").path(key);
    if (list.isArray()) {
      list.forEach(entry -> texts.add(entry.isString() ? entry.stringValue() : ""));
    }
    return texts;
  }

  private void wrong(String path, double value, String permitted) {
    findings.report(
        path,
        names.opening(path)
            + " is "
            + names.value(path, value)
            + ", permitted is "
            + permitted
            + ".");
  }
}
