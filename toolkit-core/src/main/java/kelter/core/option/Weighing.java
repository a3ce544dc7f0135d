package kelter.core.option;

import java.util.Currency;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kelter.core.diagnosis.Conclusion;
import kelter.core.source.Source;
import kelter.core.vocabulary.Statement;

/**
 * The options of a job, weighed against each other.
 *
 * @param currency the currency of all amounts
 * @param taxed whether work, parts and call-out are counted with their tax; false where no rate is
 *     known
 * @param conclusion what the diagnosis behind it comes to
 * @param options the options, the cheapest by mean annual cost first
 * @param breakEvenRepair up to what outlay the best repair beats replacing, in units of the
 *     currency; NaN if there is no repair or no replacement to compare
 * @param assumptions everything that the job did not state and that was taken for granted
 * @param sources where the figures and methods come from
 */
public record Weighing(
    Currency currency,
    boolean taxed,
    Conclusion conclusion,
    List<Option> options,
    double breakEvenRepair,
    List<Statement> assumptions,
    List<Source> sources) {

  /** From these odds on an answer is told without a word about how close it is; a judgement. */
  private static final double CLEAR = 2.0 / 3;

  public Weighing {
    Objects.requireNonNull(currency);
    Objects.requireNonNull(conclusion);
    options = List.copyOf(options);
    assumptions = List.copyOf(assumptions);
    sources = List.copyOf(sources);
  }

  /**
   * The option that is advised.
   *
   * @return the cheapest on average; empty if there is none, or if something is to be read first
   */
  public Optional<Option> recommended() {
    return conclusion.readFirst() || options.isEmpty()
        ? Optional.empty()
        : Optional.of(options.get(0));
  }

  /**
   * How likely it is that the side of the cheapest option, to replace the machine or not to, turns
   * out to cost least.
   *
   * @return a probability from 0 to 1; 0 if there is no option
   */
  public double oddsOfSide() {
    double odds = 0;
    for (Option option : options) {
      odds += option.replaces() == options.get(0).replaces() ? option.probabilityCheapest() : 0;
    }
    return odds;
  }

  /**
   * Whether replacing and not replacing are so close that the answer may well turn out wrong.
   *
   * @return true if the side of the cheapest option costs least in fewer than 2 of 3 cases
   */
  public boolean isClose() {
    return !options.isEmpty() && oddsOfSide() < CLEAR;
  }
}
