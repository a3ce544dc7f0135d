package kelter.core.book;

import java.util.Locale;
import java.util.OptionalDouble;
import kelter.core.problem.Required;
import kelter.core.vocabulary.Ids;

/**
 * The machine of a closed job.
 *
 * @param kind the id of its kind
 * @param maker who made it; may be empty
 * @param model its model; may be empty
 * @param serial its serial number; may be empty
 * @param age its age when the job was closed, years, 0 to 200
 * @param cycles how many runs it had done, 0 or more
 * @param hours how many hours it had run, 0 or more
 */
public record BookedMachine(
    String kind,
    String maker,
    String model,
    String serial,
    OptionalDouble age,
    OptionalDouble cycles,
    OptionalDouble hours) {

  /** The greatest age, years; own choice. */
  public static final double OLDEST = 200;

  private static final int LONGEST = 200;
  private static final double MOST = 1e9;

  /**
   * Checks words and figures.
   *
   * @throws IllegalArgumentException if the kind is no id, a text has more than 200 characters, or
   *     a figure is outside its range
   */
  public BookedMachine {
    Ids.require(Required.value(kind, "kind of a machine"));
    Texts.require("maker", maker, LONGEST);
    Texts.require("model", model, LONGEST);
    Texts.require("serial", serial, LONGEST);
    require("age", age, OLDEST);
    require("cycles", cycles, MOST);
    require("hours", hours, MOST);
  }

  private static void require(String what, OptionalDouble figure, double most) {
    if (figure.isPresent() && !(figure.getAsDouble() >= 0 && figure.getAsDouble() <= most)) {
      throw new IllegalArgumentException(
          "%s of %s; 0 to %.0f is allowed".formatted(what, figure.getAsDouble(), most));
    }
  }

  /** The same machine without its serial number. */
  BookedMachine withoutSerial() {
    return new BookedMachine(kind, maker, model, "", age, cycles, hours);
  }

  /**
   * Maker and model in one spelling, by which machines of one model are found.
   *
   * @return letters and digits in lower case; empty if no model is told
   */
  public String sameModel() {
    return sameModel(maker, model);
  }

  /**
   * A maker and a model in one spelling.
   *
   * @param maker who made a machine; may be empty
   * @param model its model; may be empty
   * @return letters and digits in lower case; empty if no model is told
   */
  public static String sameModel(String maker, String model) {
    return model.isBlank() ? "" : plain(maker) + " " + plain(model);
  }

  /** Letters and digits of a name in lower case. */
  static String plain(String name) {
    StringBuilder plain = new StringBuilder(name.length());
    String lower = name.toLowerCase(Locale.ROOT);
    for (int i = 0; i < lower.length(); i++) {
      if (Character.isLetterOrDigit(lower.charAt(i))) {
        plain.append(lower.charAt(i));
      }
    }
    return plain.toString();
  }
}
