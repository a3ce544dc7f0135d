package kelter.cli.command;

import kelter.cli.json.InstrumentsJson;
import kelter.cli.text.InstrumentsText;
import kelter.core.instrument.InstrumentLibrary;
import picocli.CommandLine.Model.CommandSpec;

/** {@code kelter instruments}: the instruments that a job may name without describing them. */
final class InstrumentsCommand implements Command {

  @Override
  public CommandSpec spec() {
    return Arguments.command(
        "instruments",
        Arguments.lines(
            "Tell the instruments that a job may name without describing them: typical of",
            "their class, no product is meant."),
        "kelter instruments");
  }

  @Override
  public void run(Invocation invocation) {
    if (invocation.isJson()) {
      invocation.terminal().printUtf8(InstrumentsJson.of(InstrumentLibrary.instruments()));
    } else {
      invocation
          .terminal()
          .print(InstrumentsText.of(InstrumentLibrary.instruments(), invocation.terminal()));
    }
  }
}
