package kelter.cli.command.call;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.command.NamedShop;
import kelter.cli.command.PageName;
import kelter.cli.sheet.SheetPage;
import kelter.cli.sheet.SheetText;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.file.catalogue.WorkStepsFile;
import kelter.core.file.disk.TextFile;
import kelter.core.problem.InputException;
import kelter.core.sheet.Bag;
import kelter.core.sheet.WorkSheet;
import kelter.core.workshop.Case;

/** {@code kelter sheet JOB}: the work sheet, or what to take along. */
public final class SheetCommand implements Command {

  private static final CommandOption BAG =
      CommandOption.flag("--bag", "only the parts to take along, before leaving");
  private static final CommandOption WORK =
      CommandOption.one(
          "--work",
          ValueKind.TEXT,
          "PART.REMEDY",
          "the work (default: what the diagnosis puts first)");

  private static final CommandOption OUTPUT =
      CommandOption.one(
              "--output",
              ValueKind.FILE,
              "FILE.html",
              "a page to print, on A4 or Letter (default: the terminal)")
          .or("-o");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
            "sheet",
            "Print the work sheet, or the bag to pack.",
            "What to bring, isolate, open, look at, do, close and test. The steps are common practice; the maker's instructions, local codes and licensed practice"
                + " come first.",
            List.of(BAG, WORK, OUTPUT, NamedShop.OPTION),
            List.of(Invocation.jobFile("a job file")),
            List.of(
                "kelter sheet demo/jobs/dear-heater.json",
                "kelter sheet -o sheet.html demo/jobs/dear-heater.json",
                "kelter sheet --bag demo/jobs/tumble-dryer.json"))
        .forPeople();
  }

  @Override
  public boolean diagnoses() {
    return true;
  }

  @Override
  public void run(Invocation invocation) {
    Optional<Path> page = invocation.given().path(OUTPUT);
    if (page.isPresent()) {
      requirePage(page.get(), invocation);
    }
    Case machine = invocation.open();
    invocation.adviseOnShop(machine);
    Bag bag = Bag.of(machine, invocation.workshop().shop());
    SheetText text = new SheetText(invocation.terminal());
    if (invocation.given().has(BAG)) {
      invocation.terminal().print(text.bag(machine, bag));
      return;
    }
    Optional<String> work = invocation.given().text(WORK);
    WorkSheet sheet = WorkSheet.of(machine, bag, WorkStepsFile.shipped(), work);
    if (page.isPresent() && !sheet.remedies().isEmpty()) {
      TextFile.write(page.get(), SheetPage.of(machine.job(), sheet));
    } else {
      invocation.terminal().print(text.sheet(machine, sheet));
    }
  }

  private static void requirePage(Path file, Invocation invocation) {
    PageName.require(file);
    if (invocation.given().has(BAG)) {
      throw new InputException(BAG.name(), "is for the terminal", "leave --output away");
    }
  }
}
