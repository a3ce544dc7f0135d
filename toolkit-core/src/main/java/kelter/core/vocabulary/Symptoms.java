package kelter.core.vocabulary;

import java.util.ArrayList;
import java.util.List;
import kelter.core.source.Source;
import kelter.core.vocabulary.Symptom.Misreports;

/**
 * The symptoms that machines of any kind have, in the words of the trade. All chances are from
 * memory: what is there beside another cause by the way, and what is named where no cause is found,
 * which is about how often it is named at all.
 */
public final class Symptoms {

  /** Where the chances come from. */
  public static final Source SOURCE =
      Source.fromMemory("how often machines show each symptom, and how often it is told wrongly");

  /** The machine does not start. */
  public static final Symptom DOES_NOT_START =
      of(
          "does-not-start",
          "does not start",
          "Does it fail to start when it is switched on?",
          2,
          14,
          Misreports.PLAIN);

  /** The machine shows nothing at all. */
  public static final Symptom DISPLAY_DEAD =
      of(
          "display-dead",
          "shows nothing at all",
          "Does the display stay dark?",
          1,
          3.2,
          Misreports.PLAIN);

  /** The machine does not answer its buttons. */
  public static final Symptom CONTROL_DEAD =
      of(
          "control-dead",
          "does not answer its buttons",
          "Does it ignore its buttons and knobs?",
          1,
          5.3,
          Misreports.PLAIN);

  /** The machine has no light. */
  public static final Symptom LIGHT_OUT =
      of("light-out", "has no light", "Does its lamp stay dark?", 2, 9.3, Misreports.PLAIN);

  /** The machine stops in the middle. */
  public static final Symptom STOPS_IN_CYCLE =
      of(
              "stops-in-cycle",
              "stops in the middle",
              "Does it stop before it is done?",
              3,
              15,
              Misreports.PLAIN)
          .hiddenBy(DOES_NOT_START);

  /** The machine does not turn. */
  public static final Symptom DOES_NOT_TURN =
      of(
              "does-not-turn",
              "does not turn",
              "Does what should turn stand still?",
              1,
              11,
              Misreports.PLAIN)
          .hiddenBy(DOES_NOT_START);

  /** The machine does not fill. */
  public static final Symptom DOES_NOT_FILL =
      of(
              "does-not-fill",
              "does not fill",
              "Does it stay dry when it should fill?",
              2,
              5.9,
              Misreports.PLAIN)
          .hiddenBy(DOES_NOT_START);

  /** The machine fills slowly. */
  public static final Symptom FILLS_SLOWLY =
      of(
              "fills-slowly",
              "fills slowly",
              "Does it take much longer to fill than it did?",
              3,
              5.5,
              Misreports.OF_DEGREE)
          .hiddenBy(DOES_NOT_FILL);

  /** The machine fills without end. */
  public static final Symptom FILLS_WITHOUT_END =
      of(
          "fills-without-end",
          "fills without end",
          "Does water keep coming in, above the usual level?",
          1,
          4,
          Misreports.PLAIN);

  /** The machine does not drain. */
  public static final Symptom DOES_NOT_DRAIN =
      of(
              "does-not-drain",
              "does not drain",
              "Does all the water stay in when it should drain?",
              2,
              8,
              Misreports.PLAIN)
          .hiddenBy(DOES_NOT_START);

  /** The machine drains slowly. */
  public static final Symptom DRAINS_SLOWLY =
      of(
              "drains-slowly",
              "drains slowly",
              "Does it take more than twice the usual time to drain?",
              2,
              7.2,
              Misreports.OF_DEGREE)
          .hiddenBy(DOES_NOT_DRAIN);

  /** The machine leaves water in. */
  public static final Symptom WATER_LEFT =
      of(
              "water-left",
              "leaves water in",
              "Is water left in it at the end?",
              3,
              9.8,
              Misreports.PLAIN)
          .hiddenBy(DOES_NOT_START);

  /** The machine has water where it should be dry. */
  public static final Symptom WATER_INSIDE =
      of(
          "water-inside",
          "has water where it should be dry",
          "Does water stand inside where it should be dry?",
          3,
          11,
          Misreports.PLAIN);

