package kelter.core.book.learned;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import kelter.core.book.ConfirmedCause;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindCause;
import kelter.core.catalogue.KindPart;
import kelter.core.diagnosis.Wear;

/** The classes that a call to a kind of machine can fall into, with their shares by its table. */
public final class KindTable {

  /** Stands for calls that have no cause. */
  public static final String NOTHING_WRONG = "nothing-wrong";

  /** Stands for causes that the kind does not name. */
  public static final String SOMETHING_ELSE = "something-else";

  private final Kind kind;
  private final List<String> keys;
  private final double[] share;
  private final Map<String, Integer> byPart = new HashMap<>();
  private final Map<String, Integer> byComponent = new HashMap<>();

  /**
   * The classes of a kind.
   *
   * @param kind the kind
   */
  public KindTable(Kind kind) {
    this.kind = kind;
    Map<String, String> components = new HashMap<>();
    for (KindPart part : kind.parts()) {
      components.put(part.id(), part.kind());
    }
    List<String> keys = new ArrayList<>();
    for (KindCause cause : kind.causes()) {
      byPart.put(cause.key(), keys.size());
      String component = components.getOrDefault(cause.part(), cause.part());
      byComponent.putIfAbsent(component + "." + cause.fault(), keys.size());
      keys.add(cause.key());
    }
    keys.add(NOTHING_WRONG);
    keys.add(SOMETHING_ELSE);
    this.keys = List.copyOf(keys);
    this.share = new double[keys.size()];
    for (int i = 0; i < kind.causes().size(); i++) {
      share[i] = kind.causes().get(i).share();
    }
    share[nothing()] = kind.nothingWrong().share();
    share[other()] = kind.somethingElse();
    rescale(share);
  }

  /**
   * The kind.
   *
   * @return the kind that it was made of
   */
  public Kind kind() {
    return kind;
  }

  /**
   * The classes.
   *
   * @return the causes by their key, then the two words
   */
  public List<String> keys() {
    return keys;
  }

  /**
   * The class of calls that have no cause.
   *
   * @return its number; those of causes are below
   */
  public int nothing() {
    return keys.size() - 2;
  }

  /**
   * The class of causes that the kind does not name.
   *
   * @return its number
   */
  public int other() {
    return keys.size() - 1;
  }

  /**
   * The class of a confirmed cause.
   *
   * @param cause the cause
   * @return the number of its class; that of something else where the kind does not name it
   */
  public int of(ConfirmedCause cause) {
    Integer named = byPart.get(cause.key());
    if (named == null) {
      named = byComponent.get(cause.kind() + "." + cause.fault());
    }
    return named == null ? other() : named;
  }

  /**
   * The shares at the typical age.
   *
   * @return a share for each class, summing to 1
   */
  public double[] shares() {
    return share.clone();
  }

  /**
   * The shares at an age.
   *
   * @param typical those at the typical age, summing to 1
   * @param age the age, years; empty for the typical one
   * @return a share for each class, summing to 1
   */
  public double[] at(double[] typical, OptionalDouble age) {
    double[] shares = typical.clone();
    if (age.isPresent()) {
      for (int i = 0; i < nothing(); i++) {
        OptionalDouble shape = kind.causes().get(i).wear();
        if (shape.isPresent()) {
          shares[i] *=
              new Wear(shape.getAsDouble(), kind.typicalAge(), kind.source())
                  .factor(age.getAsDouble());
        }
      }
      rescale(shares);
    }
    return shares;
  }

  /** Causes fill what nothing-wrong and something-else leave. */
  private void rescale(double[] shares) {
    double left = 1 - shares[nothing()] - shares[other()];
    double sum = 0;
    for (int i = 0; i < nothing(); i++) {
      sum += shares[i];
    }
    for (int i = 0; i < nothing(); i++) {
      shares[i] *= left / sum;
    }
  }

  /**
   * Makes shares sum to 1.
   *
   * @param shares shares, 0 or more, not all 0
   * @return each divided by their sum
   */
  public static double[] normalised(double[] shares) {
    double sum = 0;
    for (double each : shares) {
      sum += each;
    }
    double[] all = shares.clone();
    for (int i = 0; i < all.length; i++) {
      all[i] /= sum;
    }
    return all;
  }
}
