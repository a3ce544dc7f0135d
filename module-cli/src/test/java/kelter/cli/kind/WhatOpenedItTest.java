package kelter.cli.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.workshop.Case;
import org.junit.jupiter.api.Test;

/** What opened a thermal link or blew a fuse is looked for before enough is known. */
class WhatOpenedItTest {

  @Test
  void readsTheThermostatOfAnIronWhoseLinkIsOpen() {
    String iron = "'kind': 'iron', 'age': '4 a'";
    String cold = "'stays-cold': 'yes'";
    Case open =
        TypedJob.open(iron, cold, "thermal-cut-out.resistance=OL", "air-heater.resistance=22 ohm");
    Case read =
        TypedJob.open(
            iron,
            cold,
            "thermal-cut-out.resistance=OL",
            "air-heater.resistance=22 ohm",
            "thermostat.closed-resistance=0.1 ohm",
            "thermostat.open-resistance=OL");

    assertTrue(TypedJob.chance(open, "thermal-cut-out.open") > 0.9);
    assertFalse(open.diagnosis().basis().enough());
    assertEquals("thermostat", open.diagnosis().next().get(0).question().component());
    assertTrue(
        read.diagnosis().next().isEmpty()
            || !read.diagnosis().next().get(0).question().component().equals("thermostat"));
  }

  @Test
  void suspectsTheDoorSwitchThatBlewTheFuseOfAMicrowaveOven() {
    String oven = "'kind': 'microwave-oven', 'age': '7 a'";
    String dead = "'does-not-start': 'yes', 'light-out': 'yes', 'control-dead': 'yes'";
    Case plain = TypedJob.open(oven, dead);
    Case bang = TypedJob.open(oven, dead + ", 'bang-at-door': 'yes', 'trips-breaker': 'no'");

    assertTrue(
        TypedJob.chance(plain, "door-switch.contact-welded") > 0.2,
        () -> "" + TypedJob.chance(plain, "door-switch.contact-welded"));
    assertTrue(
        TypedJob.chance(bang, "door-switch.contact-welded") > 0.8,
        () -> "" + TypedJob.chance(bang, "door-switch.contact-welded"));
    assertTrue(TypedJob.chance(bang, "fuse.blown") > 0.8);
  }

  /** The condenser heats what is behind it: one dirty does not explain a capacitor that is weak. */
  @Test
  void doesNotExplainAWeakCapacitorAway() {
    Case machine =
        TypedJob.open(
            "'kind': 'room-air-conditioner', 'age': '6 a'",
            "'hums-only': 'yes', 'too-warm-inside': 'yes'",
            "run-capacitor.capacitance=12.4 uF",
            "condenser.dirt=clogged");

    assertTrue(
        TypedJob.chance(machine, "run-capacitor.weak") > 0.9,
        () -> "" + TypedJob.chance(machine, "run-capacitor.weak"));
    assertTrue(TypedJob.chance(machine, "condenser.dirty") > 0.9);
  }
}
