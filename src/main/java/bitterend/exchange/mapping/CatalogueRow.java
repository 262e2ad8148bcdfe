package bitterend.exchange.mapping;

import bitterend.exchange.form.Readings;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes a row of the catalogue of ropes from what a sheet calls a rope. */
final class CatalogueRow {
    /** Stands in for what is asked. */
    static final String WAITS = "?";

    private static final int LONGEST_ID = 40;
    private static final List<String> CONSTRUCTIONS = List.of(
            "double braid",
            "core-dependent double braid",
            "12-strand",
            "3-strand",
            "4-strand",
            "8-strand",
            "16-plait",
            "hollow braid",
            "kernmantle",
            "shock cord",
            "webbing",
            "wire");
    private static final List<String> FIBRES =
            List.of("polyester", "nylon", "polypropylene", "polyethylene", "HMPE", "aramid", "steel");

    private final Known known;
    private final Answers answers;

    CatalogueRow(Known known, Answers answers) {
        this.known = known;
        this.answers = answers;
    }

    /**
     * Fills what a catalogue needs.
     *
     * @param text all that the row says of the rope
     * @param name what it calls the rope
     * @param colour what it says of its colour
     */
    void fill(String text, String name, String colour, Map<String, String> members) {
        RopeWords words = RopeWords.of(text);
        String called = name.isEmpty() ? text : name;
        members.put("name", called);
        members.put("construction", asked("construction", words.construction(), called, CONSTRUCTIONS));
        String fibre = words.construction().equals("wire") && words.fibre().isEmpty() ? "steel" : words.fibre();
        members.put("fibre", asked("fibre", fibre, called, FIBRES));
        if (members.getOrDefault("diameter", "").isEmpty()) {
            members.put(
                    "diameter",
                    asked(
                            "diameter",
                            words.diameter(),
                            called,
                            List.of(known.units() == Units.METRIC ? "12 mm" : "1/2 in")));
        }
        String dyed = words.colour().isEmpty() ? colour : words.colour();
        if (!dyed.isEmpty()) {
            members.put("colour", dyed);
        }
        members.putIfAbsent("id", id(called));
        lay(members);
    }

    private String asked(String member, String said, String called, List<String> choices) {
        if (!said.isEmpty()) {
            return said;
        }
        Optional<String> answer = answers.ask(new Question(
                member + " of " + called,
                "What is the " + member + " of \"" + called + "\"?",
                choices,
                member.equals("diameter")));
        return answer.orElse(WAITS);
    }

    /** What a catalogue needs of every rope, asked once where no column says it. */
    static Question forAllRows(String member, String currency) {
        boolean price = member.equals("price");
        return new Question(
                Columns.forAll(member),
                price
                        ? "What does a metre or a foot of rope cost, where the sheet does not say?"
                        : "How long is the reel that is usually bought, where the sheet does not say?",
                List.of(price ? "2.00 " + currency + "/m" : "200 m"),
                true);
    }

    /** What would have been right for such an answer; nothing where it is. */
    static Optional<String> refusal(String member, String answer, MoneyText money) {
        return member.equals("price")
                ? money.parseByLength(answer).refusal()
                : Readings.presentLength(answer).refusal();
    }

    /** Letters, figures and a few signs of the name, at most forty. */
    private static String id(String name) {
        String plain = name.replaceAll("[^\\p{L}\\p{N} ._#+/()-]", " ")
                .replaceAll("\\s+", " ")
                .replaceAll("^[^\\p{L}\\p{N}]+", "")
                .strip();
        return plain.length() <= LONGEST_ID
                ? plain
                : plain.substring(0, LONGEST_ID).strip();
    }

    /** Laid rope is right-hand laid where nothing else is said; common practice, no source. */
    private static void lay(Map<String, String> members) {
        String built = members.getOrDefault("construction", "");
        boolean laid = built.equals("3-strand") || built.equals("4-strand") || built.equals("wire");
        String said = TradeWords.plain(members.getOrDefault("lay", ""));
        if (!laid) {
            members.remove("lay");
        } else if (said.isEmpty() || said.equals("z") || said.startsWith("right") || said.startsWith("rechts")) {
            members.put("lay", "right ordinary");
        } else if (said.equals("s") || said.startsWith("left") || said.startsWith("links")) {
            members.put("lay", "left ordinary");
        }
    }
}
