package kelter.cli.terminal;

import java.io.IOException;
import java.io.OutputStream;

/**
 * An output that keeps the first reason why it could not be written, which a print stream drops.
 */
final class WatchedOutput extends OutputStream {

  private final OutputStream to;
  private String reason = "";

  WatchedOutput(OutputStream to) {
    this.to = to;
  }

  /** The first reason; empty as long as all was written. */
  String reason() {
    return reason;
  }

  @Override
  public void write(int value) throws IOException {
    write(new byte[] {(byte) value}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    try {
      to.write(bytes, offset, length);
    } catch (IOException failed) {
      if (reason.isEmpty()) {
        reason = failed.getMessage() == null ? "unknown" : failed.getMessage();
      }
      throw failed;
    }
  }
}
