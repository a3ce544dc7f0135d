package kelter.core.safety.lockout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.job.Market;
import kelter.core.safety.Caution;
import kelter.core.safety.Hazard;
import kelter.core.safety.LockState;
import kelter.core.safety.Taken;
import kelter.core.safety.lockout.table.LockOutRow;
import kelter.core.safety.lockout.table.LockOutTable;

/**
 * What may be proposed on a machine. It is worked out from the whole job each time: nothing is
 * kept, and so nothing is forgotten.
 *
 * @param state the strictest state of the whole machine
 * @param rows the rows that hold, the strictest first
 * @param allowed how something may be found out on the machine
 * @param ask the ids of symptoms to ask for once: what was denied or doubtful
 * @param suspicions faults whose test has to come before any power
 * @param barsAll whether no part is for this tool to mend or to price
 * @param barred the ids of parts that are not, and of which nothing is read
 * @param held the ids of components on which dead tests wait for what makes their row let go
 * @param backToPower the tests on the way back to power as they stand
 * @param market where the machine stands
 */
public record LockOut(
    LockState state,
    List<ActiveRow> rows,
    Set<Taken> allowed,
    List<String> ask,
    List<Suspicion> suspicions,
    boolean barsAll,
    Set<String> barred,
    Set<String> held,
    List<ReleaseTest> backToPower,
    Market market) {

  public LockOut {
    rows = List.copyOf(rows);
    allowed = Set.copyOf(allowed);
    ask = List.copyOf(ask);
    suspicions = List.copyOf(suspicions);
    barred = Set.copyOf(barred);
    held = Set.copyOf(held);
    backToPower = List.copyOf(backToPower);
  }

  /**
   * Works it out.
   *
   * @param table the table
   * @param situation the job with its findings
   * @param suspicions faults whose test has to come before any power
   * @return what may be proposed
   */
  public static LockOut of(LockOutTable table, Situation situation, List<Suspicion> suspicions) {
    Holding holding = Holding.of(table, situation);
    List<ActiveRow> rows = new ArrayList<>(holding.active());
    rows.sort(
        Comparator.comparing((ActiveRow each) -> each.row().state())
            .reversed()
            .thenComparing(each -> each.row().number())
            .thenComparing(each -> each.row().id()));
    LockState state = LockState.A;
    Set<Taken> allowed = EnumSet.allOf(Taken.class);
    Set<String> barred = new HashSet<>();
    Set<String> held = new HashSet<>();
    boolean all = false;
    for (ActiveRow each : rows) {
      LockOutRow row = each.row();
      if (row.only().isEmpty()) {
        state = state.and(row.state());
        allowed.retainAll(row.allowed());
        all |= row.state() == LockState.D;
        row.heldBut().ifPresent(but -> held.addAll(held(but, situation)));
      } else {
        barred.addAll(situation.parts(row.only()));
      }
    }
    if (!suspicions.isEmpty()) {
      allowed.removeAll(EnumSet.of(Taken.POWERED, Taken.RUNNING, Taken.LIVE));
    }
    return new LockOut(
        state,
        rows,
        allowed,
        holding.ask(),
        suspicions,
        all,
        barred,
        held,
        tests(table, situation, rows),
        situation.market());
  }

  private static List<ReleaseTest> tests(
      LockOutTable table, Situation situation, List<ActiveRow> rows) {
    Set<String> ids = new HashSet<>();
    rows.forEach(each -> ids.add(each.row().id()));
    return new ReleaseTests(situation).of(StepsFor.of(table.backToPower(), situation, ids));
  }

  /**
   * The tests that have to be met before anything is read under power, be it the reading that ends
   * a lock-out: earth, insulation, poles, then a minute behind a residual-current device. One that
   * was left out, or is undecided, holds the power back as one that failed.
   *
   * @return those that are not met, in their order
   */
  public List<ReleaseTest> beforePower() {
    return ReleaseTests.openBeforePower(backToPower);
  }

  /**
   * The rows that keep the machine from running and that no kind of machine asks for by itself.
   *
   * @return the rows, the strictest first
   */
  public List<ActiveRow> keeping() {
    return rows.stream()
        .filter(each -> each.row().only().isEmpty() && !each.standing())
        .filter(each -> !each.row().allowed().contains(Taken.RUNNING))
        .toList();
  }

  private static List<String> held(Set<String> but, Situation situation) {
    return situation.job().appliance().components().stream()
        .filter(component -> !but.contains(component.kind()))
        .map(component -> component.id())
        .toList();
  }

  /**
   * Whether a measurement may be proposed.
   *
   * @param component the id of the component
   * @param observable the word for what is measured
   * @param hazard how it is taken
   * @return true if nothing forbids it
   */
  public boolean allows(String component, String observable, Hazard hazard) {
    Taken taken = Taken.of(hazard);
    if (barred.contains(component)) {
      return false;
    }
    boolean powered = taken == Taken.POWERED || taken == Taken.RUNNING;
    if (taken != Taken.LIVE
        && isOpened(component, observable)
        && !(powered && !beforePower().isEmpty())) {
      return true;
    }
    boolean waits = taken == Taken.DEAD && held.contains(component);
    return allowed.contains(taken) && (!waits || isAwaited(component, observable));
  }

  /**
   * Whether a measurement is held back only until what {@link #before} tells is read.
   *
   * @param component the id of the component
   * @param observable the word for what is measured
   * @param hazard how it is taken
   * @return true if that reading can let it be made
   */
  public boolean waits(String component, String observable, Hazard hazard) {
    return Taken.of(hazard) == Taken.DEAD
        && allowed.contains(Taken.DEAD)
        && held.contains(component)
        && !barred.contains(component)
        && !allows(component, observable, hazard);
  }

  /** Whether it is a powered re-test that may be made now. */
  private boolean isOpened(String component, String observable) {
    boolean opened = false;
    for (ActiveRow each : rows) {
      opened |= each.opened() && isAmong(each.openLast(), component, observable);
    }
    return opened;
  }

  /** Whether it is the very reading for which others wait. */
  private boolean isAwaited(String component, String observable) {
    boolean awaited = false;
    for (ActiveRow each : rows) {
      awaited |=
          each.row().heldBut().isPresent() && isAmong(each.openDead(), component, observable);
    }
    return awaited;
  }

  private static boolean isAmong(List<Reread> open, String component, String observable) {
    for (Reread each : open) {
      if (each.component().equals(component) && each.observable().equals(observable)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether a measurement goes before all others.
   *
   * @param component the id of the component
   * @param observable the word for what is measured
   * @return true if a suspicion waits for it
   */
  public boolean goesFirst(String component, String observable) {
    for (Suspicion each : suspicions) {
      if (each.component().equals(component)
          && each.test().filter(observable::equals).isPresent()) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether work on a part may be proposed and priced.
   *
   * @param component the id of the component
   * @return false if it is not for this tool
   */
  public boolean mends(String component) {
    return !barsAll && !barred.contains(component);
  }

  /**
   * Whether the machine must not be powered before something is mended, so that to leave it as it
   * is is no choice.
   *
   * @return false if only its kind asks for it
   */
  public boolean staysUnplugged() {
    return !keeping().isEmpty();
  }

  /**
   * Whether nothing may run, be it that something is only suspected.
   *
   * @return true if no test on a running machine is proposed
   */
  public boolean forbidsRunning() {
    return !allowed.contains(Taken.RUNNING);
  }

  /**
   * A row that holds.
   *
   * @param id its word
   * @return the row, or empty if it does not hold
   */
  public Optional<ActiveRow> row(String id) {
    return rows.stream().filter(each -> each.row().id().equals(id)).findFirst();
  }

  /**
   * What to mind before all else.
   *
   * @return the caution of the strictest row; empty if none holds
   */
  public Optional<Caution> caution() {
    for (ActiveRow each : rows) {
      if (!each.quiet()) {
        return Optional.of(each.caution());
      }
    }
    return Optional.empty();
  }

  /**
   * The first line of every text.
   *
   * @return the text of the strictest row; empty if none holds
   */
  public String text() {
    Optional<Caution> caution = caution();
    return caution.isPresent() ? caution.get().text() : "";
  }

  /**
   * What has to be read before anything inside, since charge is left there.
   *
   * @return the readings; none where nothing is held back
   */
  public List<Reread> before() {
    List<Reread> before = new ArrayList<>();
    for (ActiveRow each : rows) {
      if (each.row().heldBut().isPresent()) {
        before.addAll(each.openDead());
      }
    }
    return before;
  }
}
