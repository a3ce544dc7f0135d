package kelter.core.file.book;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import kelter.core.book.learned.Calibration;
import kelter.core.book.learned.Learned;
import kelter.core.book.learned.LearnedChance;
import kelter.core.book.learned.LearnedGroup;
import kelter.core.book.learned.LearnedKind;
import kelter.core.book.learned.LearnedRate;
import kelter.core.book.learned.LearnedShare;
import kelter.core.book.learned.LearnedTime;
import kelter.core.book.learned.PartLife;
import kelter.core.file.disk.TextFile;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonFile;
import kelter.core.file.json.JsonNode;
import kelter.core.file.json.JsonPlaces;
import kelter.core.file.json.JsonText;
import kelter.core.file.json.SchemaText;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;

/** What a job book taught, {@code "format": "kelter-learned/1"}; {@code book learn} writes it. */
public final class LearnedFile {

  /** The greatest size of a file, in bytes. */
  public static final int MAX_BYTES = 16 * 1024 * 1024;

  static final String FORMAT = "kelter-learned/1";

  private static final String START = "'kelter book learn' writes one";

  private static final Set<String> LEARNED =
      JsonNode.names(
          "format",
          "as-of",
          "jobs",
          "kept-per-year",
          "strength",
          "chance-strength",
          "kinds",
          "work",
          "readings",
          "cures",
          "call-backs",
          "blunders",
          "lives",
          "calibration");
  private static final Set<String> KIND =
      JsonNode.names("jobs", "weight", "shares", "chances", "models", "ages", "unnamed");

  private static final double MANY = 1e12;

  private static final double NOTHING_TOLD = 0.02;

  private LearnedFile() {}

  /**
   * The JSON Schema (2020-12) of such files, for other programs.
   *
   * @return JSON
   */
  public static String schema() {
    return SchemaText.of(LearnedFile.class, "kelter-learned-1.schema.json");
  }

  /**
   * Writes a file, in place of an older one.
   *
   * @param learned what was learned
   * @param path where to
   * @throws InputException if it cannot be written
   */
  public static void write(Learned learned, Path path) {
    TextFile.write(path, text(learned));
  }

  /**
   * The text of such a file.
   *
   * @param learned what was learned
   * @return JSON
   */
  public static String text(Learned learned) {
    return JsonText.write(
        new Members()
            .text("format", FORMAT)
            .text("as-of", learned.asOf().toString())
            .number("jobs", learned.jobs())
            .number("kept-per-year", learned.keptPerYear())
            .figure("strength", learned.strength())
            .number("chance-strength", learned.chanceStrength())
            .each("kinds", learned.kinds(), LearnedFile::json)
            .each("work", learned.work(), LearnedFile::json)
            .each("readings", learned.readings(), LearnedFile::json)
            .each("cures", learned.cures(), LearnedFile::json)
            .each("call-backs", learned.callBacks(), LearnedFile::json)
            .each("blunders", learned.blunders(), LearnedFile::json)
            .each("lives", learned.lives(), LearnedFile::json)
            .object(
                "calibration",
                learned.calibration().map(LearnedFile::json).orElse(new Json.Obj(Map.of())))
            .object());
  }

  private static Json json(LearnedKind kind) {
    return new Members()
        .number("jobs", kind.jobs())
        .figure("weight", kind.weight())
        .each("shares", new TreeMap<>(kind.shares()), LearnedFile::json)
        .each("chances", new TreeMap<>(kind.chances()), LearnedFile::chances)
        .each("models", new TreeMap<>(kind.models()), LearnedFile::json)
        .each("ages", new TreeMap<>(kind.ages()), LearnedFile::json)
        .each("unnamed", new TreeMap<>(kind.unnamed()), LearnedFile::number)
        .object();
  }

  private static Json chances(Map<String, LearnedChance> chances) {
    Map<String, Json> all = new LinkedHashMap<>();
    new TreeMap<>(chances).forEach((symptom, each) -> all.put(symptom, json(each)));
    return new Json.Obj(all);
  }

  private static Json number(Number value) {
    return new Json.Num(value.toString());
  }

  private static Json json(LearnedShare share) {
    return new Members()
        .figure("share", share.share())
        .figure("table", share.table())
        .figure("jobs", share.jobs())
        .object();
  }

  private static Json json(LearnedChance chance) {
    return new Members()
        .figure("chance", chance.chance())
        .figure("answers", chance.answers())
        .figure("weight", chance.weight())
        .object();
  }

