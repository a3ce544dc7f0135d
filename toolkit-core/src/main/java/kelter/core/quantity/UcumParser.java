package kelter.core.quantity;

import static java.util.Map.entry;

import java.util.Currency;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Reads UCUM unit codes: atoms with metric prefixes, integer powers, products, quotients, brackets
 * and annotations (UCUM 2.2, section 2, "case sensitive" symbols).
 *
 * <p>Beside the atoms of UCUM, an ISO 4217 currency code is taken as a base unit.
 */
final class UcumParser {

  private static final int MAX_LENGTH = 60;
  private static final int MAX_DEPTH = 8;
  private static final int MAX_POWER = 9;

  /** Standard acceleration of free fall, m/s2, exact (CGPM 1901). */
  private static final double G = 9.80665;

  private static final double INCH = 0.0254;
  private static final double FOOT = 0.3048;

  /** Pound, kg, exact (international yard and pound agreement, 1959). */
  private static final double POUND = 0.45359237;

  private static final Dimension LENGTH = Dimension.of("m");
  private static final Dimension MASS = Dimension.of("kg");
  private static final Dimension TIME = Dimension.of("s");
  private static final Dimension CURRENT = Dimension.of("A");
  private static final Dimension TEMPERATURE = Dimension.of("K");
  private static final Dimension VOLUME = LENGTH.pow(3);
  private static final Dimension FORCE = MASS.times(LENGTH).times(TIME.pow(-2));
  private static final Dimension PRESSURE = FORCE.times(LENGTH.pow(-2));
  private static final Dimension ENERGY = FORCE.times(LENGTH);
  private static final Dimension POWER = ENERGY.times(TIME.pow(-1));
  private static final Dimension CHARGE = CURRENT.times(TIME);
  private static final Dimension VOLTAGE = POWER.times(CURRENT.pow(-1));
  private static final Dimension RESISTANCE = VOLTAGE.times(CURRENT.pow(-1));

  private static final Map<String, Atom> ATOMS =
      Map.ofEntries(
          metric("m", LENGTH, 1),
          metric("g", MASS, 1e-3),
          metric("t", MASS, 1e3),
          metric("s", TIME, 1),
          metric("A", CURRENT, 1),
          metric("K", TEMPERATURE, 1),
          metric("Hz", TIME.pow(-1), 1),
          metric("N", FORCE, 1),
          metric("Pa", PRESSURE, 1),
          metric("bar", PRESSURE, 1e5),
          metric("m[H2O]", PRESSURE, 1e3 * G),
          metric("m[Hg]", PRESSURE, 133.3220e3),
          metric("J", ENERGY, 1),
          metric("cal_IT", ENERGY, 4.1868),
          metric("cal", ENERGY, 4.184),
          metric("gf", FORCE, 1e-3 * G),
          metric("W", POWER, 1),
          metric("C", CHARGE, 1),
          metric("V", VOLTAGE, 1),
          metric("Ohm", RESISTANCE, 1),
          metric("S", RESISTANCE.pow(-1), 1),
          metric("F", CHARGE.times(VOLTAGE.pow(-1)), 1),
          metric("H", RESISTANCE.times(TIME), 1),
          metric("Wb", VOLTAGE.times(TIME), 1),
          metric("T", VOLTAGE.times(TIME).times(LENGTH.pow(-2)), 1),
          metric("L", VOLUME, 1e-3),
          metric("l", VOLUME, 1e-3),
          metric("P", PRESSURE.times(TIME), 0.1),
          metric("St", LENGTH.pow(2).times(TIME.pow(-1)), 1e-4),
          metric("rad", Dimension.ONE, 1),
          entry("Cel", new Atom(TEMPERATURE, 1, 273.15, true)),
          plain("[degR]", TEMPERATURE, 5.0 / 9.0),
          entry("[degF]", new Atom(TEMPERATURE, 5.0 / 9.0, 459.67 * 5.0 / 9.0, false)),
          plain("min", TIME, 60),
          plain("h", TIME, 3600),
          plain("d", TIME, 86400),
          plain("wk", TIME, 7 * 86400),
          plain("mo", TIME, 365.25 * 86400 / 12),
          plain("a", TIME, 365.25 * 86400),
          plain("%", Dimension.ONE, 0.01),
          plain("deg", Dimension.ONE, Math.PI / 180),
          plain("atm", PRESSURE, 101325),
          plain("[g]", LENGTH.times(TIME.pow(-2)), G),
          plain("[in_i]", LENGTH, INCH),
          plain("[ft_i]", LENGTH, FOOT),
          plain("[sin_i]", LENGTH.pow(2), INCH * INCH),
          plain("[sft_i]", LENGTH.pow(2), FOOT * FOOT),
          plain("[cin_i]", VOLUME, INCH * INCH * INCH),
          plain("[cft_i]", VOLUME, FOOT * FOOT * FOOT),
          plain("[gal_us]", VOLUME, 231 * INCH * INCH * INCH),
          plain("[pt_us]", VOLUME, 231 * INCH * INCH * INCH / 8),
          plain("[lb_av]", MASS, POUND),
          plain("[oz_av]", MASS, POUND / 16),
          plain("[lbf_av]", FORCE, POUND * G),
          plain("[psi]", PRESSURE, POUND * G / (INCH * INCH)),
          plain("[in_i'H2O]", PRESSURE, 1e3 * G * INCH),
          plain("[in_i'Hg]", PRESSURE, 133.3220e3 * INCH),
          plain("[HP]", POWER, 550 * FOOT * POUND * G),
          plain("[Btu_IT]", ENERGY, 1055.05585262));

