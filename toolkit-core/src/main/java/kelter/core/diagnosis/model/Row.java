package kelter.core.diagnosis.model;

import java.util.function.ToDoubleFunction;
import kelter.core.diagnosis.Question;
import kelter.core.job.Conditions;
import kelter.core.vocabulary.Observable;

/** An observable of a component and how it is read. */
record Row<S>(
    String component,
    int number,
    Observable observable,
    Conditions usual,
    Circumstances<S> circumstances,
    ToDoubleFunction<? super S> value,
    Spread<? super S> spread) {

  Question question() {
    return new Question(component, observable, usual);
  }

  boolean answers(Question question) {
    return observable.id().equals(question.observable().id())
        && component.equals(question.component());
  }
}
