package kelter.core.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A yes to the question for a symptom says that the symptom is there, whoever is asked. */
class QuestionsTest {

  private static final Pattern NEGATIVE =
      Pattern.compile("\\b(not|no|nothing|nobody|never|none|cannot)\\b|n't");

  private static boolean isNegative(String question) {
    return NEGATIVE.matcher(question.substring(0, question.indexOf('?'))).find();
  }

  @Test
  void noQuestionIsNegative() {
    List<Symptom> all = new ArrayList<>(Symptoms.ALL);
    all.addAll(Symptoms.SIGNS);
    assertTrue(all.size() > 60);
    assertEquals(
        List.of(), all.stream().map(Symptom::question).filter(QuestionsTest::isNegative).toList());
  }

  @Test
  void aNegativeQuestionIsSeen() {
    assertTrue(isNegative("Does it not stop when it should?"));
    assertTrue(isNegative("Does no water come in?"));
  }
}
