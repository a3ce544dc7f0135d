package kelter.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A kind of machine that is written wrongly has no causes, which must not pass for a diagnosis. */
class UnknownKindTest {

  private static final String COIL =
      ", \"components\": [{\"id\": \"coil\", \"kind\": \"heater\","
          + " \"source\": {\"document\": \"plate\", \"standing\": \"invented\"}}]";

  @TempDir private Path folder;

  private Console diagnosed(String kind, String components) throws IOException {
    Path job =
        Files.writeString(
            folder.resolve("job.json"),
            """
            {"format": "kelter-job/2", "id": "row-1", "appliance": {"kind": "%s"%s}}
            """
                .formatted(kind, components));
    return Console.run("diagnose", job.toString());
  }

  @Test
  void isTold() throws IOException {
    Console near = diagnosed("kettel", "");
    assertEquals(0, near.code());
    assertEquals(
        "kelter: no kind of machine 'kettel' is known; did you mean 'kettle'? Only parts that the"
            + " job lists are weighed\n",
        near.err());
    String far = diagnosed("loom", "").err();
    assertTrue(far.contains("no kind of machine 'loom' is known. Only parts"), far);
  }

  /** Whoever lists its parts knows what the machine is. */
  @Test
  void isNotToldOfAMachineWhosePartsAreListed() throws IOException {
    assertEquals("", diagnosed("loom", COIL).err());
    assertEquals("", diagnosed("kettle", "").err());
    assertTrue(diagnosed("kettel", COIL).err().contains("did you mean 'kettle'?"));
  }
}
