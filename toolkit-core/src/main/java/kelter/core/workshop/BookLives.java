package kelter.core.workshop;

import java.util.Map;
import java.util.Optional;
import kelter.core.book.learned.Learned;
import kelter.core.book.learned.PartLife;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindPart;
import kelter.core.option.LearnedLives;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/**
 * The lives of parts that the shop's book taught of one kind of machine. Only a life with a shape
 * counts, which takes five failures; several parts of one kind are told by the one that failed most
 * often. The book knows no machine that nobody called for, so that however many failures there are,
 * such a life never counts more than one study.
 */
final class BookLives implements LearnedLives {

  /**
   * A study counts as one that knows the logarithm of a life this well, which is how far the
   * studies of machines lie apart; own choice.
   */
  private static final double SD_OF_STUDY = 0.25;

  private static final double LEAST_SHAPE = 0.2;
  private static final double GREATEST_SHAPE = 50;
  private static final double TWO_SIDED_95 = 1.959963984540054;

  private final Learned learned;
  private final Kind machine;

  BookLives(Learned learned, Kind machine) {
    this.learned = learned;
    this.machine = machine;
  }

  @Override
  public Optional<LearnedLife> machine(String kind) {
    return Optional.empty();
  }

  @Override
  public Optional<LearnedLife> component(String kind) {
    PartLife most = null;
    for (Map.Entry<String, PartLife> each : learned.lives().entrySet()) {
      String prefix = machine.id() + ".";
      Optional<KindPart> part =
          each.getKey().startsWith(prefix)
              ? machine.part(each.getKey().substring(prefix.length()))
              : Optional.empty();
      boolean same = part.isPresent() && part.get().kind().equals(kind);
      if (same && (most == null || each.getValue().failures() > most.failures())) {
        most = each.getValue();
      }
    }
    return most == null ? Optional.empty() : life(most);
  }

  private static Optional<LearnedLife> life(PartLife part) {
    return part.weibull()
        .filter(fit -> fit.shape().isPresent() && fit.scale().isPresent())
        .filter(fit -> fit.shape().getAsDouble() >= LEAST_SHAPE)
        .filter(fit -> fit.shape().getAsDouble() <= GREATEST_SHAPE)
        .map(
            fit ->
                new LearnedLife(
                    fit.scale().getAsDouble(),
                    fit.shape().getAsDouble(),
                    weight(fit),
                    source(part)));
  }

  private static double weight(PartLife.Fitted fit) {
    double sd = Math.log(fit.scaleHigh() / fit.scaleLow()) / 2 / TWO_SIDED_95;
    return sd > SD_OF_STUDY ? Math.max(1e-6, SD_OF_STUDY * SD_OF_STUDY / sd / sd) : 1;
  }

  private static Source source(PartLife part) {
    return new Source(
        "from the shop's book, %.0f failures, %.0f that lasted; machines that nobody called for are not in it"
            .formatted(part.failures(), part.lasted()),
        Standing.COUNTED);
  }
}
