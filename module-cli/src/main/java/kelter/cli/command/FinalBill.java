package kelter.cli.command;

import java.time.LocalDate;
import java.util.Optional;
import kelter.core.problem.InputException;
import kelter.core.quote.Invoice;
import kelter.core.quote.Quote;
import kelter.core.workshop.Case;

/** The bill for the work of a job, where the job tells enough for one. */
final class FinalBill {

  private FinalBill() {}

  static Optional<Invoice> of(Case machine, Invocation invocation) {
    if (!machine.job().progress().isWorked() || machine.job().prices().isEmpty()) {
      return Optional.empty();
    }
    try {
      Quote quote =
          Quote.of(
              machine, invocation.workshop().shop().offering(), LocalDate.now(invocation.clock()));
      return Optional.of(Invoice.of(machine, quote, 1, Optional.empty()));
    } catch (InputException notEnough) {
      return Optional.empty();
    }
  }
}
