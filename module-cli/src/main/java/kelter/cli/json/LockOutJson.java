package kelter.cli.json;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import kelter.cli.json.output.JsonOutput;
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
    out.text("state", lockOut.state().name());
    out.text("text", lockOut.text());
    out.objects("rows", lockOut.rows(), row -> writeRow(out, row));
    out.texts("ask", lockOut.ask());
  }

  private static void writeRow(JsonOutput out, ActiveRow each) throws IOException {
    out.text("id", each.row().id());
    out.number("number", each.row().number());
    out.text("state", each.row().state().name());
    out.text("text", each.text());
    out.texts("because", each.because());
    out.text("first", each.row().first());
    out.text("released-when", each.row().until().words());
    out.texts("open", displayed(each.openDead()));
    out.texts("last", displayed(each.openLast()));
    out.bool("supervised-step", each.supervised());
    out.source(each.row().source());
  }

  private static List<String> displayed(List<Reread> open) {
    return open.stream().map(Reread::display).toList();
  }

  private static void writeSuspicion(JsonOutput out, Suspicion each) throws IOException {
    out.text("row", each.row());
    out.text("component", each.component());
    out.text("fault", each.fault());
    out.probability("probability", each.probability());
    Optional<String> test = each.test();
    out.textOrNull("test", test);
  }
}
