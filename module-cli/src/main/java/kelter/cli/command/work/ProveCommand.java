package kelter.cli.command.work;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import kelter.cli.bench.BenchText;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.command.NamedShop;
import kelter.cli.command.entry.Entry;
import kelter.cli.command.entry.JobEdits;
import kelter.cli.command.entry.Leading;
import kelter.cli.json.ProofJson;
import kelter.cli.proof.ProofText;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.UsageException;
import kelter.core.file.job.ProgressEdit;
import kelter.core.file.json.Json;
import kelter.core.job.Measurement;
import kelter.core.job.work.TestDone;
import kelter.core.problem.InputException;
import kelter.core.proof.Proof;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.session.Session;
import kelter.core.workshop.Case;

/** {@code kelter prove JOB}: whether the work has cured the machine, and what is still open. */
public final class ProveCommand implements Command {

  private static final CommandOption LED =
      CommandOption.flag("--led", "ask for what is open, one after the other, and keep it");
  private static final CommandOption READ =
      CommandOption.many(
          "--read",
          "PART.OBSERVABLE=READING",
          "keep a reading after the work; behind it, if you like, 'at temperature=70 Cel' and 'with"
              + " METER'");
  private static final CommandOption TEST =
      CommandOption.many(
          "--test",
          "STEP=RESULT",
          "keep how a test came out: met, or not met and behind a colon what was seen; a figure where"
              + " the machine has no cord to read it on");
  private static final CommandOption SAW =
      CommandOption.many(
          "--saw",
          "SYMPTOM=ANSWER",
          "keep what the machine does after the work: yes, no, sometimes");

  private static final Measurement.Stage AS_LEFT = Measurement.Stage.AS_LEFT;

  /** What the earth is called in North America. */
  private static final String GROUND = "ground";

  private static final String EARTH = "earth";

  private static final Pattern RESULT =
      Pattern.compile("([a-z0-9-]+) *= *(met|not met) *(?:: *(.*))?");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "prove",
        "Show whether the work worked, and what is still open.",
        "Nothing is kept but what you enter. The first test that fails ends the way back to power.",
        List.of(LED, READ, TEST, SAW, NamedShop.OPTION),
        List.of(Invocation.jobFile("a job in which something was done")),
        List.of(
            "kelter prove job.json",
            "kelter prove --led job.json",
            "kelter prove job.json --read heater.resistance=26.4ohm --test look=met"
                + " --saw stays-cold=no"));
  }

  @Override
  public boolean diagnoses() {
    return true;
  }

  @Override
  public void run(Invocation invocation) {
    if (invocation.given().has(LED)) {
      refuseBoth(invocation);
      Session session = Session.proving(invocation.workshop(), Leading.open(invocation.jobFile()));
      new Leading(invocation, Optional.of(invocation.jobFile())).run(session, BenchText::proved);
      return;
    }
    keep(invocation);
    Case machine = invocation.open();
    Proof proof = Proof.of(machine);
    Command.show(
        invocation,
        () -> ProofJson.of(machine, proof),
        () -> ProofText.of(machine, proof, invocation.terminal()));
  }

  private static void refuseBoth(Invocation invocation) {
    if (invocation.isJson()) {
      throw UsageException.forPeople("prove --led");
    }
    for (CommandOption other : List.of(READ, TEST, SAW)) {
      if (invocation.given().has(other)) {
        throw new InputException(
            other.name(), "does not go with --led", "enter it first, then call --led by itself");
      }
    }
  }

  private static void keep(Invocation invocation) {
    List<String> read = invocation.given().list(READ);
    List<String> tests = invocation.given().list(TEST);
    List<String> saw = invocation.given().list(SAW);
    if (read.isEmpty() && tests.isEmpty() && saw.isEmpty()) {
      return;
    }
    JobEdits edits = new JobEdits(invocation);
    read.forEach(
        told -> edits.add(READ.name() + " \"" + told + "\"", () -> Entry.reading(told, AS_LEFT)));
    List<ReleaseTest> known =
        tests.isEmpty()
            ? List.of()
            : invocation.workshop().open(edits.document().job()).lockOut().backToPower();
    tests.forEach(told -> edits.add(TEST.name() + " \"" + told + "\"", () -> test(told, known)));
    saw.forEach(
        told ->
            edits.add(SAW.name() + " \"" + told + "\"", () -> Entry.symptom(told, AS_LEFT, edits)));
    edits.write();
  }

  private static String steps(List<ReleaseTest> known) {
    return known.stream().map(ReleaseTest::step).distinct().collect(Collectors.joining(", "));
  }

  private static UnaryOperator<Json.Obj> test(String told, List<ReleaseTest> known) {
    int equals = told.indexOf('=');
    String named = told.substring(0, Math.max(0, equals)).strip();
    String step = named.equals(GROUND) ? EARTH : named;
    String read = told.substring(equals + 1).strip().replaceFirst("^(not )?met *: *", "");
    Optional<TestDone> figure =
        known.stream()
            .filter(each -> each.step().equals(step))
            .flatMap(each -> each.figure(read).stream())
            .findFirst();
    if (figure.isPresent()) {
      return content -> ProgressEdit.with(content, figure.get());
    }
    String form = "STEP=met or STEP=not met: what was seen";
    Matcher matcher = Entry.matched(RESULT, told, form + "; steps: " + steps(known));
    String note = matcher.group(3) == null ? "" : matcher.group(3);
    TestDone test = new TestDone(step, matcher.group(2).equals("met"), note);
    return content -> ProgressEdit.with(content, test);
  }
}
