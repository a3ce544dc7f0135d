package kelter.core.catalogue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Market;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * A machine with typical figures where nobody has stated the real ones.
 *
 * <p>What the job or a model states is never changed. A typical power stands in only where no
 * resistance of the component is stated, which would tell another; a typical number of like
 * elements only where neither is, since a rating is usually told of what is there as a whole.
 *
 * @param usual the machine with every open figure at what is usual
 * @param open the figures that stand in
 */
public record TypicalMachine(Appliance usual, List<OpenFigure> open) {

  private static final String VOLTAGE = "voltage";
  private static final String FREQUENCY = "frequency";
  private static final String POWER = "power";
  private static final String CURRENT = "current";

  /**
   * A figure that stands in.
   *
   * @param component the id of the component
   * @param figure the figure
   * @param source where it comes from
   */
  public record OpenFigure(String component, TypicalFigure figure, Source source) {

    /**
     * The figure for a person.
     *
     * @return for instance {@code power of heater: 2 kW (1.7 kW to 2.2 kW)}
     */
    public String told() {
      return figure.word().replace('-', ' ') + " of " + component + ": " + figure.told();
    }
  }

  public TypicalMachine {
    open = List.copyOf(open);
  }

  /**
   * A machine as it is stated.
   *
   * @param stated the machine
   * @return the same, in which nothing stands in
   */
  public static TypicalMachine asStated(Appliance stated) {
    return new TypicalMachine(stated, List.of());
  }

  /**
   * A machine in which typical figures of its kind stand in.
   *
   * @param machine the machine of a kind
   * @param market where it stands
   * @return the machine
   */
  public static TypicalMachine of(KindMachine machine, Market market) {
    Appliance appliance = withMains(machine.appliance(), market);
    Map<String, Component> changed = new HashMap<>();
    List<OpenFigure> open = new ArrayList<>();
    for (KindPart part : machine.kind().parts()) {
      for (String id : machine.standingFor(part.id())) {
        Optional<Component> component = appliance.component(id);
        if (component.isPresent()) {
          Component rated =
              part.takesAll() ? rated(component.get(), machine.appliance()) : component.get();
          Component filled = rated;
          for (TypicalFigure figure : part.figures(market)) {
            if (isOpen(
                figure, figure.onNameplate() ? rated : component.get(), machine.appliance())) {
              filled = with(filled, figure, figure.usual());
              open.add(new OpenFigure(id, figure, machine.kind().source()));
            }
          }
          changed.put(id, filled);
        }
      }
    }
    return new TypicalMachine(appliance.with(replaced(appliance, changed)), open);
  }

  /**
   * The machine with one of the open figures somewhere else.
   *
   * @param number its place among the open figures
   * @param deviate the distance from what is usual, in standard deviations
   * @return the machine
   */
  public Appliance at(int number, double deviate) {
    OpenFigure one = open.get(number);
    Component component = usual.component(one.component()).orElseThrow();
    Component other = with(component, one.figure(), one.figure().at(deviate));
    return usual.with(replaced(usual, Map.of(component.id(), other)));
  }

  private static List<Component> replaced(Appliance appliance, Map<String, Component> changed) {
    List<Component> all = new ArrayList<>();
    for (Component component : appliance.components()) {
      all.add(changed.getOrDefault(component.id(), component));
    }
    return all;
  }

  /** What takes nearly all has the power that the nameplate of the machine tells. */
  private static Component rated(Component component, Appliance stated) {
    Optional<RatedRange> power = stated.nameplate().power();
    boolean told = component.nameplate().power().isPresent() || statesResistance(component);
    if (told || power.isEmpty()) {
      return component;
    }
    Nameplate own = component.nameplate();
    return new Component(
        component.id(),
        component.kind(),
        new Nameplate(own.voltage(), own.frequency(), power, own.current(), own.protectionClass()),
        component.figures(),
        component.curves(),
        component.source());
  }

  private static boolean isOpen(TypicalFigure figure, Component component, Appliance stated) {
    if (!figure.onNameplate()) {
      boolean count = figure.usual().kind() == QuantityKind.COUNT;
      return component.figure(figure.word()).isEmpty() && !(count && statesRating(component));
    }
    Nameplate own = component.nameplate();
    return switch (figure.word()) {
      case VOLTAGE -> own.voltage().isEmpty() && stated.nameplate().voltage().isEmpty();
      case FREQUENCY -> own.frequency().isEmpty() && stated.nameplate().frequency().isEmpty();
      case POWER -> own.power().isEmpty() && !statesResistance(component);
      case CURRENT -> own.current().isEmpty();
      default -> false;
    };
  }

  private static boolean statesRating(Component component) {
    return component.nameplate().power().isPresent() || statesResistance(component);
  }

  private static boolean statesResistance(Component component) {
    for (Quantity figure : component.figures().values()) {
      if (figure.kind() == QuantityKind.RESISTANCE) {
        return true;
      }
    }
    return false;
  }

  private static Component with(Component component, TypicalFigure figure, Quantity value) {
    Map<String, Quantity> figures = new HashMap<>(component.figures());
    Nameplate nameplate = component.nameplate();
    if (figure.onNameplate()) {
      nameplate = with(nameplate, figure.word(), value);
    } else {
      figures.put(figure.word(), value);
    }
    return new Component(
        component.id(),
        component.kind(),
        nameplate,
        figures,
        component.curves(),
        component.source());
  }

  private static Nameplate with(Nameplate plate, String word, Quantity value) {
    Optional<RatedRange> range =
        word.equals(CURRENT) ? Optional.empty() : Optional.of(RatedRange.of(value));
    return new Nameplate(
        word.equals(VOLTAGE) ? range : plate.voltage(),
        word.equals(FREQUENCY) ? range : plate.frequency(),
        word.equals(POWER) ? range : plate.power(),
        word.equals(CURRENT) ? Optional.of(value) : plate.current(),
        plate.protectionClass());
  }

  /** The machine with the mains of its market where its nameplate tells none. */
  private static Appliance withMains(Appliance appliance, Market market) {
    Nameplate plate = appliance.nameplate();
    if (plate.voltage().isEmpty()) {
      plate = with(plate, VOLTAGE, market.voltage());
    }
    if (plate.frequency().isEmpty()) {
      plate = with(plate, FREQUENCY, market.frequency());
    }
    return appliance.with(plate);
  }
}
