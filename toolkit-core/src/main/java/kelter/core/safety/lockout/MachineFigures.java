package kelter.core.safety.lockout;

import java.util.Locale;
import java.util.Set;
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
 * 8 of the table (EN 50678, from memory). Local code comes first.
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

  /** A text with the figures of the machine in place of the words in braces. */
  String fill(String text) {
    return text.replace("{filter-wait}", "Wait " + filter() + " s")
        .replace("{dc-wait}", dcLink())
        .replace("{earth-limit}", earth())
        .replace("{insulation-limit}", insulation())
        .replace("{conductor-limit}", current());
  }

  private long filter() {
    return DischargeWait.told(
        DischargeWait.seconds(
            FILTER,
            FILTER_BLEED,
            DischargeWait.start(situation.nominal(), highest()),
            DischargeWait.PLUG));
  }

  /** How long the capacitors of the drive take; only to measure where a figure is missing. */
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
        : "No time is known: measure.";
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
    if (situation.market() == Market.UK) {
      return "0.1 ohm and the cord";
    }
    double length = 0;
    for (Component cord : situation.job().appliance().componentsOf("supply-cord")) {
      length = Math.max(length, cord.figure("length").map(each -> each.si()).orElse(0.0));
    }
    double steps = Math.max(0, Math.floor((length - EARTH_LENGTH) / EARTH_STEP_LENGTH + 1e-9));
    return plain(Math.min(EARTH_MOST, EARTH + EARTH_STEP * steps)) + " ohm";
  }

  private String insulation() {
    ProtectionClass stated =
        situation.job().appliance().nameplate().protectionClass().orElse(ProtectionClass.I);
    return switch (stated) {
      case I -> isHeating() ? "0.3 Mohm" : "1 Mohm";
      case II -> "2 Mohm";
      case III -> "0.25 Mohm";
    };
  }

  private boolean isHeating() {
    return !situation.parts(HEATERS).isEmpty();
  }

  private String current() {
    double power =
        situation.job().appliance().nameplate().power().map(RatedRange::meanSi).orElse(0.0);
    boolean more = isHeating() && power > CURRENT_POWER;
    return plain(more ? Math.min(CURRENT_MOST, power / 1000) : CURRENT) + " mA";
  }

  private static String plain(double value) {
    return QuantityFormat.plain(Math.round(value * 10) / 10.0).toLowerCase(Locale.ROOT);
  }
}
