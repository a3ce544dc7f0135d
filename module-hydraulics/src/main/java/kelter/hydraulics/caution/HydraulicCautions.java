package kelter.hydraulics.caution;

import java.util.List;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;

/** The cautions of hydraulic laws, procedures, checks and remedies. */
public final class HydraulicCautions {

  /** Water in the sump. */
  public static final Caution SUMP_SPILL =
      new Caution(
          "sump-spill",
          Signal.CAUTION,
          "Water runs out of the sump, perhaps hot and with lye or broken glass in it. Let it cool, wear"
              + " gloves and eye protection, put a tray under it.");

  /** Water behind covers. */
  public static final Caution WATER_UNDER_COVERS =
      new Caution(
          "water-under-covers",
          Signal.CAUTION,
          "Water, perhaps hot. Let it cool and the pressure off, shut the tap, put a tray under it.");

  /** Where condensate or waste water runs off. */
  public static final Caution RUN_OFF =
      new Caution(
          "run-off",
          Signal.CAUTION,
          "Foul water stands in it, perhaps hot where the machine heats water. Put a tray and a towel"
              + " under it.");

  /** A running fan. */
  public static final Caution TURNING_FAN =
      new Caution(
          "turning-fan",
          Signal.CAUTION,
          "Moving parts and hot air. Keep hair, sleeves and fingers away from fan and outlet.");

  /** A standpipe that takes less than the pump gives. */
  public static final Caution STANDPIPE_OVERFLOW =
      new Caution(
          "standpipe-overflow",
          Signal.NOTICE,
          "An overflowing standpipe floods the floor. Watch the first drain phase to its end.");

  /** A machine that holds its water; the water in kg is filled in. */
  public static final Caution UNDRAINED_WEIGHT =
      new Caution(
          "undrained-weight",
          Signal.WARNING,
          "Crushing. A machine that has not drained holds up to %s kg of water: empty it before you tilt it.");

  /** What lies in the sump of a washing machine. */
  public static final Caution SHARP_IN_SUMP =
      new Caution(
          "sharp-in-sump",
          Signal.CAUTION,
          "Glass, pins and sharp sheet edges in pump and sump. Wear cut-proof gloves.");

  /** Work on the way of the water out. */
  public static final Caution FLOOD_FROM_SUMP =
      new Caution(
          "flood-from-sump",
          Signal.CAUTION,
          "Flood. Close the tap, empty the sump first, and watch every joint during a test run.");

  /** A machine that is tilted. */
  public static final Caution HEAVY_WITH_WATER =
      new Caution(
          "heavy-with-water",
          Signal.WARNING,
          "Crushing. A machine with water in it is heavy: empty it before you tilt it, and prop it.");

  /** A run capacitor that is renewed. */
  public static final Caution RUN_CAPACITOR_RENEWED =
      new Caution(
          "run-capacitor-renewed",
          Signal.DANGER,
          "Stored charge. A run capacitor can hold its charge after the plug is out: discharge it through"
              + " a resistor and prove it dead.");

  /** What lies in the filter of a dishwasher. */
  public static final Caution SHARP_IN_FILTER =
      new Caution(
          "sharp-in-filter",
          Signal.CAUTION,
          "Glass, bone and sharp sheet edges in pump and filter. Wear cut-proof gloves.");

  /** Work on the water side. */
  public static final Caution FLOOD_FROM_WATER_SIDE =
      new Caution(
          "flood-from-water-side",
          Signal.CAUTION,
          "Flood. Close the tap before you open the water side, and watch every joint during a test run.");

  /** A tank of hot water. */
  public static final Caution HOT_TANK =
      new Caution(
          "hot-tank",
          Signal.WARNING,
          "Scald. The tank holds water of 60 °C or more: let it cool, or draw it off through a"
              + " hose into the drain.");

  /** Before a joint is opened or renewed. */
  public static final Caution DRAIN_FIRST =
      new Caution(
          "drain-first",
          Signal.CAUTION,
          "Flood. Close the tap, let the pressure out and the water off before you loosen a joint; watch"
              + " it during a test run.");

  /** A valve that shuts quickly. */
  public static final Caution SURGE =
      new Caution(
          "surge",
          Signal.NOTICE,
          "A surge can open joints and hoses. Close the tap when the machine is left alone.");

  /** Work behind the tap. */
  public static final Caution SUPPLY_PRESSURE =
      new Caution(
          "supply-pressure",
          Signal.CAUTION,
          "Water under pressure. Close the tap and let the pressure out into a bucket before you loosen a"
              + " joint; watch every joint afterwards.");

  /** Pipes of the house. */
  public static final Caution HOUSE_PIPES =
      new Caution(
          "house-pipes",
          Signal.NOTICE,
          "The pipes of the house are the plumber's: local codes come first.");

  /** A boiler under steam. */
  public static final Caution BOILER_STEAM =
      new Caution(
          "boiler-steam",
          Signal.WARNING,
          "Scald. Steam of 120 °C: let the boiler cool and vent it to 0 bar before you loosen a fitting.");

  /** A relief valve. */
  public static final Caution NEVER_PLUG_RELIEF =
      new Caution(
          "never-plug-relief",
          Signal.DANGER,
          "Explosion. Never cap, plug or tighten a relief valve or its outlet, not even to try. A tank that"
              + " is overheated: power off, let it cool, open nothing.");