  private static Json json(LearnedGroup group) {
    return new Members()
        .number("jobs", group.jobs())
        .figure("weight", group.weight())
        .each("factors", telling(group.factors()), LearnedFile::factor)
        .object();
  }

  /** A factor this near to 1 is left out; it counts as 1 then. */
  private static Map<String, Double> telling(Map<String, Double> factors) {
    Map<String, Double> telling = new TreeMap<>(factors);
    telling.values().removeIf(factor -> Math.abs(factor - 1) < NOTHING_TOLD);
    return telling;
  }

  private static Json factor(double factor) {
    return new Json.Num(Double.toString(Members.rounded(factor)));
  }

  private static Json json(LearnedTime time) {
    return new Members()
        .figure("times", time.times())
        .figure("weight", time.weight())
        .figure("median", time.median())
        .figure("mean", time.mean())
        .figure("high", time.high())
        .object();
  }

  private static Json json(LearnedRate rate) {
    return new Members()
        .figure("cases", rate.cases())
        .figure("weight", rate.weight())
        .figure("rate", rate.rate())
        .figure("low", rate.low())
        .figure("high", rate.high())
        .object();
  }

  private static Json json(PartLife life) {
    return new Members()
        .figure("failures", life.failures())
        .figure("lasted", life.lasted())
        .object("weibull", life.weibull().map(LearnedFile::json).orElse(new Json.Obj(Map.of())))
        .number("median", life.median())
        .object();
  }

  private static Json.Obj json(PartLife.Fitted fitted) {
    return new Members()
        .number("shape", fitted.shape())
        .figure("shape-low", fitted.shapeLow())
        .figure("shape-high", fitted.shapeHigh())
        .number("scale", fitted.scale())
        .figure("scale-low", fitted.scaleLow())
        .figure("scale-high", fitted.scaleHigh())
        .object();
  }

  private static Json.Obj json(Calibration calibration) {
    return new Members()
        .figure("jobs", calibration.jobs())
        .figure("log-loss", calibration.logLoss())
        .figure("brier", calibration.brier())
        .figure("expected-error", calibration.expectedError())
        .each(
            "bins",
            calibration.bins(),
            bin ->
                new Members()
                    .figure("jobs", bin.jobs())
                    .figure("said", bin.said())
                    .figure("came", bin.came())
                    .object())
        .object();
  }

  /**
   * Reads a file.
   *
   * @param path the file
   * @return what was learned
   * @throws InputException with every mistake of the file, if it has any or cannot be read
   */
  public static Learned read(Path path) {
    Json content = JsonFile.read(path, MAX_BYTES, "a file of what was learned", START);
    try {
      return learned(content);
    } catch (InputException mistakes) {
      throw JsonPlaces.found(path, mistakes);
    }
  }

  private static Learned learned(Json content) {
    List<Problem> problems = new ArrayList<>();
    JsonNode node = new JsonNode(content, "", problems);
    Fields fields = new Fields(node, LEARNED);
    node.required("format").ifPresent(each -> each.word(Set.of(FORMAT), "format"));
    node.required("as-of");
    Optional<LocalDate> asOf = node.date("as-of");
    Learned learned =
        new Learned(
            asOf.orElse(LocalDate.EPOCH),
            fields.count("jobs"),
            fields.figure("kept-per-year", 0, 1),
            fields.figure("strength", 0, MANY),
            fields.figure("chance-strength", 0, MANY),
            fields.each("kinds", LearnedFile::kind),
            fields.each("work", LearnedFile::time),
            fields.each("readings", LearnedFile::time),
            fields.each("cures", LearnedFile::rate),
            fields.each("call-backs", LearnedFile::rate),
            fields.each("blunders", LearnedFile::rate),
            fields.each("lives", LearnedFile::life),
            node.optional("calibration").map(LearnedFile::calibration));
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return learned;
  }

  private static LearnedKind kind(JsonNode node) {
    Fields fields = new Fields(node, KIND);
    Map<Integer, LearnedGroup> ages = new LinkedHashMap<>();
    fields
        .each("ages", each -> each)
        .forEach(
            (age, each) -> {
              if (age.matches("[0-9]{1,3}")) {
                ages.put(Integer.valueOf(age), group(each));
              } else {
                each.problem("'" + age + "' is no age", "write whole years");
              }
            });
    return new LearnedKind(
        fields.count("jobs"),
        fields.figure("weight", 0, 1),
        fields.each("shares", LearnedFile::share),
        fields.each("chances", LearnedFile::chances),
        fields.each("models", LearnedFile::group),
        ages,
        fields.each("unnamed", each -> each.count(Integer.MAX_VALUE).orElse(0)));
  }

