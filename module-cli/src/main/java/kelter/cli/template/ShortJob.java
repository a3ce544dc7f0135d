package kelter.cli.template;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.Json;
import kelter.core.problem.InputException;
import kelter.core.quantity.Nearest;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.OwnersWords;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Vocabulary;

/**
 * A job file as long as what is known. It is filled by one thread; what it makes is to be read as
 * any job file, which tells the mistakes in its figures.
 */
public final class ShortJob {

  private static final List<String> ANSWERS = List.of("yes", "no", "sometimes");

  private final Vocabulary vocabulary;
  private final List<Symptom> ofKind;
  private final Map<String, Json> job = new LinkedHashMap<>();
  private final Map<String, Json> appliance = new LinkedHashMap<>();
  private final Map<String, Json> nameplate = new LinkedHashMap<>();
  private final Map<String, Map<String, Json>> components = new LinkedHashMap<>();
  private final Map<String, Json> symptoms = new LinkedHashMap<>();
  private final List<Json> displayed = new ArrayList<>();
  private final List<Taken> taken = new ArrayList<>();
  private String said = "";

  /**
   * How words were understood.
   *
   * @param words what was told
   * @param symptom what it was taken for
   * @param answer yes, no or sometimes
   */
  public record Taken(String words, Symptom symptom, String answer) {

    /**
     * The same in words.
     *
     * @return one line
     */
    public String line() {
      return "Understood '"
          + words
          + "': "
          + symptom.title()
          + " ("
          + symptom.id()
          + "), "
          + answer
          + ".";
    }
  }

  /**
   * Begins a job.
   *
   * @param kind the word for the kind of machine
   * @param date when the call came, {@code yyyy-mm-dd}
   * @param vocabulary the words of the modules
   * @param ofKind the ids of the symptoms that such machines have, which go before others
   */
  public ShortJob(String kind, String date, Vocabulary vocabulary, Set<String> ofKind) {
    this.vocabulary = vocabulary;
    this.ofKind =
        vocabulary.symptoms().stream().filter(each -> ofKind.contains(each.id())).toList();
    job.put("format", new Json.Str("kelter-job/2"));
    job.put("id", new Json.Str(kind + "-1"));
    job.put("date", new Json.Str(date));
    appliance.put("kind", new Json.Str(kind));
  }

  /**
   * Tells something of the job.
   *
   * @param name the member of the file
   * @param value what it says, if anything
   * @return this
   */
  public ShortJob job(String name, Optional<String> value) {
    value.ifPresent(text -> job.put(name, new Json.Str(text)));
    return this;
  }

  /**
   * Tells something of the machine.
   *
   * @param name the member of the file
   * @param value what it says, if anything
   * @return this
   */
  public ShortJob machine(String name, Optional<String> value) {
    value.ifPresent(text -> appliance.put(name, new Json.Str(text)));
    return this;
  }

  /**
   * Tells what the owner says.
   *
   * @param sentence the words of the owner, if any
   * @return this
   */
  public ShortJob said(Optional<String> sentence) {
    said = sentence.orElse("");
    return this;
  }

  /**
   * Tells something that stands on a nameplate.
   *
   * @param told {@code word=value} for the machine, {@code part.word=value} for a part
   * @return this
   * @throws InputException if it has another form
   */
  public ShortJob plate(String told) {
    int equals = told.indexOf('=');
    if (equals < 1 || equals == told.length() - 1) {
      throw new InputException(
          "--plate " + told, "is no figure of a nameplate", "write for instance 'power=2.2 kW'");
    }
    String word = told.substring(0, equals).strip();
    Json value = new Json.Str(told.substring(equals + 1).strip());
    int stop = word.indexOf('.');
    if (stop < 0) {
      nameplate.put(word, value);
    } else {
      components
          .computeIfAbsent(word.substring(0, stop), any -> new LinkedHashMap<>())
          .put(word.substring(stop + 1), value);
    }
    return this;
  }

