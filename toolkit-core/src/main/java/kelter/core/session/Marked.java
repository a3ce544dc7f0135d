package kelter.core.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kelter.core.file.job.MarkedEdit;
import kelter.core.file.json.Json;
import kelter.core.job.Component;
import kelter.core.quantity.QuantityParser;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.workshop.Case;

/**
 * What stands on a machine or on a part, as somebody types it: {@code plate voltage = 230 V},
 * {@code run capacitor rated = 35 uF}.
 */
final class Marked {

  private static final String PLATE = "plate ";
  private static final String RATED = " rated";

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
      String word = plain.substring(PLATE.length()).replaceFirst("^rated ", "").replace(' ', '-');
      return Optional.of(MarkedEdit.plate(content, Optional.empty(), word, told));
    }
    int rated = plain.indexOf(RATED);
    if (rated < 1) {
      return Optional.empty();
    }
    String figure = plain.substring(rated + RATED.length()).strip().replace(' ', '-');
    List<Json.Obj> meant = new ArrayList<>();
    for (Component part : parts(plain.substring(0, rated))) {
      for (Characteristic each : figures(part)) {
        if (figure.isEmpty() ? isOf(each, told) : each.id().equals(figure)) {
          meant.add(MarkedEdit.figure(content, part.id(), each.id(), told));
        }
      }
    }
    return meant.size() == 1 ? Optional.of(meant.get(0)) : Optional.empty();
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

  private static boolean isOf(Characteristic figure, String told) {
    try {
      QuantityParser.parse(told, figure.kind());
      return true;
    } catch (IllegalArgumentException otherUnit) {
      return false;
    }
  }

  /**
   * The mark that a reading is held against and that nobody has told.
   *
   * @param component the id of the part that was read
   * @param read what was read of it
   * @return how to tell it; empty if the part has no such mark, or it is told
   */
  Optional<String> wanted(String component, Observable read) {
    return machine.job().appliance().component(component).stream()
        .flatMap(
            part ->
                figures(part).stream()
                    .filter(each -> each.kind().equals(read.kind()))
                    .filter(each -> part.figure(each).isEmpty()))
        .findFirst()
        .map(
            figure ->
                "What it may be follows from its mark. If you can read that: %s rated = ... %s"
                    .formatted(component.replace('-', ' '), figure.kind().unit().symbol()));
  }
}
