package kelter.core.catalogue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.problem.Required;
import kelter.core.source.Source;
import kelter.core.vocabulary.Ids;
import kelter.core.vocabulary.Meaning;

/**
 * What a shop knows of one model of machine. Two names are the same if they differ only in case,
 * spaces and hyphens.
 *
 * @param kind the kind of machine
 * @param maker its maker, not blank
 * @param model its name, not blank
 * @param also other names of the same model
 * @param nameplate what its nameplate says
 * @param components its components, each id once
 * @param codes what the codes on its display mean, by the code as it is shown
 * @param source where all of this comes from
 */
public record MachineModel(
    String kind,
    String maker,
    String model,
    List<String> also,
    Nameplate nameplate,
    List<Component> components,
    Map<String, Meaning> codes,
    Source source) {

  /** How far two rated voltages may lie apart and still be one mains; common practice. */
  private static final double ONE_MAINS = 1.1;

  /**
   * Checks the names.
   *
   * @throws IllegalArgumentException if the kind is not an id, or a name has neither letter nor
   *     digit
   */
  public MachineModel {
    Ids.require(Required.value(kind, "kind of a model"));
    requireName(maker, "maker");
    requireName(model, "model");
    also = Required.list(also, "other names of a model");
    also.forEach(name -> requireName(name, "other name"));
    Required.value(nameplate, "nameplate of a model");
    components = Required.list(components, "components of a model");
    codes = Required.map(codes, "codes of a model");
    Required.value(source, "source of a model");
  }

  private static void requireName(String name, String what) {
    if (plain(Required.value(name, what + " of a model")).isEmpty()) {
      throw new IllegalArgumentException("'" + name + "' is no name of a " + what);
    }
  }

  /**
   * What it is called.
   *
   * @return maker and model
   */
  public String name() {
    return maker + " " + model;
  }

  /**
   * Whether a machine has its maker and one of its names, whatever else differs.
   *
   * @param machine a machine
   * @return true if it has
   */
  public boolean names(Appliance machine) {
    return plain(maker).equals(plain(machine.maker())) && isCalled(machine.model());
  }

  /**
   * Whether a machine is of this model: maker and one of its names, the kind, and the same mains
   * where both state a rated voltage.
   *
   * @param machine a machine
   * @return true if it is
   */
  public boolean fits(Appliance machine) {
    return names(machine)
        && kind.equals(machine.kind())
        && onOneMains(nameplate, machine.nameplate());
  }

  /**
   * Whether there may be a machine that both this model and another one fit.
   *
   * @param other another model
   * @return true if there may be
   */
  public boolean meets(MachineModel other) {
    boolean called = isCalled(other.model);
    for (String name : other.also) {
      called |= isCalled(name);
    }
    return called
        && plain(maker).equals(plain(other.maker))
        && kind.equals(other.kind)
        && onOneMains(nameplate, other.nameplate);
  }

  private boolean isCalled(String word) {
    String asked = plain(word);
    boolean called = asked.equals(plain(model));
    for (String name : also) {
      called |= asked.equals(plain(name));
    }
    return called;
  }

  private static boolean onOneMains(Nameplate one, Nameplate other) {
    if (one.voltage().isEmpty() || other.voltage().isEmpty()) {
      return true;
    }
    RatedRange a = one.voltage().get();
    RatedRange b = other.voltage().get();
    return a.low().si() <= b.high().si() * ONE_MAINS && b.low().si() <= a.high().si() * ONE_MAINS;
  }

  /**
   * A machine with what this model tells where the job is silent. The job's own figures always win.
   * A component is filled from the one of the same id and kind, or from the only one of its kind
   * where the machine has one of it, too; those that the machine lacks are added. A component that
   * was filled has the model's source, beside its own where the job states figures of it.
   *
   * @param stated the machine as its job states it
   * @return the machine, filled; as it was stated if it is not of this model
   */
  public Appliance complete(Appliance stated) {
    return fits(stated) ? Filling.of(stated, this) : stated;
  }

  /**
   * What a code on the display means.
   *
   * @param code the code as it is shown; case, spaces and hyphens do not matter
   * @return the meaning, or empty if this model does not tell it
   */
  public Optional<Meaning> meaning(String code) {
    Map<String, Meaning> byPlain = new LinkedHashMap<>();
    codes.forEach((shown, meaning) -> byPlain.putIfAbsent(plain(shown), meaning));
    return Optional.ofNullable(byPlain.get(plain(code)));
  }

  /**
   * A name without what does not matter in it.
   *
   * @param name a name of a maker or model, or a code
   * @return its letters, digits and signs but for spaces and hyphens, in lower case
   */
  public static String plain(String name) {
    StringBuilder kept = new StringBuilder();
    name.toLowerCase(Locale.ROOT)
        .codePoints()
        .filter(sign -> !Character.isWhitespace(sign) && !Character.isSpaceChar(sign))
        .filter(sign -> Character.getType(sign) != Character.DASH_PUNCTUATION)
        .forEach(kept::appendCodePoint);
    return kept.toString();
  }
}
