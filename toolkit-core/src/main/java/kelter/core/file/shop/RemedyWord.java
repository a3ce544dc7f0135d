package kelter.core.file.shop;

import kelter.core.job.rule.EntryRules;
import kelter.core.problem.Place;
import kelter.core.vocabulary.Ids;
import kelter.core.vocabulary.Vocabulary;

/** What a part is for: {@code component-kind.remedy}. */
final class RemedyWord {

  private RemedyWord() {}

  /**
   * Holds a word against its form and the kinds that are known. Which remedies a kind has is known
   * only of a machine.
   *
   * @return true if it can be used; a mistake is noted
   */
  static boolean hold(String word, Vocabulary vocabulary, Place at) {
    int dot = word.indexOf('.');
    if (dot <= 0 || !Ids.isId(word.substring(dot + 1))) {
      at.problem(
          "'" + word + "' does not tell what a part is for",
          "write component-kind.remedy, for instance thermal-link.renew");
      return false;
    }
    return EntryRules.kind(word.substring(0, dot), vocabulary, at).isPresent();
  }
}
