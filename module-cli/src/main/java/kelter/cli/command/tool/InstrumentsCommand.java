package kelter.cli.command.tool;

import java.util.ArrayList;
import java.util.List;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.json.InstrumentsJson;
import kelter.cli.text.InstrumentsText;
import kelter.cli.usage.CommandUsage;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Instrument;

/** {@code kelter instruments}: the instruments that a job may name without describing them. */
public final class InstrumentsCommand implements Command {

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "instruments",
        "Tell the instruments that a job may name.",
        "They need no description in the job. Those of the library are typical of their class; no"
            + " product is meant. Those of your shop are told where it is named.",
        List.of(Invocation.SHOP),
        List.of(),
        List.of("kelter instruments", "kelter instruments --shop my-shop"));
  }

  @Override
  public void run(Invocation invocation) {
    List<Instrument> instruments = new ArrayList<>(InstrumentLibrary.instruments());
    instruments.addAll(invocation.workshop().instruments());
    Command.show(
        invocation,
        () -> InstrumentsJson.of(instruments),
        () -> InstrumentsText.of(instruments, invocation.terminal()));
  }
}
