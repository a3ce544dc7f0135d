package kelter.core.safety.lockout;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Market;
import kelter.core.job.Measurement;
import kelter.core.job.RatedRange;
import kelter.core.job.Reading;
import kelter.core.quantity.QuantityFormat;
import kelter.core.safety.DischargeWait;
import kelter.core.safety.ProtectionClass;

/**
 * The figures of a machine that stand in the steps around power: waits, and the limits of rows 6 to
 * 8 of the table (EN 50678, from memory; in North America the type tests of UL 859, 57.1, and UL
 * 101, cited second-hand). Local code comes first.
 */
record MachineFigures(Situation situation) {

  private static final String DRIVE = "inverter-drive";
  private static final String CAPACITANCE = "capacitance";
  private static final String BLEED = "bleed-resistance";
  private static final String BUS = "bus-voltage";
  private static final Set<String> HEATERS = Set.of("heater", "air-heater");
  private static final Set<String> VOLTAGES = Set.of("voltage-idle", "voltage-loaded");

  /** An ordinary filter, F and Ohm; common practice, no source. */
  private static final double FILTER = 2.2e-6;

  private static final double FILTER_BLEED = 1e6;

  /** Row 6: Ohm up to 5 m, more for each full further 7.5 m, at most. */
  private static final double EARTH = 0.3;

  private static final double EARTH_LENGTH = 5;
  private static final double EARTH_STEP = 0.1;
  private static final double EARTH_STEP_LENGTH = 7.5;
  private static final double EARTH_MOST = 1;

  /** Row 8: mA, W above which it is 1 mA a kW, and mA at most. */
  private static final double CURRENT = 3.5;

  private static final double CURRENT_POWER = 3500;
  private static final double CURRENT_MOST = 10;

  /** Row 8: touch current, mA. */
  private static final double TOUCH = 0.5;

  /** Row 6: what the habit of the UK allows beside the cord, Ohm. */
  private static final double EARTH_UK = 0.1;

  /** Row 6 in North America: from touchable metal to the grounding blade, Ohm; UL 859, 57.1. */
  private static final double EARTH_NA = 0.1;

  /** Row 8 in North America: stationary and portable machines, mA; UL 101. */
  private static final double CURRENT_NA = 0.75;

  private static final double CURRENT_NA_PORTABLE = 0.5;

  /** Above the voltage of an ordinary outlet in North America, V. */
  private static final double AMERICAN_OUTLET = 150;

  /** Row 7: Mohm. */
  private static final double OF_HEATING = 0.3;

  private static final double OF_CLASS_ONE = 1;
  private static final double OF_CLASS_TWO = 2;
  private static final double OF_CLASS_THREE = 0.25;

  /** A text with the figures of the machine in place of the words in braces. */
  String fill(String text) {
    return text.replace("{filter-wait}", "Wait " + filter() + " s")
        .replace("{dc-wait}", dcLink())
        .replace("{earth-limit}", earth())
        .replace("{insulation-limit}", insulation())
        .replace("{conductor-limit}", current())
        .replace("{earth-where}", hasCord() ? "flexing the cord" : "where it is connected")
        .replace("{powered-by}", poweredBy())
        .replace("{power-off}", situation.isFixed() ? "have it isolated again" : "unplug again");
  }

  /**
   * What a figure may be that is read at a connection of which the machine has no part.
   *
   * @param observable the word for what is read
   * @return the limits in the coherent SI unit; empty for what rows 6 to 8 do not name
   */
  Optional<Limits> limits(String observable) {
    return switch (observable) {
      case "protective-conductor-resistance" -> Optional.of(Limits.atMost(mostEarth()));
      case "insulation-resistance" -> Optional.of(Limits.atLeast(1e6 * leastInsulation()));
      case "protective-conductor-current" -> Optional.of(Limits.atMost(mostCurrent() / 1000));
      case "touch-current" -> Optional.of(Limits.atMost(TOUCH / 1000));
      default -> Optional.empty();
    };
  }

  private long filter() {
    return DischargeWait.told(
        DischargeWait.seconds(
            FILTER,
            FILTER_BLEED,
            DischargeWait.start(situation.nominal(), highest()),
            DischargeWait.PLUG));
  }

  /** How long the capacitors of the drive take; the longest wait where a figure is missing. */
  String dcLink() {
    double longest = 0;
    boolean known = false;
    for (Component drive : situation.job().appliance().componentsOf(DRIVE)) {
      double time = time(drive);
      known = !Double.isNaN(time);
      longest = Math.max(longest, time);
      if (!known) {
        break;
      }
    }
    return known
        ? "Wait " + DischargeWait.told(longest) + " s, then measure."
        : "Wait 15 min or as marked, then measure.";
  }

