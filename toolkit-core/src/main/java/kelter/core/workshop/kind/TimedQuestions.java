package kelter.core.workshop.kind;

import java.util.List;
import kelter.core.diagnosis.ChangedModel;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;

/**
 * A model whose readings take other times than those it was made with.
 *
 * @param model the model
 * @param questions its questions, in their order
 */
record TimedQuestions(FaultModel model, List<Question> questions) implements ChangedModel {

  /** Copies the questions. */
  TimedQuestions {
    questions = List.copyOf(questions);
  }
}
