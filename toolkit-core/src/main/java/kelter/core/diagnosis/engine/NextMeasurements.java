package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.likelihood.Group;
import kelter.core.diagnosis.likelihood.Item;
import kelter.core.safety.Hazard;

/**
 * What to measure next: by expected information per minute, measurements on dead parts first. Where
 * the best one is held back until something else is read, that is proposed in its place.
 *
 * @param ranked the measurements, the best first
 * @param enough whether none of them, nor two together, would lower the expected cost of the repair
 *     by what its time costs
 */
record NextMeasurements(List<Diagnosis.NextMeasurement> ranked, boolean enough) {

  private static final double WORTH_MEASURING = 0.01;

  /** How many of the best are looked at for what they are worth. */
  private static final int LOOKED_AT = 4;

  /**
   * The share of the minutes of a measurement that goes into reaching the component and making it
   * dead, and is saved where that is done; common practice, no source.
   */
  private static final double SET_UP = 0.5;

  /**
   * What any reading takes beside its own minutes: to turn to it, to find the points and to write
   * down what is read, min; common practice, no source.
   */
  private static final double HANDLING = 2;

  private static final Comparator<Candidate> BY_BITS =
      GreatestFirst.by(Candidate::bitsPerMinute, candidate -> candidate.question.key());

  private record Candidate(
      int group,
      Question question,
      Optional<Question> before,
      AnswerOutcomes outcomes,
      double bits,
      double minutes,
      boolean first,
      boolean needed)
      implements Comparable<Candidate> {

    Question proposed() {
      return before.orElse(question);
    }

    double bitsPerMinute() {
      return bits / (minutes + HANDLING);
    }

    boolean isLive() {
      return question.observable().procedure().hazard() == Hazard.LIVE;
    }

    /** What goes first; then dead work before live, what is needed before what is not, and bits. */
    @Override
    public int compareTo(Candidate other) {
      if (first != other.first) {
        return first ? -1 : 1;
      }
      if (isLive() != other.isLive()) {
        return isLive() ? 1 : -1;
      }
      if (needed != other.needed) {
        return needed ? -1 : 1;
      }
      return BY_BITS.compare(this, other);
    }
  }

  static NextMeasurements of(
      List<Group> groups,
      JointPosterior posterior,
      RepairPlan plan,
      EngineSettings settings,
      Permit.Granted granted) {
    List<Candidate> candidates = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      candidates(groups.get(g), g, posterior, settings, granted, candidates);
    }
    candidates.sort(null);
    List<Diagnosis.NextMeasurement> ranked = new ArrayList<>();
    boolean enough = true;
    List<Candidate> looked = new ArrayList<>();
    Set<Question> proposed = new HashSet<>();
    for (Candidate candidate : candidates) {
      if (!proposed.add(candidate.proposed())) {
        continue;
      }
      enough &= !candidate.first && !candidate.needed;
      double worth = Double.NaN;
      if (looked.size() < LOOKED_AT) {
        looked.add(candidate);
        worth = plan.worth(candidate.group, candidate.outcomes.coarse());
        enough &= worth <= plan.costOf(candidate.minutes);
      }
      ranked.add(
          new Diagnosis.NextMeasurement(
              candidate.proposed(), candidate.bits, candidate.minutes, worth));
    }
    return new NextMeasurements(ranked, enough && !aPairIsWorthIt(looked, plan));
  }

  private static void candidates(
      Group group,
      int g,
      JointPosterior posterior,
      EngineSettings settings,
      Permit.Granted granted,
      List<Candidate> into) {
    Set<String> done = new HashSet<>();
    Set<String> reached = new HashSet<>();
    for (Item item : group.readings().items()) {
      done.add(item.key());
      if (item.question().observable().procedure().hazard() != Hazard.LIVE) {
        reached.add(item.question().component());
      }
    }
    List<Question> open = new ArrayList<>();
    for (Question question : group.model().questions()) {
      Hazard hazard = question.observable().procedure().hazard();
      boolean taken = granted.measures(question) || granted.before(question).isPresent();
      if (!done.contains(question.key()) && settings.allows(hazard) && taken) {
        open.add(question);
      }
    }
    if (open.isEmpty()) {
      return;
    }
    double[] probability = new double[group.states()];
    for (int state = 0; state < probability.length; state++) {
      probability[state] = posterior.marginal(g, state);
    }
    Information information =
        new Information(
            group, probability, open, (state, count) -> posterior.nodes(g, state, count));
    for (int k = 0; k < open.size(); k++) {
      AnswerOutcomes outcomes = information.outcomes(k);
      double bits = outcomes.bits();
      if (bits >= WORTH_MEASURING) {
        into.add(candidate(g, open.get(k), outcomes, bits, reached, granted));
      }
    }
  }

  private static Candidate candidate(
      int g,
      Question question,
      AnswerOutcomes outcomes,
      double bits,
      Set<String> reached,
      Permit.Granted granted) {
    Optional<Question> before =
        granted.measures(question) ? Optional.empty() : granted.before(question);
    double minutes =
        minutes(question, reached)
            + before.map(each -> each.observable().procedure().minutes()).orElse(0.0);
    boolean first = granted.goesFirst(question);
    return new Candidate(
        g, question, before, outcomes, bits, minutes, first, granted.isNeeded(question));
  }

  /** How long a measurement takes where some components are already reached. */
  static double minutes(Question question, Set<String> reached) {
    double minutes = question.observable().procedure().minutes();
    boolean saved =
        question.observable().procedure().hazard() != Hazard.LIVE
            && reached.contains(question.component());
    return saved ? minutes * (1 - SET_UP) : minutes;
  }

  /** Two readings can be worth their time together though neither is by itself. */
  private static boolean aPairIsWorthIt(List<Candidate> looked, RepairPlan plan) {
    for (int i = 0; i < looked.size(); i++) {
      for (int j = 0; j < i; j++) {
        Candidate one = looked.get(i);
        Candidate other = looked.get(j);
        double worth =
            one.group == other.group
                ? plan.worth(one.group, one.outcomes.coarse().with(other.outcomes.coarse()))
                : plan.worth(
                    one.group, one.outcomes.coarse(), other.group, other.outcomes.coarse());
        if (worth > plan.costOf(one.minutes + other.minutes)) {
          return true;
        }
      }
    }
    return false;
  }
}
