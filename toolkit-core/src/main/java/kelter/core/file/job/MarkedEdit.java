package kelter.core.file.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindPart;
import kelter.core.catalogue.Kinds;
import kelter.core.file.json.Json;

/**
 * Adds what stands on a machine or on a part of it, and which parts it has not, to the content of a
 * job file.
 */
public final class MarkedEdit {

  private static final Json.Obj EMPTY = new Json.Obj(Map.of());
  private static final String COMPONENTS = "components";
  private static final String KIND = "kind";
  private static final String LACKS = "lacks";

  private MarkedEdit() {}

  /**
   * The content with a figure of a nameplate, in the place of one of the same word.
   *
   * @param job the content
   * @param component the id of the part whose nameplate it is; empty for that of the machine
   * @param word the word for it, such as {@code voltage} or {@code protection-class}
   * @param value the value as a person writes it
   * @return the content with it
   */
  public static Json.Obj plate(
      Json.Obj job, Optional<String> component, String word, String value) {
    if (component.isPresent()) {
      return part(job, component.get(), "nameplate", word, value);
    }
    Json.Obj machine = object(job, "appliance");
    return job.with("appliance", machine.with("nameplate", put(machine, "nameplate", word, value)));
  }

  /**
   * The content with a figure of a part, in the place of one of the same word.
   *
   * @param job the content
   * @param component the id of the part
   * @param word the word for it, such as {@code capacitance}
   * @param value the value as a person writes it
   * @return the content with it
   */
  public static Json.Obj figure(Json.Obj job, String component, String word, String value) {
    return part(job, component, "figures", word, value);
  }

  /**
   * The content in which the machine has not a part that such machines may have.
   *
   * @param job the content
   * @param component the id of the part
   * @return the content with it; the same if it tells so already
   */
  public static Json.Obj lacking(Json.Obj job, String component) {
    Json.Obj machine = object(job, "appliance");
    List<Json> lacks = new ArrayList<>();
    if (machine.members().get(LACKS) instanceof Json.Arr told) {
      lacks.addAll(told.items());
    }
    Json part = new Json.Str(component);
    if (!lacks.contains(part)) {
      lacks.add(part);
    }
    return job.with("appliance", machine.with(LACKS, new Json.Arr(lacks)));
  }

  /**
   * The content with the kind of component beside each part of the machine whose id is none and
   * that tells none, such as a bake element, which is a heater.
   *
   * @param job the content
   * @param kinds the kinds of machines that are known
   * @return the content with it; the same where nothing is missing
   */
  public static Json.Obj withKinds(Json.Obj job, Kinds kinds) {
    Json.Obj machine = object(job, "appliance");
    Optional<Kind> kind =
        machine.members().get(KIND) instanceof Json.Str word
            ? kinds.kind(word.text())
            : Optional.empty();
    if (kind.isEmpty() || !(machine.members().get(COMPONENTS) instanceof Json.Arr array)) {
      return job;
    }
    List<Json> parts = array.items().stream().map(each -> withKind(each, kind.get())).toList();
    return parts.equals(array.items())
        ? job
        : job.with("appliance", machine.with(COMPONENTS, new Json.Arr(parts)));
  }

  private static Json withKind(Json component, Kind machine) {
    return component instanceof Json.Obj part
            && !part.members().containsKey(KIND)
            && part.members().get("id") instanceof Json.Str id
        ? machine
            .part(id.text())
            .map(KindPart::kind)
            .filter(kind -> !kind.equals(id.text()))
            .map(kind -> part.with(KIND, new Json.Str(kind)))
            .orElse(part)
        : component;
  }

  private static Json.Obj part(
      Json.Obj job, String component, String member, String word, String value) {
    Json.Obj machine = object(job, "appliance");
    List<Json> parts = new ArrayList<>();
    boolean there = false;
    if (machine.members().get(COMPONENTS) instanceof Json.Arr array) {
      for (Json each : array.items()) {
        boolean same =
            each instanceof Json.Obj part
                && new Json.Str(component).equals(part.members().get("id"));
        there |= same;
        parts.add(same ? with((Json.Obj) each, member, word, value) : each);
      }
    }
    if (!there) {
      parts.add(with(EMPTY.with("id", new Json.Str(component)), member, word, value));
    }
    return job.with("appliance", machine.with(COMPONENTS, new Json.Arr(parts)));
  }

  private static Json.Obj with(Json.Obj part, String member, String word, String value) {
    return part.with(member, put(part, member, word, value));
  }

  private static Json.Obj put(Json.Obj whole, String member, String word, String value) {
    return object(whole, member).with(word, new Json.Str(value));
  }

  private static Json.Obj object(Json.Obj whole, String member) {
    return whole.members().get(member) instanceof Json.Obj object ? object : EMPTY;
  }
}
