package kelter.cli.command.diagnosis;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.command.NamedShop;
import kelter.cli.command.entry.Entry;
import kelter.cli.command.entry.JobEdits;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.core.file.job.ProgressEdit;
import kelter.core.file.json.Json;
import kelter.core.job.Measurement;
import kelter.core.problem.InputException;

/** {@code kelter enter JOB}: readings and answers of the owner go into a job. */
public final class EnterCommand implements Command {

  private static final Measurement.Stage AS_FOUND = Measurement.Stage.AS_FOUND;

  private static final CommandOption READ =
      CommandOption.many(
          "--read", Entry.READING_FORM, "a reading before the work; " + Entry.BEHIND_READING);
  private static final CommandOption SAW =
      CommandOption.many(
          "--saw", "SYMPTOM=ANSWER", "what the machine does: yes, no, sometimes; the last counts");
  private static final CommandOption PLATE =
      CommandOption.many(
          "--plate",
          "WORD=VALUE",
          "what stands on the nameplate: voltage, frequency, power, current, protection-class;"
              + " PART.WORD=VALUE for a part");
  private static final CommandOption FIGURE =
      CommandOption.many(
          "--figure", "PART.WORD=VALUE", "what a part is rated for, such as capacitance");
  private static final CommandOption LACKS =
      CommandOption.many("--lacks", "PART", Entry.LACKS_HELP);
  private static final CommandOption PRICE =
      CommandOption.many(
          "--price",
          "WORK=AMOUNT",
          "the price of the part for a work, PART.REMEDY=AMOUNT, before tax; or call-out,"
              + " labour-per-hour, tax-rate, replacement");
  private static final CommandOption CORRECT =
      CommandOption.flag(
          "--correct", "put these readings in the place of earlier ones of the same observable");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "enter",
        "Enter readings, answers and prices into a job, and diagnose it.",
        "All of it is entered, or nothing where a piece is wrong. Readings after the work are for"
            + " 'kelter prove'.",
        List.of(READ, SAW, PLATE, FIGURE, LACKS, PRICE, CORRECT, NamedShop.OPTION),
        List.of(Invocation.jobFile("the job")),
        List.of(
            "kelter enter job.json --read heater.resistance=26.4ohm --saw stays-cold=yes",
            "kelter enter job.json --correct --read 'heater.resistance=OL'",
            "kelter enter job.json --plate voltage=230V --figure run-capacitor.capacitance=35uF"));
  }

  @Override
  public boolean diagnoses() {
    return true;
  }

  @Override
  public void run(Invocation invocation) {
    List<String> read = invocation.given().list(READ);
    List<String> saw = invocation.given().list(SAW);
    List<String> plate = invocation.given().list(PLATE);
    List<String> figures = invocation.given().list(FIGURE);
    List<String> lacks = invocation.given().list(LACKS);
    List<String> prices = invocation.given().list(PRICE);
    if (Stream.of(read, saw, plate, figures, lacks, prices).allMatch(List::isEmpty)) {
      throw new InputException(
          "enter",
          "nothing to enter is told",
          "write --read, --saw, --plate, --figure, --lacks or --price");
    }
    JobEdits edits = new JobEdits(invocation);
    lacks.forEach(told -> edits.add(told(LACKS, told), () -> Entry.lacking(told, edits)));
    plate.forEach(told -> edits.add(told(PLATE, told), () -> Entry.plate(told, edits)));
    figures.forEach(told -> edits.add(told(FIGURE, told), () -> Entry.figure(told, edits)));
    prices.forEach(told -> edits.add(told(PRICE, told), () -> Entry.price(told, edits)));
    int before = edits.document().job().measurements().size();
    if (invocation.given().has(CORRECT)) {
      read.forEach(told -> edits.add(told(READ, told), () -> withoutEarlier(told)));
    }
    int kept = edits.document().job().measurements().size();
    read.forEach(told -> edits.add(told(READ, told), () -> Entry.reading(told, AS_FOUND)));
    saw.forEach(told -> edits.add(told(SAW, told), () -> Entry.symptom(told, AS_FOUND, edits)));
    edits.write();
    if (kept < before) {
      invocation
          .terminal()
          .complain("kelter: taken out of the job: earlier readings, " + (before - kept));
    }
    DiagnoseCommand.diagnose(invocation, invocation.open());
  }

  private static String told(CommandOption option, String told) {
    return option.name() + " \"" + told + "\"";
  }

  private static UnaryOperator<Json.Obj> withoutEarlier(String told) {
    ProgressEdit.Written written = Entry.written(told, AS_FOUND);
    return content -> ProgressEdit.without(content, written);
  }
}
