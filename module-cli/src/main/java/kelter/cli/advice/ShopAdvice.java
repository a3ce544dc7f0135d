package kelter.cli.advice;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import kelter.core.diagnosis.Remedy;
import kelter.core.file.json.JsonPlaces;
import kelter.core.file.json.JsonText;
import kelter.core.file.shop.ShopFolder;
import kelter.core.job.Component;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;
import kelter.core.shop.Shop;
import kelter.core.shop.StockPart;
import kelter.core.workshop.Case;
import kelter.core.workshop.PartFaults;
import kelter.core.workshop.Workshop;

/**
 * Words in the stock and the price list of a shop that name no remedy, so that the part would never
 * be found.
 *
 * <p>It looks at the kinds of components that a job has. Only where one of them has a word that its
 * models do not know are the models of all kinds asked, which takes a moment; then all words are
 * held against them.
 */
public final class ShopAdvice {

  private ShopAdvice() {}

  /**
   * Holds a shop against the remedies of a job.
   *
   * @param folder the folder of the shop
   * @param workshop the workshop of the shop
   * @param machine a job in it
   * @return each word that names no remedy, with its file and line
   */
  public static List<Problem> of(ShopFolder folder, Workshop workshop, Case machine) {
    Shop shop = workshop.shop();
    Map<String, String> stock = stock(shop);
    Map<String, String> prices = prices(shop);
    if (stock.isEmpty() && prices.isEmpty()) {
      return List.of();
    }
    Set<String> known = new TreeSet<>();
    Set<String> kinds = new TreeSet<>();
    for (Remedy remedy : machine.remedies()) {
      Optional<Component> part = machine.job().appliance().component(remedy.component());
      if (part.isPresent()) {
        kinds.add(part.get().kind());
        known.add(part.get().kind() + "." + remedy.id());
      }
    }
    if (!isDoubtful(stock, kinds, known) && !isDoubtful(prices, kinds, known)) {
      return List.of();
    }
    for (PartFaults each : workshop.faults()) {
      kinds.add(each.component());
      each.remedies().forEach(remedy -> known.add(each.component() + "." + remedy.id()));
    }
    List<Problem> advice = new ArrayList<>(unknown(folder.stock(), stock, kinds, known));
    advice.addAll(unknown(folder.prices(), prices, kinds, known));
    return advice;
  }

  /** What parts of the stock are for, by JSON pointer. */
  private static Map<String, String> stock(Shop shop) {
    Map<String, String> words = new LinkedHashMap<>();
    int place = 0;
    for (StockPart part : shop.stock()) {
      if (!part.remedy().isEmpty()) {
        words.put("/parts/" + place + "/for", part.remedy());
      }
      place++;
    }
    return words;
  }

  /** What has a price, by JSON pointer. */
  private static Map<String, String> prices(Shop shop) {
    Map<String, String> words = new LinkedHashMap<>();
    if (shop.prices().isPresent()) {
      for (String word : shop.prices().get().parts().keySet()) {
        words.put("/parts/" + JsonText.escape(word), word);
      }
    }
    return words;
  }

  private static boolean isDoubtful(
      Map<String, String> words, Set<String> kinds, Set<String> known) {
    for (String word : words.values()) {
      if (kinds.contains(kind(word)) && !known.contains(word)) {
        return true;
      }
    }
    return false;
  }

  private static String kind(String word) {
    return word.substring(0, word.indexOf('.'));
  }

  private static List<Problem> unknown(
      Path file, Map<String, String> words, Set<String> kinds, Set<String> known) {
    List<Problem> unknown = new ArrayList<>();
    words.forEach(
        (pointer, word) -> {
          if (kinds.contains(kind(word)) && !known.contains(word)) {
            unknown.add(
                new Problem(
                    Mistake.UNKNOWN_WORD,
                    pointer,
                    "'" + word + "' names no remedy that is known, so that it is never used",
                    meant(word, known)));
          }
        });
    return unknown.isEmpty()
        ? unknown
        : JsonPlaces.found(file, new InputException(unknown)).problems();
  }

  private static String meant(String word, Set<String> known) {
    String start = kind(word) + ".";
    return Nearest.of(word, known)
        .map(near -> "did you mean '" + near + "'?")
        .orElseGet(
            () ->
                "known: "
                    + String.join(
                        ", ", known.stream().filter(each -> each.startsWith(start)).toList()));
  }
}
