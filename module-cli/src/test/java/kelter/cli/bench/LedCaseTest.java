package kelter.cli.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import kelter.cli.wiring.Found;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.file.json.Json;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityParser;
import kelter.core.session.Prompt;
import kelter.core.session.Reply;
import kelter.core.session.Session;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;

/** Cases that are led from the call to the fault; machines and readings are made up. */
class LedCaseTest {

  private static final Workshop WORKSHOP = Workshop.of(Found.usual().modules());
  private static final int MOST_ANSWERS = 8;
  private static final int MOST_KEYS = 60;

  private static Session begin(String... lines) {
    Session session = Session.begin(WORKSHOP, "2026-11-29", kind -> kind + "-1");
    for (String line : lines) {
      session = after(session, line);
    }
    return session;
  }

  private static Session after(Session session, String line) {
    Reply reply = session.answer(line);
    assertNotEquals(session, reply.session(), line + ": " + reply.told());
    return reply.session();
  }

  private static String best(Session session) {
    List<Diagnosis.FaultProbability> faults = session.machine().diagnosis().faults();
    return faults.get(0).fault().key();
  }

  /** Answers what is asked by what is known of the machine, and leaves out what is not. */
  private static Session led(Session begun, Map<String, String> known) {
    Session session = begun;
    for (int answers = 0; answers < MOST_ANSWERS; answers++) {
      Prompt prompt = session.prompt();
      if (prompt instanceof Prompt.Enough) {
        return session;
      }
      String line = "skip";
      if (prompt instanceof Prompt.Ask ask) {
        line = known.getOrDefault(ask.symptom().id(), "n");
      } else if (prompt instanceof Prompt.Measure measure) {
        line = known.getOrDefault(measure.question().key(), "skip");
      } else if (prompt instanceof Prompt.Heed) {
        line = "ok";
      }
      session = after(session, line);
    }
    return session;
  }

  private static String told(Session session, String line) {
    return String.join(" ", session.answer(line).told());
  }

  @Test
  void aYesToTheKindThatWasMeantIsTaken() {
    Session session = begin("window air conditioner", "y");

    assertEquals("room-air-conditioner", session.machine().job().appliance().kind());
  }

  /** Words may be taken for a symptom that nobody meant: "no heater" is not "no heat". */
  @Test
  void whatWordsWereTakenForIsToldAndOverturnsNoAnswer() {
    Session session = begin("tumble dryer", "5", "", "does-not-dry = y", "stays-cold = n");

    Reply refused = session.answer("no heater");
    assertSame(session, refused.session());
    assertTrue(refused.told().get(0).contains("answered no"), refused.told().toString());
    assertTrue(refused.told().get(0).contains("stays-cold = yes"), refused.told().toString());

    Reply understood = session.answer("it squeals");
    assertEquals(
        List.of("Understood 'it squeals': is loud (loud), yes. If that is wrong: undo."),
        understood.told());
    String tried = told(session, "what if no heat");
    assertTrue(tried.contains("Then: "), tried);
  }

  @Test
  void aSessionIsLeftByAnyWordForIt() {
    for (String word : List.of("done", "quit", "exit", "q")) {
      assertTrue(begin("kettle", "5", "").answer(word).ended(), word);
    }
  }

  @Test
  void whatTheMachineHasNotIsToldByAWord() {
    Session session = begin("tumble dryer", "5", "", "stays-cold = y");
    assertTrue(session.machine().job().appliance().component("air-heater").isPresent());

    Session pump = after(session, "lacks air heater");
    assertTrue(pump.machine().job().appliance().component("air-heater").isEmpty());
    assertTrue(told(pump, "lacks spout").contains("condensate-pump"));
  }

