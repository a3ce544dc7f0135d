package kelter.core.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kelter.core.file.job.MarkedEdit;
import kelter.core.file.json.Json;
import kelter.core.job.Component;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.workshop.Case;

/**
 * What stands on a machine or on a part, as somebody types it: {@code plate voltage = 230 V},
 * {@code plate bake element power = 2.6 kW}, {@code run capacitor rated = 35 uF}.
 */
final class Marked {

  private static final String PLATE = "plate ";
  private static final String RATED = " rated";
  private static final String POWER = "power";

  /** A limit of local code stands on no part. */
  private static final String LIMIT = "-limit";

  /** What a nameplate states, by what it is measured in. */
  private static final Map<String, QuantityKind> ON_PLATES =
      Map.of(
          POWER,
          QuantityKind.POWER,
          "voltage",
          QuantityKind.VOLTAGE,
          "current",
          QuantityKind.CURRENT,
          "frequency",
          QuantityKind.FREQUENCY);

  private final Case machine;

  Marked(Case machine) {
    this.machine = machine;
  }

  /**
   * The content with what is marked.
   *
   * @param content the content of the job
   * @param words what stands before the equals sign
   * @param told what stands behind it
   * @return the content; empty if the words speak of no mark, or of several
   */
  Optional<Json.Obj> in(Json.Obj content, String words, String told) {
    String plain = words.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").strip();
    if (plain.startsWith(PLATE)) {
      String word = plain.substring(PLATE.length()).replaceFirst("^rated ", "");
      return ofPart(content, word, told)
          .or(
              () ->
                  Optional.of(
                      MarkedEdit.plate(content, Optional.empty(), word.replace(' ', '-'), told)));
    }
    int rated = plain.indexOf(RATED);
    if (rated < 1) {
      return Optional.empty();
    }
    String figure = plain.substring(rated + RATED.length()).strip().replace(' ', '-');
    List<Json.Obj> meant = new ArrayList<>();
    for (Component part : parts(plain.substring(0, rated))) {
      for (Characteristic each : figures(part)) {
        if (figure.isEmpty() ? isOf(each.kind(), told) : each.id().equals(figure)) {
          meant.add(MarkedEdit.figure(content, part.id(), each.id(), told));
        }
      }
      if (meant.isEmpty()) {
        ON_PLATES.forEach(
            (word, kind) -> {
              if (figure.isEmpty() ? isOf(kind, told) : word.equals(figure)) {
                meant.add(MarkedEdit.plate(content, Optional.of(part.id()), word, told));
              }
            });
      }
    }
    return meant.size() == 1 ? Optional.of(meant.get(0)) : Optional.empty();
  }

  /**
   * The content in which the machine has not a part.
   *
   * @param content the content of the job
   * @param words the words of the part
   * @return the content; empty if no part has the words, or more than one
   */
  Optional<Json.Obj> lacking(Json.Obj content, String words) {
    List<Component> meant = parts(words.toLowerCase(Locale.ROOT));
    return meant.size() == 1
        ? Optional.of(MarkedEdit.lacking(content, meant.get(0).id()))
        : Optional.empty();
  }

  /** The nameplate of one part: its words, and the last one what is stated. */
  private Optional<Json.Obj> ofPart(Json.Obj content, String words, String told) {
    int last = words.lastIndexOf(' ');
    if (last < 0 || !ON_PLATES.containsKey(words.substring(last + 1))) {
      return Optional.empty();
    }
    List<Component> meant = parts(words.substring(0, last));
    return meant.size() == 1
        ? Optional.of(
            MarkedEdit.plate(
                content, Optional.of(meant.get(0).id()), words.substring(last + 1), told))
        : Optional.empty();
  }

  private List<Component> parts(String words) {
    String id = words.strip().replace(' ', '-');
    List<Component> all = machine.job().appliance().components();
    List<Component> exact = all.stream().filter(each -> each.id().equals(id)).toList();
    return exact.isEmpty() ? all.stream().filter(each -> each.id().contains(id)).toList() : exact;
  }

  private List<Characteristic> figures(Component part) {
    return machine.vocabulary().kind(part.kind()).map(ComponentKind::figures).orElse(List.of());
  }

  private static boolean isOf(QuantityKind kind, String told) {
    try {
      QuantityParser.parse(told, kind);
      return true;
    } catch (IllegalArgumentException otherUnit) {
      return false;
    }
  }

  /**
   * The mark that a reading is held against and that nobody has told: the power of what usually
   * states one, else a figure of what was read.
   *
   * @param component the id of the part that was read
   * @param read what was read of it
   * @return how to tell it; empty if the part has no such mark, or it is told
   */
  Optional<String> wanted(String component, Observable read) {
    Optional<Component> part = machine.job().appliance().component(component);
    if (part.filter(each -> each.nameplate().power().isEmpty()).isPresent()
        && usuallyStatesPower(component)) {
      return Optional.of(mark(component, QuantityKind.POWER));
    }
    return part.stream()
        .flatMap(
            known ->
                figures(known).stream()
                    .filter(each -> each.kind().equals(read.kind()))
                    .filter(each -> !each.id().endsWith(LIMIT))
                    .filter(each -> known.figure(each).isEmpty()))
        .findFirst()
        .map(figure -> mark(component, figure.kind()));
  }

  private boolean usuallyStatesPower(String component) {
    return machine
        .kind()
        .flatMap(kind -> kind.part(component))
        .filter(
            part ->
                part.figures().values().stream()
                    .flatMap(List::stream)
                    .anyMatch(each -> each.onNameplate() && each.word().equals(POWER)))
        .isPresent();
  }

  private static String mark(String component, QuantityKind kind) {
    return "What it may be follows from its mark. If you can read that: %s rated = ... %s"
        .formatted(component.replace('-', ' '), kind.unit().symbol());
  }
}
