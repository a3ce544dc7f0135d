package kelter.core.safety;

/** How an appliance protects against electric shock (IEC 61140). */
public enum ProtectionClass {
  /** Basic insulation and a protective conductor. */
  I,
  /** Double or reinforced insulation. */
  II,
  /** Safety extra-low voltage. */
  III
}