  /** Of one element there are no three pairs of terminals to compare. */
  @Test
  void whatNoFaultUsesIsTold() {
    Session session = begin("glasswasher", "6", "", "heats-slowly = y");
    String told = told(session, "boiler-heater.readings-differ = 3");
    assertTrue(told.contains("no fault that is known of this machine uses it"), told);

    Session three =
        after(after(session, "plate voltage = 400 V"), "boiler-heater rated elements = 3");
    String used = told(three, "boiler-heater.readings-differ = 3");
    assertFalse(used.contains("uses it"), used);
  }

  /** The rated figure of a part decides what its reading alone cannot. */
  @Test
  void whatStandsOnAPartIsTaken() {
    Session session = begin("room-air-conditioner", "6", "It blows and is not cold", "ok");
    String wanted = told(session, "run capacitor capacitance = 35.2 uF");
    assertTrue(wanted.contains("run capacitor rated = "), wanted);

    Session marked =
        after(after(session, "run capacitor capacitance = 35.2 uF"), "run capacitor rated = 35 uF");
    assertTrue(
        marked.machine().findings().stream()
            .filter(each -> each.observable().equals("capacitance"))
            .allMatch(each -> each.verdict() == Verdict.CONFORMS),
        marked.machine().findings().toString());
    Session plate = after(marked, "plate voltage = 230 V");
    assertTrue(plate.machine().job().appliance().nameplate().voltage().isPresent());
  }

  /** 2600 W at 240 V is 22.15 ohm; the power is what stands on an element. */
  @Test
  void theNameplateOfAPartIsTakenByItsWords() {
    Session session = begin("oven", "6", "It does not heat");
    while (session.prompt() instanceof Prompt.Heed) {
      session = after(session, "ok");
    }
    session = after(after(session, "plate voltage = 240 V"), "plate frequency = 60 Hz");
    Reply read = session.answer("bake element resistance = 22.4 ohm");
    String told = String.join(" ", read.told());
    assertTrue(told.contains("Taken as read: bake element: resistance"), told);
    assertTrue(told.contains("bake element rated = ... W"), told);
    assertTrue(told.contains("it counts: ... at 75 °F."), told);
    String open = told(session, "bake element resistance = OL");
    assertFalse(open.contains("temperature"), open);
    for (String mark :
        List.of("bake element rated = 2600 W", "plate bake element power = 2.6 kW")) {
      Session marked = after(read.session(), mark);
      assertTrue(
          marked.machine().findings().stream()
              .filter(each -> each.component().equals("bake-element"))
              .allMatch(each -> each.verdict() == Verdict.CONFORMS),
          mark);
    }
  }

  /** A pump that hums and stands still: what jams it is looked for before it is renewed. */
  @Test
  void aPartIsLookedIntoBeforeItIsRenewed() {
    Session session =
        begin("glasswasher", "5", "", "water-left = y", "heats-slowly = y", "poor-result = y");
    session = after(session, "does-not-drain = s");
    session = after(session, "drain-pump.noise = hums");
    while (!(session.prompt() instanceof Prompt.Measure)
        && !(session.prompt() instanceof Prompt.Enough)) {
      session = after(session, session.prompt() instanceof Prompt.Heed ? "ok" : "skip");
    }
    Prompt.Measure look = assertInstanceOf(Prompt.Measure.class, session.prompt());

    assertEquals("drain-pump", look.question().component());
  }

  /** A reading that was mistyped on another day. */
  @Test
  void undoTakesReadingsOutOfAJobThatIsOpenedAgain() {
    Session first = begin("washing", "7", "It takes ages to drain", "drain-pump.debris = full");
    Session again = Session.of(WORKSHOP, after(first, "drain-pump.flow = 60 L/min").content());

    Session undone = after(again, "undo");
    assertEquals(1, undone.machine().job().measurements().size());
    assertEquals("debris", undone.machine().job().measurements().get(0).observable());
    assertEquals(0, after(undone, "undo").machine().job().measurements().size());
    assertTrue(told(after(undone, "undo"), "undo").contains("nothing to take back"));
  }

