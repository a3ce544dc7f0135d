package kelter.electrical.caution;

import java.util.List;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;

/** The cautions of electrical laws, procedures, checks and remedies. */
public final class ElectricalCautions {

  /** Live parts within reach. */
  public static final Caution LIVE_PARTS =
      new Caution(
          "live-parts",
          Signal.DANGER,
          "Live parts within reach. Only a person competent for live work may do this, as local code"
              + " allows; everybody else measures with the plug out.");

  /** A hot part. */
  public static final Caution HOT_PART =
      new Caution(
          "hot-part",
          Signal.WARNING,
          "A heater stays hot for minutes after switching off. Let it cool first.");

  /** A machine that runs, whatever it heats. */
  public static final Caution RUNNING =
      new Caution(
          "running-machine",
          Signal.WARNING,
          "Burns and moving parts. Keep the machine closed while it runs, and let what is hot cool"
              + " below 40 °C before you touch it.");

  /** A shaft that turns. */
  public static final Caution TURNING =
      new Caution(
          "turning-shaft",
          Signal.WARNING,
          "Moving parts. Keep hands, sleeves and hair away from shaft and belt while they turn.");

  /** A plug or cord that was hot. */
  public static final Caution HOT_PLUG =
      new Caution(
          "hot-plug",
          Signal.DANGER,
          "Fire and electric shock. Take the machine out of use with its plug out, and do not plug"
              + " it in again before plug and cord are renewed and a licensed electrician has seen"
              + " the outlet.",
          true);

  /** A contact or joint that drops voltage. */
  public static final Caution HOT_JOINT =
      new Caution(
          "hot-joint",
          Signal.WARNING,
          "Fire. A contact or joint that drops voltage heats itself and what is around it: do not let"
              + " the machine heat again before it is renewed.",
          true);

  /** Somebody felt current. */
  public static final Caution TINGLE =
      new Caution(
          "tingle",
          Signal.DANGER,
          "Electric shock. Somebody felt current at touchable metal: leave the machine unplugged until"
              + " protective conductor and insulation were measured and are in order.",
          true);

  /** A capacitor may still be charged. */
  public static final Caution CHARGED_CAPACITOR =
      new Caution(
          "charged-capacitor",
          Signal.DANGER,
          "A capacitor can hold a dangerous charge although the plug is out, for days if its bleed"
              + " resistor is broken. Discharge it through a resistor made for that, and prove dead"
              + " before you touch.");

  /** High-voltage capacitors are out of reach of this toolkit. */
  public static final Caution HIGH_VOLTAGE =
      new Caution(
          "high-voltage",
          Signal.DANGER,
          "Stop at the high-voltage capacitor of a microwave oven: it kills. It is no work for this"
              + " toolkit, but for a person trained and equipped for it.");

  /** The insulation test itself puts 500 V on the machine. */
  public static final Caution TEST_VOLTAGE =
      new Caution(
          "test-voltage",
          Signal.WARNING,
          "The insulation tester puts 500 V on the conductors. Unplug, disconnect electronics that"
              + " it could destroy, keep hands off, and let the tester discharge afterwards.");

  /** The outlet is not the appliance technician's work. */
  public static final Caution FIXED_WIRING =
      new Caution(
          "fixed-wiring",
          Signal.DANGER,
          "Outlet, fixed wiring and distribution board are work for a licensed electrician. Do not"
              + " open them; take the machine out of use where plug or outlet is hot or discoloured.");

  /** What burns gas is out of reach of this toolkit. */
  public static final Caution GAS =
      new Caution(
          "gas",
          Signal.DANGER,
          "Stop at gas: explosion, fire and carbon monoxide. Where it smells of gas, switch nothing,"
              + " close the tap if you can reach it, let people out and call the gas supplier from"
              + " outside. Work on gas is for those licensed for it.");

  /** What holds refrigerant is out of reach of this toolkit. */
  public static final Caution REFRIGERANT =
      new Caution(
          "refrigerant",
          Signal.DANGER,
          "Stop at the refrigerant circuit: pressure, frostbite, and fire where it holds"
              + " hydrocarbons. Do not cut, braze or vent it; it is for those licensed for it.");

  /** A leakage current is read with the machine under voltage. */
  public static final Caution LEAKING_MACHINE =
      new Caution(
          "leaking-machine",
          Signal.DANGER,
          "Electric shock. Only after protective conductor and insulation were measured dead and"
              + " conform: a machine that leaks, or trips, is not plugged in to read how much.");

  /** A selector whose contact is worn or welded. */
  public static final Caution SELECTOR_CONTACT =
      new Caution(
          "selector-contact",
          Signal.WARNING,
          "A contact that drops voltage heats its terminal, one that is welded heats without a stop:"
              + " do not let it work again before the selector is renewed.",
          true);

