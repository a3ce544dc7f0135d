package kelter.core.job.rule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Instrument;
import kelter.core.job.Reading;
import kelter.core.problem.Place;
import kelter.core.quantity.Dimension;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Possible;
import kelter.core.vocabulary.Vocabulary;

/**
 * The rules for single entries of a job. Each notes a mistake at the place that it is given; what
 * cannot be used is not returned.
 */
public final class EntryRules {

  /** No machine is older, in years of 365.25 days; common practice, no source. */
  private static final int OLDEST = 100;

  private static final double ROUNDING = 1e-9;

  private static final Dimension SECOND = Dimension.of("s");

  private EntryRules() {}

  /**
   * Holds the age of an appliance against what can be: 0 to 100 years.
   *
   * @param age the age
   * @param written how it was written, for the message
   * @param at where it stands
   * @return the age
   */
  public static Optional<Quantity> age(Quantity age, String written, Place at) {
    try {
      Possible.requireKind(age, QuantityKind.AGE);
      Possible.requireNotNegative(age, written);
    } catch (IllegalArgumentException refused) {
      return at.refuse(refused);
    }
    if (age.si() > OLDEST * QuantityKind.AGE.unit().factor()) {
      at.problem(
          "an age of " + age.display() + "; up to " + OLDEST + " years are taken",
          "correct the age or its unit");
      return Optional.empty();
    }
    return Optional.of(age);
  }

  /**
   * Holds an id against those that were there before, and keeps it.
   *
   * @param seen the ids so far, to which this one is added
   * @param what what has the id, for the message
   * @param id the id
   * @param at where it stands
   * @return true if it is the first of that id
   */
  public static boolean once(Set<String> seen, String what, String id, Place at) {
    boolean first = seen.add(id);
    if (!first) {
      at.problem(what + " '" + id + "' occurs twice", "give each its own id");
    }
    return first;
  }

  /**
   * The kind of a component.
   *
   * @param word the word for it
   * @param vocabulary the words that are known
   * @param at where it stands
   * @return the kind
   */
  public static Optional<ComponentKind> kind(String word, Vocabulary vocabulary, Place at) {
    Optional<ComponentKind> kind = vocabulary.kind(word);
    if (kind.isEmpty()) {
      List<String> known = new ArrayList<>();
      for (ComponentKind each : vocabulary.kinds()) {
        known.add(each.id());
      }
      at.isKnown(word, known, "kind of component");
    }
    return kind;
  }

  /**
   * The component that was measured.
   *
   * @param id its id
   * @param appliance the machine
   * @param at where the id stands
   * @return the component
   */
  public static Optional<Component> component(String id, Appliance appliance, Place at) {
    Optional<Component> component = appliance.component(id);
    if (component.isEmpty()) {
      List<String> known = new ArrayList<>();
      for (Component each : appliance.components()) {
        known.add(each.id());
      }
      at.isKnown(id, known, "component of this appliance");
    }
    return component;
  }

  /**
   * What was measured.
   *
   * @param word the word for it
   * @param kind the kind of component on which it was measured
   * @param at where the word stands
   * @return the observable
   */
  public static Optional<Observable> observable(String word, ComponentKind kind, Place at) {
    List<String> known = new ArrayList<>();
    for (Observable each : kind.observables()) {
      if (each.id().equals(word)) {
        return Optional.of(each);
      }
      known.add(each.id());
    }
    at.isKnown(word, known, "observable of " + QuantityFormat.withArticle(kind.id()));
    return Optional.empty();
  }

  /**
   * Holds the name of an instrument against those that are known: own ones and the library.
   *
   * @param id the id of the instrument
   * @param own the instruments that were described
   * @param at where the id stands
   * @return the id
   */
  public static Optional<String> instrument(String id, Collection<Instrument> own, Place at) {
    Set<String> known = new LinkedHashSet<>();
    for (Instrument instrument : own) {
      if (instrument.id().equals(id)) {
        return Optional.of(id);
      }
      known.add(instrument.id());
    }
    if (InstrumentLibrary.find(id).isPresent()) {
      return Optional.of(id);
    }
    known.addAll(InstrumentLibrary.ids());
    at.isKnown(id, known, "instrument of this job or of the library");
    return Optional.empty();
  }

  /**
   * Notes an instrument that cannot have shown a reading. One of which no function is stated may
   * have shown anything, and one that measures a quantity may have shown its change in time, as a
   * thermometer does a rate of heating.
   *
   * @param instrument the instrument
   * @param observable what was read
   * @param at where it is named
   */
  public static void function(Instrument instrument, Observable observable, Place at) {
    if (observable.type() != Observable.Type.QUANTITY
        || instrument.functions().isEmpty()
        || !instrument.functions(observable.kind()).isEmpty()) {
      return;
    }
    Dimension sum = observable.kind().unit().dimension().times(SECOND);
    Set<String> measured = new LinkedHashSet<>();
    for (Instrument.Function function : instrument.functions()) {
      if (function.kind().unit().dimension().equals(sum)) {
        return;
      }
      measured.add(function.kind().name());
    }
    at.problem(
        "'%s' measures %s, and the reading is %s"
            .formatted(
                instrument.id(),
                String.join(", ", measured),
                QuantityFormat.withArticle(observable.kind().name())),
        instrument.typical().isEmpty()
            ? "name what it was read with, or add the function to the instrument"
            : "name what it was read with");
  }

  /**
   * Notes a value that an instrument of the user's own cannot have shown, since its widest range
   * ends below. Of what is only typical of its class nobody knows where it ends.
   *
   * @param instrument the instrument
   * @param reading what was read
   * @param observable what was read
   * @param at where the reading stands
   */
  public static void range(
      Instrument instrument, Reading reading, Observable observable, Place at) {
    if (instrument.typical().isPresent() || !(reading instanceof Reading.Value value)) {
      return;
    }
    Quantity shown = value.quantity();
    Optional<Instrument.Function> widest = instrument.range(observable.kind(), shown.si());
    if (widest.isEmpty() || Math.abs(shown.si()) <= widest.get().end() * (1 + ROUNDING)) {
      return;
    }
    String end = Quantity.ofSi(widest.get().end(), 0, observable.kind()).in(shown.unit()).display();
    at.problem(
        shown.display() + " is beyond the range of '" + instrument.id() + "', which ends at " + end,
        "correct the one or the other; what lies beyond a range is written '> " + end + "'");
  }

  /**
   * Holds a figure or a condition against its word.
   *
   * @param figure the figure
   * @param word what it is called, of which kind it is and what it can be
   * @param at where it stands
   * @return the figure
   */
  public static Optional<Quantity> figure(Quantity figure, Characteristic word, Place at) {
    try {
      return Optional.of(Possible.require(figure, word.kind(), word.span()));
    } catch (IllegalArgumentException refused) {
      return at.refuse(refused);
    }
  }
}
