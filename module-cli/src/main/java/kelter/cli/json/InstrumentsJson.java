package kelter.cli.json;

import java.io.IOException;
import java.util.List;
import kelter.cli.json.output.JsonOutput;
import kelter.cli.json.output.JsonResult;
import kelter.core.job.Instrument;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;

/** Instruments as JSON. */
public final class InstrumentsJson {

  private InstrumentsJson() {}

  /**
   * Instruments.
   *
   * @param instruments the instruments
   * @return the result
   */
  public static JsonResult of(List<Instrument> instruments) {
    return new JsonResult(
        ResultFormat.INSTRUMENTS.id(),
        out -> {
          out.objects(
              "instruments",
              instruments,
              instrument -> {
                out.text("id", instrument.id());
                out.text("title", instrument.title());
                out.text("notes", instrument.notes());
                out.objects("functions", instrument.functions(), each -> write(out, each));
                if (instrument.typical().isPresent()) {
                  out.source(instrument.typical().get());
                }
              });
        });
  }

  private static void write(JsonOutput out, Instrument.Function function) throws IOException {
    double factor = function.kind().unit().factor();
    out.text("measures", function.kind().name());
    out.text("unit", function.kind().unit().code());
    out.value("end", function.end(), function.kind(), function.kind().unit());
    out.number("resolution", function.resolution() / factor);
    out.number("expanded-at-half", expanded(function, 0.5) / factor);
    out.number("expanded-at-end", expanded(function, 1) / factor);
  }

  private static double expanded(Instrument.Function function, double part) {
    QuantityKind kind = function.kind();
    double reading = kind.toSi(part * kind.fromSi(function.end(), kind.unit()), kind.unit());
    return QuantityFormat.COVERAGE_FACTOR * function.standardUncertainty(reading);
  }
}
