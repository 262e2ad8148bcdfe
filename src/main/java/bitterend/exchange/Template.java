package bitterend.exchange;

import bitterend.measure.Parsed;
import bitterend.measure.formula.Formula;
import bitterend.measure.formula.Kind;
import bitterend.measure.formula.Quantity;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text of a product with names and formulas in curly brackets: {@code double-braid-eye length {eye}},
 * {@code {length - 2 m}}. A name alone is replaced as it was written, a formula by what comes out.
 *
 * @param text as the file has it
 * @param formulas what stands between brackets and is no name alone
 */
record Template(String text, Map<String, Formula> formulas) {
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]*)\\}");

    Template {
        formulas = Map.copyOf(formulas);
    }

    /** Reads a text over names of these kinds. */
    static Parsed<Template> parse(String text, Map<String, Kind> names) {
        Map<String, Formula> formulas = new LinkedHashMap<>();
        Matcher placeholders = PLACEHOLDER.matcher(text);
        StringBuilder rest = new StringBuilder();
        while (placeholders.find()) {
            String inside = placeholders.group(1).strip();
            Parsed<Formula> formula = Formula.parse(inside, names);
            if (!names.containsKey(inside) && formula.refusal().isPresent()) {
                return Parsed.refused(formula.refusal().get() + " in {" + inside + "}");
            }
            if (!names.containsKey(inside)) {
                formula.value().ifPresent(sound -> formulas.put(inside, sound));
            }
            placeholders.appendReplacement(rest, "");
        }
        String outside = placeholders.appendTail(rest).toString();
        return outside.contains("{") || outside.contains("}")
                ? Parsed.refused("a closing bracket for every opening one: {length - 2 m}")
                : Parsed.of(new Template(text, formulas));
    }

    /** The names whose values are worked with. */
    Set<String> workedWith() {
        Set<String> names = new TreeSet<>();
        formulas.values().forEach(formula -> names.addAll(formula.names()));
        return names;
    }

    /** The text for these values; a refusal says which formula comes to nothing of use, and why. */
    Parsed<String> filled(Map<String, String> texts, Map<String, Quantity> quantities) {
        StringBuilder filled = new StringBuilder();
        Matcher placeholders = PLACEHOLDER.matcher(text);
        while (placeholders.find()) {
            String inside = placeholders.group(1).strip();
            Parsed<String> value = Optional.ofNullable(formulas.get(inside))
                    .map(formula -> worked(formula, inside, texts, quantities))
                    .orElseGet(() -> Parsed.of(texts.getOrDefault(inside, "")));
            if (value.refusal().isPresent()) {
                return value;
            }
            placeholders.appendReplacement(
                    filled, Matcher.quoteReplacement(value.value().orElse("")));
        }
        return Parsed.of(placeholders.appendTail(filled).toString());
    }

    private static Parsed<String> worked(
            Formula formula, String inside, Map<String, String> texts, Map<String, Quantity> quantities) {
        Parsed<String> value = formula.of(quantities).then(Quantity::text);
        return value.refusal()
                .map(expected -> Parsed.<String>refused(expected + ", in {" + inside + "}" + with(formula, texts)))
                .orElse(value);
    }

    private static String with(Formula formula, Map<String, String> texts) {
        StringBuilder words = new StringBuilder();
        formula.names().forEach(name -> words.append(words.isEmpty() ? " with " : ", ")
                .append(name)
                .append(' ')
                .append(texts.getOrDefault(name, "")));
        return words.toString();
    }
}
