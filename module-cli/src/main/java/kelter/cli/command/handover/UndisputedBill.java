package kelter.cli.command.handover;

import java.math.BigDecimal;
import java.util.Optional;
import kelter.cli.command.FirstJob;
import kelter.cli.command.Invocation;
import kelter.core.job.Job;
import kelter.core.job.work.Accepted;
import kelter.core.job.work.Closing;
import kelter.core.job.work.Outcome;
import kelter.core.quantity.Money;
import kelter.core.quote.Bill;
import kelter.core.quote.CallBack;
import kelter.core.workshop.Case;

/** The bill of a job as what was charged, where nobody has to be asked first. */
final class UndisputedBill {

  private UndisputedBill() {}

  /**
   * What is charged where nobody says.
   *
   * @throws IllegalArgumentException if the owner was promised less: a closed job is not changed
   *     any more, so that somebody has to say what was agreed
   */
  static Optional<Money> of(Invocation invocation, Case machine, Outcome outcome) {
    Optional<Money> total = FinalBill.of(machine, outcome).flatMap(Bill::total);
    if (total.isEmpty() || total.get().amount().signum() == 0) {
      return total;
    }
    Optional<CallBack> callBack = FirstJob.grants(invocation, machine.job());
    if (callBack.isPresent()) {
      throw new IllegalArgumentException(
          "the bill comes to %s, and it is a call-back of %s under guarantee until %s; say with"
                  .formatted(total.get().format(), callBack.get().job(), callBack.get().until())
              + " --charged what is charged, for the same defect '0 %s'"
                  .formatted(total.get().currency()));
    }
    Optional<Money> most = machine.job().progress().accepted().flatMap(Accepted::most);
    if (most.isPresent() && isAbove(total.get(), most.get())) {
      throw new IllegalArgumentException(
          "the bill comes to %s, above the %s of the accepted offer; say with --charged what the"
                  .formatted(total.get().format(), most.get().format())
              + " owner agreed to pay");
    }
    return total;
  }

  private static boolean isAbove(Money charged, Money most) {
    return charged.currency().equals(most.currency())
        && charged.amount().compareTo(most.amount()) > 0;
  }

  /** What is charged beyond the accepted offer; empty where it is not. */
  static Optional<String> above(Closing closing, Job job) {
    Optional<Money> most = job.progress().accepted().flatMap(Accepted::most);
    if (closing.charged().isEmpty()
        || most.isEmpty()
        || !isAbove(closing.charged().get(), most.get())) {
      return Optional.empty();
    }
    BigDecimal more = closing.charged().get().amount().subtract(most.get().amount());
    return Optional.of(
        "that is %s above the accepted offer, and the report tells the owner so."
            .formatted(new Money(more, most.get().currency()).format()));
  }
}
