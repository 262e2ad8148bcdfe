package bitterend.exchange;

import bitterend.exchange.form.Fields;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.quoting.Letter;
import bitterend.quoting.Letter.TaxRate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads the member {@code letter} of {@code shop.json}: what the shop says beside its prices. */
final class LetterJson {
    private static final String[] PAPERS = {"A4", "Letter"};
    private static final int MOST_LINES = 8;

    private LetterJson() {}

    static Letter read(JsonObject letter) {
        Fields fields = letter.fields();
        return new Letter(
                address(letter),
                fields.optional("contact", Readings::text, ""),
                new Letter.Terms(
                        fields.optional("payment", Readings::text, ""),
                        fields.optional("delivery", Readings::text, "")),
                new Letter.OwnTexts(
                        fields.optional("before", Readings::text, ""), fields.optional("after", Readings::text, "")),
                taxes(letter.objects("taxes")),
                fields.optional("paper", Readings.word(PAPERS, paper -> paper), ""));
    }

    private static List<String> address(JsonObject letter) {
        List<String> lines = letter.texts("address");
        boolean sound = lines.size() <= MOST_LINES
                && lines.stream().allMatch(line -> Readings.text(line).value().isPresent());
        if (!sound) {
            letter.fields().error("address", "a list of at most " + MOST_LINES + " lines of words");
        }
        return sound ? lines : List.of();
    }

    /** An address in one cell, its lines apart by semicolons. */
    static Parsed<List<String>> addressInACell(String text) {
        return Readings.text(text).map(words -> Arrays.stream(words.split(";"))
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList());
    }

    private static List<TaxRate> taxes(List<JsonObject> rows) {
        List<TaxRate> taxes = new ArrayList<>();
        Map<String, String> places = new HashMap<>();
        for (JsonObject row : rows) {
            Fields fields = row.fields();
            String name = fields.require("name", LetterJson::taxName, "?");
            Ratio rate = fields.require("rate", LetterJson::rate, Ratio.ZERO);
            fields.once("name", name, places);
            taxes.add(new TaxRate(name, rate));
        }
        return taxes;
    }

    private static Parsed<String> taxName(String text) {
        return text.equals(TaxRate.NO_TAX)
                ? Parsed.refused("a name for a rate of tax; a line that names " + TaxRate.NO_TAX + " has none")
                : Readings.text(text);
    }

    private static Parsed<Ratio> rate(String text) {
        return RatioText.parse(text)
                .then(ratio -> ratio.isNegative() || ratio.compareTo(Ratio.ONE) > 0
                        ? Parsed.refused("a share from 0 to 100 %")
                        : Parsed.of(ratio));
    }

    /** A rate of this shop, or {@code none}. */
    static Reading<String> taxOf(Letter letter) {
        List<String> names =
                new ArrayList<>(letter.taxes().stream().map(TaxRate::name).toList());
        names.add(TaxRate.NO_TAX);
        return Readings.word(names.toArray(String[]::new), name -> name);
    }
}
