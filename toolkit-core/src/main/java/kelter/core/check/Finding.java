package kelter.core.check;

import java.util.List;
import java.util.Optional;
import kelter.core.problem.Required;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Unit;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.uncertainty.Estimate;
import kelter.core.vocabulary.Statement;

/**
 * Measured against limits.
 *
 * @param id the check and the component; where one check finds several things on a component, as at
 *     several conditions, all but the first have a number behind it ({@link Checker})
 * @param component the id of the component
 * @param observable the word for the observable
 * @param title what was held against what, for a person
 * @param shown the reading as it is told to a person, may be empty if not measured
 * @param kind what was measured
 * @param unit the unit in which reading and limits are told
 * @param judgement the reading held against the limits
 * @param limits what it may be, in the coherent SI unit
 * @param source where the limits come from
 * @param cautions what to mind
 * @param remark what the verdict rests on or what would settle it, may be empty
 * @param fearedAbove whether it is a value above the limits that is feared
 * @see Allowed#fearingAbove()
 */
public record Finding(
    String id,
    String component,
    String observable,
    String title,
    String shown,
    QuantityKind kind,
    Unit unit,
    Judgement judgement,
    Limits limits,
    Source source,
    List<Caution> cautions,
    String remark,
    boolean fearedAbove) {

  /**
   * A finding of which both sides of its limits count alike.
   *
   * @param id the check and the component
   * @param component the id of the component
   * @param observable the word for the observable
   * @param title what was held against what, for a person
   * @param shown the reading as it is told to a person, may be empty if not measured
   * @param kind what was measured
   * @param unit the unit in which reading and limits are told
   * @param judgement the reading held against the limits
   * @param limits what it may be, in the coherent SI unit
   * @param source where the limits come from
   * @param cautions what to mind
   * @param remark what the verdict rests on or what would settle it, may be empty
   */
  public Finding(
      String id,
      String component,
      String observable,
      String title,
      String shown,
      QuantityKind kind,
      Unit unit,
      Judgement judgement,
      Limits limits,
      Source source,
      List<Caution> cautions,
      String remark) {
    this(
        id,
        component,
        observable,
        title,
        shown,
        kind,
        unit,
        judgement,
        limits,
        source,
        cautions,
        remark,
        false);
  }

  /**
   * Checks that it can be told.
   *
   * @throws NullPointerException if anything is null
   * @throws IllegalArgumentException if the unit does not fit what was measured
   */
  public Finding {
    Required.value(id, "the id of a finding");
    Required.value(component, "the component of a finding");
    Required.value(observable, "the observable of a finding");
    Required.value(title, "the title of a finding");
    Required.value(shown, "the reading of a finding");
    Required.value(kind, "what a finding measured");
    Required.value(unit, "the unit of a finding");
    Required.value(judgement, "the judgement of a finding");
    Required.value(limits, "the limits of a finding");
    Required.value(source, "the source of a finding");
    cautions = Required.list(cautions, "the list of cautions");
    Required.value(remark, "the remark of a finding");
    if (!unit.dimension().equals(kind.unit().dimension())) {
      throw new IllegalArgumentException(
          id + ": a " + kind.name() + " is not told in " + unit.symbol());
    }
  }

  /**
   * Whether the machine must stay unplugged because of it.
   *
   * @return true if one of its cautions says so
   */
  public boolean keepsUnplugged() {
    for (Caution caution : cautions) {
      if (caution.keepsUnplugged()) {
        return true;
      }
    }
    return false;
  }

  /**
   * The same under another id.
   *
   * @param other the id
   * @return a new finding
   */
  Finding named(String other) {
    return with(other, title, judgement, limits, source, remark);
  }

  /**
   * The same of a reading after the work.
   *
   * @return a new finding, whose id and title say so
   */
  public Finding asLeft() {
    return with(id + "-as-left", title + ", as left", judgement, limits, source, remark);
  }

  /**
   * The same against limits of which nobody has said where in a span they lie.
   *
   * @param widest the widest limits
   * @param from where they come from
   * @param restsOn what the verdict rests on, for a person
   * @param open whether the verdict depends on where they lie, so that it is undecided
   * @return a new finding
   */
  public Finding within(Limits widest, Source from, String restsOn, boolean open) {
    return with(id, title, open ? judgement.undecided() : judgement, widest, from, restsOn);
  }

  /**
   * The same with another judgement against other limits.
   *
   * @param other the judgement
   * @param against the limits
   * @return a new finding
   */
  public Finding judged(Judgement other, Limits against) {
    return with(id, title, other, against, source, remark);
  }

  private Finding with(
      String otherId,
      String otherTitle,
      Judgement other,
      Limits against,
      Source from,
      String restsOn) {
    return new Finding(
        otherId,
        component,
        observable,
        otherTitle,
        shown,
        kind,
        unit,
        other,
        against,
        from,
        cautions,
        restsOn,
        fearedAbove);
  }

  /**
   * The verdict.
   *
   * @return the verdict of the judgement
   */
  public Verdict verdict() {
    return judgement.verdict();
  }

  /**
   * What would settle a finding that is undecided, for a person.
   *
   * @param rule the rule by which the verdict was given
   * @return a sentence with its word for programs; empty if there is a verdict
   */
  public Optional<Statement> toSettle(DecisionRule rule) {
    if (verdict() != Verdict.UNDECIDED) {
      return Optional.empty();
    }
    if (judgement.quantity().isEmpty() && (shown.startsWith(">") || shown.startsWith("<"))) {
      return ToSettle.READ_VALUE.told(
          "To settle it, read a value with an instrument whose range reaches it.");
    }
    if (judgement.quantity().isEmpty()) {
      return ToSettle.READ_VALUE.told(
          "To settle it, read a value; at the end of a range write the end, for instance '> 2 %s'."
              .formatted(unit.code()));
    }
    if (Double.isNaN(judgement.probabilityOfConformity())) {
      return ToSettle.STATE_LIMIT.told(
          "Not another instrument settles it, but what the limit depends on.");
    }
    Estimate measured = judgement.measured().get();
    double enough = rule.settlingUncertainty(measured.value(), limits);
    if (enough == 0) {
      return ToSettle.ON_LIMIT.told("The value lies on the limit: no instrument settles it.");
    }
    if (measured.standardUncertainty() <= enough) {
      return ToSettle.READ_OFTENER.told(
          "To settle it, read it more often: so few readings do not tell how much they scatter.");
    }
    return ToSettle.READ_FINER.told(
        "To settle it, read the same to ± %s; this reading is good to ± %s."
            .formatted(expanded(enough), expanded(measured.standardUncertainty())));
  }

  private String expanded(double standardUncertainty) {
    double told = QuantityFormat.COVERAGE_FACTOR * standardUncertainty / unit.factor();
    return (QuantityFormat.plain(told) + " " + unit.symbol()).strip();
  }
}