  private double time(Component drive) {
    double capacitance = si(drive, CAPACITANCE);
    double bleed = si(drive, BLEED);
    double bus = si(drive, BUS);
    double mains = DischargeWait.start(situation.nominal(), highest());
    double start = Double.isNaN(bus) ? mains : Math.max(mains, DischargeWait.boosted(bus));
    return DischargeWait.seconds(capacitance, bleed, start, DischargeWait.INSIDE);
  }

  private static double si(Component component, String figure) {
    return component.figure(figure).map(each -> each.si()).orElse(Double.NaN);
  }

  /** The highest voltage that was read at the outlet, V; 0 if none was. */
  private double highest() {
    double highest = 0;
    for (Measurement measurement : situation.job().measurements()) {
      for (Reading reading : measurement.readings()) {
        boolean value = VOLTAGES.contains(measurement.observable());
        highest = value && reading.least() > highest ? reading.least() : highest;
      }
    }
    return highest;
  }

  private String earth() {
    return situation.market() == Market.UK && hasCord()
        ? plain(EARTH_UK) + " ohm and the cord"
        : plain(mostEarth()) + " ohm";
  }

  /** No outlet with a ground-fault interrupter is usual at 208 V and 240 V in North America. */
  private String poweredBy() {
    boolean american = situation.market() == Market.NA;
    String device = american ? "GFCI" : "residual-current device";
    if (situation.isFixed()) {
      String at = american ? "disconnect" : "isolator";
      return "Switched on at its " + at + ", behind a " + device + " if its circuit has one";
    }
    boolean seldom = american && situation.nominal() > AMERICAN_OUTLET;
    return "Outlet behind a " + device + (seldom ? " if its circuit has one" : "");
  }

  private boolean hasCord() {
    return !situation.parts(Set.of("supply-cord")).isEmpty();
  }

  private double mostEarth() {
    if (situation.market() == Market.UK) {
      return EARTH_UK;
    }
    if (situation.market() == Market.NA) {
      return EARTH_NA;
    }
    double length = 0;
    for (Component cord : situation.job().appliance().componentsOf("supply-cord")) {
      length = Math.max(length, cord.figure("length").map(each -> each.si()).orElse(0.0));
    }
    double steps = Math.max(0, Math.floor((length - EARTH_LENGTH) / EARTH_STEP_LENGTH + 1e-9));
    return Math.min(EARTH_MOST, EARTH + EARTH_STEP * steps);
  }

  private String insulation() {
    String least = megohms(leastInsulation());
    return stated().isPresent()
        ? least + " (class " + stated().get() + ")"
        : least
            + " ("
            + megohms(ofClass(ProtectionClass.I))
            + " once the nameplate is known to be of class I)";
  }

  /** Mohm; of the strictest class while nobody has stated one. */
  private double leastInsulation() {
    return ofClass(stated().orElse(ProtectionClass.II));
  }

  private Optional<ProtectionClass> stated() {
    return situation.job().appliance().nameplate().protectionClass();
  }

  private double ofClass(ProtectionClass protectionClass) {
    return switch (protectionClass) {
      case I -> isHeating() ? OF_HEATING : OF_CLASS_ONE;
      case II -> OF_CLASS_TWO;
      case III -> OF_CLASS_THREE;
    };
  }

  private static String megohms(double value) {
    return QuantityFormat.plain(value) + " Mohm";
  }

  private boolean isHeating() {
    return !situation.parts(HEATERS).isEmpty();
  }

  private String current() {
    return situation.market() == Market.NA
        ? QuantityFormat.plain(CURRENT_NA)
            + " mA ("
            + QuantityFormat.plain(CURRENT_NA_PORTABLE)
            + " mA if portable)"
        : plain(mostCurrent()) + " mA";
  }

  private double mostCurrent() {
    if (situation.market() == Market.NA) {
      return CURRENT_NA;
    }
    double power =
        situation.job().appliance().nameplate().power().map(RatedRange::meanSi).orElse(0.0);
    boolean more = isHeating() && power > CURRENT_POWER;
    return more ? Math.min(CURRENT_MOST, power / 1000) : CURRENT;
  }

  private static String plain(double value) {
    return QuantityFormat.plain(Math.round(value * 10) / 10.0).toLowerCase(Locale.ROOT);
  }
}
