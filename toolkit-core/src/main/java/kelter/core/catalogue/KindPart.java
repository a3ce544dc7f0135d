package kelter.core.catalogue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import kelter.core.job.Market;
import kelter.core.quantity.Quantity;
import kelter.core.vocabulary.Ids;

/**
 * A part that machines of a kind have.
 *
 * @param id its name within the machine
 * @param kind the kind of component; a word that no module knows is allowed
 * @param title the part, for a person
 * @param markets the markets in which such machines have it; empty for all
 * @param figures typical figures by market; UK has those of EU where it has none of its own
 * @param behind the cover that has to come off, if there is one
 * @param minutes how long it takes to get at the part once the cover is off, min, if told
 * @param takesAll whether it takes nearly all the power of the machine, so that the nameplate of
 *     the machine tells its own
 */
public record KindPart(
    String id,
    String kind,
    String title,
    Set<Market> markets,
    Map<Market, List<TypicalFigure>> figures,
    Optional<String> behind,
    Optional<Quantity> minutes,
    boolean takesAll) {

  /**
   * A part that takes what it takes by itself.
   *
   * @param id its name within the machine
   * @param kind the kind of component
   * @param title the part, for a person
   * @param markets the markets in which such machines have it; empty for all
   * @param figures typical figures by market
   * @param behind the cover that has to come off, if there is one
   * @param minutes how long it takes to get at the part, if told
   */
  public KindPart(
      String id,
      String kind,
      String title,
      Set<Market> markets,
      Map<Market, List<TypicalFigure>> figures,
      Optional<String> behind,
      Optional<Quantity> minutes) {
    this(id, kind, title, markets, figures, behind, minutes, false);
  }

  /** Checks words. */
  public KindPart {
    Ids.require(id);
    Ids.require(kind);
    Objects.requireNonNull(title);
    markets = Set.copyOf(markets);
    figures = Map.copyOf(figures);
    Objects.requireNonNull(behind);
    Objects.requireNonNull(minutes);
  }

  /**
   * What such a part usually has.
   *
   * @param market where the machine stands
   * @return the figures; none where the kind tells none
   */
  public List<TypicalFigure> figures(Market market) {
    return figures.getOrDefault(market, List.of());
  }

  /**
   * Whether machines of a market have it.
   *
   * @param market where the machine stands
   * @return true if they do
   */
  public boolean isIn(Market market) {
    return markets.isEmpty() || markets.contains(market);
  }
}
