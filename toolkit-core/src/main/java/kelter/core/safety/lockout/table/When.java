package kelter.core.safety.lockout.table;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * When a row of the table holds: one of what is told, read or of the kind of machine, as far as the
 * machine is one that the row speaks of.
 *
 * @param told what an owner says
 * @param readings readings beyond a limit
 * @param kinds names under {@code lock-out} of a kind of machine
 * @param parts kinds of components that a job lists or the kind of machine has
 * @param stated kinds of components that make it hold where a job itself lists one
 * @param among names under {@code lock-out} of which the kind of machine has one, or else the row
 *     is not about it; empty for all; a machine of an unknown kind counts as one
 * @param with kinds of components of which the machine has one, or else the row is not about it;
 *     empty for all; a machine of an unknown kind counts as having one
 * @param fixed whether only machines without a plug are meant, or only those with one
 * @param clear readings that all conform, or else it does not hold
 */
public record When(
    List<Told> told,
    List<Beyond> readings,
    Set<String> kinds,
    Set<String> parts,
    Set<String> stated,
    Set<String> among,
    Set<String> with,
    Optional<Boolean> fixed,
    List<Retest> clear) {

  public When {
    told = List.copyOf(told);
    readings = List.copyOf(readings);
    kinds = Set.copyOf(kinds);
    parts = Set.copyOf(parts);
    stated = Set.copyOf(stated);
    among = Set.copyOf(among);
    with = Set.copyOf(with);
    clear = List.copyOf(clear);
  }
}
