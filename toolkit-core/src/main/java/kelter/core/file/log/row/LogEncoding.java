package kelter.core.file.log.row;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * The character set of a log, recognised by its first bytes.
 *
 * @param charset the character set
 * @param mark how many bytes of a byte order mark stand in front
 * @param assumed whether nothing in the file tells
 */
public record LogEncoding(Charset charset, int mark, boolean assumed) {

  private static final double MANY = 0.3;

  /**
   * Recognises a character set.
   *
   * @param head the first bytes
   * @param complete whether there are no more
   * @return the character set
   */
  public static LogEncoding of(byte[] head, boolean complete) {
    if (starts(head, 0xEF, 0xBB, 0xBF)) {
      return new LogEncoding(StandardCharsets.UTF_8, 3, false);
    }
    if (starts(head, 0xFF, 0xFE)) {
      return new LogEncoding(StandardCharsets.UTF_16LE, 2, false);
    }
    if (starts(head, 0xFE, 0xFF)) {
      return new LogEncoding(StandardCharsets.UTF_16BE, 2, false);
    }
    int[] zeros = new int[2];
    for (int i = 0; i < head.length; i++) {
      zeros[i % 2] += head[i] == 0 ? 1 : 0;
    }
    if (zeros[1] > MANY * head.length && zeros[0] == 0) {
      return new LogEncoding(StandardCharsets.UTF_16LE, 0, false);
    }
    if (zeros[0] > MANY * head.length && zeros[1] == 0) {
      return new LogEncoding(StandardCharsets.UTF_16BE, 0, false);
    }
    return isUtf8(head, complete)
        ? new LogEncoding(StandardCharsets.UTF_8, 0, false)
        : new LogEncoding(Charset.forName("windows-1252"), 0, true);
  }

  private static boolean starts(byte[] head, int... mark) {
    for (int i = 0; i < mark.length; i++) {
      if (head.length <= i || (head[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private static boolean isUtf8(byte[] head, boolean complete) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CoderResult result =
        decoder.decode(ByteBuffer.wrap(head), CharBuffer.allocate(head.length + 1), complete);
    return !result.isError();
  }

  /**
   * The text of the first bytes.
   *
   * @param head the bytes
   * @return the text behind the byte order mark
   */
  public String text(byte[] head) {
    return new String(head, mark, head.length - mark, charset);
  }
}