  /** Water drawn from a store. */
  public static final Caution HOT_STREAM =
      new Caution(
          "hot-stream",
          Signal.WARNING,
          "Scald. Water of 60 °C burns within 5 s: keep hands out of the stream, warn the household.");

  /** A store that is opened. */
  public static final Caution STORE_SHUT_OFF =
      new Caution(
          "store-shut-off",
          Signal.DANGER,
          "Electric shock and scald. Lock off every supply, shut the cold water, let the pressure off.");

  /** The sole of an iron. */
  public static final Caution HOT_SOLE =
      new Caution(
          "hot-sole",
          Signal.WARNING,
          "Burn and scald. The sole has 200 °C: hold it away, let it cool after.");

  /** What lies in arms and tubs. */
  public static final Caution SPLINTERS =
      new Caution(
          "splinters",
          Signal.CAUTION,
          "Glass and bone splinters in arms and tubs. Wear cut-proof gloves.");

  /** The tap of a boiler. */
  public static final Caution BOILER_TAP =
      new Caution(
          "boiler-tap",
          Signal.WARNING,
          "Scald. Cool and empty the boiler before you open its tap; wear gloves.");

  /** A coffee machine whose fittings are loosened. */
  public static final Caution VENT_FIRST =
      new Caution(
          "vent-first",
          Signal.WARNING,
          "Scald. Let the machine cool and vent it to 0 bar at the wand before you loosen a fitting.");

  /** A portafilter after brewing. */
  public static final Caution PORTAFILTER_PRESSURE =
      new Caution(
          "portafilter-pressure",
          Signal.WARNING,
          "Scald. A portafilter may still be under pressure when the pump has stopped: wait, loosen it"
              + " slowly, keep the face away.");

  /** Detergent in tubes. */
  public static final Caution CAUSTIC_DETERGENT =
      new Caution(
          "caustic-detergent",
          Signal.DANGER,
          "Burns. Detergent is caustic: goggles and gloves, flush the tube with water before you open it.");

  /** A pump that can start. */
  public static final Caution PUMP_CAN_START =
      new Caution(
          "pump-can-start",
          Signal.WARNING,
          "Moving parts. Keep fingers, hair and cloth away from the pump while it can start.");

  /** A run capacitor that is read. */
  public static final Caution RUN_CAPACITOR_READ =
      new Caution(
          "run-capacitor-read",
          Signal.DANGER,
          "Stored charge. A run capacitor can hold its charge after the plug is out: discharge it through"
              + " a resistor and prove it dead before you touch.");

  /** The fins of a coil. */
  public static final Caution SHARP_FINS =
      new Caution(
          "sharp-fins",
          Signal.CAUTION,
          "Sharp fins. Wear gloves; never pierce, bend or scrape the coil: gas may come out, and may"
              + " burn.");

  /** A level that the machine does not know. */
  public static final Caution OVERFILLING =
      new Caution(
          "overfilling",
          Signal.CAUTION,
          "Flood. A machine that does not know its level can overfill: stay beside it for the first fill.");

  /** Voltage at a pump. */
  public static final Caution LIVE_PUMP =
      new Caution(
          "live-pump",
          Signal.DANGER,
          "Electric shock. Voltage at the pump is measured on live parts: that is for those who are"
              + " competent and licensed for it. Anybody else traces the break with the plug out, by"
              + " continuity, and leaves the rest to them.");

  /** An outlet that is held by hand. */
  public static final Caution LOOSE_HOSE_END =
      new Caution(
          "loose-hose-end",
          Signal.CAUTION,
          "A loose hose end can jump and flood the floor. Fix it before you start the pump.");

  /** Electric parts near water. */
  public static final Caution WET_MAINS =
      new Caution(
          "wet-mains",
          Signal.DANGER,
          "Electric shock. Keep the meter, the plug and your hands dry, and use a socket with a residual"
              + " current device.");

  /** All of them. */
  public static final List<Caution> ALL =
      List.of(
          SUMP_SPILL,
          WATER_UNDER_COVERS,
          RUN_OFF,
          TURNING_FAN,
          STANDPIPE_OVERFLOW,
          UNDRAINED_WEIGHT,
          SHARP_IN_SUMP,
          FLOOD_FROM_SUMP,
          HEAVY_WITH_WATER,
          RUN_CAPACITOR_RENEWED,
          SHARP_IN_FILTER,
          FLOOD_FROM_WATER_SIDE,
          HOT_TANK,
          DRAIN_FIRST,
          SURGE,
          SUPPLY_PRESSURE,
          HOUSE_PIPES,
          BOILER_STEAM,
          NEVER_PLUG_RELIEF,
          HOT_STREAM,
          STORE_SHUT_OFF,
          HOT_SOLE,
          SPLINTERS,
          BOILER_TAP,
          VENT_FIRST,
          PORTAFILTER_PRESSURE,
          CAUSTIC_DETERGENT,
          PUMP_CAN_START,
          RUN_CAPACITOR_READ,
          SHARP_FINS,
          OVERFILLING,
          LIVE_PUMP,
          LOOSE_HOSE_END,
          WET_MAINS);

  private HydraulicCautions() {}
}