  /** The machine says that its tank is full. */
  public static final Symptom TANK_FULL_SHOWN =
      of(
          "tank-full-shown",
          "says that its tank is full",
          "Does it say that its tank is full although it is empty?",
          2,
          12.5,
          Misreports.PLAIN);

  /** The machine stays cold. */
  public static final Symptom STAYS_COLD =
      of(
              "stays-cold",
              "stays cold",
              "Does it stay cold when it should heat?",
              2,
              16,
              Misreports.PLAIN)
          .hiddenBy(DOES_NOT_START);

  /** The machine heats slowly. */
  public static final Symptom HEATS_SLOWLY =
      of(
              "heats-slowly",
              "heats slowly",
              "Does it get warm, but take longer than it did?",
              3,
              10.5,
              Misreports.OF_DEGREE)
          .hiddenBy(STAYS_COLD);

  /** The machine runs out of hot water early. */
  public static final Symptom RUNS_OUT_EARLY =
      of(
              "runs-out-early",
              "runs out of hot water early",
              "Does the hot water run out earlier than it did?",
              4,
              28,
              Misreports.SUBTLE)
          .hiddenBy(STAYS_COLD);

  /** The machine gets too hot. */
  public static final Symptom TOO_HOT =
      of(
              "too-hot",
              "gets too hot",
              "Does it get hotter than it is set to?",
              1,
              5,
              Misreports.SUBTLE)
          .hiddenBy(DOES_NOT_START, STAYS_COLD);

  /** The machine is hot and cold by turns. */
  public static final Symptom TEMPERATURE_SWINGS =
      of(
          "temperature-swings",
          "is hot and cold by turns",
          "Does the temperature go up and down?",
          3,
          13,
          Misreports.SUBTLE);

  /** The machine heats unevenly. */
  public static final Symptom UNEVEN_HEAT =
      of(
              "uneven-heat",
              "heats unevenly",
              "Is one side hotter than the other?",
              5,
              19,
              Misreports.SUBTLE)
          .hiddenBy(STAYS_COLD);

  /** The machine does not dry in the usual time. */
  public static final Symptom DOES_NOT_DRY =
      of(
              "does-not-dry",
              "does not dry in the usual time",
              "Is the load still damp after the usual time?",
              4,
              46,
              Misreports.PLAIN)
          .hiddenBy(DOES_NOT_START);

  /** The machine leaves its load wet. */
  public static final Symptom STAYS_WET =
      of(
              "stays-wet",
              "leaves its load wet",
              "Does the load come out wetter than it did?",
              8,
              31,
              Misreports.SUBTLE)
          .hiddenBy(DOES_NOT_START);

  /** The machine is too warm inside. */
  public static final Symptom TOO_WARM_INSIDE =
      of(
          "too-warm-inside",
          "is too warm inside",
          "Is it too warm inside?",
          3,
          51,
          Misreports.PLAIN);

  /** The machine fails in its fresh-food space only, with the freezer in order. */
  public static final Symptom FRESH_FOOD_ONLY =
      of(
          "fresh-food-only",
          "fails in its fresh-food space only, with the freezer in order",
          "Is only the fresh-food space too warm, with the freezer in order?",
          1,
          15,
          Misreports.SUBTLE);

  /** The machine is too cold inside. */
  public static final Symptom TOO_COLD_INSIDE =
      of(
          "too-cold-inside",
          "is too cold inside",
          "Does it freeze what should only be cool?",
          2,
          5,
          Misreports.PLAIN);

  /** The machine ices up. */
  public static final Symptom ICES_UP =
      of("ices-up", "ices up", "Is there more ice inside than there was?", 3, 28, Misreports.PLAIN);

  /** The machine trips the fuse or circuit-breaker. */
  public static final Symptom TRIPS_BREAKER =
      of(
          "trips-breaker",
          "trips the fuse or circuit-breaker",
          "Does the fuse or circuit-breaker of its circuit trip?",
          1,
          3,
          Misreports.PLAIN);

  /** The machine trips the residual-current device. */
  public static final Symptom TRIPS_RCD =
      of(
          "trips-rcd",
          "trips the residual-current device",
          "Does the residual-current device (RCD, GFCI) trip?",
          1,
          4.3,
          Misreports.PLAIN);

