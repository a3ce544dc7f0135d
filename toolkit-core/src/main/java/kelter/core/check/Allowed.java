package kelter.core.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import kelter.core.safety.Caution;
import kelter.core.source.Source;

/**
 * What a reading may be. It is also the rule of an observable whose limits are the same on every
 * machine.
 *
 * @param title what is held against what, for a person
 * @param source where the limits come from
 * @param limits the limits in the coherent SI unit; empty if none can be told, of which the remark
 *     then says why
 * @param remark what the verdict rests on, may be empty
 * @param cautions what to mind beyond the cautions of the procedure
 * @param ifNot what to mind first where the reading does not conform
 * @param otherwise stricter limits that hold instead if something is so that the job does not tell,
 *     such as the protection class or the net; what lies between both is undecided
 * @param fearedAbove whether it is a value above the limits that is feared ({@link
 *     #fearingAbove()})
 */
public record Allowed(
    String title,
    Source source,
    Optional<Limits> limits,
    String remark,
    List<Caution> cautions,
    Optional<Caution> ifNot,
    Optional<Limits> otherwise,
    boolean fearedAbove)
    implements LimitRule {

  public Allowed {
    Objects.requireNonNull(title);
    Objects.requireNonNull(source);
    Objects.requireNonNull(limits);
    Objects.requireNonNull(remark);
    cautions = List.copyOf(cautions);
  }

  /**
   * Limits.
   *
   * @param title what is held against what, for a person
   * @param source where the limits come from
   * @param limits the limits in the coherent SI unit
   * @return the limits, without a remark
   */
  public static Allowed of(String title, Source source, Limits limits) {
    return new Allowed(
        title,
        source,
        Optional.of(limits),
        "",
        List.of(),
        Optional.empty(),
        Optional.empty(),
        false);
  }

  /**
   * Limits that may turn out impossible by the figures of the job.
   *
   * @param title what is held against what, for a person
   * @param source where the limits come from
   * @param limits works them out, in the coherent SI unit; if it throws an {@link
   *     IllegalArgumentException}, its message says why there are none
   * @return the limits, or why there are none
   */
  public static Allowed of(String title, Source source, Supplier<Limits> limits) {
    try {
      return of(title, source, limits.get());
    } catch (IllegalArgumentException impossible) {
      return without(title, source, impossible.getMessage());
    }
  }

  /**
   * No limits, so that there is no verdict.
   *
   * @param title what should be held against what, for a person
   * @param source where the limits would come from
   * @param why why there are none, and what would give some
   * @return no limits
   */
  public static Allowed without(String title, Source source, String why) {
    return new Allowed(
        title, source, Optional.empty(), why, List.of(), Optional.empty(), Optional.empty(), false);
  }

  @Override
  public Optional<Allowed> allowed(Measured measured) {
    return Optional.of(this);
  }

  /**
   * The same with what the verdict rests on.
   *
   * @param basis a sentence, may be empty; not told where there are no limits
   * @return the limits
   */
  public Allowed resting(String basis) {
    return limits.isEmpty()
        ? this
        : new Allowed(title, source, limits, basis, cautions, ifNot, otherwise, fearedAbove);
  }

  /**
   * The same with something to mind.
   *
   * @param caution what, whatever the verdict
   * @return the limits
   */
  public Allowed minding(Caution caution) {
    List<Caution> all = new ArrayList<>(cautions);
    all.add(caution);
    return new Allowed(title, source, limits, remark, all, ifNot, otherwise, fearedAbove);
  }

  /**
   * The same with something to mind first where the reading does not conform.
   *
   * @param caution what
   * @return the limits
   */
  public Allowed butIfNot(Caution caution) {
    return new Allowed(
        title, source, limits, remark, cautions, Optional.of(caution), otherwise, fearedAbove);
  }

  /**
   * The same where the job does not tell what the limits depend on.
   *
   * @param stricter what every reading meets that conforms whatever it is
   * @return the limits
   */
  public Allowed orPerhaps(Limits stricter) {
    return new Allowed(
        title, source, limits, remark, cautions, ifNot, Optional.of(stricter), fearedAbove);
  }

  /**
   * The same where a value above the limits is what is feared. Where they rest on a figure that
   * nobody has stated, it is then enough to lie above them for no value of that figure and within
   * them for one.
   *
   * @return the limits
   */
  public Allowed fearingAbove() {
    return new Allowed(title, source, limits, remark, cautions, ifNot, otherwise, true);
  }
}