  @Test
  void aConditionIsTakenBehindAReadingAndItsLackIsTold() {
    Session session = begin("room-air-conditioner", "6", "It blows and is not cold", "ok");
    String words = "temperature sensor resistance = 10.4 kohm";

    assertTrue(told(session, words).contains("No temperature told"), told(session, words));
    for (String at : List.of(" at 24 C", " at temperature=24 Cel", " at 24 °C")) {
      Quantity read =
          after(session, words + at)
              .machine()
              .job()
              .measurements("temperature-sensor", "resistance")
              .get(0)
              .conditions()
              .figure("temperature")
              .orElseThrow();
      assertEquals(297.15, read.si(), 1e-9, at);
    }
  }

  @Test
  void aWasherThatDrainsSlowly() {
    Session end =
        led(
            begin("washing", "7", "It takes ages to drain"),
            Map.of(
                "drains-slowly", "y",
                "shows-drain", "y",
                "water-left", "y",
                "does-not-spin", "s",
                "drain-pump.noise", "usual",
                "drain-pump.strainer", "clogged",
                "drain-pump.debris", "none"));
    assertEquals("drain-pump.strainer-clogged", best(end));
  }

  @Test
  void aWashingMachineThatStaysCold() {
    Session end =
        led(
            begin("washing", "9", "The wash comes out cold"),
            Map.of(
                "stays-cold", "y",
                "shows-heat", "y",
                "drain-pump.noise", "usual",
                "heater.warming-rate", "0 K/min",
                "heater.resistance", "OL",
                "thermal-cut-out.resistance", "0.1 ohm"));
    assertEquals("heater.open", best(end));
    assertInstanceOf(Prompt.Enough.class, end.prompt());
  }

  @Test
  void aBoilerThatTrips() {
    Session end =
        led(
            begin("water-boiler", "9", "The RCD trips when it heats"),
            Map.of(
                "trips-rcd", "y",
                "heater.insulation-resistance", "40 kOhm",
                "heater.sheath-damaged", "n",
                "supply-cord.insulation-resistance", "40 kOhm"));
    assertTrue(List.of("heater.leaking", "heater.sheath-split").contains(best(end)), best(end));
  }

  @Test
  void aCallTakesFewKeys() {
    String[] call = {"washing", "9", "", "y"};
    int keys = String.join("\n", call).length() + 1;
    assertTrue(keys < MOST_KEYS, "" + keys);
    Session session = begin("washing", "9", "skip");
    assertFalse(session.prompt() instanceof Prompt.KindOfMachine);
  }

  @Test
  void everyAnswerIsTakenBack() {
    Session begun = begin("dryer", "6", "skip");
    Session told = begun;
    Json.Obj before = begun.content();
    for (int answers = 0; answers < MOST_ANSWERS; answers++) {
      String line = told.prompt() instanceof Prompt.Ask ? "y" : "skip";
      told = after(told, told.prompt() instanceof Prompt.Heed ? "ok" : line);
    }
    for (int answers = 0; answers < MOST_ANSWERS; answers++) {
      told = after(told, "undo");
    }
    assertSame(begun, told);
    assertEquals(before, told.content());
  }

  @Test
  void whatIsTakenBackIsTold() {
    Session begun = begin("dryer", "6", "It gets far too hot");
    Prompt.Ask asked = assertInstanceOf(Prompt.Ask.class, begun.prompt());
    Reply back = after(begun, "y").answer("undo");
    assertEquals("Taken back: 'y', said to: " + asked.symptom().question(), back.told().get(0));
    Reply note = after(begun, "note the door squeaks").answer("undo");
    assertEquals("Taken back: 'note the door squeaks'", note.told().get(0));
  }

