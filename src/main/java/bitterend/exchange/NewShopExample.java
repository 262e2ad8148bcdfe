package bitterend.exchange;

import bitterend.measure.Units;
import java.util.List;

/** The rows of the worked example of a new shop. */
record NewShopExample(Units units, String currency) {
    private static final String ROPE = NewRope.LAID.id();

    List<String> orders() {
        return List.of(
                row("1", "1", "ferry steps", ROPE, pick("6 m", "20 ft"))
                        + pick(",three-strand-eye length 340 mm", ",three-strand-eye length 13 in")
                        + ",whipped,4,,3,,,dock lines",
                row("1", "2", "ferry steps", ROPE, pick("2.5 m", "8 ft"))
                        + pick(",three-strand-eye length 200 mm", ",three-strand-eye length 8 in")
                        + ",whipped,3,,,lanyards,lot,a set of fender lanyards");
    }

    List<String> reels() {
        return List.of(
                row("R1", ROPE, "12", pick("33.5 m", "110 ft"), pick("300 mm", "1 ft"), "metered")
                        + pick(",,,9.5 m to 9.8 m: chafed", ",,,31 ft to 32 ft: chafed")
                        + ",,no,hook 1",
                row("R2", ROPE, "15", pick("220 m", "600 ft"), pick("1 m", "3 ft"), "nominal") + ",,,,,yes,shelf");
    }

    List<String> offers() {
        return List.of(
                row("L-half", "Example Cordage", ROPE, pick("110 m", "300 ft"), pick("170 ", "145 ") + currency),
                row("L-whole", "Example Cordage", ROPE, pick("220 m", "600 ft"), pick("319 ", "270 ") + currency));
    }

    private String pick(String metric, String imperial) {
        return units == Units.METRIC ? metric : imperial;
    }

    private static String row(String... cells) {
        return String.join(",", cells);
    }
}
