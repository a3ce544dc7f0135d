package kelter.electrical.caution;

import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;

/** The cautions that several electrical laws, procedures and remedies share. */
public final class ElectricalCautions {

  /** Live parts within reach. */
  public static final Caution LIVE_PARTS =
      new Caution(
          Signal.DANGER,
          "Live parts within reach. Only a person competent for live work may do this, as local code"
              + " allows; everybody else measures with the plug out.");

  /** A hot part. */
  public static final Caution HOT_PART =
      new Caution(
          Signal.WARNING, "A heater stays hot for minutes after switching off. Let it cool first.");

  /** A machine that runs, whatever it heats. */
  public static final Caution RUNNING =
      new Caution(
          Signal.WARNING,
          "Burns and moving parts. Keep the machine closed while it runs, and let what is hot cool"
              + " below 40 °C before you touch it.");

  /** A shaft that turns. */
  public static final Caution TURNING =
      new Caution(
          Signal.WARNING,
          "Moving parts. Keep hands, sleeves and hair away from shaft and belt while they turn.");

  /** A plug or cord that was hot. */
  public static final Caution HOT_PLUG =
      new Caution(
          Signal.DANGER,
          "Fire and electric shock. Take the machine out of use with its plug out, and do not plug"
              + " it in again before plug and cord are renewed and a licensed electrician has seen"
              + " the outlet.",
          true);

  /** A contact or joint that drops voltage. */
  public static final Caution HOT_JOINT =
      new Caution(
          Signal.WARNING,
          "Fire. A contact or joint that drops voltage heats itself and what is around it: do not let"
              + " the machine heat again before it is renewed.",
          true);

  /** Somebody felt current. */
  public static final Caution TINGLE =
      new Caution(
          Signal.DANGER,
          "Electric shock. Somebody felt current at touchable metal: leave the machine unplugged until"
              + " protective conductor and insulation were measured and are in order.",
          true);

  /** A capacitor may still be charged. */
  public static final Caution CHARGED_CAPACITOR =
      new Caution(
          Signal.DANGER,
          "A capacitor can hold a dangerous charge although the plug is out, for days if its bleed"
              + " resistor is broken. Discharge it through a resistor made for that, and prove dead"
              + " before you touch.");

  /** High-voltage capacitors are out of reach of this toolkit. */
  public static final Caution HIGH_VOLTAGE =
      new Caution(
          Signal.DANGER,
          "Stop at the high-voltage capacitor of a microwave oven: it kills. It is no work for this"
              + " toolkit, but for a person trained and equipped for it.");

  /** The insulation test itself puts 500 V on the machine. */
  public static final Caution TEST_VOLTAGE =
      new Caution(
          Signal.WARNING,
          "The insulation tester puts 500 V on the conductors. Unplug, disconnect electronics that"
              + " it could destroy, keep hands off, and let the tester discharge afterwards.");

  /** The outlet is not the appliance technician's work. */
  public static final Caution FIXED_WIRING =
      new Caution(
          Signal.DANGER,
          "Outlet, fixed wiring and distribution board are work for a licensed electrician. Do not"
              + " open them; take the machine out of use where plug or outlet is hot or discoloured.");

  /** What burns gas is out of reach of this toolkit. */
  public static final Caution GAS =
      new Caution(
          Signal.DANGER,
          "Stop at gas: explosion, fire and carbon monoxide. Where it smells of gas, switch nothing,"
              + " close the tap if you can reach it, let people out and call the gas supplier from"
              + " outside. Work on gas is for those licensed for it.");

  /** What holds refrigerant is out of reach of this toolkit. */
  public static final Caution REFRIGERANT =
      new Caution(
          Signal.DANGER,
          "Stop at the refrigerant circuit: pressure, frostbite, and fire where it holds"
              + " hydrocarbons. Do not cut, braze or vent it; it is for those licensed for it.");

  /** A leakage current is read with the machine under voltage. */
  public static final Caution LEAKING_MACHINE =
      new Caution(
          Signal.DANGER,
          "Electric shock. Only after protective conductor and insulation were measured dead and"
              + " conform: a machine that leaks, or trips, is not plugged in to read how much.");

  private ElectricalCautions() {}
}
