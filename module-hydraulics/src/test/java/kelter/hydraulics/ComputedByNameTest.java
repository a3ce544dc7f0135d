package kelter.hydraulics;

import kelter.testkit.ByName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a person who asks for a calculation by its name gets: each figure goes to the place in the
 * law that it is meant for, and each result comes out under its own word. The laws are held against
 * sources in the tests of their packages; here the figures are unlike, so that no two can be mixed
 * up, and the lines are arithmetic by hand on the formula that {@code kelter compute} prints. Water
 * has 999.10 kg/m3 at 15 °C and 998.21 kg/m3 at 20 °C (IAPWS R6-95), g is 9.80665 m/s2. Half of the
 * last printed digit.
 */
class ComputedByNameTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # velocity 1.25566 m/s; the wave takes 9.0 ms there and back, so 30 ms damp to 0.3
          pressure-surge | flow=10 L/min, bore=13 mm, length=6 m | wave-speed | 1331 | m/s
          pressure-surge | flow=10 L/min, bore=13 mm, length=6 m | sudden-within | 9.02 | ms
          pressure-surge | flow=10 L/min, bore=13 mm, length=6 m | surge | 502 | kPa
          pressure-surge | flow=10 L/min, bore=13 mm, length=6 m, closing-time=5 ms | surge | 1670 | kPa
          hydraulic-power | flow=12 L/min, head=10 m, electric-power=40 W | hydraulic-power | 19.58 | W
          hydraulic-power | flow=12 L/min, head=10 m, electric-power=40 W | efficiency | 48.9 | %
          # 120 kPa, half a metre, and 3.183 m/s behind against 1.415 m/s before
          pump-head | outlet-pressure=100 kPa, inlet-pressure=-20 kPa, elevation=0.5 m, flow=60 L/min, outlet-bore=20 mm, inlet-bore=30 mm | pressure-head | 12.26 | m
          pump-head | outlet-pressure=100 kPa, inlet-pressure=-20 kPa, elevation=0.5 m, flow=60 L/min, outlet-bore=20 mm, inlet-bore=30 mm | velocity-head | 0.415 | m
          pump-head | outlet-pressure=100 kPa, inlet-pressure=-20 kPa, elevation=0.5 m, flow=60 L/min, outlet-bore=20 mm, inlet-bore=30 mm | head | 13.17 | m
          affinity-laws | flow=10 L/min, head=4 m, power=100 W, speed=3000 {rev}/min, new-speed=3600 {rev}/min | new-flow | 12.0 | L/min
          affinity-laws | flow=10 L/min, head=4 m, power=100 W, speed=3000 {rev}/min, new-speed=3600 {rev}/min | new-head | 5.76 | m
          affinity-laws | flow=10 L/min, head=4 m, power=100 W, speed=3000 {rev}/min, new-speed=3600 {rev}/min | new-power | 172.8 | W
          # ISO 9906:2012, grade 3B: 9 %, 7 % and 9 %; grade 1B: 5 %, 3 % and 4 %
          pump-acceptance | flow=100 L/min, head=10 m, power=1000 W | flow-low | 91.0 | L/min
          pump-acceptance | flow=100 L/min, head=10 m, power=1000 W | head-high | 10.70 | m
          pump-acceptance | flow=100 L/min, head=10 m, power=1000 W, grade=1b | head-low | 9.70 | m
          pump-acceptance | flow=100 L/min, head=10 m, power=1000 W, grade=1b | power-high | 1040 | W
          impeller-head | diameter=60 mm, speed=2880 {rev}/min | head | 4.591 | m
          impeller-head | diameter=60 mm, speed=2880 {rev}/min | head-low | 3.339 | m
          impeller-head | diameter=60 mm, speed=2880 {rev}/min | head-high | 5.843 | m
          # 1800 Pa of 2000 Pa after half a minute are 0.9 times 0.9 after a whole one
          pressure-decay | start=2000 Pa, end=1800 Pa, time=30 s | time-constant | 284.7 | s
          pressure-decay | start=2000 Pa, end=1800 Pa, time=30 s | kept | 81.00 | %
          pressure-decay | start=2000 Pa, end=1800 Pa, time=30 s, volume=30 mL | leak-rate | 0.00020 | Pa.m3/s
          jet-flow | pressure=20 kPa, area=50 mm2 | flow | 11.77 | L/min
          jet-flow | pressure=20 kPa, area=50 mm2 | velocity | 3.925 | m/s
          spray-arm | pressure=20 kPa, driving-area=50 mm2, radius=200 mm | torque | 0.1754 | N.m
          spray-arm | pressure=20 kPa, driving-area=50 mm2, radius=200 mm | speed | 213.7 | {rev}/min
          spray-arm | pressure=20 kPa, driving-area=50 mm2, radius=200 mm, friction=0.1 N.m | speed | 91.8 | {rev}/min
          spray-arm | pressure=20 kPa, driving-area=50 mm2, radius=200 mm, closed=50 % | flow | 5.89 | L/min
          spray-arm | pressure=20 kPa, driving-area=50 mm2, radius=200 mm, friction=0.2 N.m | speed | 0 | {rev}/min
          hose-backflow | rising-length=1.2 m, bore=19 mm, water-area=1200 cm2 | volume | 0.340 | L
          hose-backflow | rising-length=1.2 m, bore=19 mm, water-area=1200 cm2 | level-rise | 2.835 | mm
          flow-heater | power=18 kW | flow | 9.2 | L/min
          mixed-water | hot-share=30 % | mixed | 25.0 | Cel
          stirred-store | volume=80 L | outlet | 50.94 | Cel
          # 999.70 kg/m3 at 10 °C, 983.20 kg/m3 at 60 °C
          thermal-expansion | volume=80 L | expansion | 1.34 | L
          # vapour 19.95 kPa and 983.20 kg/m3 at 60 °C
          npsh-available | level=0.4 m, head-loss=0.3 m, temperature=60 Cel, surface-pressure=10 kPa | npsh | 9.58 | m
          npsh-available | level=0.4 m, head-loss=0.3 m, temperature=60 Cel, surface-pressure=10 kPa | vapour-head | 2.07 | m
          air-heat | power=2400 W, flow=50 L/s | rise | 39.76 | K
          blocked-air | loss-ratio=4 | at-fixed-pressure | 50.0 | %
          blocked-air | loss-ratio=4 | on-fan-line | 62.5 | %
          compressor-duty | load=60 W, leak=15 W, capacity=150 W | duty | 50.0 | %
          compressor-duty | load=160 W, leak=15 W, capacity=150 W | duty | 100 | %
          defrost-energy | ice=0.5 kg, temperature=-10 Cel, power=200 W, efficiency=40 % | energy | 0.1232 | kW.h
          defrost-energy | ice=0.5 kg, temperature=-10 Cel, power=200 W, efficiency=40 % | time | 2218 | s
          # by the heat 0.729 g/s, less than the 1.008 g/s that the air takes; then by the air
          drying-time | water=2 kg, power=2500 W, efficiency=70 % | time | 2743 | s
          drying-time | water=2 kg, power=2500 W, efficiency=70 % | water-a-minute | 0.04375 | kg
          drying-time | water=2 kg, power=2500 W, flow=21 L/s | water-a-minute | 0.03024 | kg
          duct-loss | flow=50 L/s, bore=100 mm, length=4 m, loss-coefficient=1.5 | velocity | 6.366 | m/s
          duct-loss | flow=50 L/s, bore=100 mm, length=4 m, loss-coefficient=1.5 | friction-factor | 0.02572 | 1
          duct-loss | flow=50 L/s, bore=100 mm, length=4 m, loss-coefficient=1.5 | loss | 61.5 | Pa
          fan-laws | flow=40 L/s, pressure=200 Pa, power=100 W, speed=2000 {rev}/min, new-speed=2400 {rev}/min | new-flow | 48.0 | L/s
          fan-laws | flow=40 L/s, pressure=200 Pa, power=100 W, speed=2000 {rev}/min, new-speed=2400 {rev}/min, density-ratio=0.9 | new-pressure | 259.2 | Pa
          fan-laws | flow=40 L/s, pressure=200 Pa, power=100 W, speed=2000 {rev}/min, new-speed=2400 {rev}/min, density-ratio=0.9 | new-power | 155.5 | W
          gasket-leak | length=2.4 m, difference=25 K, gap=1 mm | heat | 4.20 | W
          gasket-leak | length=2.4 m, difference=25 K, gap=1 mm | air | 0.0556 | L/s
          gasket-leak | length=2.4 m, difference=25 K, gap=1 mm | heat-of-air | 1.68 | W
          moist-air | temperature=20 Cel, humidity=50 % | saturation | 2.337 | kPa
          moist-air | temperature=20 Cel, humidity=50 % | moisture | 0.00726 | 1
          sealed-suction | sealed-suction=20 kPa, open-flow=35 L/s, leak-area=100 mm2 | suction | 14.64 | kPa
          suction-power | sealed-suction=20 kPa, open-flow=35 L/s | power | 175.0 | W
          vane-flow | velocity=5 m/s, bore=100 mm | flow | 33.38 | L/s
          """)
  void eachFigureGoesWhereItBelongs(
      String id, String given, String word, String figure, String unit) {
    new ByName(new HydraulicsModule().calculations()).assertGives(id, given, word, figure, unit);
  }
}
