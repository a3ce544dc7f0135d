package kelter.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Reports and the page of a book against foreign judges: the Nu HTML checker, and in headless
 * Chromium the rules of axe-core, the width of a phone and of a desk, and the console. Skipped with
 * a word where there is no Chromium.
 */
class ReportPagesTest {

  private static final List<String> BROWSERS = List.of("chromium", "chromium-browser");
  private static final Map<String, String> PAGES = new LinkedHashMap<>();

  @TempDir private static Path folder;

  @BeforeAll
  static void write() throws IOException {
    try (Stream<Path> jobs = Files.list(Path.of("..", "demo", "jobs"))) {
      for (Path job : jobs.filter(each -> each.toString().endsWith(".json")).sorted().toList()) {
        PAGES.put(job.getFileName().toString(), Pages.of(Pages.open(job), List.of(), false));
      }
    }
    PAGES.put("closed", Pages.of(Pages.closed(), List.of("A. Sample", "2 Mill Lane"), false));
    PAGES.put("book", BookPages.full());
    PAGES.put("hostile-book", BookPages.hostile());
    PAGES.put("hostile", Pages.of(Pages.hostile(), List.of(Pages.HOSTILE), false));
  }

  static List<String> pages() {
    return List.copyOf(PAGES.keySet());
  }

  @ParameterizedTest
  @MethodSource("pages")
  void theCheckerFindsNothing(String name) throws ReflectiveOperationException {
    assertEquals("", NuChecker.found(PAGES.get(name)));
  }

  /** The checker itself works: it finds what is wrong. */
  @Test
  void theCheckerFindsWhatIsWrong() throws ReflectiveOperationException {
    assertTrue(
        NuChecker.found(PAGES.get("closed").replaceFirst("<main>", "<main><p><div>")).length() > 0);
  }

  @ParameterizedTest
  @CsvSource({
    "closed, 320",
    "closed, 360",
    "closed, 1024",
    "hostile, 360",
    "hostile, 1024",
    "book, 320",
    "book, 1024",
    "hostile-book, 360"
  })
  void nothingIsWiderThanTheScreenAndAxeFindsNothing(String name, int width)
      throws IOException, InterruptedException {
    String browser = browser();
    String probe =
        "<script>"
            + axe()
            + "</script><script>axe.run().then(r => { document.body.setAttribute('data-axe',"
            + " r.violations.map(v => v.id + ': ' + v.nodes.map(n => n.html).join(' ')).join('; '));"
            + " document.body.setAttribute('data-ran', r.passes.length);"
            + " document.body.setAttribute('data-wide', document.scrollingElement.scrollWidth >"
            + " window.innerWidth) });</script></body>";
    Path page = folder.resolve(name + width + ".html");
    Files.writeString(page, PAGES.get(name).replace("</body>", probe));
    String dom = run(browser, width, "--virtual-time-budget=20000", "--dump-dom", page.toUri());

    assertTrue(dom.matches("(?s).*data-ran=\"[1-9].*"), "axe has not run");
    assertTrue(dom.contains("data-axe=\"\""), () -> dom.replaceAll("(?s).*data-axe=", ""));
    assertTrue(dom.contains("data-wide=\"false\""), "wider than " + width);
  }

  @ParameterizedTest
  @CsvSource({"closed", "hostile", "book", "hostile-book"})
  void theConsoleStaysSilent(String name) throws IOException, InterruptedException {
    Path page = folder.resolve(name + ".html");
    Files.writeString(page, PAGES.get(name));
    String said =
        run(browser(), 1024, "--enable-logging=stderr", "--dump-dom", page.toUri())
            .lines()
            .filter(line -> line.contains("CONSOLE"))
            .toList()
            .toString();

    assertEquals("[]", said);
  }

  /** The page is drawn: a screen of it has more than paper, and is no smaller than asked for. */
  @Test
  void aScreenOfTheBookIsDrawn() throws IOException, InterruptedException {
    String browser = browser();
    Path page = folder.resolve("drawn.html");
    Files.writeString(page, PAGES.get("book"));
    Path picture = folder.resolve("drawn.png");
    run(browser, 1024, "--screenshot=" + picture, page.toUri());
    BufferedImage screen = ImageIO.read(picture.toFile());

    assertEquals(1024, screen.getWidth());
    Set<Integer> colours = new HashSet<>();
    for (int y = 0; y < screen.getHeight(); y++) {
      for (int x = 0; x < screen.getWidth(); x++) {
        colours.add(screen.getRGB(x, y) & 0xffffff);
      }
    }
    assertTrue(colours.contains(0xffffff), "no paper");
    assertTrue(colours.contains(0x1c1a17), "no ink");
    assertTrue(colours.contains(0x6b2d5c), "no figure is marked in a drawing");
  }

  private static String axe() throws IOException {
    try (InputStream in = ClassLoader.getSystemResourceAsStream("axe.min.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String browser() {
    for (String name : BROWSERS) {
      for (String folder : System.getenv("PATH").split(":")) {
        if (Files.isExecutable(Path.of(folder, name))) {
          return name;
        }
      }
    }
    assumeTrue(false, "no Chromium here: pages are not looked at in a browser");
    return "";
  }

  private static String run(String browser, int width, Object... arguments)
      throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                browser,
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--hide-scrollbars",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + Files.createTempDirectory(folder, "profile"),
                "--window-size=" + width + ",1200"));
    for (Object each : arguments) {
      command.add(each.toString());
    }
    Path out = Files.createTempFile(folder, "dom", ".txt");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(out.toFile()).start();
    assertTrue(process.waitFor(120, TimeUnit.SECONDS), "the browser does not end");
    return Files.readString(out);
  }
}
