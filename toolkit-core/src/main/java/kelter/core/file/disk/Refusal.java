package kelter.core.file.disk;

import java.io.IOException;

/** A file cannot be written, and the cause is known. */
final class Refusal extends IOException {
  private static final long serialVersionUID = 1L;

  private final String remedy;

  /**
   * A refusal.
   *
   * @param cause why, in words of a user
   * @param remedy what to do about it, may be empty
   */
  Refusal(String cause, String remedy) {
    super(cause);
    this.remedy = remedy;
  }

  static Refusal diskFull() {
    return new Refusal("the disk is full", "make room, or name a file on another disk");
  }

  String remedy() {
    return remedy;
  }
}
