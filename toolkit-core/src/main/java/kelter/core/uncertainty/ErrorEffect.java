package kelter.core.uncertainty;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * An error that has one cause, and how far it moves each input of a calculation: one input for an
 * error of its own, several for readings that share an instrument or a zero. Effects are
 * independent of each other.
 *
 * @param title what it is, for a person
 * @param inputs the places of the inputs that it moves
 * @param shape its distribution
 * @param degreesOfFreedom those of its standard uncertainty
 * @param moves by how much each input of the calculation moves when the error is one standard
 *     uncertainty, in the coherent SI unit of the input, in the order of the inputs; 0 for those
 *     that do not
 */
public record ErrorEffect(
    String title, List<Integer> inputs, Shape shape, double degreesOfFreedom, List<Double> moves) {

  public ErrorEffect {
    Objects.requireNonNull(title);
    Objects.requireNonNull(shape);
    inputs = List.copyOf(inputs);
    moves = List.copyOf(moves);
  }

  /**
   * The effects behind input quantities.
   *
   * @param inputs the inputs in the order of the calculation
   * @param shared the places of inputs whose stated errors are one and the same, as of readings of
   *     one instrument (JCGM 100:2008, F.1.2.3); the scatter of readings is never shared
   * @return the effects that move anything, in the order of the inputs
   * @throws IllegalArgumentException if shared inputs do not have stated errors of the same shapes
   */
  public static List<ErrorEffect> of(List<InputQuantity> inputs, Set<Integer> shared) {
    List<ErrorEffect> effects = new ArrayList<>();
    boolean told = false;
    for (int i = 0; i < inputs.size(); i++) {
      boolean shares = shared.contains(i);
      for (ErrorTerm term : inputs.get(i).terms()) {
        if (term.standardUncertainty() > 0 && (term.scatter() || !shares)) {
          effects.add(own(inputs.size(), i, term));
        }
      }
      if (shares && !told) {
        effects.addAll(shared(inputs, shared.stream().sorted().toList()));
        told = true;
      }
    }
    return List.copyOf(effects);
  }

  private static ErrorEffect own(int size, int place, ErrorTerm term) {
    List<Double> moves = new ArrayList<>(Collections.nCopies(size, 0.0));
    moves.set(place, term.standardUncertainty());
    return new ErrorEffect(
        term.title(), List.of(place), term.shape(), term.degreesOfFreedom(), moves);
  }

  private static List<ErrorEffect> shared(List<InputQuantity> inputs, List<Integer> places) {
    List<ErrorTerm> first = stated(inputs.get(places.get(0)));
    List<ErrorEffect> effects = new ArrayList<>();
    for (int place : places) {
      requireAlike(first, stated(inputs.get(place)));
    }
    for (int k = 0; k < first.size(); k++) {
      List<Double> moves = new ArrayList<>(Collections.nCopies(inputs.size(), 0.0));
      for (int place : places) {
        moves.set(place, stated(inputs.get(place)).get(k).standardUncertainty());
      }
      ErrorTerm alike = first.get(k);
      effects.add(
          new ErrorEffect("shared", places, alike.shape(), alike.degreesOfFreedom(), moves));
    }
    return effects;
  }

  private static void requireAlike(List<ErrorTerm> first, List<ErrorTerm> other) {
    boolean alike = !first.isEmpty() && first.size() == other.size();
    for (int k = 0; alike && k < first.size(); k++) {
      alike =
          first.get(k).shape() == other.get(k).shape()
              && first.get(k).degreesOfFreedom() == other.get(k).degreesOfFreedom();
    }
    if (!alike) {
      throw new IllegalArgumentException(
          "inputs that share an error must each state it, in the same way and with as many ±");
    }
  }

  private static List<ErrorTerm> stated(InputQuantity input) {
    return input.terms().stream().filter(term -> !term.scatter()).toList();
  }
}
