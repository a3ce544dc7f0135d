package kelter.core.book;

/** What became of an entry that was to be added. */
public enum Added {
  /** It is in the book now. */
  NEW,
  /** It was there before, word for word, or all but the serial number that is left out here. */
  KNOWN,
  /** There is another entry of the same job; the book stays as it was. */
  OTHER
}