  /** The machine gives a shock or a tingle. */
  public static final Symptom SHOCK_FELT =
      of(
          "shock-felt",
          "gives a shock or a tingle",
          "Has anybody felt a shock or a tingle? Never try it.",
          0.3,
          1,
          Misreports.PLAIN);

  /** The machine sparks. */
  public static final Symptom SPARKS =
      of("sparks", "sparks", "Has anybody seen sparks?", 1, 5.3, Misreports.PLAIN);

  /** The machine smells burnt. */
  public static final Symptom SMELLS_BURNT =
      of("smells-burnt", "smells burnt", "Does it smell burnt?", 1, 6.5, Misreports.PLAIN);

  /** The machine smells foul. */
  public static final Symptom SMELLS_FOUL =
      of(
          "smells-foul",
          "smells foul",
          "Does it smell of mould or drains?",
          5,
          6.2,
          Misreports.PLAIN);

  /** The machine leaks. */
  public static final Symptom LEAKS =
      of("leaks", "leaks", "Is there water under it or beside it?", 3, 12, Misreports.PLAIN);

  /** The machine drips from its relief valve. */
  public static final Symptom RELIEF_DRIPS =
      of(
          "relief-drips",
          "drips from its relief valve",
          "Does the relief or safety valve drip or run?",
          4,
          7.7,
          Misreports.PLAIN);

  /** The machine is loud. */
  public static final Symptom LOUD =
      of(
              "loud",
              "is loud",
              "Is it louder than it was, or does it sound different?",
              5,
              15,
              Misreports.SUBTLE)
          .hiddenBy(DOES_NOT_START);

  /** The machine shakes. */
  public static final Symptom VIBRATES =
      of("vibrates", "shakes", "Does it shake or walk?", 4, 9.5, Misreports.SUBTLE)
          .hiddenBy(DOES_NOT_START, DOES_NOT_TURN);

  /** The machine does not spin. */
  public static final Symptom DOES_NOT_SPIN =
      of(
              "does-not-spin",
              "does not spin",
              "Does it fail to reach its spin speed?",
              2,
              16,
              Misreports.PLAIN)
          .hiddenBy(DOES_NOT_START, DOES_NOT_TURN);

  /** The machine hums and does no more. */
  public static final Symptom HUMS_ONLY =
      of(
          "hums-only",
          "hums and does no more",
          "Does it only hum or click when it should run?",
          1,
          6,
          Misreports.PLAIN);

  /** The machine does its work badly. */
  public static final Symptom POOR_RESULT =
      of(
              "poor-result",
              "does its work badly",
              "Is the result worse than it was: dirty, uneven, weak?",
              6,
              25,
              Misreports.SUBTLE)
          .hiddenBy(DOES_NOT_START);

  /** The machine leaves the detergent in its dispenser. */
  public static final Symptom DISPENSER_STAYS_FULL =
      of(
              "dispenser-stays-full",
              "leaves the detergent in its dispenser",
              "Is detergent left in the dispenser?",
              2,
              5,
              Misreports.PLAIN)
          .hiddenBy(DOES_NOT_START);

  /** The machine gives coloured or cloudy water. */
  public static final Symptom DISCOLOURED_WATER =
      of(
          "discoloured-water",
          "gives coloured or cloudy water",
          "Is the water coloured or cloudy?",
          3,
          7.2,
          Misreports.PLAIN);

  /** The machine does not lock its door. */
  public static final Symptom DOOR_DOES_NOT_LOCK =
      of(
          "door-does-not-lock",
          "does not lock its door",
          "Does the door stay unlocked when it should lock?",
          1,
          5.5,
          Misreports.PLAIN);

  /** The machine does not open its door. */
  public static final Symptom DOOR_DOES_NOT_OPEN =
      of(
          "door-does-not-open",
          "does not open its door",
          "Does the door stay locked or stuck when it is done?",
          1,
          3.5,
          Misreports.PLAIN);

  /** The machine does not close its door properly. */
  public static final Symptom DOOR_DOES_NOT_CLOSE =
      of(
          "door-does-not-close",
          "does not close its door properly",
          "Does the door close badly, or stay open?",
          1,
          5.2,
          Misreports.PLAIN);

