package kelter.hydraulics;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Nameplate;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/** Parts on the way of air and of condensate, made up for the tests, and what is seen on them. */
public final class AirSamples {

  private static final Source INVENTED = new Source("made up for tests", Standing.INVENTED);

  private AirSamples() {}

  /** A part with figures. */
  public static Component part(String kind, Map<String, Quantity> figures) {
    return new Component(kind, kind, Nameplate.UNREADABLE, figures, Map.of(), INVENTED);
  }

  /** A part of which no figure is known. */
  public static Component part(String kind) {
    return part(kind, Map.of());
  }

  /** A filter, charcoal filter or duct that has a share of the losses, in per cent. */
  public static Component inTheWay(String kind, double percent) {
    Map<String, Quantity> figures = new HashMap<>();
    figures.put("loss-share", Quantity.of(percent, "%", QuantityKind.PERCENT));
    if (kind.equals("duct")) {
      figures.put("usual-pressure", Quantity.of(60, "Pa", QuantityKind.PRESSURE_DIFFERENCE));
    }
    return part(kind, figures);
  }

  /** A condenser that is 12 K warmer than the room in order. */
  public static Component condenser() {
    return part(
        "condenser",
        Map.of("usual-rise", Quantity.of(12, "K", QuantityKind.TEMPERATURE_DIFFERENCE)));
  }

  /** One machine for each way through the models. */
  public static List<Appliance> all() {
    List<Appliance> all = new ArrayList<>();
    all.add(
        SampleMachines.with(
            inTheWay("filter", 20),
            inTheWay("charcoal-filter", 30),
            inTheWay("duct", 40),
            part("flap"),
            condenser(),
            part("evaporator")));
    all.add(
        SampleMachines.with(
            part("filter"), part("charcoal-filter"), part("duct"), part("condenser")));
    all.add(SampleMachines.with(part("suction-hose"), part("bag"), part("housing")));
    all.add(SampleMachines.with(part("hose"), part("drain"), part("condensate-pump")));
    all.add(SampleMachines.with(part("moisture-sensor")));
    all.add(SampleMachines.with(part("room"), part("crumb-tray"), part("wave-guide-cover")));
    return all;
  }

  /** The model of a part alone. */
  public static FaultModel model(Component part) {
    return new HydraulicsModule().parts().faultModels(SampleMachines.with(part)).get(0);
  }

  /** What is forecast of a part in order. */
  public static double inOrder(Component part, String observable) {
    FaultModel model = model(part);
    return forecast(model, observable, new double[model.faults().size()]);
  }

  /** What is forecast of a part with a fault. */
  public static double shown(Component part, String fault, double severity, String observable) {
    FaultModel model = model(part);
    double[] severities = new double[model.faults().size()];
    for (int i = 0; i < severities.length; i++) {
      severities[i] = model.faults().get(i).id().equals(fault) ? severity : 0;
    }
    return forecast(model, observable, severities);
  }

  private static double forecast(FaultModel model, String observable, double[] severities) {
    List<Question> question =
        model.questions().stream().filter(q -> q.observable().id().equals(observable)).toList();
    double[] value = new double[question.size()];
    model.forecaster(question).forecast(severities, value, new double[question.size()]);
    return value[0];
  }
}
