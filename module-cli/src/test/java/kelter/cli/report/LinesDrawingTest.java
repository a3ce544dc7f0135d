package kelter.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What is drawn lies where its values say. */
class LinesDrawingTest {

  /** A sensor table that starts in the cold: resistances of an invented thermistor. */
  @Test
  void pointsOfNegativeAbscissaLieApart() {
    String drawing =
        LinesDrawing.of(
            new LinesDrawing.About("c", "t", "d", "temperature, °C", "resistance, kΩ"),
            List.of(
                new LinesDrawing.Line(
                    "stated",
                    new double[] {-20, -10, 0, 25, 60},
                    new double[] {90, 52, 31, 10, 2.8})),
            List.of(new LinesDrawing.Mark("as found", "resistance as found", -10, 48, false)));

    MatchResult line =
        Pattern.compile("<polyline points=\"([^\"]*)\"")
            .matcher(drawing)
            .results()
            .findFirst()
            .get();
    List<Double> x =
        Pattern.compile("([0-9.]+),")
            .matcher(line.group(1))
            .results()
            .map(each -> Double.parseDouble(each.group(1)))
            .toList();
    assertEquals(5, x.stream().distinct().count(), x.toString());
    assertEquals((x.get(1) - x.get(0)) / 10, (x.get(4) - x.get(3)) / 35, 0.02);
    assertTrue(drawing.contains(">-20<"), drawing);
  }
}
