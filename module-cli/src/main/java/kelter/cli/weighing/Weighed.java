package kelter.cli.weighing;

import java.util.Optional;
import kelter.core.job.Job;
import kelter.core.option.CarbonBalance;
import kelter.core.option.Reasons;
import kelter.core.option.Weighing;
import kelter.core.vocabulary.Vocabulary;

/**
 * A weighed job with what was asked for beside it.
 *
 * @param job the job
 * @param vocabulary the words in which it is told
 * @param weighing its options
 * @param reasons why they come out as they do, if that was asked for
 * @param carbon what keeping and replacing emit, if that was asked for
 */
public record Weighed(
    Job job,
    Vocabulary vocabulary,
    Weighing weighing,
    Optional<Reasons> reasons,
    Optional<CarbonBalance> carbon) {}
