package kelter.core.diagnosis.symptom.cases;

/** More symptoms are reported as there than can be weighed together. */
public final class TooManySymptoms extends RuntimeException {

  private static final long serialVersionUID = 1;

  TooManySymptoms(int tracked, int most) {
    super(
        tracked
            + " symptoms are reported as there, or hide one that was asked for; at most "
            + most
            + " can be weighed together, fewer where many of them hide others");
  }
}
