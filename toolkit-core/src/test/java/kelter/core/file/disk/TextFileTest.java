package kelter.core.file.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import kelter.core.problem.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

@DisabledOnOs(OS.WINDOWS)
class TextFileTest {

  @TempDir private Path folder;

  private static String refusal(Path file) {
    String told =
        assertThrows(InputException.class, () -> TextFile.write(file, "new"))
            .problems()
            .get(0)
            .display();
    assertTrue(told.startsWith(file + ": "), told);
    return told.substring(file.toString().length() + 2);
  }

  private long files() throws IOException {
    try (var all = Files.list(folder)) {
      return all.count();
    }
  }

  private Path file(String name, String mode) throws IOException {
    Path file = Files.writeString(folder.resolve(name), "old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(mode));
    return file;
  }

  @Test
  void modeStaysAsItIs() throws IOException {
    for (String mode : List.of("rw-rw-r--", "rw-------", "rwxr-x--x", "rw-rw-rw-")) {
      Path file = file("a.json", mode);

      TextFile.write(file, "new");

      assertEquals("new", Files.readString(file));
      assertEquals(mode, PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }
    assertEquals(1, files());
  }

  /** As any file of this user: the mode follows from the umask of the process. */
  @Test
  void aNewFileHasTheUsualMode() throws IOException {
    Path usual = Files.writeString(folder.resolve("usual"), "");

    TextFile.writeNew(folder.resolve("new"), "");

    assertEquals(
        Files.getPosixFilePermissions(usual), Files.getPosixFilePermissions(folder.resolve("new")));
  }

  @Test
  void linksAreFollowed() throws IOException {
    Path file = file("a.json", "rw-r--r--");
    Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("a.json"));
    Path second = Files.createSymbolicLink(folder.resolve("second"), link);
    Path loose = Files.createSymbolicLink(folder.resolve("loose"), Path.of("b.json"));

    TextFile.write(second, "new");
    TextFile.write(loose, "more");

    assertEquals("new", Files.readString(file));
    assertEquals("more", Files.readString(folder.resolve("b.json")));
    assertTrue(Files.isSymbolicLink(link) && Files.isSymbolicLink(second));
    assertTrue(Files.isSymbolicLink(loose));
    assertThrows(InputException.class, () -> TextFile.writeNew(loose, "third"));
  }

  @Test
  void otherNamesOfAFileNameTheNewOneToo() throws IOException {
    Path file = file("a.json", "rw-r--r--");
    Path other = Files.createLink(folder.resolve("other"), file);

    TextFile.write(file, "newer and longer");
    assertEquals("newer and longer", Files.readString(other));
    TextFile.write(file, "n");
    assertEquals("n", Files.readString(other));
    assertEquals(2, files());
  }

  @Test
  void aReadOnlyFileIsNotOverwritten() throws IOException {
    Path file = file("a.json", "r--r--r--");

    assertEquals(
        "cannot be written: it is read-only; allow writing if it may be changed, or name another"
            + " file",
        refusal(file));
    assertEquals("old", Files.readString(file));
    assertEquals(1, files());
  }

  @Test
  void theCauseIsTold() throws IOException {
    Path file = file("a.json", "rw-r--r--");
    Path circle = folder.resolve("circle");
    Files.createSymbolicLink(circle, circle);

    assertEquals("is a directory; name a file", refusal(folder));
    assertTrue(refusal(folder.resolve("no/b")).contains("there is no folder " + folder + "/no;"));
    assertTrue(refusal(file.resolve("b")).contains(file + " is a file, no folder"));
    assertTrue(refusal(circle).contains("its links lead in a circle"));
    Path lengthy = Path.of("n".repeat(260));
    assertTrue(refusal(lengthy).contains("its name is too long; give it a shorter one"));
    assertTrue(refusal(Path.of("/dev/null")).contains("it is no usual file"));
    assertEquals(2, files());
  }

  @Test
  void whatAKilledWriterLeftIsCleared() throws IOException {
    Files.writeString(folder.resolve(".kelter-123.part"), "half");
    Path own = Files.writeString(folder.resolve("kelter.part"), "not ours");

    TextFile.write(folder.resolve("a.json"), "new");

    assertFalse(Files.exists(folder.resolve(".kelter-123.part")));
    assertTrue(Files.exists(own));
    assertEquals(2, files());
  }

  /** A process of its own that writes a file of eight megabytes time and again. */
  static final class Writer {
    public static void main(String[] arguments) {
      for (int i = 0; i < 10_000; i++) {
        TextFile.write(
            Path.of(arguments[0]), String.valueOf((char) ('a' + i % 26)).repeat(8 << 20));
      }
    }
  }

  /** A process of its own that adds lines to a file. */
  static final class Adder {
    public static void main(String[] arguments) {
      for (int i = 0; i < Integer.parseInt(arguments[2]); i++) {
        String line = arguments[1] + i + "\n";
        TextFile.change(
            Path.of(arguments[0]),
            1 << 20,
            old ->
                (new String(old, StandardCharsets.UTF_8) + line).getBytes(StandardCharsets.UTF_8));
      }
    }
  }

  private static Process start(Class<?> program, String... arguments) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-cp", classPath(), program.getName()));
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command).inheritIO().start();
  }

  private static String classPath() {
    return Path.of("target", "classes") + ":" + Path.of("target", "test-classes");
  }

  @Test
  void whatProcessesAddSideBySideIsAllThere() throws IOException, InterruptedException {
    Path file = Files.writeString(folder.resolve("a.txt"), "");
    List<Process> all = new ArrayList<>();
    for (String name : List.of("a", "b", "c")) {
      all.add(start(Adder.class, file.toString(), name, "20"));
    }
    for (Process process : all) {
      assertEquals(0, process.waitFor());
    }

    assertEquals(60, Files.readAllLines(file).stream().distinct().count());
    assertEquals(1, files());
  }

  @Test
  void aKilledProcessLeavesTheFileWholeAndTheNextOneClearsUp()
      throws IOException, InterruptedException {
    Path file = Files.writeString(folder.resolve("a.txt"), "z".repeat(8 << 20));
    for (int i = 0; i < 5; i++) {
      Process process = start(Writer.class, file.toString());
      Thread.sleep(250 + 61 * i);
      process.destroyForcibly().waitFor(10, TimeUnit.SECONDS);

      String found = Files.readString(file);
      assertEquals(8 << 20, found.length());
      assertEquals(1, found.chars().distinct().count());
    }

    TextFile.write(file, "new");

    assertEquals(1, files());
  }
}
