package kelter.core.vocabulary;

import java.util.ArrayList;
import java.util.List;

/**
 * What a machine says of itself by a lamp or a code, whatever the code is. What the codes of one
 * model mean is written in its handbook. To show it is a {@link Symptom}, whose chances are from
 * memory.
 */
public enum Meaning {
  /** It takes too long to fill. */
  FILL("fill", "a fault of filling", 2, 8),
  /** It takes too long to drain. */
  DRAIN("drain", "a fault of draining", 2, 8),
  /** It does not get warm, or not fast enough. */
  HEAT("heat", "a fault of heating", 1, 6.5),
  /** A sensor gives what cannot be. */
  SENSOR("sensor", "a fault of a sensor", 1, 2.8),
  /** A motor does not turn as it should. */
  MOTOR("motor", "a fault of a motor", 1, 7.8),
  /** The door is not shut or not locked. */
  DOOR("door", "a fault of the door", 1, 4.5),
  /** Water stands where none should. */
  LEAK("leak", "a leak", 1, 3.7),
  /** The load lies unevenly. */
  IMBALANCE("imbalance", "an imbalance", 3, 7),
  /** A pressure is not what it should be. */
  PRESSURE("pressure", "a fault of pressure", 1, 3),
  /** Something gets too hot. */
  TOO_HOT("too-hot", "that it gets too hot", 1, 3);

  private final String id;
  private final Symptom symptom;

  Meaning(String id, String words, double leak, double amongUnfounded) {
    this.id = id;
    this.symptom =
        new Symptom(
            "shows-" + id,
            "shows " + words,
            "Does it show " + words + "?",
            leak / 100,
            amongUnfounded / 100,
            Symptom.Misreports.SHOWN,
            List.of("display-dead"));
  }

  /**
   * The word for it in files.
   *
   * @return lower-case letters and hyphens
   */
  public String id() {
    return id;
  }

  /**
   * That a machine shows it.
   *
   * @return the symptom, {@code shows-} and the id
   */
  public Symptom symptom() {
    return symptom;
  }

  static List<Symptom> symptoms() {
    List<Symptom> symptoms = new ArrayList<>();
    for (Meaning meaning : values()) {
      symptoms.add(meaning.symptom);
    }
    return symptoms;
  }
}
