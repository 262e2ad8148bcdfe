package bitterend.measure.formula;

import bitterend.measure.Parsed;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one formula from left to right, and tells at which character it is no longer one. */
final class FormulaReader {
    private static final int LONGEST = 200;
    private static final String AMOUNT = "(?:[0-9]+(?: +|-))?[0-9]+/(?:2|4|8|16|32|64)|[0-9]+(?:[.][0-9]+)?";
    private static final Pattern LENGTH =
            Pattern.compile("(?:(?:" + AMOUNT + ") *(?:\\p{L}+|''|['\"\u2032\u2019\u2033\u201d]) *)+");
    private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:[.,][0-9]+)? *%?");
    private static final Pattern WORD = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_]*");
    private static final Comparator<String> LONGER_FIRST =
            Comparator.comparing(String::length).reversed().thenComparing(Comparator.naturalOrder());

    private final String text;
    private final Map<String, Kind> names;
    private final List<String> longerFirst;
    private int at;

    FormulaReader(String text, Map<String, Kind> names) {
        this.text = text;
        this.names = names;
        this.longerFirst = names.keySet().stream().sorted(LONGER_FIRST).toList();
    }

    Parsed<Expression> read() {
        if (text.length() > LONGEST) {
            return Parsed.refused("a formula of at most " + LONGEST + " characters");
        }
        return sum().then(whole -> {
            blanks();
            return at == text.length() ? Parsed.of(whole) : refused("one of + - * / or nothing more");
        });
    }

    private Parsed<Expression> sum() {
        return chain(this::product, List.of(Operation.PLUS, Operation.MINUS));
    }

    private Parsed<Expression> product() {
        return chain(this::factor, List.of(Operation.TIMES, Operation.OVER));
    }

    /** Expressions of a closer kind with these signs between them, from left to right. */
    private Parsed<Expression> chain(Reading closer, List<Operation> signs) {
        Parsed<Expression> left = closer.read();
        Optional<Operation> sign = sign(signs);
        while (left.value().isPresent() && sign.isPresent()) {
            left = combined(sign.get(), left.value().get(), closer);
            sign = sign(signs);
        }
        return left;
    }

    private Parsed<Expression> combined(Operation operation, Expression left, Reading next) {
        blanks();
        int start = at;
        return next.read().then(right -> both(operation, left, right, start));
    }

    private Parsed<Expression> both(Operation operation, Expression left, Expression right, int start) {
        Parsed<Kind> kind = operation.kind(left.kind(), right.kind()).then(known -> never(operation, right, known));
        return kind.refusal()
                .map(expected -> this.<Expression>refused(expected, start))
                .orElseGet(() -> kind.map(known -> new Expression.Both(operation, left, right, known)));
    }

    /** Refuses what no value can mend: to divide by a zero that stands there, to round up to steps of nothing. */
    private static Parsed<Kind> never(Operation operation, Expression right, Kind known) {
        if (right instanceof Expression.Constant there) {
            Optional<String> refusal =
                    operation.of(there.value(), there.value()).refusal();
            return refusal.isPresent() ? Parsed.refused(refusal.get()) : Parsed.of(known);
        }
        return Parsed.of(known);
    }

    private Parsed<Expression> factor() {
        blanks();
        if (ate("(")) {
            return sum().then(inside -> {
                blanks();
                return ate(")") ? Parsed.of(inside) : refused("a closing bracket");
            });
        }
        return constant()
                .or(this::named)
                .or(this::function)
                .orElseGet(() -> refused("a length such as 2 m, a number, a bracket, min, max, roundUp" + ofNames()));
    }

    private String ofNames() {
        return names.isEmpty() ? "" : " or one of: " + String.join(", ", names.keySet());
    }

    private Optional<Parsed<Expression>> constant() {
        Optional<Parsed<Expression>> length = ate(LENGTH).map(this::length);
        return length.isPresent() ? length : ate(NUMBER).map(this::number);
    }

    private Parsed<Expression> length(String written) {
        return located(Quantity.length(written), written);
    }

    private Parsed<Expression> number(String written) {
        return located(Quantity.number(written), written);
    }

    private Parsed<Expression> located(Parsed<Quantity> read, String written) {
        int start = at - written.length();
        return read.refusal()
                .map(expected -> this.<Expression>refused(expected, start))
                .orElseGet(() -> read.map(Expression.Constant::new));
    }

    private Optional<Parsed<Expression>> named() {
        int start = at;
        return longerFirst.stream().filter(this::standsHere).findFirst().map(name -> {
            at += name.length();
            Kind kind = names.getOrDefault(name, Kind.TEXT);
            return kind == Kind.TEXT
                    ? refused(
                            "a length or a number, and " + name + " is a text; {\"is\": \"length\"} in place of"
                                    + " its usual value would make it one",
                            start)
                    : Parsed.of(new Expression.Named(name, kind));
        });
    }

    /** Whether a name stands here, not only the beginning of a longer word. */
    private boolean standsHere(String name) {
        int end = at + name.length();
        return text.startsWith(name, at) && (end == text.length() || endsWord(text.charAt(end)));
    }

    private static boolean endsWord(char next) {
        return !Character.isLetterOrDigit(next) && next != '(';
    }

    private Optional<Parsed<Expression>> function() {
        return Operation.FUNCTIONS.stream()
                .filter(each -> text.startsWith(each.sign() + "(", at))
                .findFirst()
                .map(this::function);
    }

    private Parsed<Expression> function(Operation function) {
        at += function.sign().length() + 1;
        Parsed<Expression> left = sum();
        boolean most = function != Operation.ROUND_UP;
        int read = 1;
        while (left.value().isPresent() && ateSign(",") && (most || read < 2)) {
            left = combined(function, left.value().get(), this::sum);
            read++;
        }
        int members = read;
        return left.then(all -> {
            if (members < 2) {
                return refused("a comma and " + (most ? "what it is compared with" : "the step to round up to"));
            }
            blanks();
            return ate(")") ? Parsed.of(all) : refused("a closing bracket");
        });
    }

    private Optional<Operation> sign(List<Operation> signs) {
        return signs.stream().filter(each -> ateSign(each.sign())).findFirst();
    }

    private boolean ateSign(String sign) {
        blanks();
        return ate(sign);
    }

    private boolean ate(String sign) {
        boolean here = text.startsWith(sign, at);
        at += here ? sign.length() : 0;
        return here;
    }

    private Optional<String> ate(Pattern pattern) {
        Matcher here = pattern.matcher(text).region(at, text.length());
        if (!here.lookingAt()) {
            return Optional.empty();
        }
        at = here.end();
        return Optional.of(here.group());
    }

    private void blanks() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    private <T> Parsed<T> refused(String expected) {
        return refused(expected, at);
    }

    private <T> Parsed<T> refused(String expected, int where) {
        Matcher word = WORD.matcher(text).region(where, text.length());
        String met = where == text.length()
                ? "its end"
                : word.lookingAt() ? word.group() : text.substring(where, text.offsetByCodePoints(where, 1));
        return Parsed.refused(expected + " at character " + (where + 1) + " of the formula, where it has " + met);
    }

    /** Reads what stands next. */
    @FunctionalInterface
    private interface Reading {
        Parsed<Expression> read();
    }
}