  private static LearnedShare share(JsonNode node) {
    Fields fields = new Fields(node, JsonNode.names("share", "table", "jobs"));
    return new LearnedShare(
        fields.figure("share", 0, 1), fields.figure("table", 0, 1), fields.figure("jobs", 0, MANY));
  }

  private static Map<String, LearnedChance> chances(JsonNode node) {
    Map<String, LearnedChance> chances = new LinkedHashMap<>();
    node.members().forEach((symptom, each) -> chances.put(symptom, chance(each)));
    return chances;
  }

  private static LearnedChance chance(JsonNode node) {
    Fields fields = new Fields(node, JsonNode.names("chance", "answers", "weight"));
    return new LearnedChance(
        fields.figure("chance", 0, 1),
        fields.figure("answers", 0, MANY),
        fields.figure("weight", 0, 1));
  }

  private static LearnedGroup group(JsonNode node) {
    Fields fields = new Fields(node, JsonNode.names("jobs", "weight", "factors"));
    Map<String, Double> factors = new LinkedHashMap<>();
    fields
        .each("factors", each -> each)
        .forEach(
            (cause, each) ->
                each.number()
                    .ifPresent(
                        factor -> {
                          if (factor > 0 && factor <= MANY) {
                            factors.put(cause, factor);
                          } else {
                            each.problem("is " + factor, "a factor above 0 is allowed");
                          }
                        }));
    return new LearnedGroup(fields.count("jobs"), fields.figure("weight", 0, 1), factors);
  }

  private static LearnedTime time(JsonNode node) {
    Fields fields = new Fields(node, JsonNode.names("times", "weight", "median", "mean", "high"));
    return new LearnedTime(
        fields.figure("times", 0, MANY),
        fields.figure("weight", 0, 1),
        fields.figure("median", 0, MANY),
        fields.figure("mean", 0, MANY),
        fields.figure("high", 0, MANY));
  }

  private static LearnedRate rate(JsonNode node) {
    Fields fields = new Fields(node, JsonNode.names("cases", "weight", "rate", "low", "high"));
    return new LearnedRate(
        fields.figure("cases", 0, MANY),
        fields.figure("weight", 0, 1),
        fields.figure("rate", 0, 1),
        fields.figure("low", 0, 1),
        fields.figure("high", 0, 1));
  }

  private static PartLife life(JsonNode node) {
    Fields fields = new Fields(node, JsonNode.names("failures", "lasted", "weibull", "median"));
    return new PartLife(
        fields.figure("failures", 0, MANY),
        fields.figure("lasted", 0, MANY),
        node.optional("weibull").map(LearnedFile::fitted),
        fields.number("median", 0, MANY));
  }

  private static PartLife.Fitted fitted(JsonNode node) {
    Fields fields =
        new Fields(
            node,
            JsonNode.names("shape", "shape-low", "shape-high", "scale", "scale-low", "scale-high"));
    return new PartLife.Fitted(
        fields.number("shape", 0, MANY),
        fields.figure("shape-low", 0, MANY),
        fields.figure("shape-high", 0, Double.MAX_VALUE),
        fields.number("scale", 0, MANY),
        fields.figure("scale-low", 0, MANY),
        fields.figure("scale-high", 0, Double.MAX_VALUE));
  }

  private static Calibration calibration(JsonNode node) {
    Fields fields =
        new Fields(node, JsonNode.names("jobs", "log-loss", "brier", "expected-error", "bins"));
    List<Calibration.Bin> bins = new ArrayList<>();
    for (JsonNode each : node.items("bins")) {
      Fields bin = new Fields(each, JsonNode.names("jobs", "said", "came"));
      bins.add(
          new Calibration.Bin(
              bin.count("jobs"), bin.figure("said", 0, 1), bin.figure("came", 0, 1)));
    }
    return new Calibration(
        fields.count("jobs"),
        fields.figure("log-loss", 0, MANY),
        fields.figure("brier", 0, 1),
        fields.figure("expected-error", 0, 1),
        bins);
  }
}
