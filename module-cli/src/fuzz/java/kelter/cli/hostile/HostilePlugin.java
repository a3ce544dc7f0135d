package kelter.cli.hostile;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import kelter.cli.wiring.LampPlugin;
import kelter.cli.wiring.PluginJar;

/**
 * A plugin that gives what it should at most places and something hostile at some: null, figures
 * that are none, errors, lists that fail, texts that do something. Which ones follows from the
 * system property {@value #SEED} when it is loaded.
 */
final class HostilePlugin {

  /** The property that holds the seed. */
  static final String SEED = "kelter.fuzz.plugin";

  private static final String MARK = "private static final Source INVENTED";

  private HostilePlugin() {}

  /** Compiles it. */
  static void into(Path jar) {
    Map<String, String> sources = new HashMap<>(lamp().sources());
    sources.replaceAll((name, text) -> text.replaceFirst(MARK, HELP + MARK));
    sources.replaceAll((name, text) -> text.replace("@Override public String title()", MORE));
    sources.replaceAll(
        (name, text) ->
            text.replace("return \"Does it light?\"", "return text(\"Does it light?\")"));
    PluginJar.compile(jar, sources);
  }

  private static LampPlugin lamp() {
    return new LampPlugin()
        .with("construct", "bad(0);")
        .with("about", "return bad(new About(text(\"lamps\"), text(\"Lamps\"), text(\"1\")));")
        .with("calculation", worded("lamp-current"))
        .with(
            "law",
            "return bad(CHANCE.nextInt(9) == 0 ? new double[3] : "
                + "new double[] {figure(x[0] / x[1])});")
        .with("calculations", "return list(List.of(CURRENT));")
        .with("parts", "return bad(Parts.of(this));")
        .with("kind", worded("strip-light"))
        .with("observable", worded("dark"))
        .with("kinds", "return list(List.of(LAMP));")
        .with("check", worded("lamp-lit"))
        .with("checks", "return list(List.of(this));")
        .with("apply", "return list(List.of(finding()));")
        .with("models", "return bad(Optional.of(model(lamp)));")
        .with("model", worded("lamp-of-plugin"))
        .with("fault", worded("open"))
        .with("forecast", "figure(state.of(Wire.DARK))")
        .with(
            "weigher", "return bad(CHANCE.nextInt(3) == 0 ? Optional.of(this) : Optional.empty());")
        .with("weigh", "return bad(weighing());");
  }

  private static String worded(String text) {
    return "\" + text(\"" + text + "\") + \"";
  }

  private static final String HELP =
      """
      private static final java.util.SplittableRandom CHANCE =
          new java.util.SplittableRandom(Long.getLong("kelter.fuzz.plugin"));
      private static final int RARE = 1 << (3 + CHANCE.nextInt(5));

      private static synchronized <T> T bad(T good) {
        switch (CHANCE.nextInt(RARE)) {
          case 0: return null;
          case 1:
            switch (CHANCE.nextInt(9)) {
              case 0: throw new IllegalStateException("\\u001b[2Jnot\\ntoday\\u202e");
              case 1: throw new IllegalArgumentException((String) null);
              case 2: throw new NoClassDefFoundError("gone/Away");
              case 3: throw new kelter.core.problem.InputException("here", "is odd", "go");
              case 4: deep(0); return good;
              case 5: throw new OutOfMemoryError("as if");
              case 6: throw new ThreadDeath();
              case 7: throw new java.util.ConcurrentModificationException();
              default: System.out.println("{\\u0007 hello"); System.out.print("\\n\\n}"); return good;
            }
          default: return good;
        }
      }

      private static double figure(double good) {
        double[] odd = {0 / 0d, 1 / 0d, -1 / 0d, 0, -0.0, -1, 1, 1.0000001, 2, 1e308, -1e308, 4.9e-324, 1e-300};
        return CHANCE.nextInt(RARE) < 2 ? odd[CHANCE.nextInt(odd.length)] : bad(good);
      }

      private static String text(String good) {
        String[] odd = {"", " ", "heater", "heater-resistance", "door-switch-opens", "electrical", "Not An Id",
            "\\u001b[31mred\\n", "\\u202etxt", "\\ud800", "\\u0000", "x".repeat(50000), "a.b", "lamp", "../x", "%s", "\\u2028"};
        return CHANCE.nextInt(RARE) < 2 ? odd[CHANCE.nextInt(odd.length)] : bad(good);
      }

      private static <T> List<T> list(List<T> good) {
        switch (CHANCE.nextInt(RARE * 2)) {
          case 0: return java.util.Collections.singletonList(null);
          case 1: return List.of();
          case 2: return java.util.Collections.nCopies(3, good.get(0));
          case 3: return new java.util.AbstractList<T>() {
            @Override public T get(int i) { return bad(good.get(i % good.size())); }
            @Override public int size() { return CHANCE.nextInt(4); }
          };
          case 4: return java.util.Collections.nCopies(20000, good.get(0));
          default: return bad(good);
        }
      }

      private static Finding finding() {
        QuantityKind kind = bad(CHANCE.nextInt(9) == 0 ? QuantityKind.TEMPERATURE : QuantityKind.POWER);
        kelter.core.quantity.Unit unit = CHANCE.nextInt(RARE) == 0
            ? kelter.core.quantity.Unit.of("Cel") : QuantityKind.POWER.unit();
        return new Finding(text("lamp-lit"), text("lamp"), text("dark"), text("It lights"),
            text("60 W"), kind, bad(unit),
            bad(new kelter.core.check.Judgement(
                CHANCE.nextInt(2) == 0 ? bad(Optional.empty()) : Optional.of(measured()),
                figure(0.98), bad(kelter.core.check.Verdict.CONFORMS), false)),
            bad(new kelter.core.check.Limits(figure(10), figure(100))),
            bad(new Source(text("made up"), Standing.INVENTED)),
            list(List.of(kelter.core.safety.Caution.UNPLUG)), text("a remark"));
      }

      private static kelter.core.uncertainty.InputQuantity measured() {
        return kelter.core.uncertainty.InputQuantity.normal(
            new kelter.core.uncertainty.Estimate(figure(60), figure(2)));
      }

      private static Weighing weighing() {
        return new Weighing(bad(java.util.Currency.getInstance("EUR")), true, bad(
                new kelter.core.diagnosis.Conclusion(kelter.core.diagnosis.Conclusion.Reason.DECIDED,
                    list(List.of(text("lamp.open"))), text("go on"), false)),
            list(List.of(option("replace"), option("do-nothing"))), figure(100), list(List.of(text("a guess"))),
            list(List.of(INVENTED)));
      }

      private static kelter.core.option.Option option(String id) {
        return new kelter.core.option.Option(text(id), text("new"), list(List.of("renew-lamp")), figure(0.9), figure(100), figure(5),
            bad(new kelter.core.option.Option.Spread(figure(50), figure(40), figure(50), figure(60))), figure(0.5));
      }

      """;

  private static final String MORE =
      """
      @Override public List<kelter.core.job.Instrument> instruments() {
          return list(List.of(new kelter.core.job.Instrument(text("lux"), text("a lux meter"), list(List.of(
              new kelter.core.job.Instrument.Function(QuantityKind.POWER,
                  new kelter.core.uncertainty.Accuracy(figure(0.01), figure(0.1)), figure(0), figure(100)))))));
        }
        @Override public String title()""";
}
