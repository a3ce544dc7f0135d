package kelter.cli.terminal;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import kelter.core.text.HarmlessText;

/**
 * Spells out the characters that a character set lacks: signs of measuring in words or plain signs,
 * letters without their marks, anything else by its number. Nothing becomes a question mark.
 */
final class Spelling {

  private static final char NO_BREAK_SPACE = '\u00a0';

  private final Charset charset;

  Spelling(Charset charset) {
    this.charset = charset;
  }

  /** The text in this character set; no-break spaces stay. */
  String of(String text) {
    if (charset.equals(StandardCharsets.UTF_8) || isAscii(text)) {
      return text;
    }
    CharsetEncoder encoder = charset.newEncoder();
    StringBuilder spelt = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); ) {
      int sign = text.codePointAt(i);
      int end = i + Character.charCount(sign);
      String itself = text.substring(i, end);
      boolean stays = sign == NO_BREAK_SPACE || encoder.canEncode(itself);
      spelt.append(stays ? itself : plain(sign, itself, encoder));
      i = end;
    }
    return spelt.toString();
  }

  private static boolean isAscii(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= 0x80) {
        return false;
      }
    }
    return true;
  }

  private static String plain(int sign, String itself, CharsetEncoder encoder) {
    String plain = plain(sign);
    if (!plain.isEmpty() || sign == '°') {
      return plain;
    }
    String parts = Normalizer.normalize(itself, Normalizer.Form.NFKD);
    StringBuilder letters = new StringBuilder();
    for (int i = 0; i < parts.length(); i++) {
      if (Character.getType(parts.charAt(i)) != Character.NON_SPACING_MARK) {
        letters.append(parts.charAt(i));
      }
    }
    boolean readable = letters.length() > 0 && encoder.canEncode(letters);
    return readable ? letters.toString() : HarmlessText.number(sign);
  }

  /** The degree sign falls away: the letter behind it tells the scale. */
  private static String plain(int sign) {
    return switch (sign) {
      case '±' -> "+/-";
      case '\u00b5', '\u03bc' -> "u";
      case '\u03a9', '\u2126' -> "ohm";
      case '≤' -> "<=";
      case '≥' -> ">=";
      case '≈' -> "~";
      case '≠' -> "!=";
      case '×' -> "x";
      case '÷' -> "/";
      case '·', '•', '–', '—', '‑', '−' -> "-";
      case '→' -> "->";
      case '…' -> "...";
      case '‘', '’', '′' -> "'";
      case '“', '”', '„', '″' -> "\"";
      case '√' -> "sqrt";
      case 'Δ' -> "delta ";
      case 'σ' -> "sigma";
      case '€' -> "EUR";
      case '█' -> "#";
      case '░' -> ".";
      case 'ß' -> "ss";
      case 'Æ' -> "AE";
      case 'æ' -> "ae";
      case 'Ø' -> "O";
      case 'ø' -> "o";
      case 'Ł' -> "L";
      case 'ł' -> "l";
      default -> "";
    };
  }
}
