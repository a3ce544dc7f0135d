package kelter.cli.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kelter.cli.trial.Technician.Order;
import org.junit.jupiter.api.Test;

/** Led visits to machines of every kind; the bounds are generous. */
class VisitsTest {

  private static final int CALLS = 23;
  private static final int COMPARED = 3;

  private static final Calls DRAWN = Calls.moved(1, 1);

  @Test
  void whoIsLedComesToTheRightDecision() {
    VisitTable table = new VisitTable(Technician.visits(DRAWN, CALLS));

    assertEquals(List.of(), table.refused());
    assertTrue(table.answers(Order.LED) <= 11, "answers " + table.answers(Order.LED));
    assertTrue(table.enough(Order.LED) >= 0.8, "decided " + table.enough(Order.LED));
    assertTrue(table.right(Order.LED) >= 0.5, "right " + table.right(Order.LED));
    double bag = table.cured(visit -> visit.bag().cured());
    double likeliest = table.cured(visit -> visit.likeliest().cured());
    assertTrue(bag >= 0.35, "cured with the bag " + bag);
    assertTrue(bag >= likeliest - 0.25, "cured " + bag + ", with three parts " + likeliest);
  }

  @Test
  void whoIsLedIsSoonerDone() {
    VisitTable table = new VisitTable(Technician.visits(DRAWN, COMPARED, Order.FIXED));

    double led = table.minutes(Order.LED);
    assertTrue(led < table.minutes(Order.FIXED), led + " min, " + table.minutes(Order.FIXED));
  }
}