  private static final Map<String, Double> PREFIXES =
      Map.ofEntries(
          entry("T", 1e12),
          entry("G", 1e9),
          entry("M", 1e6),
          entry("k", 1e3),
          entry("h", 1e2),
          entry("da", 1e1),
          entry("d", 1e-1),
          entry("c", 1e-2),
          entry("m", 1e-3),
          entry("u", 1e-6),
          entry("n", 1e-9),
          entry("p", 1e-12));

  private static final Map<String, Optional<Unit>> CACHE = new ConcurrentHashMap<>();
  private static final int CACHE_LIMIT = 500;

  private final String text;
  private int at;

  private UcumParser(String text) {
    this.text = text;
  }

  /** The symbols that are known without a prefix. */
  static Set<String> symbols() {
    return ATOMS.keySet();
  }

  /** The unit of a code, or empty if it is not UCUM. */
  static Optional<Unit> parse(String code) {
    Optional<Unit> known = CACHE.get(code);
    if (known != null) {
      return known;
    }
    Optional<Unit> read = read(code);
    if (CACHE.size() < CACHE_LIMIT) {
      CACHE.put(code, read);
    }
    return read;
  }

  private static Optional<Unit> read(String code) {
    if (code.isEmpty() || code.length() > MAX_LENGTH) {
      return Optional.empty();
    }
    Optional<Atom> alone = atom(code);
    if (alone.isPresent()) {
      Atom a = alone.get();
      return Optional.of(new Unit(code, a.dimension, a.factor, a.shift));
    }
    UcumParser parser = new UcumParser(code);
    Atom whole = parser.term(0);
    if (whole == null || parser.at != code.length() || whole.shift != 0) {
      return Optional.empty();
    }
    double factor = whole.factor;
    if (!(factor > 0) || Double.isInfinite(factor)) {
      return Optional.empty();
    }
    return Optional.of(new Unit(code, whole.dimension, factor, 0));
  }

  /** term = ["/"] component { ("." | "/") component }, or null where the text is not UCUM. */
  private Atom term(int depth) {
    if (depth > MAX_DEPTH) {
      return null;
    }
    Atom product;
    if (peek() == '/') {
      at++;
      product = Atom.ONE.over(component(depth));
    } else {
      product = component(depth);
    }
    while (product != null && (peek() == '.' || peek() == '/')) {
      boolean divide = text.charAt(at++) == '/';
      Atom next = component(depth);
      product = divide ? product.over(next) : product.times(next);
    }
    return product;
  }

