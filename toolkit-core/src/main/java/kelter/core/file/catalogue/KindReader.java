package kelter.core.file.catalogue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import kelter.core.catalogue.Cover;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindBuild;
import kelter.core.catalogue.KindCause;
import kelter.core.catalogue.KindPart;
import kelter.core.catalogue.MainsConnection;
import kelter.core.catalogue.TypicalFigure;
import kelter.core.diagnosis.Brings;
import kelter.core.file.field.IdField;
import kelter.core.file.field.SourceField;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonNode;
import kelter.core.job.Market;
import kelter.core.job.rule.EntryRules;
import kelter.core.job.rule.SymptomRules;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.vocabulary.Vocabulary;

/** Makes a kind of machine out of the content of its file and notes every mistake on the way. */
final class KindReader {

  static final String FORMAT = "kelter-kind/1";

  static final Set<String> KIND =
      JsonNode.names(
          "format",
          "id",
          "title",
          "words",
          "builds",
          "life",
          "typical-age",
          "supply",
          "parts",
          "covers",
          "nothing-wrong",
          "something-else",
          "causes",
          "brings",
          "asked",
          "lock-out",
          "cautions",
          "source",
          "note");
  static final Set<String> PART =
      JsonNode.names(
          "id",
          "kind",
          "title",
          "markets",
          "behind",
          "minutes",
          "nameplate",
          "figures",
          "takes-all");
  static final Set<String> COVER = JsonNode.names("id", "title", "minutes");
  static final Set<String> NOTHING_WRONG = JsonNode.names("share", "symptoms");
  static final Set<String> CAUSE =
      JsonNode.names("fault", "title", "share", "mend", "several", "split", "wear", "symptoms");
  static final Set<String> BRINGS = JsonNode.names("cause", "effect", "chance");
  private static final Set<String> MARKETS = JsonNode.names("EU", "UK", "NA");
  static final Set<String> BUILD = JsonNode.names("words", "lacks");

  private static final Map<String, MainsConnection> SUPPLIES = new LinkedHashMap<>();

  private static final Map<String, KindCause.Mend> MENDS = new LinkedHashMap<>();

  static {
    for (MainsConnection supply : MainsConnection.values()) {
      SUPPLIES.put(supply.id(), supply);
    }
    for (KindCause.Mend mend : KindCause.Mend.values()) {
      MENDS.put(mend.id(), mend);
    }
  }

  private final Vocabulary vocabulary;
  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> parts = new LinkedHashSet<>();
  private final Set<String> covers = new LinkedHashSet<>();
  private final Set<String> causes = new LinkedHashSet<>();