  @Test
  void whatCannotBeIsAskedAgain() {
    Session session = begin("water-boiler", "3", "skip");
    Reply reply = session.answer("heater resistance = 26 kg");
    assertSame(session, reply.session());
    assertTrue(reply.told().get(0).contains("kg"), reply.told().toString());
    Reply unknown = session.answer("flux capacitor = 3 V");
    assertTrue(unknown.told().get(0).contains("Nothing here is called"), unknown.told().toString());
    Reply several = Session.begin(WORKSHOP, "2026-11-29", kind -> kind).answer("boiler");
    assertTrue(several.told().get(0).startsWith("Which: "), several.told().toString());
  }

  @Test
  void ordersDoNotChangeTheCase() {
    Session session = begin("dryer", "6", "It gets far too hot");
    for (String order : List.of("list", "why", "what if leaks", "?", "help")) {
      Reply reply = session.answer(order);
      assertSame(session, reply.session(), order);
      assertFalse(reply.told().isEmpty(), order);
    }
    assertTrue(session.answer("done").ended());
    Session noted = after(session, "note the door squeaks");
    assertTrue(noted.content().toString().contains("the door squeaks"));
    assertSame(session, after(noted, "undo"));
  }

  /** Words of the owner are asked for, never taken as answers. */
  @Test
  void wordsOfTheOwnerAreAskedFor() {
    Session session = begin("dryer", "6", "It gets far too hot");
    assertEquals(List.of(), session.machine().job().complaint().symptoms());
    Prompt.Ask asked = assertInstanceOf(Prompt.Ask.class, session.prompt());
    assertEquals("too-hot", asked.symptom().id());
  }

  /** A sign of danger that was denied or doubted is asked for once, and only a no ends it. */
  @Test
  void dangerThatWasDeniedOrDoubtedIsAskedFor() {
    Session denied = begin("washing", "6", "It stands still. There is no smell of gas");
    Prompt.Ask asked = assertInstanceOf(Prompt.Ask.class, denied.prompt());
    assertEquals("smells-of-gas", asked.symptom().id());
    assertInstanceOf(Prompt.Heed.class, after(denied, "y").prompt());
    Session doubted = after(begin("washing", "6", "Maybe it smells of gas"), "ok");
    assertEquals("smells-of-gas", ((Prompt.Ask) doubted.prompt()).symptom().id());
    assertInstanceOf(Prompt.Enough.class, after(doubted, "skip").prompt());
    assertEquals("", after(doubted, "n").machine().lockOut().text());
    Session plain = after(begin("washing", "6", "It smells of gas"), "ok");
    assertEquals("smells-of-gas", ((Prompt.Ask) plain.prompt()).symptom().id());
    assertInstanceOf(Prompt.Enough.class, after(plain, "y").prompt());
  }

  /** A reading that never fits is not asked for without end. */
  @Test
  void whatDoesNotFitIsTakenThreeTimesAtMost() {
    Session session = begin("water-boiler", "3", "skip", "does-not-start = y", "leaks = y");
    for (String reading : List.of("17.3 ohm", "126.5 ohm", "18.8 ohm")) {
      session = heeded(after(session, "switch.closed-resistance = " + reading));
    }
    boolean again =
        session.prompt() instanceof Prompt.Measure measure
            && measure.question().key().equals("switch.closed-resistance");
    assertFalse(again, session.prompt().toString());
  }

  private static Session heeded(Session begun) {
    Session session = begun;
    while (session.prompt() instanceof Prompt.Heed) {
      session = after(session, "ok");
    }
    return session;
  }

  /** What is asked for in a unit can be typed in it. */
  @Test
  void unitsAreTypedAsTheyAreShown() {
    for (ComponentKind kind : WORKSHOP.vocabulary().kinds()) {
      for (Observable observable : kind.observables()) {
        if (observable.type() == Observable.Type.QUANTITY) {
          String shown =
              Quantity.of(2, observable.kind().unit().code(), observable.kind()).display();
          Quantity read = QuantityParser.parse(shown, observable.kind());
          assertEquals(shown, read.display());
        }
      }
    }
  }
}
