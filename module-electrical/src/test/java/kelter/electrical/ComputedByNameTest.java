package kelter.electrical;

import kelter.testkit.ByName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a person who asks for a calculation by its name gets: each figure goes to the place in the
 * law that it is meant for, and each result comes out under its own word. The laws are held against
 * sources in the tests of their packages; here the figures are unlike, so that no two can be mixed
 * up. Where no source stands beside a line, it is arithmetic on the formula that {@code kelter
 * compute} prints. Half of the last printed digit.
 */
class ComputedByNameTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # IEC 60335-1, clause 10, Table 1: heating above 200 W, plus 5 % and less 10 %
          heater-resistance | power=2000 W, voltage=230 V | resistance | 26.45 | Ohm
          heater-resistance | power=2000 W, voltage=230 V | resistance-low | 25.190 | Ohm
          heater-resistance | power=2000 W, voltage=230 V | resistance-high | 29.389 | Ohm
          # the same clause, Table 2 (per cents of Table 1); motors have no lower end
          current-input-band | current=10 A, type=heating | current-low | 9.0 | A
          current-input-band | current=10 A, type=heating | current-high | 10.5 | A
          current-input-band | current=10 A, type=motor | current-low | 0 | A
          current-input-band | current=10 A, type=motor | current-high | 11.5 | A
          # a maker's table of C_t, as in HeaterTest: 1.026 and 1.040
          alloy-resistance | resistance=102.6 Ohm, temperature=500 Cel | cold | 100.0 | Ohm
          alloy-resistance | resistance=102.6 Ohm, temperature=500 Cel | factor | 1.026 | 1
          alloy-resistance | resistance=104 Ohm, temperature=800 Cel, alloy=cr25al5 | cold | 100.0 | Ohm
          power-at-voltage | power=4500 W, voltage=240 V, actual=208 V | current | 16.25 | A
          heat-up-time | mass=3 kg, rise=80 K, power=3 kW, machine=0.45 kJ/K | time | 346.72 | s
          heat-up-time | mass=3 kg, rise=80 K, power=3 kW, machine=0.45 kJ/K | rate | 13.844 | K/min
          heat-up-time | mass=3 kg, rise=80 K, power=3 kW, machine=0.45 kJ/K, efficiency=0.8 | time | 433.40 | s
          power-from-heating | mass=3 kg, rate=15 K/min, machine=0.45 kJ/K | power | 3250.5 | W
          power-from-heating | mass=3 kg, rate=15 K/min, machine=0.45 kJ/K, efficiency=0.8 | power | 4063.1 | W
          scale-on-heater | power=2000 W, surface=200 cm2, thickness=1 mm, conductivity=2 W/(m.K) | rise | 50.0 | K
          scale-on-heater | power=2000 W, surface=200 cm2, thickness=1 mm | load | 10.0 | W/cm2
          load-heat-capacity | cotton=1 kg, crockery=2 kg, steel=3 kg, plastic=4 kg | capacity | 10.92 | kJ/K
          heater-connection | resistance=50 Ohm, voltage=400 V, connection=star | power | 3200 | W
          heater-connection | resistance=50 Ohm, voltage=400 V, connection=star | current | 4.619 | A
          heater-connection | resistance=50 Ohm, voltage=400 V, connection=delta | power | 9600 | W
          heater-connection | resistance=50 Ohm, voltage=230 V, connection=series, elements=2 | power | 529 | W
          heater-connection | resistance=50 Ohm, voltage=230 V, connection=parallel, elements=2 | current | 9.2 | A
          lead-null | reading=1.3 Ohm, leads=0.4 Ohm | resistance | 0.90 | Ohm
          # IEC 60228, Tables 1 and 3: 1.5 mm2 solid 12.1 ohm/km, flexible 13.3 ohm/km; 0.00393/K
          conductor-resistance | length=3 m, section=1.5 mm2 | resistance | 0.0399 | Ohm
          conductor-resistance | length=3 m, section=1.5 mm2, build=solid | resistance | 0.0363 | Ohm
          conductor-resistance | length=3 m, section=1.5 mm2, temperature=70 Cel | resistance | 0.04774 | Ohm
          # NBS Handbook 100, number 12: 80.8 mil, 6530 circular mils, 1.588 ohm for 1000 ft
          wire-gauge | gauge=12 | diameter | 2.053 | mm
          wire-gauge | gauge=12 | section | 3.309 | mm2
          wire-gauge | gauge=12 | per-length | 5.211 | mOhm/m
          # constants 234.5 of copper and 225 of aluminium, IEC 60335-1, 11.8, as cited
          temperature-rise | before=10 Ohm, after=12 Ohm, room-before=20 Cel, room-after=25 Cel | rise | 45.9 | K
          temperature-rise | before=10 Ohm, after=12 Ohm, room-before=20 Cel, room-after=25 Cel | winding | 70.9 | Cel
          temperature-rise | before=10 Ohm, after=12 Ohm, room-before=20 Cel, room-after=25 Cel, metal=aluminium | rise | 44.0 | K
          capacitor-discharge | capacitance=10 uF, resistance=1 MOhm, voltage=325 V | time | 22.57 | s
          capacitor-discharge | capacitance=10 uF, resistance=1 MOhm, voltage=325 V, to=60 V | time | 16.89 | s
          capacitor-leakage | capacitance=10 uF, insulation=100 MOhm | current | 3.25 | uA
          capacitor-leakage | capacitance=10 uF, insulation=100 MOhm | lasts | 2257 | s
          capacitance-from-current | current=1.2 A, voltage=400 V | capacitance | 9.549 | uF
          capacitance-from-current | current=1.2 A, voltage=400 V, frequency=60 Hz | capacitance | 7.958 | uF
          thermistor-resistance | r25=10 kOhm, beta=3977 K, temperature=0 Cel | resistance | 33.90 | kOhm
          # IEC 60751:2008: 138.51 ohm at 100 °C; class A 0.15 K + 0.002 |t|, class B 0.30 K + 0.005 |t|
          platinum-resistance | temperature=100 Cel | resistance | 138.51 | Ohm
          platinum-resistance | temperature=100 Cel, r0=1000 Ohm | resistance | 1385.1 | Ohm
          platinum-resistance | temperature=100 Cel | class-a | 0.35 | K
          platinum-resistance | temperature=100 Cel | class-b | 0.80 | K
          platinum-temperature | resistance=1385.1 Ohm, r0=1000 Ohm | temperature | 100.0 | Cel
          sensor-from-voltage | voltage=2 V, series=6 kOhm | resistance | 4.00 | kOhm
          sensor-line | voltage=1.5 V | share | 25.0 | %
          sensor-line | voltage=1.5 V, at-zero=1 V, at-full=5 V | share | 12.5 | %
          tacho-speed | frequency=300 Hz, pulses=8 | speed | 2250 | {rev}/min
          flow-sensor | frequency=45 Hz, pulses=450 /L | flow | 6.00 | L/min
          # EN 50678 as the tests of the law have it: II 2 MOhm, I with heaters 0.3 MOhm
          insulation-limit | class=II | limit | 2.0 | MOhm
          insulation-limit | class=I, heaters=yes | limit | 0.30 | MOhm
          insulation-limit | class=I, heaters=no | limit | 1.0 | MOhm
          protective-conductor-limit | length=13 m | limit | 0.40 | Ohm
          leakage-limit | power=4 kW, build=class-1-heating | type-test | 3.0 | mA
          leakage-limit | power=4 kW, build=class-1-heating | after-repair | 4.0 | mA
          leakage-limit | power=4 kW, build=class-2 | touch | 0.5 | mA
          leakage-current | insulation=1 MOhm, filter=0 uF | current | 0.230 | mA
          leakage-current | insulation=100 MOhm, filter=20 nF | current | 1.4451 | mA
          leakage-current | insulation=0.02 MOhm, device=0.03 A | share | 38.33 | %
          north-american-limit | build=two-wire | leakage | 0.50 | mA
          north-american-limit | build=grounded-stationary | leakage | 0.75 | mA
          north-american-limit | build=grounded-stationary | grounding | 0.10 | Ohm
          source-impedance | idle=230 V, loaded=220 V, current=8 A | impedance | 1.25 | Ohm
          source-impedance | idle=230 V, loaded=220 V, current=8 A | heat | 80.0 | W
          joint-heat | drop=0.5 V, current=10 A | resistance | 0.0500 | Ohm
          joint-heat | drop=0.5 V, current=10 A | heat | 5.00 | W
          circuit-load | power=2300 W, voltage=230 V, factor=0.8, device=10 A | current | 12.5 | A
          circuit-load | power=2300 W, voltage=230 V, factor=0.8, device=10 A | share | 125 | %
          # EN 50160 and ANSI C84.1, as SupplyTest has them
          supply-range | range=en-50160-always | voltage-low | 195.5 | V
          supply-range | range=ansi-utilization-b | voltage-high | 127 | V
          motor-slip | speed=1440 {rev}/min, poles=4 | slip | 4.0 | %
          motor-slip | speed=1160 {rev}/min, poles=6, frequency=60 Hz | synchronous | 1200 | {rev}/min
          power-factor | power=600 W, voltage=230 V, current=4 A | factor | 0.6522 | 1
          coil-impedance | voltage=230 V, current=2.3 A, resistance=60 Ohm | impedance | 100.0 | Ohm
          coil-impedance | voltage=230 V, current=2.3 A, resistance=60 Ohm | reactance | 80.0 | Ohm
          coil-impedance | voltage=230 V, current=2.3 A, resistance=60 Ohm | power-factor | 0.600 | 1
          half-wave | voltage=230 V | mean | 103.5 | V
          half-wave | voltage=230 V | effective | 162.6 | V
          # a course in power electronics (pe.gastli.info), as WindingTest has it
          half-wave-coil | voltage=240.4163 V, resistance=10 Ohm, inductance=31.8310 mH, free-wheeling=yes | mean | 10.823 | A
          half-wave-coil | voltage=240.4163 V, resistance=10 Ohm, inductance=31.8310 mH, free-wheeling=yes | effective | 13.952 | A
          half-wave-coil | voltage=240.4163 V, resistance=10 Ohm, inductance=31.8310 mH, free-wheeling=yes | heat | 1947 | W
          shorted-turns | resistance=11.9650 Ohm, expected=12 Ohm, temperature=70 Cel | at-20 | 10.000 | Ohm
          shorted-turns | resistance=11.9650 Ohm, expected=12 Ohm, temperature=70 Cel | missing | 16.67 | %
          shorted-turns-by-impedance | reactance=81 Ohm, expected=100 Ohm | turns | 10.0 | %
          # worked example, yourelectrichome.com
          star-of-delta | ab=10 Ohm, bc=15 Ohm, ca=5 Ohm | a | 1.67 | Ohm
          star-of-delta | ab=10 Ohm, bc=15 Ohm, ca=5 Ohm | b | 5.00 | Ohm
          star-of-delta | ab=10 Ohm, bc=15 Ohm, ca=5 Ohm | c | 2.50 | Ohm
          star-of-delta | ab=10 Ohm, bc=15 Ohm, ca=5 Ohm | read-ab | 6.67 | Ohm
          star-of-delta | ab=10 Ohm, bc=15 Ohm, ca=5 Ohm | read-bc | 7.50 | Ohm
          star-of-delta | ab=10 Ohm, bc=15 Ohm, ca=5 Ohm | read-ca | 4.17 | Ohm
          voltage-unbalance | v1=230 V, v2=232 V, v3=225 V | unbalance | 1.747 | %
          # past the end of NEMA MG-1, figure 14-1, a motor bears no load
          voltage-unbalance | v1=230 V, v2=230 V, v3=200 V | derating | 0.0 | 1
          belt-tension | mass=0.03 kg/m, span=0.4 m, frequency=50 Hz | tension | 48.0 | N
          belt-slip | driving-speed=1500 {rev}/min, driving-diameter=20 mm, driven-speed=97 {rev}/min, driven-diameter=300 mm | slip | 3.0 | %
          brush-life | length=20 mm, rate=0.05 mm/h | left | 160 | h
          damped-swing | remaining=0.36788, swings=2 | decrement | 0.5000 | 1
          damped-swing | remaining=0.36788, swings=2 | damping | 0.07933 | 1
          """)
  void eachFigureGoesWhereItBelongs(
      String id, String given, String word, String figure, String unit) {
    new ByName(new ElectricalModule().calculations()).assertGives(id, given, word, figure, unit);
  }
}
