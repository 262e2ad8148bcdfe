package bitterend.exchange;

import bitterend.measure.Parsed;
import bitterend.measure.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The kinds of rope a new shop may begin with, one example each; ids and prices are invented, to be replaced by its own. */
public enum NewRope {
    /** Three strands laid up. */
    LAID("3-strand", "polyester", "LAID-14", 14, "9/16 in", "1.45", "0.45"),
    /** A cover braided over a braided core. */
    BRAID("double braid", "polyester", "BRAID-12", 12, "1/2 in", "1.85", "0.56"),
    /** Eight strands plaited. */
    PLAITED("8-strand", "nylon", "PLAIT-24", 24, "1 in", "4.20", "1.28"),
    /** Hollow braid of HMPE. */
    HMPE("12-strand", "HMPE", "HMPE-8", 8, "5/16 in", "3.90", "1.19"),
    /** Wire rope. */
    WIRE("wire", "steel", "WIRE-8", 8, "5/16 in", "2.10", "0.64"),
    /** A flat band. */
    WEBBING("webbing", "polyester", "WEB-50", 50, "2 in", "1.20", "0.37");

    /** By which an example is known, to be replaced. */
    public static final String NOTE = "an example: put your own ropes and prices here";

    private final String construction;
    private final String fibre;
    private final String id;
    private final int millimetres;
    private final String inches;
    private final String byMetre;
    private final String byFoot;

    NewRope(
            String construction,
            String fibre,
            String id,
            int millimetres,
            String inches,
            String byMetre,
            String byFoot) {
        this.construction = construction;
        this.fibre = fibre;
        this.id = id;
        this.millimetres = millimetres;
        this.inches = inches;
        this.byMetre = byMetre;
        this.byFoot = byFoot;
    }

    /** As it is typed: {@code laid}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The words of all kinds, for people. */
    public static String words() {
        return Stream.of(values()).map(NewRope::word).collect(Collectors.joining(", "));
    }

    /** Several kinds with commas between them, each once. */
    public static Parsed<List<NewRope>> several(String text) {
        List<NewRope> kinds = new ArrayList<>();
        for (String word : text.split("[,\\s]+")) {
            Optional<NewRope> kind = Stream.of(values())
                    .filter(each -> each.word().equals(word.toLowerCase(Locale.ROOT)))
                    .findFirst();
            if (kind.isEmpty()) {
                return Parsed.refused("kinds of rope of these, with commas between them: " + words());
            }
            if (!kinds.contains(kind.get())) {
                kinds.add(kind.get());
            }
        }
        return Parsed.of(kinds);
    }

    /** The id of the example. */
    public String id() {
        return id;
    }

    /** The example as a row of ropes.csv, by column. */
    Map<String, String> row(Units units, String currency) {
        boolean metric = units == Units.METRIC;
        String size = metric ? millimetres + " mm" : inches;
        Map<String, String> row = new LinkedHashMap<>();
        row.put("id", id);
        row.put("name", construction + " " + fibre + " " + size);
        row.put("construction", construction);
        row.put("fibre", fibre);
        row.put(this == WEBBING ? "width" : "diameter", size);
        row.put("price", (metric ? byMetre : byFoot) + " " + currency + (metric ? "/m" : "/ft"));
        row.put("usual reel", metric ? "220 m" : "600 ft");
        row.put("note", NOTE);
        switch (this) {
            case LAID -> row.put("lay", "right ordinary");
            case WIRE -> {
                row.put("lay", "right ordinary");
                row.put("make up", "6x19");
                row.put("core", "IWRC");
            }
            default -> row.put("colour", "white");
        }
        return row;
    }
}
