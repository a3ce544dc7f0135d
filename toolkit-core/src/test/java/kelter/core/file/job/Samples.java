package kelter.core.file.job;

import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Vocabulary;

/** A small vocabulary and a job that uses all of the format. */
public final class Samples {

  private static final Procedure PROCEDURE =
      new Procedure("Look.", 1, Hazard.NONE, new Accuracy(0.02, 0), List.of());

  public static final Vocabulary VOCABULARY =
      new Vocabulary(
          List.of(
              new ComponentKind(
                  "bilge-pump",
                  "bilge pump",
                  List.of(
                      Observable.named("head", "head")
                          .quantity(QuantityKind.HEAD, 0, 20)
                          .at(
                              new Characteristic("flow", "flow rate", QuantityKind.FLOW),
                              new Characteristic(
                                  "temperature", "temperature", QuantityKind.TEMPERATURE))
                          .by(PROCEDURE),
                      Observable.named("hums", "hums").by(PROCEDURE),
                      Observable.named("dirt", "dirt")
                          .graded("none", "some", "much")
                          .by(PROCEDURE)),
                  List.of(new Characteristic("lift", "lift", QuantityKind.HEAD)),
                  List.of(
                      new CurveKind("head", "head curve", QuantityKind.FLOW, QuantityKind.HEAD)))));

  public static final String FULL =
      """
      {
        "format": "kelter-job/2",
        "id": "b-17",
        "date": "2026-03-01",
        "market": "EU",
        "x-berth": { "no": 4, "paid": 1.50e2, "ok": true, "left": null, "list": [1, 2.0] },
        "appliance": {
          "kind": "bilge-unit",
          "maker": "Ostvik",
          "model": "B2",
          "serial": "001",
          "age": "4,5 years",
          "nameplate": {
            "voltage": "230 V",
            "frequency": "50 Hz",
            "power": "0.4 kW",
            "current": "1.8 A",
            "protection-class": "I"
          },
          "components": [
            {
              "id": "pump",
              "kind": "bilge-pump",
              "nameplate": { "power": "60 W" },
              "figures": { "lift": "0.8 m" },
              "curves": { "head": [["0 L/min", "3.0 m"], ["20 L/min", "2.1 m"]] },
              "source": { "document": "service sheet 3", "standing": "invented" }
            }
          ]
        },
        "reason": "fault",
        "complaint": { "said": "it floods", "displayed": "F1" },
        "symptoms": {
          "does-not-drain": "no",
          "drains-slowly": "yes",
          "loud": "sometimes",
          "leaks": {
            "report": "sometimes", "when": "hot", "step": "when it is full", "since": "3 weeks"
          },
          "stays-cold": "not asked",
          "x-asked": ["the skipper"]
        },
        "displayed": ["drain", "leak"],
        "instruments": [
          {
            "id": "standpipe",
            "title": "a clear hose and a rule",
            "functions": [
              { "measures": "head", "accuracy": "5 mm" },
              { "measures": "temperature", "accuracy": "0.5 % + 2 counts", "resolution": "0.1 K" }
            ]
          }
        ],
        "measurements": [
          {
            "of": "pump",
            "observable": "head",
            "reading": ["1.62 m", "1.60 m"],
            "at": { "flow": "0 L/min", "temperature": "24 °C" },
            "instrument": "standpipe",
            "note": "twice"
          },
          { "of": "pump", "observable": "hums", "reading": true },
          { "of": "pump", "observable": "dirt", "reading": "some" }
        ],
        "prices": {
          "currency": "NOK",
          "labour-per-hour": "900 NOK",
          "call-out": "500 NOK",
          "replacement": "8 900 NOK",
          "installation": "700 NOK",
          "running-per-year": "300 NOK",
          "running-per-year-new": "250 NOK",
          "discount-rate": "4 %",
          "parts": { "pump.renew": "1200.50 NOK" },
          "date": "2026-02-27",
          "least-work": "30 min",
          "call-out-credited": true,
          "replacement-available": false,
          "energy-per-kwh": "1.60 NOK",
          "water-per-m3": "42 NOK",
          "detergent-per-cycle": "3 NOK",
          "parts-delivery": "3 d",
          "replacement-delivery": "2 wk",
          "day-without": "400 NOK",
          "repair-warranty": "12 mo",
          "new-warranty": "5 years",
          "tax-rate": "25 %",
          "tax-rate-parts": "12,5 %",
          "tax-rounding": "per line",
          "prices-with-tax": true,
          "spread": { "repair": "10 %", "replacement": "5 %", "running": "20 %" }
        },
        "use": {
          "cycles-per-week": "14",
          "built-for-cycles": "15000",
          "energy-per-cycle": "1.2 kWh",
          "water-per-cycle": "50 L",
          "energy-per-cycle-new": "900 Wh",
          "water-per-cycle-new": "40 L",
          "carbon-of-new": "300 kg",
          "carbon-per-kwh": "20 g"
        },
        "work": [
          {
            "remedy": "pump.renew",
            "title": "Circulation pump renewed",
            "time": "35 min",
            "parts": [{ "title": "Pump", "count": 1, "price": "1200.50 NOK", "condition": "new" }],
            "found": ["pump.worn"],
            "by": "K. Lund",
            "date": "2026-02-28",
            "note": "old one kept"
          },
          { "title": "Hose clip put right" }
        ],
        "tests": { "look": "met", "cycle": { "result": "not met", "note": "drips at the door" } },
        "symptoms-left": { "loud": "no" },
        "closed": {
          "date": "2026-03-09",
          "outcome": "not-cured",
          "causes": ["pump.worn"],
          "charged": "2 900 NOK",
          "old-parts": "left with the owner",
          "guarantee": "12 mo",
          "by": "K. Lund",
          "note": "comes again"
        },
        "call-back-of": "quay-11",
        "accepted": { "option": 1, "title": "Renew the pump", "most": "2 950 NOK", "date": "2026-02-26" },
        "note": "by the quay"
      }
      """;

  private static final String SINCE_TWO =
      "\"(market|reason)\": \"\\w+\",|\"symptoms\": \\{(?s:.*?)\\n  },|\"displayed\": \\[.*?],"
          + "|\"work\": \\[(?s:.*?)\n  \\],|\"tests\": .*|\"symptoms-left\": .*|\"closed\": \\{(?s:.*?)\n  },"
          + "|\"(call-back-of|accepted)\": .*|\"tax-.*|\"prices-with-tax\": .*";

  /** The same as version 1 has it. */
  public static final String FULL_ONE =
      FULL.replace("kelter-job/2", "kelter-job/1").replaceAll(SINCE_TWO, "");

  private Samples() {}
}