  private KindReader(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  static Kind read(Json content, Vocabulary vocabulary) {
    KindReader reader = new KindReader(vocabulary);
    Optional<Kind> kind = reader.kind(new JsonNode(content, "", reader.problems));
    if (!reader.problems.isEmpty() || kind.isEmpty()) {
      throw new InputException(reader.problems);
    }
    return kind.get();
  }

  private Optional<Kind> kind(JsonNode root) {
    root.object(KIND);
    root.required("format").ifPresent(node -> node.word(Set.of(FORMAT), "format"));
    String id = IdField.required(root, "id").orElse("unknown");
    String title = needed(root, "title");
    List<String> words = texts(root, "words");
    String life = root.text("life").orElse("");
    double age = root.required("typical-age").flatMap(KindReader::years).orElse(1.0);
    MainsConnection supply =
        root.optional("supply")
            .flatMap(node -> node.word(SUPPLIES.keySet(), "supply"))
            .map(SUPPLIES::get)
            .orElse(MainsConnection.PLUG);
    List<Cover> allCovers = each(root, "covers", this::cover);
    List<KindPart> allParts = each(root, "parts", this::part);
    List<KindBuild> builds = each(root, "builds", this::build);
    Optional<Kind.NothingWrong> nothing =
        root.required("nothing-wrong").flatMap(this::nothingWrong);
    double somethingElse = numberOf(root, "something-else").orElse(0.5);
    List<KindCause> allCauses = each(root, "causes", this::cause);
    List<Brings> brings = each(root, "brings", this::brings);
    List<String> asked = symptomWords(root, "asked");
    List<String> lockOut = texts(root, "lock-out");
    List<String> cautions = texts(root, "cautions");
    Optional<Source> source = root.required("source").flatMap(SourceField::stated);
    root.text("note");
    if (nothing.isEmpty() || source.isEmpty()) {
      return Optional.empty();
    }
    return root.make(
        () ->
            new Kind(
                id,
                title,
                words,
                builds,
                life,
                age,
                supply,
                allParts,
                allCovers,
                nothing.get(),
                somethingElse,
                allCauses,
                brings,
                asked,
                lockOut,
                cautions,
                source.get(),
                source.get()));
  }

  private interface ItemReader<T> {
    Optional<T> read(JsonNode node);
  }

  private static <T> List<T> each(JsonNode root, String name, ItemReader<T> reader) {
    List<T> all = new ArrayList<>();
    for (JsonNode node : root.items(name)) {
      reader.read(node).ifPresent(all::add);
    }
    return all;
  }

  private static String needed(JsonNode node, String name) {
    return node.required(name).flatMap(JsonNode::text).orElse("");
  }

  private static List<String> texts(JsonNode root, String name) {
    return each(root, name, JsonNode::text);
  }

  private List<String> symptomWords(JsonNode root, String name) {
    return each(
        root,
        name,
        node -> node.text().filter(w -> SymptomRules.symptom(w, vocabulary, node).isPresent()));
  }

  private static Optional<Double> years(JsonNode node) {
    return node.quantity(QuantityKind.AGE).map(age -> QuantityKind.AGE.unit().fromSi(age.si()));
  }

  private Optional<Cover> cover(JsonNode node) {
    node.object(COVER);
    Optional<String> id = IdField.required(node, "id");
    String title = needed(node, "title");
    Optional<Quantity> minutes =
        node.required("minutes").flatMap(each -> each.quantity(QuantityKind.TIME));
    if (id.isEmpty() || minutes.isEmpty() || !EntryRules.once(covers, "cover", id.get(), node)) {
      return Optional.empty();
    }
    return node.make(() -> new Cover(id.get(), title, minutes.get()));
  }

  private Optional<KindPart> part(JsonNode node) {
    node.object(PART);
    Optional<String> id = IdField.required(node, "id");
    String kind = node.optional("kind").isPresent() ? needed(node, "kind") : id.orElse("unknown");
    String title = needed(node, "title");
    Optional<JsonNode> behind = node.optional("behind");
    Optional<String> cover = behind.flatMap(JsonNode::text);
    if (cover.isPresent()) {
      behind.get().isKnown(cover.get(), covers, "cover of this kind");
    }
    Optional<Quantity> minutes = node.quantity("minutes", QuantityKind.TIME);
    Set<Market> markets = markets(node);
    Map<Market, List<TypicalFigure>> figures = new TypicalReader(vocabulary).figures(node, kind);
    if (id.isEmpty() || !EntryRules.once(parts, "part", id.get(), node)) {
      return Optional.empty();
    }
    boolean takesAll = node.yesNo("takes-all").orElse(false);
    return node.make(
        () -> new KindPart(id.get(), kind, title, markets, figures, cover, minutes, takesAll));
  }

  private static Set<Market> markets(JsonNode node) {
    Set<Market> markets = EnumSet.noneOf(Market.class);
    for (JsonNode item : node.items("markets")) {
      item.word(MARKETS, "market").ifPresent(word -> markets.add(Market.valueOf(word)));
    }
    return markets;
  }

  /** A build; a part that the kind does not list is noted. */
  private Optional<KindBuild> build(JsonNode node) {
    node.object(BUILD);
    List<String> words = texts(node, "words");
    List<String> lacks =
        each(
            node,
            "lacks",
            item -> item.text().filter(part -> item.isKnown(part, parts, "part of this kind")));
    return node.make(() -> new KindBuild(words, lacks));
  }

  private Optional<Kind.NothingWrong> nothingWrong(JsonNode node) {
    node.object(NOTHING_WRONG);
    OptionalDouble share = numberOf(node, "share");
    Map<String, Double> symptoms = chances(node);
    return share.isEmpty()
        ? Optional.empty()
        : node.make(() -> new Kind.NothingWrong(share.getAsDouble(), symptoms));
  }

  private static OptionalDouble numberOf(JsonNode node, String name) {
    Optional<JsonNode> member = node.required(name);
    return member.isPresent() ? member.get().number() : OptionalDouble.empty();
  }

  /** The symptoms of a cause with their chances; a word that is nobody's is noted. */
  private Map<String, Double> chances(JsonNode node) {
    Map<String, Double> chances = new LinkedHashMap<>();
    Optional<JsonNode> symptoms = node.optional("symptoms");
    Map<String, JsonNode> members = symptoms.isPresent() ? symptoms.get().members() : Map.of();
    for (Map.Entry<String, JsonNode> member : members.entrySet()) {
      OptionalDouble chance = member.getValue().number();
      boolean known =
          SymptomRules.symptom(member.getKey(), vocabulary, member.getValue()).isPresent();
      if (known && chance.isPresent()) {
        chances.put(member.getKey(), chance.getAsDouble());
      }
    }
    return chances;
  }

  private Optional<KindCause> cause(JsonNode node) {
    node.object(CAUSE);
    Optional<String> key = node.required("fault").flatMap(JsonNode::text);
    String title = needed(node, "title");
    OptionalDouble share = numberOf(node, "share");
    KindCause.Mend mend =
        node.optional("mend")
            .flatMap(told -> told.word(MENDS.keySet(), "way to mend"))
            .map(MENDS::get)
            .orElse(KindCause.Mend.RENEW);
    Optional<String> several = node.text("several");
    boolean split = node.yesNo("split").orElse(false);
    Optional<JsonNode> shape = node.optional("wear");
    OptionalDouble wear = shape.isPresent() ? shape.get().number() : OptionalDouble.empty();
    Map<String, Double> symptoms = chances(node);
    Optional<String[]> words = key.flatMap(told -> words(told, node));
    if (words.isEmpty() || share.isEmpty() || !EntryRules.once(causes, "cause", key.get(), node)) {
      return Optional.empty();
    }
    return node.make(
        () ->
            new KindCause(
                words.get()[0],
                words.get()[1],
                title,
                share.getAsDouble(),
                split,
                mend,
                several,
                wear,
                symptoms));
  }

  /** Part and fault of a cause; a part that the kind does not list is noted. */
  private Optional<String[]> words(String key, JsonNode node) {
    String[] words = key.split("\\.", -1);
    if (words.length != 2) {
      node.problem("'" + key + "' is no cause", "write part.fault");
      return Optional.empty();
    }
    return node.isKnown(words[0], parts, "part of this kind")
        ? Optional.of(words)
        : Optional.empty();
  }

  private Optional<Brings> brings(JsonNode node) {
    node.object(BRINGS);
    Optional<String> cause = causeOf(node, "cause");
    Optional<String> effect = causeOf(node, "effect");
    OptionalDouble chance = numberOf(node, "chance");
    return cause.isEmpty() || effect.isEmpty() || chance.isEmpty()
        ? Optional.empty()
        : node.make(() -> new Brings(cause.get(), effect.get(), chance.getAsDouble()));
  }

  private Optional<String> causeOf(JsonNode node, String name) {
    Optional<JsonNode> member = node.required(name);
    Optional<String> key = member.flatMap(JsonNode::text);
    return key.isPresent() && member.get().isKnown(key.get(), causes, "cause of this kind")
        ? key
        : Optional.empty();
  }
}
