package kelter.core.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kelter.core.job.Component;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.OwnersWords;
import kelter.core.vocabulary.Symptom;
import kelter.core.workshop.Case;

/** Parts, observables and symptoms found by any of their words. */
final class Words {

  private Words() {}

  /** Something that can be read of a component. */
  record Readable(String component, Observable observable) {

    String key() {
      return component + "." + observable.id();
    }
  }

  /**
   * What can be read whose component and observable have all of some words, each from its start;
   * one whose key is told in full goes before all others.
   */
  static List<Readable> readable(String words, Case machine) {
    String[] told = words.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+");
    List<Readable> found = new ArrayList<>();
    for (Component component : machine.job().appliance().components()) {
      Optional<ComponentKind> kind = machine.vocabulary().kind(component.kind());
      if (kind.isPresent()) {
        for (Observable observable : kind.get().observables()) {
          Readable readable = new Readable(component.id(), observable);
          if (readable.key().equals(words)) {
            return List.of(readable);
          }
          if (hasAll(readable, told)) {
            found.add(readable);
          }
        }
      }
    }
    return nearest(found, told);
  }

  /** Those whose id alone has the words go before those whose title has. */
  private static List<Readable> nearest(List<Readable> found, String[] told) {
    List<Readable> exact = new ArrayList<>();
    for (Readable each : found) {
      String name = plain(each.component()) + plain(each.observable().id());
      if (name.strip().split(" +").length == told.length) {
        exact.add(each);
      }
    }
    return exact.size() == 1 ? exact : found;
  }

  private static boolean hasAll(Readable readable, String[] told) {
    String name =
        plain(readable.component())
            + plain(readable.observable().id())
            + plain(readable.observable().title());
    for (String word : told) {
      if (!name.contains(" " + word)) {
        return false;
      }
    }
    return told.length > 0;
  }

  private static String plain(String text) {
    return " " + text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ") + " ";
  }

  /** The symptoms that somebody means, those that such machines have before others. */
  static List<Symptom> symptoms(String words, Case machine) {
    List<Symptom> all = machine.vocabulary().symptoms();
    List<Symptom> ofKind =
        machine
            .kind()
            .map(kind -> all.stream().filter(s -> kind.symptoms().contains(s.id())).toList())
            .orElse(List.of());
    List<Symptom> meant = OwnersWords.meant(words, ofKind);
    return meant.isEmpty() ? OwnersWords.meant(words, all) : meant;
  }
}
