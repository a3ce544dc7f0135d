package kelter.core.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws that hold for every quantity, on seeded random values. */
class QuantityPropertiesTest {

  private static final long SEED = 20261125L;
  private static final int VALUES = 300;

  /** A kind with units that fit it. */
  record Family(QuantityKind kind, List<String> units) {}

  static Stream<Family> families() {
    return Stream.of(
        new Family(QuantityKind.RATIO, List.of("1", "%")),
        new Family(QuantityKind.LENGTH, List.of("mm", "m", "[in_i]", "[ft_i]")),
        new Family(QuantityKind.FLOW, List.of("L/min", "m3/h", "[gal_us]/min", "L/h")),
        new Family(
            QuantityKind.GAUGE_PRESSURE, List.of("kPa", "mbar", "[psi]", "mm[H2O]", "[in_i'Hg]")),
        new Family(QuantityKind.ABSOLUTE_PRESSURE, List.of("kPa", "bar", "[psi]", "atm")),
        new Family(QuantityKind.TEMPERATURE, List.of("Cel", "K", "[degF]")),
        new Family(QuantityKind.TEMPERATURE_DIFFERENCE, List.of("K", "Cel", "[degF]")),
        new Family(QuantityKind.RESISTANCE, List.of("Ohm", "kOhm", "MOhm", "mOhm")),
        new Family(QuantityKind.CAPACITANCE, List.of("uF", "nF", "F")),
        new Family(QuantityKind.ENERGY, List.of("kW.h", "MJ", "[Btu_IT]")),
        new Family(QuantityKind.ROTATIONAL_SPEED, List.of("{rev}/min", "1/s", "Hz")),
        new Family(QuantityKind.AGE, List.of("a", "mo", "d", "h")),
        new Family(QuantityKind.of("hydraulic resistance", "kPa/(L/min)"), List.of("Pa/(m3/s)")),
        new Family(QuantityKind.money("EUR"), List.of("EUR")));
  }

  private static Quantity draw(Random random, Family family, String unit) {
    boolean signed =
        family.kind.scale() != Scale.TEMPERATURE
            && family.kind.scale() != Scale.ABSOLUTE_PRESSURE
            && random.nextBoolean();
    double size = Math.exp(random.nextGaussian() * 5);
    double value = random.nextInt(20) == 0 ? 0 : random.nextInt(3) == 0 ? Math.rint(size) : size;
    double u = random.nextBoolean() ? 0 : size * random.nextDouble() / 10;
    return new Quantity(signed ? -value : value, u, Unit.of(unit), family.kind);
  }

  @ParameterizedTest
  @MethodSource("families")
  void whatIsWrittenIsReadBackExactly(Family family) {
    Random random = new Random(SEED);
    for (String unit : family.units) {
      for (int i = 0; i < VALUES; i++) {
        Quantity quantity = draw(random, family, unit);
        Quantity back = QuantityParser.parse(quantity.format(), family.kind);
        assertEquals(quantity.value(), back.value(), 0, quantity.format());
        assertEquals(quantity.unit(), back.unit(), quantity.format());
        assertEquals(
            quantity.standardUncertainty(), back.standardUncertainty(), 0, quantity.format());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("families")
  void conversionIsAGroup(Family family) {
    Random random = new Random(SEED);
    for (int i = 0; i < VALUES; i++) {
      for (String from : family.units) {
        Quantity quantity = draw(random, family, from);
        assertEquals(quantity, quantity.in(quantity.unit()), "identity");
        for (String by : family.units) {
          Quantity there = quantity.in(Unit.of(by));
          assertNear(quantity, there.in(quantity.unit()), "there and back by " + by);
          for (String to : family.units) {
            assertNear(quantity.in(Unit.of(to)), there.in(Unit.of(to)), "by " + by + " to " + to);
          }
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("families")
  void anUncertaintyIsNeverNegativeAndScalesWithTheUnitOnly(Family family) {
    Random random = new Random(SEED);
    for (int i = 0; i < VALUES; i++) {
      for (String from : family.units) {
        Quantity quantity = draw(random, family, from);
        for (String to : family.units) {
          Quantity converted = quantity.in(Unit.of(to));
          assertTrue(converted.standardUncertainty() >= 0);
          assertEquals(
              quantity.standardUncertaintySi(),
              converted.standardUncertaintySi(),
              1e-12 * quantity.standardUncertaintySi(),
              "no shift, no sign");
        }
      }
    }
  }

  @Test
  void theSpellingShownIsReadBackAsTheSameUnit() {
    for (String code : UcumParser.symbols()) {
      Unit unit = Unit.of(code);
      if (unit.code().equals("Cel") || unit.code().equals("[degF]")) {
        continue; // read as a point or a difference, by the kind: see families
      }
      QuantityKind kind = new QuantityKind("probe", unit, Scale.RATIO);
      assertEquals(
          unit.factor(),
          QuantityParser.parse("1 " + unit.symbol(), kind).si(),
          1e-12 * unit.factor(),
          code + " shown as " + unit.symbol());
    }
  }

  private static void assertNear(Quantity expected, Quantity actual, String how) {
    double size = Math.max(Math.abs(expected.value()), shiftIn(expected.unit()));
    assertEquals(expected.value(), actual.value(), 1e-12 * size, expected + " " + how);
    assertEquals(
        expected.standardUncertainty(),
        actual.standardUncertainty(),
        1e-12 * expected.standardUncertainty(),
        expected + " " + how);
  }

  /** Near the zero of a shifted scale, digits are lost in proportion to the shift. */
  private static double shiftIn(Unit unit) {
    return unit.dimension().equals(Dimension.of("K")) ? 500 / unit.factor() : 0;
  }
}