  /** The machine gives no water. */
  public static final Symptom NO_FLOW =
      of(
              "no-flow",
              "gives no water",
              "Does it stay dry where water should come out?",
              2,
              14,
              Misreports.PLAIN)
          .hiddenBy(DOES_NOT_START);

  /** The machine gives little water. */
  public static final Symptom WEAK_FLOW =
      of(
              "weak-flow",
              "gives little water",
              "Does much less water come out of it than did?",
              4,
              15.6,
              Misreports.SUBTLE)
          .hiddenBy(NO_FLOW);

  /** The machine gives little water even with no coffee in its way. */
  public static final Symptom WEAK_WITHOUT_COFFEE =
      of(
              "weak-without-coffee",
              "gives little water with the filter empty, too",
              "Does the water come slowly with the filter empty, too?",
              2,
              3,
              Misreports.SUBTLE)
          .hiddenBy(NO_FLOW);

  /** The machine gives weak steam. */
  public static final Symptom WEAK_STEAM =
      of(
          "weak-steam",
          "gives weak steam",
          "Is there less steam than there was?",
          3,
          17,
          Misreports.SUBTLE);

  /** The machine blows weakly. */
  public static final Symptom WEAK_AIR =
      of("weak-air", "blows weakly", "Does it move less air than it did?", 4, 29, Misreports.SUBTLE)
          .hiddenBy(DOES_NOT_START);

  /** The machine sucks weakly. */
  public static final Symptom WEAK_SUCTION =
      of("weak-suction", "sucks weakly", "Does it suck less than it did?", 5, 46, Misreports.SUBTLE)
          .hiddenBy(DOES_NOT_START);

  /** The machine runs without end. */
  public static final Symptom RUNS_WITHOUT_END =
      of(
          "runs-without-end",
          "runs without end",
          "Does it go on when it should stop?",
          3,
          19,
          Misreports.PLAIN);

  /** The machine switches on and off too often. */
  public static final Symptom SHORT_CYCLES =
      of(
          "short-cycles",
          "switches on and off too often",
          "Does it switch on and off more often than it did?",
          3,
          10.4,
          Misreports.SUBTLE);

  /** The machine goes off and on as it or its cord is moved. */
  public static final Symptom CUTS_IN_AND_OUT =
      of(
          "cuts-in-and-out",
          "goes off and on as it or its cord is moved",
          "Does it go off and on as it or its cord is moved? Only ask.",
          1,
          2,
          Misreports.PLAIN);

  /** The machine went off with a bang as its door was opened. */
  public static final Symptom BANG_AT_DOOR =
      of(
          "bang-at-door",
          "went off with a bang as its door was opened",
          "Was there a bang as the door was opened or closed?",
          0.3,
          0.5,
          Misreports.PLAIN);

  /** The machine does not know or heat some pans. */
  public static final Symptom PAN_NOT_SEEN =
      of(
          "pan-not-seen",
          "does not know a pan: shows the sign for it, or heats some pans only",
          "Does it show the sign for a pan, or heat some pans only?",
          1,
          30,
          Misreports.PLAIN);

  /** All of them, then what machines show of themselves. */
  public static final List<Symptom> ALL = all();

