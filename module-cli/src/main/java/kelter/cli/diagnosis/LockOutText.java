package kelter.cli.diagnosis;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import kelter.cli.text.Figures;
import kelter.cli.text.Layout;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.safety.LockState;
import kelter.core.safety.lockout.ActiveRow;
import kelter.core.safety.lockout.Ground;
import kelter.core.safety.lockout.LockOut;
import kelter.core.safety.lockout.Reread;
import kelter.core.safety.lockout.StepsFor;
import kelter.core.safety.lockout.Suspicion;
import kelter.core.vocabulary.Symptom;
import kelter.core.workshop.Case;

/** What the lock-out table asks of a machine, and the steps around power. */
final class LockOutText {

  private final Case machine;
  private final LockOut lockOut;
  private final Layout layout;

  LockOutText(Case machine, Layout layout) {
    this.machine = machine;
    this.lockOut = machine.lockOut();
    this.layout = layout;
  }

  /** All of it. */
  void write() {
    if (!lockOut.rows().isEmpty() || !lockOut.suspicions().isEmpty() || !lockOut.ask().isEmpty()) {
      layout.heading(heading());
      lockOut.rows().forEach(this::row);
      lockOut.suspicions().forEach(each -> layout.hanging("  ! ", suspected(each, lockOut)));
      ask();
    }
    steps("Isolate it, in this order", machine.isolation());
    steps("Back to power, in this order", machine.backToPower());
    layout.hanging("  ", "Local codes, the maker's instructions and licensed practice come first.");
  }

  /** Rows that bar one part leave the machine as usual. */
  private String heading() {
    if (lockOut.state() != LockState.A) {
      return "Locked out: " + lockOut.state().word();
    }
    return lockOut.rows().isEmpty() ? "Before any power" : "Parts to leave alone, if it has them";
  }

  private void row(ActiveRow each) {
    layout.hanging(
        "  - ",
        "%s, because of: %s."
            .formatted(
                each.row().state().word(),
                String.join("; ", each.because().stream().map(Ground::text).toList())));
    if (!each.row().first().isEmpty()) {
      layout.hanging("    First: ", each.row().first());
    }
    layout.hanging("    Until: ", each.row().until().words() + ".");
    open("    Still to read dead: ", each.openDead());
    open("    Then behind a residual-current device: ", each.openLast());
    if (each.supervised()) {
      layout.hanging(
          "    Allowed once: ", each.row().supervised().orElseThrow().text().in(lockOut.market()));
    }
    layout.hanging("    Source: ", each.row().source().display());
  }

  private void open(String label, List<Reread> open) {
    if (!open.isEmpty()) {
      layout.hanging(
          label, open.stream().map(Reread::display).collect(Collectors.joining("; ")) + ".");
    }
  }

  /** What comes before the next step: charge that is left, or what is suspected. */
  static Optional<String> first(LockOut lockOut) {
    List<Reread> before = lockOut.before();
    if (!before.isEmpty()) {
      return Optional.of(
          "Before anything inside: read " + before.get(0).display() + ", 60 V or less.");
    }
    return lockOut.suspicions().stream().findFirst().map(each -> suspected(each, lockOut));
  }

  /** Whether a doubtful reading may be taken again now. */
  static boolean mayBeTaken(Case machine, Diagnosis.Suspect suspect) {
    return machine
        .job()
        .appliance()
        .component(suspect.component())
        .flatMap(part -> machine.vocabulary().observable(part.kind(), suspect.observable()))
        .filter(
            observable ->
                machine
                    .lockOut()
                    .allows(suspect.component(), observable.id(), observable.procedure().hazard()))
        .isPresent();
  }

  /** What is suspected, and what has to be read before any power. */
  static String suspected(Suspicion each, LockOut lockOut) {
    String test =
        each.test()
            .filter(word -> !lockOut.barsAll())
            .map(word -> "Read " + each.component() + " " + word.replace('-', ' ') + " first")
            .orElse(lockOut.barsAll() ? "Not to be read here" : "Rule it out first");
    return "Suspected: %s (%s). %s; nothing powered before."
        .formatted(each.fault(), Figures.percent(each.probability()), test);
  }

  private void ask() {
    for (String id : lockOut.ask()) {
      machine
          .vocabulary()
          .symptom(id)
          .map(Symptom::question)
          .ifPresent(question -> layout.hanging("  Ask once: ", question + " (" + id + ")"));
    }
  }

  private void steps(String title, List<StepsFor> steps) {
    layout.heading(title);
    int place = 0;
    for (StepsFor step : steps) {
      layout.hanging("  " + ++place + ". ", step.text());
    }
  }
}
