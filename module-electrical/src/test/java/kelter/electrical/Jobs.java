package kelter.electrical;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.ProtectionClass;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/** Made-up machines for tests. */
public final class Jobs {

  private static final Source SOURCE = new Source("made up for tests", Standing.INVENTED);

  private Jobs() {}

  public static Component component(
      String id, String kind, Optional<Quantity> power, Map<String, Quantity> figures) {
    Nameplate nameplate =
        new Nameplate(
            Optional.empty(),
            Optional.empty(),
            power.map(RatedRange::of),
            Optional.empty(),
            Optional.empty());
    return new Component(id, kind, nameplate, figures, Map.of(), SOURCE);
  }

  public static Component component(String id, String kind) {
    return component(id, kind, Optional.empty(), Map.of());
  }

  public static Component heater() {
    return component(
        "heater",
        "heater",
        Optional.of(Quantity.of(2, "kW", QuantityKind.POWER)),
        Map.of("volume", Quantity.of(12, "L", QuantityKind.VOLUME)));
  }

  public static Component sensor() {
    return component(
        "sensor",
        "temperature-sensor",
        Optional.empty(),
        Map.of(
            "r25", Quantity.of(10, "kOhm", QuantityKind.RESISTANCE),
            "beta", Quantity.of(3950, "K", QuantityKind.of("thermistor constant", "K"))));
  }

  public static Component motor() {
    Nameplate nameplate =
        new Nameplate(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(Quantity.of(2.2, "A", QuantityKind.CURRENT)),
            Optional.empty());
    return new Component(
        "motor",
        "motor",
        nameplate,
        Map.of(
            "winding-resistance", Quantity.of(12, "Ohm", QuantityKind.RESISTANCE),
            "auxiliary-resistance", Quantity.of(24, "Ohm", QuantityKind.RESISTANCE)),
        Map.of(),
        SOURCE);
  }

  public static Appliance appliance(Component... components) {
    return appliance(Optional.empty(), components);
  }

  /** A machine on whose nameplate the frequency stands, for instance {@code 50 Hz}. */
  public static Appliance appliance(String frequency, Component... components) {
    return appliance(Optional.of(RatedRange.parse(frequency, QuantityKind.FREQUENCY)), components);
  }

  private static Appliance appliance(Optional<RatedRange> frequency, Component... components) {
    return new Appliance(
        "washing-machine",
        "",
        "",
        "",
        Optional.empty(),
        new Nameplate(
            Optional.of(RatedRange.parse("230 V", QuantityKind.VOLTAGE)),
            frequency,
            Optional.empty(),
            Optional.empty(),
            Optional.of(ProtectionClass.I)),
        List.of(components));
  }

  public static Job job(Appliance appliance, Measurement... measurements) {
    return new Job(
        "job-1", "", appliance, Complaint.NONE, List.of(), List.of(measurements), Optional.empty());
  }

  public static Measurement measurement(
      String component, String observable, Reading reading, Conditions conditions) {
    return new Measurement(
        component, observable, List.of(reading), conditions, Optional.empty(), "");
  }

  public static Measurement measurement(String component, String observable, Reading reading) {
    return measurement(component, observable, reading, Conditions.NONE);
  }

  public static Reading value(double value, String unit, QuantityKind kind, double resolution) {
    return new Reading.Value(Quantity.of(value, unit, kind), resolution);
  }
}