  /**
   * Signs of danger that are asked and answered as symptoms are. No chance is known of any of them:
   * they lock a machine out, and are not weighed.
   */
  public static final List<Symptom> SIGNS =
      List.of(
          sign(
              "taps-tingle",
              "stands where taps, sink or other machines tingle too",
              "Does it tingle at taps, the sink or other machines too? Never try it."),
          sign("smokes", "smokes", "Has anybody seen smoke come out of it?"),
          sign(
              "smokes-unplugged",
              "smokes although its power is off",
              "Does it still smoke with its power off? Then leave and call the fire service."),
          sign("plug-scorched", "has a scorched plug", "Is its plug scorched or melted?"),
          sign(
              "cord-damaged",
              "has a damaged cord or plug",
              "Is its cord or plug cut, torn or broken, or can copper be seen?"),
          sign("smells-of-gas", "stands where it smells of gas", "Does it smell of gas there?"),
          sign(
              "co-alarm",
              "set off a carbon monoxide alarm",
              "Has a carbon monoxide alarm gone off?"),
          sign(
              "water-in-electrics",
              "has water in its electrics",
              "Did water get to its electrics?"),
          sign(
              "wet-outlet",
              "has a wet plug, outlet or floor below them",
              "Is its plug, the outlet or the floor below them wet?"),
          sign(
              "lights-flare",
              "stands where lights flare or burn out",
              "Do lights get brighter or burn out?"),
          sign(
              "outlet-burnt",
              "stands at a hot or burnt outlet",
              "Is the outlet or the wall wiring hot, brown or melted?"),
          sign("lint-seen", "is blocked by lint", "Is filter, duct or heater blocked by lint?"),
          sign(
              "guard-faulty",
              "runs open or has a faulty guard or brake",
              "Does it run with its door or guard open, or is a guard or brake broken?"),
          sign("glass-cracked", "has a cracked glass", "Is its glass cracked: hob, door or lamp?"),
          sign(
              "relief-blows",
              "blows steam from its relief valve or has it capped",
              "Does its relief valve blow steam, or is it capped?"),
          sign(
              "vessel-leaks",
              "has a vessel that leaks or bulges",
              "Does its pressure vessel leak or bulge?"),
          sign("cut-out-bridged", "has a bridged cut-out", "Is a cut-out bridged?"),
          sign("burns-gas", "burns gas", "Does it burn gas?"),
          sign(
              "refrigerant-leak",
              "may leak refrigerant",
              "Does it hiss, is there an oil stain, or is a pipe bent or pierced?"),
          sign(
              "battery-damaged",
              "has a swollen, hot or wet battery",
              "Is its battery swollen, hot or wet?"),
          sign(
              "battery-above-60-v",
              "has a battery above 60 V",
              "Has it a battery of more than 60 V?"),
          sign("no-plug", "is wired in without a plug", "Is it wired in without a plug?"));

  private Symptoms() {}

  private static Symptom sign(String id, String title, String question) {
    return of(id, title, question, 0, 0, Misreports.PLAIN);
  }

  /** With chances in per cent. */
  private static Symptom of(
      String id,
      String title,
      String question,
      double leak,
      double amongUnfounded,
      Misreports misreports) {
    return new Symptom(
        id, title, question, leak / 100, amongUnfounded / 100, misreports, List.of());
  }

  private static List<Symptom> all() {
    List<Symptom> all =
        new ArrayList<>(
            List.of(
                DOES_NOT_START,
                DISPLAY_DEAD,
                CONTROL_DEAD,
                LIGHT_OUT,
                STOPS_IN_CYCLE,
                DOES_NOT_TURN,
                DOES_NOT_FILL,
                FILLS_SLOWLY,
                FILLS_WITHOUT_END,
                DOES_NOT_DRAIN,
                DRAINS_SLOWLY,
                WATER_LEFT,
                WATER_INSIDE,
                TANK_FULL_SHOWN,
                STAYS_COLD,
                HEATS_SLOWLY,
                RUNS_OUT_EARLY,
                TOO_HOT,
                TEMPERATURE_SWINGS,
                UNEVEN_HEAT,
                DOES_NOT_DRY,
                STAYS_WET,
                TOO_WARM_INSIDE,
                FRESH_FOOD_ONLY,
                TOO_COLD_INSIDE,
                ICES_UP,
                TRIPS_BREAKER,
                TRIPS_RCD,
                SHOCK_FELT,
                SPARKS,
                SMELLS_BURNT,
                SMELLS_FOUL,
                LEAKS,
                RELIEF_DRIPS,
                LOUD,
                VIBRATES,
                DOES_NOT_SPIN,
                HUMS_ONLY,
                POOR_RESULT,
                DISPENSER_STAYS_FULL,
                DISCOLOURED_WATER,
                DOOR_DOES_NOT_LOCK,
                DOOR_DOES_NOT_OPEN,
                DOOR_DOES_NOT_CLOSE,
                NO_FLOW,
                WEAK_FLOW,
                WEAK_WITHOUT_COFFEE,
                WEAK_STEAM,
                WEAK_AIR,
                WEAK_SUCTION,
                RUNS_WITHOUT_END,
                SHORT_CYCLES,
                CUTS_IN_AND_OUT,
                BANG_AT_DOOR,
                PAN_NOT_SEEN));
    all.addAll(Meaning.symptoms());
    return List.copyOf(all);
  }
}
