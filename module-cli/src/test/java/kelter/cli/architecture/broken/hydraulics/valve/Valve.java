package kelter.cli.architecture.broken.hydraulics.valve;

import java.util.List;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.module.Part;
import kelter.core.vocabulary.ComponentKind;

/** A part, whose package no law may know. */
public final class Valve implements Part {

  @Override
  public List<ComponentKind> kinds() {
    return List.of();
  }

  Forecaster byHand(FaultModel model, List<Question> questions) {
    return model.forecaster(questions);
  }
}