  /** A switch whose contact is worn or welded. */
  public static final Caution HAND_SWITCH_CONTACT =
      new Caution(
          "hand-switch-contact",
          Signal.WARNING,
          "A switch that drops voltage heats itself, one that is welded never lets go: leave the"
              + " machine unplugged until it is renewed.",
          true);

  /** The protector of a compressor. */
  public static final Caution NEVER_BRIDGE_PROTECTOR =
      new Caution(
          "never-bridge-protector",
          Signal.WARNING,
          "Fire. Never bridge the protector of a compressor, not even to try: find out whether the"
              + " compressor stands, runs hot or does not start.");

  /** A tilt switch. */
  public static final Caution NEVER_BRIDGE_TILT_SWITCH =
      new Caution(
          "never-bridge-tilt-switch",
          Signal.WARNING,
          "Fire. Never bridge a tilt switch, and never close the machine with one that does not"
              + " open.");

  /** A fuse that blew. */
  public static final Caution BLOWN_FUSE =
      new Caution(
          "blown-fuse",
          Signal.WARNING,
          "A fuse blows because something drew too much. Find out what before a new one goes in, fit"
              + " the same rating and size, and never bridge it.");

  /** A door lock. */
  public static final Caution NEVER_BRIDGE_DOOR_LOCK =
      new Caution(
          "never-bridge-door-lock",
          Signal.DANGER,
          "Moving parts and burns. Never bridge a door lock, not even to try: the door must not open"
              + " while the machine turns or is hot.");

  /** Springs of a door. */
  public static final Caution DOOR_SPRINGS =
      new Caution(
          "door-springs",
          Signal.WARNING,
          "Crushing and cuts. Door springs and hinges are under tension: hold the door, and relieve"
              + " or pin the spring before you take it off.");

  /** A door switch that does not open. */
  public static final Caution RUNS_WITH_DOOR_OPEN =
      new Caution(
          "runs-with-door-open",
          Signal.DANGER,
          "Moving parts. The machine may run with its door open: leave it unplugged until the switch"
              + " is mended.",
          true);

  /** The blades of a fan wheel. */
  public static final Caution SHARP_BLADES =
      new Caution(
          "sharp-blades",
          Signal.CAUTION,
          "Sharp edges. Wear gloves and turn the wheel by its hub.");

  /** A hob with a crack. */
  public static final Caution CRACKED_GLASS =
      new Caution(
          "cracked-glass",
          Signal.DANGER,
          "Electric shock. Isolate a hob with a cracked glass and do not use it.");

  /** A protective conductor that does not conform. */
  public static final Caution NO_PROTECTIVE_CONDUCTOR =
      new Caution(
          "no-protective-conductor",
          Signal.DANGER,
          "Electric shock. Without its protective conductor a fault puts voltage on touchable metal:"
              + " leave the machine unplugged until the path is mended.",
          true);

  /** A leakage current that does not conform. */
  public static final Caution LEAKS_CURRENT =
      new Caution(
          "leaks-current",
          Signal.DANGER,
          "Electric shock. Unplug the machine and do not hand it back before the leak is found and"
              + " the current measured again.",
          true);

  /** A broken conductor in the cord. */
  public static final Caution BROKEN_CORD =
      new Caution(
          "broken-cord",
          Signal.DANGER,
          "Fire and electric shock. A broken conductor sparks inside the cord: leave the machine"
              + " unplugged until the cord is renewed.",
          true);

  /** A cord after work on it. */
  public static final Caution CONDUCTOR_AGAIN =
      new Caution(
          "conductor-again",
          Signal.DANGER,
          "Electric shock. Measure the protective conductor again, bending the cord, before"
              + " the machine is plugged in.");

  /** Insulation that does not conform. */
  public static final Caution FAILED_INSULATION =
      new Caution(
          "failed-insulation",
          Signal.DANGER,
          "Electric shock. Leave the machine unplugged and do not hand it back before the insulation"
              + " is mended and measured again.",
          true);

  /** A board that does not let go of a load. */
  public static final Caution SWITCHES_BY_ITSELF =
      new Caution(
          "switches-by-itself",
          Signal.WARNING,
          "Fire and flood. The load runs as soon as the machine is plugged in: leave it unplugged and"
              + " its tap shut until the board is mended.",
          true);

  /** The direct-current link of an inverter. */
  public static final Caution DC_LINK =
      new Caution(
          "dc-link",
          Signal.DANGER,
          "Electric shock. The direct-current link holds 170 V to 570 V after the plug is out, and"
              + " longer if its bleeder is broken. Wait 15 minutes or as marked, then read less than"
              + " 60 V between plus and minus before you touch.");

  /** Dust of brushes. */
  public static final Caution BRUSH_DUST =
      new Caution(
          "brush-dust",
          Signal.CAUTION,
          "Brush dust. Wear a mask and wipe or suck it off; it conducts current.");

