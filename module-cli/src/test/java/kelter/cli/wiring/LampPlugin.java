package kelter.cli.wiring;

import java.util.HashMap;
import java.util.Map;

/**
 * The source of a plugin that knows lamps, of which any piece can be changed for a worse one. As it
 * stands it is in order: a kind, an observable, a check, a fault model, a calculation.
 */
public final class LampPlugin {

  private final Map<String, String> pieces = new HashMap<>();

  /** A plugin in order. */
  public LampPlugin() {
    with("construct", "");
    with("id", "lamps");
    with("about", "return new About(\"lamps\", \"Lamps\", \"1\");");
    with("calculation", "lamp-current");
    with("law", "return new double[] {x[0] / x[1]};");
    with("calculations", "return List.of(CURRENT);");
    with("parts", "return Parts.of(this);");
    with("kind", "strip-light");
    with("observable", "dark");
    with("kinds", "return List.of(LAMP);");
    with("symptoms", "return List.of();");
    with("check", "lamp-lit");
    with("checks", "return List.of(this);");
    with("apply", "return List.of();");
    with("models", "return Optional.of(model(lamp));");
    with("model", "lamp-of-plugin");
    with("fault", "open");
    with("forecast", "state.of(Wire.DARK)");
    with("weigher", "return Optional.empty();");
    with("weigh", "throw new IllegalStateException(\"cannot weigh\");");
  }

  /** The same with another piece. */
  public LampPlugin with(String piece, String java) {
    pieces.put(piece, java);
    return this;
  }

  /** Its sources, by path. */
  public Map<String, String> sources() {
    return Map.of("module-info.java", MODULE, "bad/lamps/Plugin.java", plugin());
  }

  private String plugin() {
    String source = SOURCE;
    for (Map.Entry<String, String> piece : pieces.entrySet()) {
      source = source.replace("@" + piece.getKey() + "@", piece.getValue());
    }
    return source;
  }

  /** What the module path must give it. */
  static final String MODULE =
      """
      module bad.lamps {
        requires kelter.core;
        provides kelter.core.module.CalculationModule with bad.lamps.Plugin;
      }
      """;

  private static final String SOURCE =
      """
      package bad.lamps;

      import java.util.List;
      import java.util.Optional;
      import kelter.core.check.Check;
      import kelter.core.check.DecisionRule;
      import kelter.core.check.Finding;
      import kelter.core.diagnosis.Diagnosis;
      import kelter.core.diagnosis.FaultModel;
      import kelter.core.diagnosis.model.FaultRow;
      import kelter.core.diagnosis.model.Figure;
      import kelter.core.diagnosis.model.FigureSet;
      import kelter.core.diagnosis.model.PartModel;
      import kelter.core.diagnosis.model.Work;
      import kelter.core.job.Appliance;
      import kelter.core.job.Component;
      import kelter.core.job.Job;
      import kelter.core.module.About;
      import kelter.core.module.Calculation;
      import kelter.core.module.CalculationModule;
      import kelter.core.module.Output;
      import kelter.core.module.Parameter;
      import kelter.core.module.Part;
      import kelter.core.module.Parts;
      import kelter.core.option.Weigher;
      import kelter.core.option.Weighing;
      import kelter.core.quantity.QuantityKind;
      import kelter.core.source.Source;
      import kelter.core.source.Standing;
      import kelter.core.vocabulary.ComponentKind;
      import kelter.core.vocabulary.Observable;
      import kelter.core.vocabulary.Procedure;

      public final class Plugin implements CalculationModule, Part, Check, Weigher {
        private static final Source INVENTED = new Source("made up", Standing.INVENTED);
        private static final Observable DARK =
            Observable.named("@observable@", "it is dark").how("Look.").by(Procedure.look(1));
        private static final ComponentKind LAMP =
            new ComponentKind("@kind@", "lamp", List.of(DARK), List.of(), List.of());
        private static final Calculation CURRENT =
            new Calculation("@calculation@", "current", "i = p / u", "any", INVENTED,
                List.of(Parameter.required("power", "power", QuantityKind.POWER, 1, 1000),
                    Parameter.required("voltage", "voltage", QuantityKind.VOLTAGE, 1, 1000)),
                List.of(new Output("current", "current", QuantityKind.CURRENT)), List.of(),
                x -> law(x));
        private static volatile boolean spins = true;

        private static final class Wire {
          static final FigureSet ALL = new FigureSet("wire");
          static final Figure DARK = ALL.figure("chance that it is dark", 0.05);
        }

        public Plugin() { @construct@ }

        private static int deep(int x) { return 1 + deep(x + 1); }

        private static List<Finding> found(
            QuantityKind kind, kelter.core.check.Verdict verdict, double probability) {
          return List.of(new Finding("lamp-lit", "lamp", "dark", "does it light?", "60 W", kind,
              QuantityKind.POWER.unit(),
              new kelter.core.check.Judgement(Optional.empty(), probability, verdict, false),
              kelter.core.check.Limits.atLeast(10), INVENTED, List.of(), ""));
        }

        private static double[] law(double[] x) { @law@ }

        @Override public About about() { @about@ }
        @Override public List<Calculation> calculations() { @calculations@ }
        @Override public Parts parts() { @parts@ }
        @Override public List<kelter.core.vocabulary.Symptom> symptoms() { @symptoms@ }
        @Override public Optional<Weigher> weigher() { @weigher@ }
        @Override public List<ComponentKind> kinds() { @kinds@ }
        @Override public List<Check> checks() { @checks@ }
        @Override public String id() { return "@check@"; }
        @Override public String title() { return "Does it light?"; }
        @Override public List<Finding> apply(Job job, DecisionRule rule) { @apply@ }
        @Override public Weighing weigh(Job job, Diagnosis diagnosis, long seed) { @weigh@ }
        @Override public Optional<FaultModel> faultModel(Appliance appliance, Component lamp) {
          @models@
        }

        private static FaultModel model(Component lamp) {
          return PartModel.of("@model@", INVENTED, Wire.ALL)
              .on(lamp, LAMP)
              .faults(FaultRow.fault("@fault@", "wire open", 0.2)
                  .changes(Wire.DARK.becomes(0.9))
                  .curedBy(Work.renewing("renew-lamp", "renew it", 5, 0.9)))
              .looks(DARK, state -> @forecast@)
              .build();
        }
      }
      """;
}
