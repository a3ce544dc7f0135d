package kelter.cli.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import kelter.core.file.catalogue.KindFile;
import org.junit.jupiter.api.Test;

/**
 * Holds what the page on the method tells of trials against the trials. With {@code
 * -Dkelter.trial=write} the long one is run and written into the page first, which takes minutes.
 */
class MethodPageTest {

  private static final Path PAGE = Path.of("..", "toolkit-core", "method.md");
  private static final String FROM = "<!-- the trial, written by MethodPageTest -->\n";
  private static final String TO = "<!-- the end of the trial -->\n";

  private static String page() throws IOException {
    return Files.readString(PAGE, StandardCharsets.UTF_8);
  }

  private static String trial() throws IOException {
    String page = page();
    return page.substring(page.indexOf(FROM) + FROM.length(), page.indexOf(TO));
  }

  private static void write() throws IOException {
    String made = TrialTables.made();
    String page = page();
    String changed =
        page.substring(0, page.indexOf(FROM) + FROM.length())
            + made
            + page.substring(page.indexOf(TO));
    Files.writeString(PAGE, changed, StandardCharsets.UTF_8);
  }

  /** The cells of all rows that tell of one kind or of all. */
  private static List<String[]> rows() throws IOException {
    List<String[]> rows = new ArrayList<>();
    for (String line : trial().split("\n")) {
      String[] cells = line.split(" *\\| *");
      if (cells.length > 2 && cells[2].matches("\\d+")) {
        rows.add(cells);
      }
    }
    return rows;
  }

  private static double share(String cell, int place) {
    return Integer.parseInt(cell.split(" ")[place]) / 100.0;
  }

  /** Whoever adds a kind runs the trial again. */
  @Test
  void theTrialIsOfAllKinds() throws IOException {
    if ("write".equals(System.getProperty("kelter.trial"))) {
      write();
    }
    List<String> expected = new ArrayList<>(KindFile.shipped());
    expected.add("all");
    expected.addAll(List.copyOf(expected));

    assertTrue(trial().startsWith(TrialTables.drawn()), "run it with -Dkelter.trial=write");
    assertEquals(expected, rows().stream().map(cells -> cells[1]).toList());
  }

  /** The first of the calls are drawn again: within four standard errors of what is told of all. */
  @Test
  void fewCallsBearItOut() throws IOException {
    CallTable few = new CallTable(CallsTest.TOLD);
    String[] all = rows().get(KindFile.shipped().size());

    assertEquals("" + TrialTables.CALLS, all[2]);
    for (int stage = 0; stage < Calls.STAGES; stage++) {
      near(share(all[3], stage), few.first(stage), few.size());
      near(share(all[4], stage), few.amongThree(stage), few.size());
    }
  }

  private static void near(double told, double found, int calls) {
    double error = Math.sqrt(told * (1 - told) / calls);
    assertEquals(told, found, 4 * error, "run it with -Dkelter.trial=write");
  }

  @Test
  void whatStrangersCalledForIsTold() throws IOException {
    String page = page().replace("\n", " ");
    for (String told : ThirtyCallsTest.told()) {
      assertTrue(page.contains(told), told);
    }
  }
}
