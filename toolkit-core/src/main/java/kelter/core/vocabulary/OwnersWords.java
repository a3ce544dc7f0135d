package kelter.core.vocabulary;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * How owners speak of symptoms, so that one is found by any of its words and a sentence shows what
 * to ask. Words prove nothing: who says that it does not heat may mean that the wash comes out
 * cold. English; common practice, no source.
 */
public final class OwnersWords {

  /**
   * By the id of a symptom phrases for it, each a row of beginnings of words that follow each other
   * within a clause.
   */
  private static final Map<String, List<String>> PHRASES = phrases();

  /** Words that say that something takes long, and not what. */
  private static final Set<String> TAKES_LONG =
      Set.of(
          "slow",
          "slowly",
          "too slow",
          "very slow",
          "long",
          "too long",
          "takes long",
          "takes too long",
          "takes longer",
          "takes ages",
          "takes forever",
          "takes for ever",
          "takes hours",
          "takes twice as long");

  /** What may be meant by them. */
  private static final Set<String> LONG =
      Set.of("does-not-dry", "heats-slowly", "drains-slowly", "fills-slowly", "runs-without-end");

  private OwnersWords() {}

  private static Map<String, List<String>> phrases() {
    Map<String, List<String>> all = new LinkedHashMap<>();
    put(
        all,
        "does-not-start",
        "not start",
        "dead",
        "nothing happen",
        "not switch on",
        "no power",
        "not turn on",
        "not come on",
        "no life",
        "not go on",
        "not run");
    put(
        all,
        "display-dead",
        "display dark",
        "display blank",
        "display dead",
        "display off",
        "no display",
        "screen blank",
        "screen dark",
        "no lamps",
        "no lights");
    put(all, "control-dead", "button", "keypad", "touch panel", "panel not", "not respond", "keys");
    put(all, "light-out", "lamp", "bulb", "no light", "light not", "light out", "light gone");
    put(
        all,
        "stops-in-cycle",
        "stops",
        "stopped",
        "cuts out",
        "cut out",
        "quits",
        "shuts off",
        "shuts down",
        "switches off",
        "hangs",
        "half way",
        "halfway",
        "middle of",
        "not finish",
        "aborts",
        "gives up");
    put(
        all,
        "does-not-turn",
        "drum not turn",
        "not turn",
        "not tumble",
        "not rotat",
        "not agitat",
        "not move",
        "stands still",
        "brush not");
    put(
        all,
        "does-not-fill",
        "not fill",
        "no water come",
        "not take water",
        "no water in",
        "not let water",
        "not draw water",
        "stays dry inside");
    put(
        all,
        "fills-slowly",
        "fill slow",
        "slow fill",
        "slow to fill",
        "long fill",
        "long to fill",
        "ages to fill",
        "takes little water",
        "forever to fill",
        "for ever to fill");
    put(
        all,
        "fills-without-end",
        "overfill",
        "fills without",
        "fills up",
        "not stop fill",
        "keeps fill",
        "water keeps coming",
        "overflow",
        "too much water");
    put(
        all,
        "does-not-drain",
        "not drain",
        "not pump",
        "not empty",
        "water not go",
        "water stay",
        "water stand in");
    put(
        all,
        "drains-slowly",
        "drain slow",
        "slow drain",
        "ages to drain",
        "long to drain",
        "slow to drain",
        "pumps slow",
        "long to pump",
        "slow to empty",
        "empties slow",
        "forever to drain",
        "for ever to drain",
        "forever to empty",
        "for ever to empty",
        "long to empty");
    put(
        all,
        "water-left",
        "water left",
        "leaves water",
        "water in the bottom",
        "water in the drum",
        "puddle in",
        "water remain",
        "water in the sump");
    put(
        all,
        "water-inside",
        "water inside",
        "water in the fridge",
        "water under the drawer",
        "wet inside",
        "water in the salad");
    put(
        all,
        "tank-full-shown",
        "tank full",
        "says full",
        "bucket full",
        "shows full",
        "empty the tank");
    put(
        all,
        "stays-cold",
        "not heat",
        "no heat",
        "not warm",
        "cold",
        "not get hot",
        "not hot",
        "not glow",
        "not boil");
    put(
        all,
        "heats-slowly",
        "heat slow",
        "slow to heat",
        "long to heat",
        "ages to heat",
        "warm slow",
        "long to warm",
        "ages to warm",
        "ages to get hot",
        "ages to boil",
        "long to boil",
        "slow to boil",
        "barely warm",
        "lukewarm",
        "forever to heat",
        "for ever to heat",
        "forever to warm",
        "for ever to warm",
        "forever to boil",
        "for ever to boil",
        "forever to get hot",
        "for ever to get hot",
        "long to get hot");
    put(
        all,
        "runs-out-early",
        "runs out",
        "run out",
        "not enough hot",
        "hot water gone",
        "short shower",
        "used to last",
        "water not last",
        "less hot water");
    put(all, "too-hot", "too hot", "overheat", "scald", "burns the", "boiling hot", "burnt food");
    put(
        all,
        "temperature-swings",
        "hot and cold",
        "hot then cold",
        "swings",
        "temperature change",
        "goes cold",
        "fluctuat");
    put(
        all,
        "uneven-heat",
        "uneven",
        "one side",
        "top not",
        "bottom not",
        "only the top",
        "only the bottom",
        "half raw",
        "stays raw");
    put(
        all,
        "does-not-dry",
        "not dry",
        "still damp",
        "still wet",
        "clammy",
        "takes ages to dry",
        "long to dry",
        "two cycles",
        "damp",
        "forever to dry",
        "for ever to dry",
        "slow to dry",
        "dries slow",
        "dry slow",
        "hours to dry",
        "two runs",
        "second cycle",
        "several cycles");
    put(
        all,
        "stays-wet",
        "dishes wet",
        "wet dishes",
        "plates wet",
        "soaking",
        "dripping wet",
        "come out wet");
    put(
        all,
        "too-warm-inside",
        "too warm",
        "not cold",
        "not cool",
        "not cooling",
        "milk",
        "thaw",
        "food spoil",
        "not freez");
    put(
        all,
        "fresh-food-only",
        "freezer ok",
        "freezer fine",
        "freezer good",
        "freezer is cold",
        "freezer cold",
        "freezer work",
        "freezer still",
        "freezer freez",
        "only the fridge",
        "just the fridge",
        "fridge part",
        "fridge section",
        "fridge warm",
        "fresh food warm");
    put(all, "too-cold-inside", "freezes the", "too cold", "salad frozen", "frozen in the fridge");
    put(all, "ices-up", "ice", "frost", "iced", "frozen over");
    put(all, "trips-breaker", "trips the breaker", "breaker", "fuse", "mcb");
    put(
        all,
        "trips-rcd",
        "rcd",
        "gfci",
        "trips",
        "earth leakage",
        "residual",
        "safety switch",
        "all the lights go");
    put(
        all,
        "shock-felt",
        "shock",
        "tingl",
        "tickl",
        "prickl",
        "electric feel",
        "feel electric",
        "feel current",
        "electrified",
        "electrocut",
        "zap");
    put(all, "sparks", "spark", "arcing", "flash");
    put(
        all,
        "smells-burnt",
        "burnt smell",
        "burning smell",
        "smells burn",
        "smells burnt",
        "smoke",
        "smell of burning",
        "scorch",
        "hot plastic");
    put(all, "smells-foul", "smells", "stink", "mould", "mold", "musty", "bad smell", "foul");
    put(
        all,
        "leaks",
        "leak",
        "water on the floor",
        "puddle",
        "drip",
        "water under",
        "wet floor",
        "floods");
    put(all, "relief-drips", "relief", "safety valve", "overflow pipe", "discharge pipe");
    put(
        all, "loud", "loud", "nois", "rattl", "squeal", "grind", "bang", "knock", "rumbl",
        "screech", "clatter", "roar", "whin", "howl");
    put(all, "vibrates", "shak", "vibrat", "walks", "jump", "wander", "dances");
    put(
        all,
        "does-not-spin",
        "not spin",
        "no spin",
        "clothes wet",
        "wash soaking",
        "laundry wet",
        "spins slow");
    put(all, "hums-only", "hum", "buzz");
    put(
        all,
        "poor-result",
        "not clean",
        "cloudy",
        "dirty",
        "spots",
        "residue",
        "bad result",
        "streak",
        "weak coffee",
        "not wash",
        "poor",
        "bitter",
        "burnt on one");
    put(
        all,
        "dispenser-stays-full",
        "tablet",
        "detergent left",
        "powder left",
        "soap left",
        "dispenser");
    put(
        all,
        "discoloured-water",
        "brown water",
        "rusty",
        "cloudy water",
        "water cloudy",
        "colour",
        "discolo",
        "rust",
        "bits in the water");
    put(all, "door-does-not-lock", "door not lock", "not latch", "door lock");
    put(
        all,
        "door-does-not-open",
        "door not open",
        "door stuck",
        "door stay",
        "not unlock",
        "cannot open");
    put(
        all,
        "door-does-not-close",
        "door not clos",
        "door not shut",
        "door sags",
        "gap at the door",
        "door falls");
    put(
        all,
        "no-flow",
        "no coffee",
        "nothing comes out",
        "no water out",
        "no water come out",
        "no hot water come");
    put(
        all,
        "weak-flow",
        "trickle",
        "weak flow",
        "little water",
        "low pressure",
        "weak pressure",
        "dribbl",
        "slow flow",
        "no pressure");
    put(
        all,
        "weak-without-coffee",
        "without coffee",
        "no coffee in",
        "filter empty",
        "empty filter",
        "blind filter");
    put(all, "weak-steam", "weak steam", "no steam", "little steam", "not froth");
    put(
        all,
        "weak-air",
        "weak air",
        "no air",
        "little air",
        "not blow",
        "blows weak",
        "not extract",
        "not draw",
        "less air",
        "weak suction",
        "sucks weak",
        "not suck");
    put(all, "weak-suction", "suction", "not suck", "sucks weak", "not pick up", "lost suck");
    put(
        all,
        "runs-without-end",
        "runs without",
        "never stop",
        "not stop",
        "not switch off",
        "runs all the time",
        "keeps running",
        "endless",
        "never end",
        "never finish",
        "goes on and on",
        "on for hours",
        "runs for hours");
    put(all, "short-cycles", "on and off", "clicks on", "cycles");
    put(
        all,
        "cuts-in-and-out",
        "wiggl",
        "jiggl",
        "waggl",
        "off and on",
        "bend the cable",
        "bend the cord",
        "move the cable",
        "move the cord",
        "hold the cable",
        "hold the cord",
        "twist the cable",
        "twist the cord",
        "loose contact",
        "intermittent",
        "cuts in and out");
    put(
        all,
        "bang-at-door",
        "a bang",
        "loud bang",
        "big bang",
        "bang when",
        "banged when",
        "pop when",
        "a pop",
        "went bang");
    put(
        all,
        "pan-not-seen",
        "pan sign",
        "pan symbol",
        "new pan",
        "new pot",
        "not recogni",
        "not detect",
        "not see the pan",
        "not find the pan",
        "no pan",
        "copper",
        "alumin",
        "only some pan",
        "some pans",
        "other pan",
        "old pan",
        "old pot",
        "flashes a u",
        "blinks a u",
        "flashing u");
    return all;
  }

