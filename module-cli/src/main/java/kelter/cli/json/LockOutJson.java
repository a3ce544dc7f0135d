package kelter.cli.json;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import kelter.cli.json.output.JsonOutput;
import kelter.core.safety.LockState;
import kelter.core.safety.lockout.ActiveRow;
import kelter.core.safety.lockout.LockOut;
import kelter.core.safety.lockout.Reread;
import kelter.core.safety.lockout.Suspicion;

/** What the lock-out table says, as JSON; it stands before all else. */
final class LockOutJson {

  private LockOutJson() {}

  static void write(JsonOutput out, LockOut lockOut) throws IOException {
    out.object(
        "lock-out",
        () -> {
          writeFound(out, lockOut);
          out.objects("suspicions", lockOut.suspicions(), each -> writeSuspicion(out, each));
        });
  }

  /** The same where no fault was weighed, so that none is suspected. */
  static void writeAsFound(JsonOutput out, LockOut lockOut) throws IOException {
    out.object("lock-out", () -> writeFound(out, lockOut));
  }

  private static void writeFound(JsonOutput out, LockOut lockOut) throws IOException {
    writeState(out, lockOut.state());
    out.text("text", lockOut.text());
    out.objects("rows", lockOut.rows(), row -> writeRow(out, row));
    out.texts("ask", lockOut.ask());
  }

  private static void writeRow(JsonOutput out, ActiveRow each) throws IOException {
    out.text("id", each.row().id());
    out.number("number", each.row().number());
    writeState(out, each.row().state());
    out.text("text", each.text());
    out.objects(
        "because",
        each.because(),
        ground -> {
          out.text("id", ground.sort().id());
          out.text("about", ground.about().isEmpty() ? null : ground.about());
          out.text("text", ground.text());
        });
    out.text("first", each.row().first());
    out.text("released-when", each.row().until().words());
    out.texts("released-by", each.row().until().ways());
    writeRereads("open", out, each.openDead());
    writeRereads("last", out, each.openLast());
    out.bool("supervised-step", each.supervised());
    out.source(each.row().source());
  }

  private static void writeState(JsonOutput out, LockState state) throws IOException {
    out.text("state", state.name());
    out.text("state-id", state.id());
  }

  static void writeRereads(String name, JsonOutput out, List<Reread> open) throws IOException {
    out.objects(
        name,
        open,
        each -> {
          boolean known = !each.component().isEmpty();
          out.text("component", known ? each.component() : null);
          out.text("observable", known ? each.observable() : null);
          out.bool("warm", each.warm());
          out.text("text", each.display());
        });
  }

  private static void writeSuspicion(JsonOutput out, Suspicion each) throws IOException {
    out.text("row", each.row());
    out.text("component", each.component());
    out.word("fault", each.faultId(), each.fault());
    out.probability("probability", each.probability());
    Optional<String> test = each.test();
    out.textOrNull("test", test);
  }
}
