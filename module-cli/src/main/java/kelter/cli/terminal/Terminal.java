package kelter.cli.terminal;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import kelter.core.job.Market;
import kelter.core.text.HarmlessText;

/**
 * Where results and complaints go. Whatever is written here is harmless ({@link HarmlessText}), and
 * in the character set of the terminal; signs that it lacks are spelt out. Colour is used only on a
 * terminal, never if {@code NO_COLOR} is set, and never carries a meaning by itself.
 */
public final class Terminal {

  /** The width that text keeps to unless the terminal is narrower, in characters. */
  public static final int WIDTH = 80;

  /** A narrower terminal is treated like one of this width, in characters. */
  public static final int LEAST_WIDTH = 40;

  private static final String INDENT = "    ";

  /**
   * Stand for a change of colour until the text is written. They are noncharacters, which no text
   * should hold: one that does so all the same can make itself bold, and nothing else.
   */
  private static final char BOLD = '\ufdd0';

  private static final char YELLOW = '\ufdd1';
  private static final char USUAL = '\ufdd2';

  private final PrintStream out;
  private final PrintStream err;
  private final Charset charset;
  private final Spelling spelling;
  private final boolean colour;
  private final boolean live;
  private final int width;
  private LineSource lines;
  private UnaryOperator<String> marketWords = UnaryOperator.identity();