  private static void put(Map<String, List<String>> all, String symptom, String... phrases) {
    all.put(symptom, List.of(phrases));
  }

  /**
   * The symptoms that a sentence may speak of.
   *
   * @param sentence what somebody said
   * @param symptoms the symptoms that are known
   * @return those of which a phrase stands in the sentence, in their order; they are to be asked
   *     for, not taken as said
   */
  public static List<Symptom> named(String sentence, Collection<Symptom> symptoms) {
    List<List<String>> clauses = clauses(sentence);
    List<Symptom> named = new ArrayList<>();
    for (Symptom symptom : symptoms) {
      if (isNamed(symptom, clauses)) {
        named.add(symptom);
      }
    }
    return named;
  }

  /** Whether a phrase for a symptom is known. */
  static boolean isSaid(Symptom symptom) {
    return PHRASES.containsKey(symptom.id());
  }

  private static boolean isNamed(Symptom symptom, List<List<String>> clauses) {
    for (String phrase : PHRASES.getOrDefault(symptom.id(), List.of())) {
      for (List<String> clause : clauses) {
        if (stands(Phrase.of(phrase), clause)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether the beginnings of words follow each other in a clause. */
  private static boolean stands(Phrase phrase, List<String> clause) {
    for (int start = 0; start < clause.size(); start++) {
      if (phrase.startsAt(clause, start)) {
        return true;
      }
    }
    return false;
  }

  /**
   * The clauses of what somebody said, short forms written out.
   *
   * @param sentence what somebody said
   * @return the words of each clause, in lower case
   */
  public static List<List<String>> clauses(String sentence) {
    String plain =
        sentence.toLowerCase(Locale.ROOT).replace('\u2019', '\'').replace("can't", "cannot not");
    plain = plain.replace("won't", "will not").replace("n't", " not").replace("cannot", "can not");
    List<List<String>> clauses = new ArrayList<>();
    for (String clause : plain.split("[.,;:!?]| and | but ")) {
      clauses.add(List.of(clause.strip().split("[^\\p{L}\\p{N}]+")));
    }
    return clauses;
  }

  /**
   * The symptoms that somebody may mean by some words.
   *
   * @param words an id, or any words
   * @param symptoms the symptoms that are known
   * @return the one of that id; for words that only say that something takes long, all that may
   *     take long; else those that have all the words in id or title; else those of which the words
   *     are a phrase; empty if there is none
   */
  public static List<Symptom> meant(String words, Collection<Symptom> symptoms) {
    String told = words.toLowerCase(Locale.ROOT).strip();
    List<Symptom> holding = new ArrayList<>();
    for (Symptom symptom : symptoms) {
      if (symptom.id().equals(told.replace(' ', '-'))) {
        return List.of(symptom);
      }
      if (hasAll(symptom.id().replace('-', ' ') + " " + symptom.title(), told)) {
        holding.add(symptom);
      }
    }
    if (TAKES_LONG.contains(told.startsWith("it ") ? told.substring(3) : told)) {
      return symptoms.stream().filter(each -> LONG.contains(each.id())).toList();
    }
    Set<Symptom> found = new LinkedHashSet<>(holding);
    if (found.isEmpty()) {
      found.addAll(named(told, symptoms));
    }
    return List.copyOf(found);
  }

  private static boolean hasAll(String text, String told) {
    String plain = " " + text.toLowerCase(Locale.ROOT);
    for (String word : told.split("[^\\p{L}\\p{N}]+")) {
      if (!plain.contains(" " + word)) {
        return false;
      }
    }
    return !told.isEmpty();
  }
}
