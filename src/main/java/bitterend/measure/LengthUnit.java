package bitterend.measure;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The units that a length may be typed in; all are whole multiples of 0.1 mm. Longest first within a system. */
enum LengthUnit {
    KILOMETRE(Units.METRIC, "1000000", "km kilometre kilometres kilometer kilometers"),
    METRE(Units.METRIC, "1000", "m metre metres meter meters"),
    CENTIMETRE(Units.METRIC, "10", "cm centimetre centimetres centimeter centimeters"),
    MILLIMETRE(Units.METRIC, "1", "mm millimetre millimetres millimeter millimeters"),
    FATHOM(Units.IMPERIAL, "1828.8", "fathom fathoms"),
    YARD(Units.IMPERIAL, "914.4", "yd yard yards"),
    FOOT(Units.IMPERIAL, "304.8", "ft foot feet '"),
    INCH(Units.IMPERIAL, "25.4", "in inch inches \" ''");

    private static final Map<String, LengthUnit> BY_WORD = byWord();

    private final Units system;
    private final BigDecimal millimetres;
    private final String words;

    LengthUnit(Units system, String millimetres, String words) {
        this.system = system;
        this.millimetres = new BigDecimal(millimetres);
        this.words = words;
    }

    static Optional<LengthUnit> of(String word) {
        return Optional.ofNullable(BY_WORD.get(word));
    }

    /** The words of all units, longer ones first. */
    static List<String> words() {
        return BY_WORD.keySet().stream()
                .sorted(Comparator.comparing(String::length).reversed().thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    Units system() {
        return system;
    }

    BigDecimal millimetres() {
        return millimetres;
    }

    /** So many of this unit in millimetres; exact. */
    BigDecimal times(BigDecimal number) {
        return number.multiply(millimetres);
    }

    private static Map<String, LengthUnit> byWord() {
        Map<String, LengthUnit> units = new HashMap<>();
        for (LengthUnit unit : values()) {
            for (String word : unit.words.split(" ")) {
                units.put(word, unit);
            }
        }
        return Map.copyOf(units);
    }
}
