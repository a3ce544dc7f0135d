package kelter.core.option;

import java.util.Currency;
import java.util.List;
import java.util.Objects;
import kelter.core.source.Source;

/**
 * The options of a job, weighed against each other.
 *
 * @param currency the currency of all amounts
 * @param options the options, the cheapest by mean annual cost first
 * @param breakEvenRepair up to what outlay the best repair beats replacing, in units of the
 *     currency; NaN if there is no repair or no replacement to compare
 * @param assumptions everything that the job did not state and that was taken for granted
 * @param sources where the figures and methods come from
 */
public record Weighing(
    Currency currency,
    List<Option> options,
    double breakEvenRepair,
    List<String> assumptions,
    List<Source> sources) {

  public Weighing {
    Objects.requireNonNull(currency);
    options = List.copyOf(options);
    assumptions = List.copyOf(assumptions);
    sources = List.copyOf(sources);
  }
}