  private Atom component(int depth) {
    if (peek() == '(') {
      at++;
      Atom inner = term(depth + 1);
      if (inner == null || peek() != ')') {
        return null;
      }
      at++;
      return inner;
    }
    if (peek() == '{') {
      return skipAnnotation() ? Atom.ONE : null;
    }
    Atom simple = isDigit(peek()) ? number() : symbol();
    if (simple != null && peek() == '{' && !skipAnnotation()) {
      return null;
    }
    return simple;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** A factor; one of zero is none, and what stands behind it is not read either. */
  private Atom number() {
    int start = at;
    while (isDigit(peek()) && at - start < MAX_POWER) {
      at++;
    }
    long value = Long.parseLong(text.substring(start, at));
    return value == 0 ? null : new Atom(Dimension.ONE, value, 0, false);
  }

  private Atom symbol() {
    int start = at;
    while (isSymbolCharacter(peek())) {
      if (peek() == '[') {
        int close = text.indexOf(']', at);
        if (close < 0) {
          return null;
        }
        at = close;
      }
      at++;
    }
    Optional<Atom> found = atom(text.substring(start, at));
    if (found.isEmpty() || found.get().shift != 0) {
      return null;
    }
    return power(found.get());
  }

  private Atom power(Atom base) {
    int start = at;
    if (peek() == '-' || peek() == '+') {
      at++;
    }
    int digits = at;
    while (isDigit(peek()) && at - digits < 2) {
      at++;
    }
    if (at == digits) {
      at = start;
      return base;
    }
    int exponent = Integer.parseInt(text.substring(start, at).replace("+", ""));
    return exponent == 0 || Math.abs(exponent) > MAX_POWER ? null : base.pow(exponent);
  }

  private boolean skipAnnotation() {
    int close = text.indexOf('}', at);
    if (close < 0) {
      return false;
    }
    at = close + 1;
    return true;
  }

  private char peek() {
    return at < text.length() ? text.charAt(at) : '\0';
  }

  private static boolean isSymbolCharacter(char c) {
    return Character.isLetter(c) || c == '%' || c == '[' || c == '_';
  }

  private static Optional<Atom> atom(String symbol) {
    Atom exact = ATOMS.get(symbol);
    if (exact != null) {
      return Optional.of(exact);
    }
    for (int length = 1; length <= 2 && length < symbol.length(); length++) {
      Double prefix = PREFIXES.get(symbol.substring(0, length));
      Atom base = prefix == null ? null : ATOMS.get(symbol.substring(length));
      if (base != null && base.metric && base.shift == 0) {
        return Optional.of(new Atom(base.dimension, prefix * base.factor, 0, false));
      }
    }
    return currency(symbol);
  }

  private static Optional<Atom> currency(String symbol) {
    if (symbol.length() != 3) {
      return Optional.empty();
    }
    for (int i = 0; i < symbol.length(); i++) {
      if (symbol.charAt(i) < 'A' || symbol.charAt(i) > 'Z') {
        return Optional.empty();
      }
    }
    try {
      return Optional.of(
          new Atom(Dimension.of(Currency.getInstance(symbol).getCurrencyCode()), 1, 0, false));
    } catch (IllegalArgumentException notACurrency) {
      return Optional.empty();
    }
  }

  private static Map.Entry<String, Atom> metric(String symbol, Dimension dimension, double factor) {
    return entry(symbol, new Atom(dimension, factor, 0, true));
  }

  private static Map.Entry<String, Atom> plain(String symbol, Dimension dimension, double factor) {
    return entry(symbol, new Atom(dimension, factor, 0, false));
  }

  private record Atom(Dimension dimension, double factor, double shift, boolean metric) {
    static final Atom ONE = new Atom(Dimension.ONE, 1, 0, false);

    Atom times(Atom other) {
      return other == null || other.shift != 0
          ? null
          : new Atom(dimension.times(other.dimension), factor * other.factor, 0, false);
    }

    Atom over(Atom other) {
      return other == null || other.shift != 0
          ? null
          : new Atom(dimension.times(other.dimension.pow(-1)), factor / other.factor, 0, false);
    }

    Atom pow(int power) {
      return new Atom(dimension.pow(power), Math.pow(factor, power), 0, false);
    }
  }
}
