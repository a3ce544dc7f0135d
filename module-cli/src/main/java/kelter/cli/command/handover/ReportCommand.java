package kelter.cli.command.handover;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.command.NamedShop;
import kelter.cli.command.PageName;
import kelter.cli.report.ReportPage;
import kelter.cli.text.Layout;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.file.catalogue.WorkStepsFile;
import kelter.core.file.disk.TextFile;
import kelter.core.file.person.Persons;
import kelter.core.job.Market;
import kelter.core.option.Explained;
import kelter.core.problem.InputException;
import kelter.core.proof.Proof;
import kelter.core.report.OwnersPage;
import kelter.core.report.Point;
import kelter.core.shop.Person;
import kelter.core.shop.Repairer;
import kelter.core.workshop.Case;

/** {@code kelter report JOB -o FILE}: the job as one page of HTML. */
public final class ReportCommand implements Command {

  private static final CommandOption OUTPUT =
      CommandOption.one(
              "--output",
              ValueKind.FILE,
              "FILE.html",
              "the page (default: the points for the owner on the terminal)")
          .or("-o");
  private static final CommandOption ANONYMOUS =
      CommandOption.flag(
          "--anonymous", "without owner, serial number, names and words of the owner");
  private static final CommandOption CALL =
      CommandOption.one("--call", ValueKind.TEXT, "TEXT", "whom the owner may call");
  private static final long SEED = 1;

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
            "report",
            "Write the report: the owner first, then the figures.",
            "One file that loads nothing: to print on A4 or Letter, to read on a phone. The person whose"
                + " job it is stands in the shop's folder ('kelter shop person').",
            List.of(OUTPUT, ANONYMOUS, CALL, NamedShop.OPTION),
            List.of(Invocation.jobFile("a job, closed or not")),
            List.of(
                "kelter report -o report.html demo/jobs/washer-extractor.json",
                "kelter report --anonymous -o report.html job.json"))
        .forPeople();
  }

  @Override
  public boolean diagnoses() {
    return true;
  }

  @Override
  public void run(Invocation invocation) {
    Optional<Path> file = invocation.given().path(OUTPUT);
    file.ifPresent(PageName::require);
    boolean anonymous = invocation.given().has(ANONYMOUS);
    Case machine = invocation.open();
    Proof proof = Proof.of(machine);
    OwnersPage.Beside told =
        new OwnersPage.Beside(call(invocation), !anonymous, FinalBill.of(machine, invocation));
    List<Point> points = OwnersPage.of(machine, proof, WorkStepsFile.shipped(), told);
    if (file.isEmpty()) {
      invocation.terminal().print(text(points, machine.market(), invocation));
      return;
    }
    Optional<Person> person =
        anonymous
            ? Optional.empty()
            : invocation
                .shop()
                .folder()
                .flatMap(folder -> new Persons(folder.path()).of(machine.job().id()));
    ReportPage.Beside beside =
        new ReportPage.Beside(
            points,
            person.map(Person::lines).orElse(List.of()),
            anonymous,
            invocation.workshop().shop(),
            explained(machine));
    TextFile.write(file.get(), ReportPage.of(machine, proof, beside));
    invocation.terminal().complain("kelter: written: " + file.get());
  }

  /** Whom to call: what is given, else the shop as its profile tells it. */
  private static String call(Invocation invocation) {
    Repairer repairer = invocation.workshop().shop().offering().repairer();
    String known = (repairer.name() + ", " + repairer.telephone()).replaceAll("^, |, $", "");
    return invocation.given().text(CALL).orElse(known);
  }

  /** What the options cost, where the job tells enough of prices. */
  private static Optional<Explained> explained(Case machine) {
    if (machine.job().prices().isEmpty() || machine.lockOut().barsAll()) {
      return Optional.empty();
    }
    try {
      return Optional.of(machine.explainedOptions(SEED));
    } catch (InputException notEnough) {
      return Optional.empty();
    }
  }

  private static String text(List<Point> points, Market market, Invocation invocation) {
    invocation.terminal().speakAsIn(market);
    Layout layout = new Layout(invocation.terminal());
    int number = 1;
    for (Point point : points) {
      layout.heading(number++ + ". " + point.question());
      point.answers().forEach(answer -> layout.hanging("   ", answer));
    }
    return layout.toString();
  }
}
