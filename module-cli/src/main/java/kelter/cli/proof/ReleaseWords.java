package kelter.cli.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.job.Measurement;
import kelter.core.job.Measurement.Stage;
import kelter.core.safety.lockout.ActiveRow;
import kelter.core.safety.lockout.Reread;
import kelter.core.vocabulary.Observable;
import kelter.core.workshop.Case;

/**
 * What ends a lock-out, in words and as it is typed.
 *
 * @param machine the case
 */
public record ReleaseWords(Case machine) {

  /**
   * What is open of a row.
   *
   * @param row a row that holds
   * @return each reading with what was read of it so far; the word of a person where it ends the
   *     row
   */
  public List<String> open(ActiveRow row) {
    List<String> open = new ArrayList<>();
    row.openDead().forEach(each -> open.add(read(each)));
    row.openLast().forEach(each -> open.add("under power, last: " + read(each)));
    if (row.row().until().record()) {
      open.add(
          "or the word of a competent person, in the job file: \"records\": {\"%s\": \"who, when,"
                  .formatted(row.row().id())
              + " what\"}");
    }
    return open;
  }

  /**
   * The options of {@code kelter prove} that end a row.
   *
   * @param row a row that holds
   * @return one for each reading; none where no reading is known
   */
  public List<String> typed(ActiveRow row) {
    List<String> typed = new ArrayList<>();
    for (Reread each : row.openDead()) {
      typed(each).ifPresent(typed::add);
    }
    for (Reread each : row.openLast()) {
      typed(each).ifPresent(typed::add);
    }
    return typed;
  }

  private String read(Reread reread) {
    Optional<Measurement> last = Optional.empty();
    for (Measurement each : machine.job().measurements(reread.component(), reread.observable())) {
      last = each.stage() == Stage.AS_LEFT ? Optional.of(each) : last;
    }
    return reread.display()
        + last.map(each -> " (" + each.shown() + ": " + why(each) + ")").orElse("");
  }

  /** Why a reading does not end it. */
  private String why(Measurement measurement) {
    return machine.judged(measurement).stream()
        .filter(each -> each.component().equals(measurement.component()))
        .filter(each -> each.observable().equals(measurement.observable()))
        .findFirst()
        .map(each -> each.verdict().words() + (each.remark().isEmpty() ? "" : "; " + each.remark()))
        .orElse("no limit is known for it");
  }

  private Optional<String> typed(Reread reread) {
    if (reread.observable().isEmpty()) {
      return Optional.empty();
    }
    if (reread.component().isEmpty()) {
      return Optional.of("--test \"%s=... %s\"".formatted(reread.step(), unit(reread)));
    }
    return Optional.of(
        "--read \"%s.%s=%s%s\""
            .formatted(
                reread.component(),
                reread.observable(),
                observable(reread).map(ReleaseWords::form).orElse("..."),
                reread.warm() ? " at temperature=... Cel" : ""));
  }

  private static String form(Observable observable) {
    return observable.type() == Observable.Type.QUANTITY
        ? "... " + observable.kind().unit().symbol()
        : "...";
  }

  private String unit(Reread reread) {
    return machine.lockOut().backToPower().stream()
        .flatMap(test -> test.awaited().stream())
        .filter(each -> each.id().equals(reread.observable()))
        .map(each -> each.kind().unit().symbol())
        .findFirst()
        .orElse("");
  }

  private Optional<Observable> observable(Reread reread) {
    return machine
        .job()
        .appliance()
        .component(reread.component())
        .flatMap(part -> machine.vocabulary().observable(part.kind(), reread.observable()));
  }
}
