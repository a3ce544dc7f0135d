package kelter.cli.command.shop;

import java.nio.file.Path;
import java.util.List;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.text.Layout;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.file.shop.ShopFolder;

/** {@code kelter shop init DIR}: the folder of a shop, to be filled in. */
public final class ShopInitCommand implements Command {

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
            "shop init",
            "Make the folder of a shop, to be filled in.",
            "It holds the profile, prices, stock, models and jobs of your shop. What is there already"
                + " is kept.",
            List.of(),
            List.of(
                CommandArgument.one("DIR", ValueKind.FILE, "the folder, made if there is none")),
            List.of("kelter shop init my-shop"))
        .forPeople();
  }

  @Override
  public void run(Invocation invocation) {
    Path path = invocation.file();
    Layout layout = new Layout(invocation.terminal());
    new ShopFolder(path)
        .make()
        .forEach((name, made) -> layout.line((made ? "Made: " : "Kept as it is: ") + name));
    layout
        .heading("Next")
        .hanging("  1. ", "Put your instruments into shop.json and your prices into prices.json.")
        .hanging("  2. ", "Keep your jobs in jobs/, each named after its id: my-job.json.")
        .hanging("  3. ", "Name the shop: kelter diagnose --shop " + path + " my-job");
    invocation.terminal().print(layout.toString());
  }
}