  /** The output of the process, which knows why it failed; empty of any other. */
  private final Optional<WatchedOutput> watched;

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
    this(out, err, Optional.empty(), charset, colour, live, width);
  }

  private Terminal(
      PrintStream out,
      PrintStream err,
      Optional<WatchedOutput> watched,
      Charset charset,
      boolean colour,
      boolean live,
      int width) {
    this.watched = watched;
    this.width = Math.max(LEAST_WIDTH, Math.min(WIDTH, width));
    this.out = out;
    this.live = live;
    this.err = err;
    this.charset = charset;
    this.spelling = new Spelling(charset);
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
    WatchedOutput watched = new WatchedOutput(new FileOutputStream(FileDescriptor.out));
    return new Terminal(
        stream(watched),
        stream(new FileOutputStream(FileDescriptor.err)),
        Optional.of(watched),
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

  private static PrintStream stream(OutputStream to) {
    return new PrintStream(to, false, StandardCharsets.UTF_8);
  }

  /** What the launcher says, else what the terminal or the locale has. */
  private static Charset charset() {
    String name = System.getProperty("kelter.characters", "");
    if (name.isEmpty()) {
      name =
          System.getProperty("sun.stdout.encoding", System.getProperty("native.encoding", "UTF-8"));
    }
    try {
      return Charset.forName(name);
    } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
      return StandardCharsets.US_ASCII;
    }
  }

  /**
   * Writes results in the character set of the terminal.
   *
   * @param text the text, with its line ends; each line is made harmless
   */
  public void print(String text) {
    write(out, coloured(lines(text)), charset);
  }

  /**
   * Writes a JSON document in UTF-8, whatever the terminal. What would do something on a terminal
   * is escaped.
   *
   * @param json the document, with its line ends
   */
  public void printJson(String json) {
    write(out, HarmlessText.inJson(json), StandardCharsets.UTF_8);
  }

  /**
   * What is piped into the process, for what is no line that somebody types.
   *
   * @return standard input
   */
  public InputStream input() {
    return System.in;
  }

  /**
   * Takes lines from elsewhere than the terminal of the process.
   *
   * @param source where they come from
   */
  public void readFrom(LineSource source) {
    lines = source;
  }

  /**
   * Waits for a line that somebody types, or that comes from a file or a pipe.
   *
   * @param prompt what stands before it
   * @return the line without its end; empty if there are no more
   */
  public Optional<String> read(String prompt) {
    if (lines == null) {
      lines = live ? edited() : piped();
    }
    return lines.line(prompt);
  }

  private LineSource edited() {
    try {
      return EditedLines.ofProcess();
    } catch (IOException noTerminal) {
      return piped();
    }
  }

  /** Lines of a pipe, each shown behind its prompt as it would stand on a terminal. */
  private LineSource piped() {
    BufferedReader reader =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    return prompt -> {
      try {
        Optional<String> line = Optional.ofNullable(reader.readLine());
        print(prompt + line.orElse("") + "\n");
        return line;
      } catch (IOException unreadable) {
        return Optional.empty();
      }
    };
  }

  /**
   * Words as they come out here, on one line: harmless, and in the character set of the terminal.
   * No-break spaces stay for whoever lays them out.
   *
   * @param words the words
   * @return the words, with another number of characters if need be
   */
  public String shown(String words) {
    String told = marketWords.apply(words);
    return spelling.of(colour && isMarked(told) ? marked(told) : HarmlessText.of(told));
  }

  /**
   * Speaks in the words of a market from now on.
   *
   * @param market where the machine stands that is spoken of
   */
  public void speakAsIn(Market market) {
    marketWords = MarketWords.of(market);
  }

  /** Words with the marks of colour in them. */
  private static String marked(String words) {
    StringBuilder shown = new StringBuilder();
    int start = 0;
    for (int i = 0; i < words.length(); i++) {
      if (isMark(words.charAt(i))) {
        shown.append(HarmlessText.of(words.substring(start, i))).append(words.charAt(i));
        start = i + 1;
      }
    }
    return shown.append(HarmlessText.of(words.substring(start))).toString();
  }

  private static boolean isMark(char sign) {
    return sign >= BOLD && sign <= USUAL;
  }

  /** A line may hold only the end of a colour that a line before it began. */
  private static boolean isMarked(String words) {
    return words.indexOf(BOLD) >= 0 || words.indexOf(YELLOW) >= 0 || words.indexOf(USUAL) >= 0;
  }

  private String coloured(String shown) {
    return colour && isMarked(shown)
        ? shown
            .replace(String.valueOf(BOLD), "\u001b[1m")
            .replace(String.valueOf(YELLOW), "\u001b[33m")
            .replace(String.valueOf(USUAL), "\u001b[0m")
        : shown;
  }

  /** A text of several lines, each as it comes out here. */
  private String lines(String text) {
    StringBuilder lines = new StringBuilder(text.length());
    int start = 0;
    for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', start)) {
      lines.append(shown(text.substring(start, end))).append('\n');
      start = end + 1;
    }
    return lines.append(shown(text.substring(start))).toString().replace('\u00a0', ' ');
  }

  private static void write(PrintStream to, String text, Charset charset) {
    byte[] bytes = text.getBytes(charset);
    to.write(bytes, 0, bytes.length);
    to.flush();
  }

  /**
   * Writes a complaint: on a terminal in lines that fit its width, those after the first set in;
   * elsewhere in one line.
   *
   * @param line one line without its end; it is made harmless
   */
  public void complain(String line) {
    String shown = shown(line);
    String told = live && showsComplaints() ? wrapped(shown) : shown;
    write(err, told.replace('\u00a0', ' ') + System.lineSeparator(), charset);
  }

  /**
   * Writes where in the program something went wrong, in as many lines as that takes.
   *
   * @param trace lines, each made harmless
   */
  public void trace(String trace) {
    write(err, lines(trace.replace("\r\n", "\n").replace("\t", "    ")), charset);
  }

  /**
   * Shows how far a command has come, in place of what was shown before; nothing if nobody looks.
   *
   * @param words what to show, shorter than a line; empty to clear it
   */
  public void progress(String words) {
    if (live) {
      write(err, "\r\u001b[K" + shown(words).replace('\u00a0', ' '), charset);
    }
  }

  /**
   * Whether complaints of the process go to a terminal, too, where the system tells: one may look
   * at the results and keep the complaints in a file.
   */
  private boolean showsComplaints() {
    try {
      return watched.isEmpty()
          || Files.readSymbolicLink(Path.of("/proc/self/fd/2")).startsWith("/dev");
    } catch (IOException | UnsupportedOperationException unknown) {
      return true;
    }
  }

  private String wrapped(String line) {
    return String.join(
        System.lineSeparator() + INDENT,
        Words.lines(List.of(line.split(" ")), width, width - INDENT.length()));
  }

  /**
   * Why results could not be written, for instance because the disk is full. That a reader stopped
   * reading, as at the end of a pipe, counts as nothing lost.
   *
   * @return the reason; empty if nothing was lost
   */
  public String lostOutput() {
    if (!out.checkError()) {
      return "";
    }
    String reason = watched.isPresent() ? watched.get().reason() : "unknown";
    return reason.toLowerCase(Locale.ROOT).contains("pipe") ? "" : reason;
  }

  /**
   * A heading.
   *
   * @param text the words
   * @return the words, bold where colour may be used
   */
  public String heading(String text) {
    return colour ? BOLD + text + USUAL : text;
  }

  /**
   * Words that ask for attention.
   *
   * @param text the words
   * @return the words, yellow where colour may be used
   */
  public String attention(String text) {
    return colour ? YELLOW + text + USUAL : text;
  }
}
