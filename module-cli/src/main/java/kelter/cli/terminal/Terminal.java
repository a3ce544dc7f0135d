package kelter.cli.terminal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Map;

/**
 * Where results and complaints go. Text is written in the character set of the terminal; signs that
 * it lacks are spelt out. Colour is used only on a terminal, never if {@code NO_COLOR} is set, and
 * never carries a meaning by itself.
 */
public final class Terminal {

  /** The width that text keeps to unless the terminal is narrower, in characters. */
  public static final int WIDTH = 80;

  /** A narrower terminal is treated like one of this width, in characters. */
  public static final int LEAST_WIDTH = 40;

  private static final Map<String, String> PLAIN =
      Map.of(
          "±", "+/-",
          "°", "",
          "µ", "u",
          "≤", "<=",
          "≥", ">=",
          "·", "-",
          "–", "-",
          "█", "#",
          "░", ".",
          "√", "sqrt");

  private final PrintStream out;
  private final PrintStream err;
  private final Charset charset;
  private final boolean colour;
  private final boolean live;
  private final int width;

  /**
   * A terminal that nobody looks at while a command runs.
   *
   * @param out where results go
   * @param err where complaints go
   * @param charset the character set of both
   * @param colour whether colour may be used
   */
  public Terminal(PrintStream out, PrintStream err, Charset charset, boolean colour) {
    this(out, err, charset, colour, false);
  }

  /**
   * A terminal.
   *
   * @param out where results go
   * @param err where complaints go
   * @param charset the character set of both
   * @param colour whether colour may be used
   * @param live whether somebody looks at it while a command runs
   */
  public Terminal(PrintStream out, PrintStream err, Charset charset, boolean colour, boolean live) {
    this(out, err, charset, colour, live, WIDTH);
  }

  /**
   * A terminal of some width.
   *
   * @param out where results go
   * @param err where complaints go
   * @param charset the character set of both
   * @param colour whether colour may be used
   * @param live whether somebody looks at it while a command runs
   * @param width its width, in characters; taken as 40 to 80
   */
  public Terminal(
      PrintStream out, PrintStream err, Charset charset, boolean colour, boolean live, int width) {
    this.width = Math.max(LEAST_WIDTH, Math.min(WIDTH, width));
    this.out = out;
    this.live = live;
    this.err = err;
    this.charset = charset;
    this.colour = colour;
  }

  /**
   * The terminal of this process.
   *
   * @return the terminal
   */
  public static Terminal ofProcess() {
    Charset charset = charset();
    boolean live = System.console() != null;
    boolean colour = live && System.getenv("NO_COLOR") == null;
    return new Terminal(
        stream(FileDescriptor.out),
        stream(FileDescriptor.err),
        charset,
        colour,
        live,
        columns(System.getenv("COLUMNS")));
  }

  private static int columns(String said) {
    try {
      return said == null ? WIDTH : Integer.parseInt(said.strip());
    } catch (NumberFormatException noNumber) {
      return WIDTH;
    }
  }

  /**
   * The width that text keeps to here.
   *
   * @return from 40 to 80 characters; what {@code COLUMNS} says where it is narrower than 80
   */
  public int width() {
    return width;
  }

  private static PrintStream stream(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }

  private static Charset charset() {
    String name =
        System.getProperty("sun.stdout.encoding", System.getProperty("native.encoding", "UTF-8"));
    try {
      return Charset.forName(name);
    } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
      return StandardCharsets.US_ASCII;
    }
  }

  /**
   * Writes results in the character set of the terminal.
   *
   * @param text the text, with its line ends
   */
  public void print(String text) {
    byte[] bytes = spelt(text).getBytes(charset);
    out.write(bytes, 0, bytes.length);
    out.flush();
  }

  /**
   * Writes results in UTF-8, whatever the terminal.
   *
   * @param text the text, with its line ends
   */
  public void printUtf8(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    out.write(bytes, 0, bytes.length);
    out.flush();
  }

  /**
   * Writes a complaint.
   *
   * @param line one line without its end
   */
  public void complain(String line) {
    byte[] bytes = (spelt(line) + System.lineSeparator()).getBytes(charset);
    err.write(bytes, 0, bytes.length);
    err.flush();
  }

  /**
   * Shows how far a command has come, in place of what was shown before; nothing if nobody looks.
   *
   * @param words what to show, shorter than a line; empty to clear it
   */
  public void progress(String words) {
    if (live) {
      byte[] bytes = spelt("\r\u001b[K" + words).getBytes(charset);
      err.write(bytes, 0, bytes.length);
      err.flush();
    }
  }

  /**
   * Whether results could not be written, for instance because a pipe was closed.
   *
   * @return true if something was lost
   */
  public boolean lostOutput() {
    return out.checkError();
  }

  private String spelt(String text) {
    if (charset.equals(StandardCharsets.UTF_8) || charset.newEncoder().canEncode(text)) {
      return text;
    }
    String plain = text;
    for (Map.Entry<String, String> sign : PLAIN.entrySet()) {
      plain = plain.replace(sign.getKey(), sign.getValue());
    }
    return plain;
  }

  /**
   * A heading.
   *
   * @param text the words
   * @return the words, bold where colour may be used
   */
  public String heading(String text) {
    return colour ? "\u001b[1m" + text + "\u001b[0m" : text;
  }

  /**
   * Words that ask for attention.
   *
   * @param text the words
   * @return the words, yellow where colour may be used
   */
  public String attention(String text) {
    return colour ? "\u001b[33m" + text + "\u001b[0m" : text;
  }
}
