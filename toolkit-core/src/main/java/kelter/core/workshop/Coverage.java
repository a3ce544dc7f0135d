package kelter.core.workshop;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindCause;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.job.Appliance;
import kelter.core.job.Market;
import kelter.core.job.Nameplate;

/**
 * How much of what is behind calls to a kind of machine the modules have models of. Causes that are
 * for the licensed trade are left out, and those of several like pieces where there is one.
 *
 * @param kind the kind
 * @param share the share of causes with a model, from 0 to 1
 * @param without the causes without one, the most frequent first
 */
public record Coverage(Kind kind, double share, List<KindCause> without) {

  public Coverage {
    without = List.copyOf(without);
  }

  /**
   * The coverage of a kind in a workshop.
   *
   * @param workshop the workshop
   * @param kind the kind
   * @return what its modules cover, in any market
   */
  static Coverage of(Workshop workshop, Kind kind) {
    Set<String> modelled = new HashSet<>();
    Appliance machine =
        workshop.whole(
            new Appliance(
                kind.id(), "", "", "", Optional.empty(), Nameplate.UNREADABLE, List.of()));
    for (Market market : Market.values()) {
      for (FaultModel model : workshop.known(machine, Optional.of(market)).knowledge().models()) {
        for (Fault fault : model.faults()) {
          modelled.add(fault.key());
        }
      }
    }
    double covered = 0;
    double all = 0;
    List<KindCause> without = new ArrayList<>();
    for (KindCause cause : kind.causes()) {
      boolean known = modelled.contains(cause.key());
      boolean met = known || cause.several().isEmpty();
      if (met && cause.mend() != KindCause.Mend.HAND_OVER) {
        all += cause.share();
        covered += known ? cause.share() : 0;
        if (!known) {
          without.add(cause);
        }
      }
    }
    without.sort((one, other) -> Double.compare(other.share(), one.share()));
    return new Coverage(kind, all == 0 ? 1 : covered / all, without);
  }
}