  /**
   * Tells a symptom.
   *
   * @param told any words of a symptom, with {@code =no} or {@code =sometimes} behind it unless the
   *     machine has it
   * @return this
   * @throws InputException if no symptom, or more than one, has the words
   */
  public ShortJob symptom(String told) {
    int equals = told.lastIndexOf('=');
    String words = (equals < 0 ? told : told.substring(0, equals)).strip();
    String answer = equals < 0 ? "yes" : told.substring(equals + 1).strip();
    if (!ANSWERS.contains(answer)) {
      throw new InputException(
          "--symptom " + told, "'" + answer + "' is no answer", "write yes, no or sometimes");
    }
    List<Symptom> meant = OwnersWords.meant(words, ofKind);
    if (meant.isEmpty()) {
      meant = OwnersWords.meant(words, vocabulary.symptoms());
    }
    if (meant.size() != 1) {
      throw new InputException(
          "--symptom " + told,
          meant.isEmpty() ? "is no known symptom" : "may be several symptoms",
          meant.isEmpty() ? nearest(words) : "say which: " + ids(meant));
    }
    symptoms.put(meant.get(0).id(), new Json.Str(answer));
    taken.add(new Taken(words, meant.get(0), answer));
    return this;
  }

  /**
   * How the words for symptoms were understood.
   *
   * @return what was told, in its order
   */
  public List<Taken> taken() {
    return List.copyOf(taken);
  }

  private String nearest(String words) {
    List<String> ids = vocabulary.symptoms().stream().map(Symptom::id).toList();
    return Nearest.of(words.replace(' ', '-'), ids)
        .map(near -> "did you mean '" + near + "'?")
        .orElse("'kelter modules' lists them");
  }

  private static String ids(List<Symptom> symptoms) {
    return String.join(", ", symptoms.stream().map(Symptom::id).toList());
  }

  /**
   * Tells what the machine shows of itself.
   *
   * @param shown a word of {@link Meaning}; any other word is a code of the machine
   * @return this
   */
  public ShortJob displayed(String shown) {
    boolean meaning = Arrays.stream(Meaning.values()).anyMatch(each -> each.id().equals(shown));
    Json told = new Json.Str(shown);
    displayed.add(meaning ? told : new Json.Obj(Map.of("code", told)));
    return this;
  }

  /**
   * The symptoms that the sentence of the owner may speak of and that nobody has told.
   *
   * @return the symptoms, to be asked for
   */
  public List<Symptom> toAsk() {
    return OwnersWords.named(said, ofKind.isEmpty() ? vocabulary.symptoms() : ofKind).stream()
        .filter(symptom -> !symptoms.containsKey(symptom.id()))
        .toList();
  }

  /**
   * The content of the file.
   *
   * @return members in the order of a job file, none of them empty
   */
  public Json.Obj content() {
    Map<String, Json> machine = new LinkedHashMap<>(appliance);
    put(machine, "nameplate", nameplate);
    if (!components.isEmpty()) {
      machine.put("components", new Json.Arr(List.copyOf(ofComponents())));
    }
    Map<String, Json> all = new LinkedHashMap<>(job);
    all.put("appliance", new Json.Obj(machine));
    if (!said.isBlank()) {
      all.put("complaint", new Json.Obj(Map.of("said", new Json.Str(said))));
    }
    put(all, "symptoms", symptoms);
    if (!displayed.isEmpty()) {
      all.put("displayed", new Json.Arr(displayed));
    }
    return new Json.Obj(all);
  }

  private List<Json> ofComponents() {
    List<Json> told = new ArrayList<>();
    for (Map.Entry<String, Map<String, Json>> component : components.entrySet()) {
      Map<String, Json> members = new LinkedHashMap<>();
      members.put("id", new Json.Str(component.getKey()));
      members.put("nameplate", new Json.Obj(component.getValue()));
      told.add(new Json.Obj(members));
    }
    return told;
  }

  private static void put(Map<String, Json> all, String name, Map<String, Json> members) {
    if (!members.isEmpty()) {
      all.put(name, new Json.Obj(members));
    }
  }
}
