package kelter.core.session;

import kelter.core.diagnosis.Question;

/** What somebody is told who takes a line back: the line, and what it was said to. */
final class TakenBack {

  private TakenBack() {}

  static String words(Prompt asked, String line) {
    String question = isOfItsOwn(line) ? "" : question(asked);
    String told = line.isEmpty() ? "the empty line" : "'" + line + "'";
    return "Taken back: " + told + (question.isEmpty() ? "" : ", said to: " + question);
  }

  /** Whether it was said whatever was asked. */
  private static boolean isOfItsOwn(String line) {
    return line.indexOf('=') > 0 || line.startsWith("did ") || line.startsWith("note ");
  }

  private static String question(Prompt asked) {
    if (asked instanceof Prompt.Ask ask) {
      return ask.symptom().question();
    }
    if (asked instanceof Prompt.Measure measure) {
      Question read = measure.question();
      return read.component() + ": " + read.observable().title() + ".";
    }
    if (asked instanceof Prompt.Heed heed) {
      return heed.caution().text();
    }
    if (asked instanceof Prompt.Look look) {
      return look.test().title() + ".";
    }
    if (asked instanceof Prompt.Failed failed) {
      return failed.test().title() + ", which had failed.";
    }
    return "";
  }
}
