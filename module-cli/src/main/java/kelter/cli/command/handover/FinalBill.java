package kelter.cli.command.handover;

import java.time.LocalDate;
import java.util.Optional;
import kelter.cli.command.Invocation;
import kelter.core.job.work.Outcome;
import kelter.core.problem.InputException;
import kelter.core.quote.Bill;
import kelter.core.quote.Invoice;
import kelter.core.workshop.Case;

/** The bill of a job, where it tells enough for one. */
final class FinalBill {

  private FinalBill() {}

  static Optional<Invoice> of(Case machine, Invocation invocation) {
    try {
      return Optional.of(
          Invoice.of(
              machine,
              invocation.workshop().shop().offering(),
              LocalDate.now(invocation.clock()),
              Optional.empty()));
    } catch (InputException notEnough) {
      return Optional.empty();
    }
  }

  /** The bill of a job that is about to end so. */
  static Optional<Bill> of(Case machine, Outcome outcome) {
    try {
      return Optional.of(Invoice.bill(machine, Optional.of(outcome)));
    } catch (InputException notEnough) {
      return Optional.empty();
    }
  }
}
