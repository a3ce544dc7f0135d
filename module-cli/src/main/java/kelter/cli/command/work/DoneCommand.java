package kelter.cli.command.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.command.NamedShop;
import kelter.cli.command.entry.FaultWords;
import kelter.cli.command.entry.JobEdits;
import kelter.cli.proof.ProofText;
import kelter.cli.text.Layout;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Remedy;
import kelter.core.file.job.ProgressEdit;
import kelter.core.job.Job;
import kelter.core.job.Prices;
import kelter.core.job.work.PartUsed;
import kelter.core.job.work.TestDone;
import kelter.core.job.work.WorkDone;
import kelter.core.problem.InputException;
import kelter.core.quantity.Money;
import kelter.core.quantity.Nearest;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.vocabulary.Possible;
import kelter.core.workshop.Case;

/** {@code kelter done JOB WORK}: records work. */
public final class DoneCommand implements Command {

  private static final double HOUR = 3600;

  /** The longest piece of work, s: two weeks of days of eight hours; common practice, no source. */
  private static final double LONGEST = 80 * HOUR;

  private static final CommandOption TIME =
      CommandOption.one("--time", ValueKind.TEXT, "TIME", "how long it took, such as '35 min'");
  private static final CommandOption PART =
      CommandOption.many(
          "--part",
          "TITLE=PRICE",
          "a part that was put in, and what one of it costs before tax; several of it: '2 x Brush ="
              + " 9.40 EUR'");
  private static final CommandOption CONDITION =
      CommandOption.one(
          "--condition",
          ValueKind.TEXT,
          "WORD",
          "of these parts: new (if left out), third-party, refurbished, used");
  private static final CommandOption FOUND =
      CommandOption.many("--found", "PART.FAULT", "what was found to be wrong");
  private static final CommandOption BY =
      CommandOption.one("--by", ValueKind.TEXT, "NAME", "who did it");
  private static final CommandOption UNDO =
      CommandOption.flag("--undo", "take back what was recorded last");
  private static final CommandOption NOTE =
      CommandOption.one("--note", ValueKind.TEXT, "TEXT", "a remark");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
            "done",
            "Record what was done: work, time, parts, what was found.",
            "WORK is one that 'kelter diagnose --full' lists, PART.REMEDY, or your own words.",
            List.of(TIME, PART, CONDITION, FOUND, BY, NOTE, UNDO, NamedShop.OPTION),
            List.of(
                Invocation.jobFile("the job"),
                new CommandArgument(
                    "WORK",
                    ValueKind.TEXT,
                    true,
                    false,
                    "PART.REMEDY, its title, or your own words")),
            List.of(
                "kelter done job.json heater.renew-heater --time 35min --part Heater=48.20EUR",
                "kelter done job.json heater.renew-heater --found heater.open"))
        .forPeople();
  }

  @Override
  public void run(Invocation invocation) {
    JobEdits edits = new JobEdits(invocation);
    if (invocation.given().has(UNDO)) {
      undo(invocation, edits);
      return;
    }
    if (invocation.given().arguments().size() < 2) {
      throw new InputException("WORK", "is missing", "say what was done, or --undo");
    }
    Case machine = invocation.workshop().open(edits.document().job());
    String told = invocation.given().arguments().get(1);
    Optional<Remedy> known =
        Remedy.called(told, machine.remedies()).map(remedy -> asPlanned(remedy, machine));
    boolean isKey = told.matches("[a-z0-9-]+\\.[a-z0-9-]+");
    if (isKey && known.isEmpty()) {
      List<String> keys = machine.remedies().stream().map(Remedy::key).distinct().toList();
      edits.problem(
          told,
          "is no work that is known for this machine",
          Nearest.of(told, keys)
              .map(near -> "did you mean '" + near + "'?")
              .orElse("'kelter diagnose --full' lists what may be done; or use your own words"));
    }
    edits.add(
        told,
        () -> {
          WorkDone work =
              new WorkDone(
                  known.map(Remedy::key),
                  known.map(Remedy::title).orElse(told),
                  invocation.given().text(TIME).map(DoneCommand::time),
                  parts(invocation, machine.job()),
                  invocation.given().list(FOUND),
                  invocation.given().text(BY).orElse(""),
                  LocalDate.now(invocation.clock()).toString(),
                  invocation.given().text(NOTE).orElse(""));
          return content -> ProgressEdit.with(content, work);
        });
    FaultWords.hold(invocation.given().list(FOUND), machine, edits);
    List<TestDone> before = machine.job().progress().tests();
    if (!before.isEmpty()) {
      edits.add(told, () -> ProgressEdit::withoutTests);
    }
    edits.write();
    List<WorkDone> all = edits.document().job().progress().work();
    Layout layout = new Layout(invocation.terminal());
    layout.hanging("Recorded: ", ProofText.done(all.get(all.size() - 1)) + ".");
    if (known.isEmpty()) {
      layout.hanging(
          "It is in your own words: ",
          all.get(all.size() - 1).isForWhatWasFound()
              ? "it counts as work for what was found."
              : "it does not count for the chance of a cure. Tell what it was for by --found"
                  + " PART.FAULT.");
      List<String> near = Remedy.near(told, machine.remedies());
      if (!near.isEmpty()) {
        layout.line(
            "If you mean %s: kelter done --undo %s, and then by that name."
                .formatted(String.join(" or ", near), invocation.argument()));
      }
    }
    if (!before.isEmpty()) {
      layout.line("The tests that were made before this work are to be made again.");
    }
    layout.line("Show that it worked: kelter prove --led " + invocation.argument());
    invocation.terminal().print(layout.toString());
  }

  /** The same work under the title that the quotation has: faults may name it otherwise. */
  private static Remedy asPlanned(Remedy remedy, Case machine) {
    return machine.diagnosis().plan().stream()
        .map(Diagnosis.PlanStep::remedy)
        .filter(planned -> planned.key().equals(remedy.key()))
        .findFirst()
        .orElse(remedy);
  }

  private static void undo(Invocation invocation, JobEdits edits) {
    List<WorkDone> all = edits.document().job().progress().work();
    if (all.isEmpty()) {
      throw new InputException(UNDO.name(), "nothing is recorded as done", "");
    }
    edits.add(UNDO.name(), () -> ProgressEdit::withoutLastWork);
    edits.write();
    invocation
        .terminal()
        .print(
            new Layout(invocation.terminal())
                .hanging("Taken back: ", ProofText.done(all.get(all.size() - 1)) + ".")
                .toString());
  }

  private static Quantity time(String text) {
    Quantity time =
        Possible.requireNotNegative(QuantityParser.parse(text, QuantityKind.TIME), text);
    if (time.si() > LONGEST) {
      throw new IllegalArgumentException(
          "'%s' is longer than a piece of work may take, %s h; was it min?"
              .formatted(text, Math.round(LONGEST / HOUR)));
    }
    return time;
  }

  private static List<PartUsed> parts(Invocation invocation, Job job) {
    PartUsed.Condition condition =
        invocation
            .given()
            .text(CONDITION)
            .map(DoneCommand::condition)
            .orElse(PartUsed.Condition.NEW);
    List<PartUsed> parts = new ArrayList<>();
    for (String told : invocation.given().list(PART)) {
      PartUsed part = part(told, condition);
      part.price().ifPresent(price -> requireCurrency(price, told, job));
      parts.add(part);
    }
    return parts;
  }

  /** A bill is in one currency. */
  private static void requireCurrency(Money price, String told, Job job) {
    Optional<Currency> currency = job.prices().map(Prices::currency);
    if (currency.isPresent() && !currency.get().equals(price.currency())) {
      throw new IllegalArgumentException(
          "'%s' is in another currency than the prices of the job; write it in %s"
              .formatted(told, currency.get()));
    }
  }

  private static PartUsed.Condition condition(String word) {
    List<String> known = new ArrayList<>();
    for (PartUsed.Condition each : PartUsed.Condition.values()) {
      known.add(each.id());
      if (each.id().equals(word)) {
        return each;
      }
    }
    throw new IllegalArgumentException(
        "'" + word + "' is not a condition of parts; known: " + String.join(", ", known));
  }

  private static PartUsed part(String told, PartUsed.Condition condition) {
    int equals = told.lastIndexOf('=');
    Optional<Money> price =
        equals < 0
            ? Optional.empty()
            : Optional.of(Money.parse(told.substring(equals + 1).strip()));
    String named = (equals < 0 ? told : told.substring(0, equals)).strip();
    int count = 1;
    if (named.matches("[0-9]{1,4} ?x .*")) {
      count = Integer.parseInt(named.substring(0, named.indexOf('x')).strip());
      named = named.substring(named.indexOf('x') + 1).strip();
    }
    return new PartUsed(named, count, price, condition);
  }
}
