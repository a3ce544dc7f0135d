package kelter.cli.command.handover;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.cli.command.Command;
import kelter.cli.command.Complaints;
import kelter.cli.command.Invocation;
import kelter.cli.command.NamedShop;
import kelter.cli.command.book.NamedBook;
import kelter.cli.command.entry.FaultWords;
import kelter.cli.command.entry.JobEdits;
import kelter.cli.proof.ProofText;
import kelter.cli.proof.ReleaseWords;
import kelter.cli.text.Layout;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.book.Added;
import kelter.core.file.job.ProgressEdit;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Prices;
import kelter.core.job.SymptomReport;
import kelter.core.job.work.Closing;
import kelter.core.job.work.Outcome;
import kelter.core.job.work.WorkDone;
import kelter.core.problem.InputException;
import kelter.core.proof.Cure;
import kelter.core.proof.Proof;
import kelter.core.proof.ReadTwice;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.quote.Bill;
import kelter.core.quote.Quote;
import kelter.core.safety.lockout.ActiveRow;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.vocabulary.Possible;
import kelter.core.workshop.Case;

/** {@code kelter close JOB}: how it ended; from then on the job is not changed any more. */
public final class CloseCommand implements Command {

  private static final CommandOption OUTCOME =
      CommandOption.one(
          "--outcome",
          ValueKind.TEXT,
          "WORD",
          "cured, not-cured, left (as it was), nothing-wrong (with the machine), replaced, stopped;"
              + " must be told");
  private static final CommandOption CAUSE =
      CommandOption.many(
          "--cause",
          "PART.FAULT",
          "what turned out to be the cause, or none (default: what 'done --found' told)");
  private static final CommandOption CHARGED =
      CommandOption.one(
          "--charged",
          ValueKind.TEXT,
          "AMOUNT",
          "what was charged, tax included (default: the bill of 'kelter quote --final', if nothing in it is open)");
  private static final CommandOption OLD =
      CommandOption.one("--old-parts", ValueKind.TEXT, "TEXT", "where the old parts went");
  private static final CommandOption GUARANTEE =
      CommandOption.one(
          "--guarantee",
          ValueKind.TEXT,
          "TIME",
          "how long you stand for the work, such as '12 mo' (default: as the prices of the job or the shop's profile say)");
  private static final CommandOption UNPROVEN =
      CommandOption.flag(
          "--unproven", "close it as cured by word alone; the job book learns no cure from it");
  private static final String NONE = "none";
  private static final String BY_WORD =
      "or add --unproven: it is then said to be mended, and the job book learns no cure from it";
  private static final CommandOption BY =
      CommandOption.one("--by", ValueKind.TEXT, "NAME", "who closes it");
  private static final CommandOption NOTE =
      CommandOption.one("--note", ValueKind.TEXT, "TEXT", "a remark");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
            "close",
            "Close a job: what it was, what came of it, what it cost.",
            "A closed job is not changed any more. If the owner calls again, 'kelter reopen' begins the"
                + " next job.",
            List.of(OUTCOME, CAUSE, UNPROVEN, CHARGED, OLD, GUARANTEE, BY, NOTE, NamedShop.OPTION),
            List.of(Invocation.jobFile("the job")),
            List.of(
                "kelter close job.json --outcome cured --cause heater.open --charged 186.40EUR",
                "kelter close job.json --outcome left"))
        .forPeople();
  }

  @Override
  public boolean diagnoses() {
    return true;
  }

  @Override
  public void run(Invocation invocation) {
    JobEdits edits = new JobEdits(invocation);
    Case machine = invocation.workshop().open(edits.document().job());
    Proof proof = Proof.of(machine);
    Optional<Outcome> outcome = outcome(invocation, edits);
    outcome
        .filter(Outcome.CURED::equals)
        .ifPresent(cured -> requireNotRefuted(proof, machine, edits));
    outcome
        .filter(Outcome.CURED::equals)
        .filter(cured -> machine.job().progress().isWorked())
        .filter(cured -> !invocation.given().has(UNPROVEN))
        .ifPresent(cured -> requireProven(proof, edits));
    List<String> causes = causes(invocation, machine.job());
    outcome
        .filter(Outcome.NOTHING_WRONG::equals)
        .ifPresent(sound -> requireNothingFound(machine, causes, edits));
    FaultWords.hold(causes, machine, edits);
    if (outcome.isPresent()) {
      edits.add(
          "close",
          () -> {
            Closing closing = closing(invocation, machine, outcome.get(), causes);
            return content -> ProgressEdit.with(content, closing);
          });
    }
    edits.write();
    Case closed = invocation.workshop().open(edits.document().job());
    tell(invocation, proof, causes, closed);
    keep(invocation, closed);
  }

  /** The job is closed whatever comes of the book. */
  private static void keep(Invocation invocation, Case machine) {
    try {
      NamedBook.keep(machine, invocation)
          .ifPresent(
              added ->
                  invocation
                      .terminal()
                      .print(
                          added == Added.OTHER
                              ? "The book has another job of this id and keeps it.\n"
                              : "In the job book of the shop.\n"));
    } catch (InputException mistakes) {
      Complaints.tell(mistakes.problems(), invocation.terminal());
      invocation
          .terminal()
          .complain("kelter: the job is closed; put it into the book with 'kelter book add'");
      invocation.fail();
    }
  }

  private static Optional<Outcome> outcome(Invocation invocation, JobEdits edits) {
    String told = invocation.given().text(OUTCOME).orElse("");
    List<String> known = new ArrayList<>();
    for (Outcome each : Outcome.values()) {
      known.add(each.id());
      if (each.id().equals(told)) {
        return Optional.of(each);
      }
    }
    edits.problem(
        OUTCOME.name(),
        told.isEmpty() ? "is missing: nobody but you can say it" : "'" + told + "' is no outcome",
        "one of: " + String.join(", ", known));
    return Optional.empty();
  }

  /** What has come out as it must not speaks against a cure. */
  private static void requireNotRefuted(Proof proof, Case machine, JobEdits edits) {
    ReleaseWords words = new ReleaseWords(machine);
    for (ActiveRow row : machine.lockOut().keeping()) {
      edits.problem(
          OUTCOME.name(),
          "'cured' does not fit: the machine is locked out (%s) until %s"
              .formatted(row.text(), row.row().until().words()),
          words.typed(row).isEmpty()
              ? "do what ends that, or close it as not-cured or stopped"
              : "open is: kelter prove JOB "
                  + String.join(" ", words.typed(row))
                  + "; or close it as not-cured or stopped");
    }
    if (!machine.job().progress().isWorked()) {
      edits.problem(
          OUTCOME.name(),
          "'cured' does not fit: nothing is recorded as done",
          "record it with 'kelter done', or close it as left");
    }
    for (Proof.SeenTwice seen : proof.symptoms()) {
      if (seen.left().filter(said -> said != SymptomReport.Answer.NO).isPresent()) {
        edits.problem(
            OUTCOME.name(),
            "'cured' does not fit: it still "
                + machine.vocabulary().symptom(seen.symptom()).orElseThrow().title(),
            "look again ('kelter prove --saw'), or close it as not-cured");
      }
    }
    for (ReadTwice read : proof.readings()) {
      if (Proof.refutes(read.change())) {
        edits.problem(
            OUTCOME.name(),
            "'cured' does not fit: %s: %s is %s"
                .formatted(
                    Component.words(read.component()),
                    read.observable().title(),
                    read.change().words()),
            "mend that and read it again, or close it as not-cured");
      }
    }
    for (ReleaseTest test : proof.tests()) {
      if (test.result() == ReleaseTest.Result.NOT_MET) {
        edits.problem(
            OUTCOME.name(),
            "'cured' does not fit: a test is not met (" + test.text() + ")",
            "mend that and enter the new reading, or close it as not-cured");
      }
    }
  }

  private static void requireNothingFound(Case machine, List<String> causes, JobEdits edits) {
    for (ActiveRow row : machine.lockOut().keeping()) {
      edits.problem(
          OUTCOME.name(),
          "'nothing-wrong' does not fit: the machine is locked out (%s) until %s"
              .formatted(row.text(), row.row().until().words()),
          "do what ends that, or close it as left or stopped");
    }
    if (!causes.isEmpty()) {
      edits.problem(
          OUTCOME.name(),
          "'nothing-wrong' does not fit: a cause is told (" + String.join(", ", causes) + ")",
          "add '--cause none' if that was not so, or choose another outcome");
    }
  }

  /** What 'kelter prove' calls not mended is not called mended. */
  private static void requireProven(Proof proof, JobEdits edits) {
    if (!proof.isShown()) {
      edits.problem(
          OUTCOME.name(),
          "'cured' rests on nothing: no reading, look or test after the work shows it",
          "show it with 'kelter prove --led', " + BY_WORD);
      return;
    }
    Cure cure = proof.cure().orElseThrow();
    if (cure.outcome().isNotMended()) {
      edits.problem(
          OUTCOME.name(),
          "'cured' does not fit what 'kelter prove' tells: " + ProofText.words(cure),
          "read again what was mended, or close it as not-cured, " + BY_WORD);
    }
  }

  /** What is told, else what was found while the work was done. */
  private static List<String> causes(Invocation invocation, Job job) {
    List<String> told = invocation.given().list(CAUSE);
    if (told.equals(List.of(NONE))) {
      return List.of();
    }
    if (!told.isEmpty()) {
      return told;
    }
    Set<String> found = new LinkedHashSet<>();
    for (WorkDone each : job.progress().work()) {
      found.addAll(each.found());
    }
    return List.copyOf(found);
  }

  private static Closing closing(
      Invocation invocation, Case machine, Outcome outcome, List<String> causes) {
    Optional<Money> charged =
        invocation.given().text(CHARGED).map(text -> money(text, machine.job()));
    Optional<Quantity> guarantee = invocation.given().text(GUARANTEE).map(CloseCommand::time);
    boolean worked = machine.job().progress().isWorked() && outcome == Outcome.CURED;
    return new Closing(
        LocalDate.now(invocation.clock()).toString(),
        outcome,
        causes,
        charged.or(() -> UndisputedBill.of(invocation, machine, outcome)),
        invocation.given().text(OLD).orElse(""),
        worked
            ? guarantee.or(
                () -> Quote.guarantee(machine.job(), invocation.workshop().shop().offering()))
            : guarantee,
        invocation.given().text(BY).orElse(""),
        invocation.given().text(NOTE).orElse(""));
  }

  private static Money money(String text, Job job) {
    Money money = Money.parse(text);
    if (money.amount().signum() < 0) {
      throw new IllegalArgumentException("'" + text + "' is negative; a price is not");
    }
    Optional<Currency> currency = job.prices().map(Prices::currency);
    if (currency.isPresent() && !currency.get().equals(money.currency())) {
      throw new IllegalArgumentException(
          "'%s' is in another currency than the prices of the job; write --charged in %s"
              .formatted(text, currency.get()));
    }
    return money;
  }

  private static Quantity time(String text) {
    return Possible.requireNotNegative(QuantityParser.parse(text, QuantityKind.AGE), text);
  }

  private static void tell(Invocation invocation, Proof proof, List<String> causes, Case machine) {
    Job job = machine.job();
    Layout layout = new Layout(invocation.terminal());
    Closing closing = job.progress().closing().orElseThrow();
    boolean word = closing.outcome() == Outcome.CURED && !proof.isProven();
    layout.line(
        "Closed: "
            + job.id()
            + ", "
            + (word ? "said to be mended, not proven" : closing.outcome().words())
            + ".");
    layout.hanging("Cause: ", cause(causes, closing.outcome()) + ".");
    charged(closing, machine).ifPresent(words -> layout.hanging("Charged: ", words));
    UndisputedBill.above(closing, job).ifPresent(words -> layout.hanging("Beware: ", words));
    int open = proof.open();
    if (open > 0 && job.progress().isWorked()) {
      layout.line(
          open == 1
              ? "1 reading, look or test was not made; the report says so."
              : open + " readings, looks and tests were not made; the report says so.");
    }
    invocation.terminal().print(layout.toString());
  }

  private static String cause(List<String> causes, Outcome outcome) {
    if (!causes.isEmpty()) {
      return String.join(", ", causes);
    }
    return outcome == Outcome.NOTHING_WRONG
        ? "none in the machine"
        : "not told, so that nothing can be learned from it";
  }

  /** What was charged, or why no amount was taken from the bill. */
  private static Optional<String> charged(Closing closing, Case machine) {
    if (closing.charged().isPresent()) {
      return Optional.of(closing.charged().get().format() + ", tax included.");
    }
    if (!machine.job().progress().isWorked()) {
      return Optional.empty();
    }
    Optional<Bill> bill = FinalBill.of(machine, closing.outcome());
    if (bill.isEmpty()) {
      return Optional.of("not told; the job has no prices that make a bill.");
    }
    return Optional.of(
        bill.get().open().isEmpty()
            ? "not told; the bill has no total, since no tax rate is stated."
            : "not told; the bill is open, since no price is known for "
                + String.join("; ", bill.get().open())
                + ".");
  }
}