  /** A heater that was taken out. */
  public static final Caution CONDUCTOR_BACK =
      new Caution(
          "conductor-back",
          Signal.DANGER,
          "Put the protective conductor back before anything else, and measure it and the insulation"
              + " before the machine is plugged in.");

  /** Descaling. */
  public static final Caution DESCALING_ACID =
      new Caution(
          "descaling-acid",
          Signal.CAUTION,
          "Descaling acid burns skin and eyes and gives off gas: gloves, goggles, open"
              + " window, never together with bleach.");

  /** A heater that reads too low. */
  public static final Caution SHORTED_HEATER =
      new Caution(
          "shorted-heater",
          Signal.WARNING,
          "Do not put this heater under voltage again before the reading is explained: a short heats"
              + " wires and contacts within seconds.");

  /** A thermal link that opened. */
  public static final Caution OPENED_THERMAL_LINK =
      new Caution(
          "opened-thermal-link",
          Signal.WARNING,
          "A thermal link opens because something got too hot. Find out what"
              + " before a new one goes in, fit the same temperature and current,"
              + " and never bridge it.");

  /** A contact that protects. */
  public static final Caution NEVER_BRIDGE_CONTACT =
      new Caution(
          "never-bridge-contact",
          Signal.WARNING,
          "Never bridge a thermal link, thermostat or door switch, not even to try: find out why it"
              + " opened.");

  /** A lamp that is renewed. */
  public static final Caution HOT_LAMP =
      new Caution(
          "hot-lamp",
          Signal.WARNING,
          "Burns and cuts. Let it cool; fit the same voltage, power and, in an oven, one made"
              + " for heat.");

  /** A thermostat. */
  public static final Caution NEVER_BRIDGE_THERMOSTAT =
      new Caution(
          "never-bridge-thermostat",
          Signal.WARNING,
          "Fire and scalds. Never bridge a thermostat, and let nothing heat whose thermostat does not"
              + " open.");

  /** A float switch. */
  public static final Caution NEVER_BRIDGE_FLOAT_SWITCH =
      new Caution(
          "never-bridge-float-switch",
          Signal.WARNING,
          "Flood. Never bridge a float switch: dry the pan, find the leak and try the float.");

  /** Anchors that are loose. */
  public static final Caution LOOSE_ANCHORS =
      new Caution(
          "loose-anchors",
          Signal.WARNING,
          "Crushing. A machine with loose anchors can walk or tear off as it spins: no spin before"
              + " they are tight and their floor is sound.",
          true);

  /** An imbalance switch. */
  public static final Caution NEVER_BRIDGE_IMBALANCE_SWITCH =
      new Caution(
          "never-bridge-imbalance-switch",
          Signal.WARNING,
          "Never bridge the imbalance switch, not even to try: nothing else stops a tub that"
              + " strikes.");

  /** A tub on springs, which carries weights. */
  public static final Caution HEAVY_TUB =
      new Caution(
          "heavy-tub",
          Signal.WARNING,
          "Crushing. Tub and weights are 20 kg and more on springs under tension: prop the tub and"
              + " keep fingers out before you unhook anything.");

  /** All of them. */
  public static final List<Caution> ALL =
      List.of(
          LIVE_PARTS,
          HOT_PART,
          RUNNING,
          TURNING,
          HOT_PLUG,
          HOT_JOINT,
          TINGLE,
          CHARGED_CAPACITOR,
          HIGH_VOLTAGE,
          TEST_VOLTAGE,
          FIXED_WIRING,
          GAS,
          REFRIGERANT,
          LEAKING_MACHINE,
          SELECTOR_CONTACT,
          HAND_SWITCH_CONTACT,
          NEVER_BRIDGE_PROTECTOR,
          NEVER_BRIDGE_TILT_SWITCH,
          BLOWN_FUSE,
          NEVER_BRIDGE_DOOR_LOCK,
          DOOR_SPRINGS,
          RUNS_WITH_DOOR_OPEN,
          SHARP_BLADES,
          CRACKED_GLASS,
          NO_PROTECTIVE_CONDUCTOR,
          LEAKS_CURRENT,
          BROKEN_CORD,
          CONDUCTOR_AGAIN,
          FAILED_INSULATION,
          SWITCHES_BY_ITSELF,
          DC_LINK,
          BRUSH_DUST,
          CONDUCTOR_BACK,
          DESCALING_ACID,
          SHORTED_HEATER,
          OPENED_THERMAL_LINK,
          NEVER_BRIDGE_CONTACT,
          HOT_LAMP,
          NEVER_BRIDGE_THERMOSTAT,
          NEVER_BRIDGE_FLOAT_SWITCH,
          LOOSE_ANCHORS,
          NEVER_BRIDGE_IMBALANCE_SWITCH,
          HEAVY_TUB);

  private ElectricalCautions() {}
}
