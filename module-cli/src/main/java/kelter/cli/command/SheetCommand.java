package kelter.cli.command;

import java.util.List;
import java.util.Optional;
import kelter.cli.sheet.SheetText;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.file.WorkStepsFile;
import kelter.core.sheet.Bag;
import kelter.core.sheet.WorkSheet;
import kelter.core.workshop.Case;

/** {@code kelter sheet JOB}: the work sheet, or what to take along. */
final class SheetCommand implements Command {

  private static final CommandOption BAG =
      CommandOption.flag("--bag", "only the parts to take along, before leaving");
  private static final CommandOption WORK =
      CommandOption.one(
          "--work",
          ValueKind.TEXT,
          "PART.REMEDY",
          "the work (default: what the diagnosis puts first)");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "sheet",
        "Print the work sheet, or the bag to pack.",
        "What to bring, isolate, open, look at, do, close and test. The steps are common practice; the maker's instructions, local codes and licensed practice"
            + " come first.",
        List.of(BAG, WORK, NamedShop.OPTION),
        List.of(Invocation.jobFile("a job file")),
        List.of(
            "kelter sheet demo/jobs/dear-heater.json",
            "kelter sheet --bag demo/jobs/tumble-dryer.json"));
  }

  @Override
  public boolean diagnoses() {
    return true;
  }

  @Override
  public void run(Invocation invocation) {
    Case machine = invocation.open();
    Bag bag = Bag.of(machine, invocation.workshop().shop());
    SheetText text = new SheetText(invocation.terminal());
    if (invocation.given().has(BAG)) {
      invocation.terminal().print(text.bag(machine, bag));
      return;
    }
    Optional<String> work = invocation.given().text(WORK);
    WorkSheet sheet = WorkSheet.of(machine, bag, WorkStepsFile.shipped(), work);
    invocation.terminal().print(text.sheet(machine, sheet));
  }
}
