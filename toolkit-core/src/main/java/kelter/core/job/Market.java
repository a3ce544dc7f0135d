package kelter.core.job;

/** A region with its mains, units, words and rules. */
public enum Market {
  /** The European Union and countries with its rules: 230 V, 50 Hz. */
  EU,
  /** The United Kingdom and Ireland: 230 V, 50 Hz, fused plugs. */
  UK,
  /** North America: 120 V and 120/240 V, 60 Hz. */
  NA
}
