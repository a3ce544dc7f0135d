package kelter.cli.command.handover;

import java.time.LocalDate;
import java.util.Optional;
import kelter.cli.command.Invocation;
import kelter.core.job.work.Closing;
import kelter.core.job.work.Outcome;
import kelter.core.problem.InputException;
import kelter.core.quote.Bill;
import kelter.core.quote.Invoice;
import kelter.core.workshop.Case;

/** The bill for the work of a job, where the job tells enough for one. */
final class FinalBill {

  private FinalBill() {}

  static Optional<Invoice> of(Case machine, Invocation invocation) {
    if (!isPriced(machine, machine.job().progress().closing().map(Closing::outcome))) {
      return Optional.empty();
    }
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
    if (!isPriced(machine, Optional.of(outcome))) {
      return Optional.empty();
    }
    try {
      return Optional.of(Invoice.bill(machine, Optional.of(outcome)));
    } catch (InputException notEnough) {
      return Optional.empty();
    }
  }

  private static boolean isPriced(Case machine, Optional<Outcome> outcome) {
    boolean isCall = outcome.filter(Outcome.NOTHING_WRONG::equals).isPresent();
    return (machine.job().progress().isWorked() || isCall) && machine.job().prices().isPresent();
  }
}
