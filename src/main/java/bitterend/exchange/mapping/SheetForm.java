package bitterend.exchange.mapping;

import bitterend.exchange.form.DayOrder;
import bitterend.exchange.form.LocalForm;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds how a sheet writes its days and figures. One form holds for the file; what could be two is asked about once. */
final class SheetForm {
    private static final Pattern DAY = Pattern.compile("[0-9]{1,4}[./-][0-9]{1,2}[./-][0-9]{1,4}");
    private static final Pattern TIME = Pattern.compile("[ T][0-9]{1,2}:[0-9]{2}(:[0-9]{2})?$");
    private static final Pattern ISO = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    /** A figure with one sign in it. */
    private static final Pattern SIGNED = Pattern.compile("(?<![0-9.,])[0-9]+([.,])([0-9]+)(?![0-9.,])");

    private static final int THOUSANDS = 3;

    /** The id of the question how days are written. */
    static final String DAYS = "days";
    /** The id of the question for the decimal sign. */
    static final String DECIMAL = "decimal";

    private static final String COMMA = "comma";
    private static final String POINT = "point";

    private final LocalForm stated;
    private final Answers answers;
    private final Map<String, String> settled = new TreeMap<>();

    SheetForm(LocalForm stated, Answers answers) {
        this.stated = stated;
        this.answers = answers;
    }

    /** Whether a text looks like a day. */
    static boolean isDay(String text) {
        return DAY.matcher(withoutTime(text)).matches();
    }

    /** Whether a text looks like a day in a form that a reader has to know. */
    private static boolean isWritten(String text) {
        return isDay(text) && !ISO.matcher(withoutTime(text)).matches();
    }

    /** A spreadsheet may write a time behind a day. */
    static String withoutTime(String text) {
        return TIME.matcher(text.strip()).replaceAll("");
    }

    /**
     * The form of a sheet, as far as it is known.
     *
     * @param local days and figures; where one of them is asked still, in any form
     * @param days whether it is known how days are written
     * @param figures whether the decimal sign is known
     */
    record Form(LocalForm local, boolean days, boolean figures) {}

    /** The form of these days and figures. */
    Form of(List<String> days, List<String> figures) {
        Optional<DayOrder> order = order(days);
        Optional<Character> point = point(figures);
        order.filter(found -> days.stream().anyMatch(SheetForm::isWritten))
                .ifPresent(found -> settled.put(DAYS, found.word()));
        point.filter(found -> figures.stream()
                        .anyMatch(figure -> SIGNED.matcher(figure).find()))
                .ifPresent(found -> settled.put(DECIMAL, found == ',' ? COMMA : POINT));
        return new Form(
                LocalForm.stated(order.orElse(DayOrder.DAY_FIRST), point.orElse('.')),
                order.isPresent(),
                point.isPresent());
    }

    /** What its days and figures say of the form, for sheets like it that say less. */
    Map<String, String> settled() {
        return new TreeMap<>(settled);
    }

    private Optional<DayOrder> order(List<String> days) {
        List<String> written = days.stream()
                .filter(SheetForm::isWritten)
                .map(SheetForm::withoutTime)
                .distinct()
                .toList();
        Optional<DayOrder> usual = answered().or(stated::order);
        if (usual.isPresent()) {
            return usual;
        }
        if (written.isEmpty()) {
            return Optional.of(DayOrder.DAY_FIRST);
        }
        long most = Arrays.stream(DayOrder.values())
                .mapToLong(order -> readable(order, written))
                .max()
                .orElse(0);
        List<DayOrder> able = Arrays.stream(DayOrder.values())
                .filter(order -> readable(order, written) == most)
                .toList();
        if (able.size() == 1 && most == written.size()) {
            return Optional.of(able.get(0));
        }
        List<DayOrder> choices = most == written.size() ? able : List.of(DayOrder.values());
        return answers.ask(new Question(
                        DAYS,
                        "Is " + written.get(0) + " written with the day first or the month first?",
                        choices.stream().map(DayOrder::word).toList(),
                        false))
                .flatMap(SheetForm::order);
    }

    private Optional<DayOrder> answered() {
        return answers.find(DAYS).flatMap(SheetForm::order);
    }

    private static Optional<DayOrder> order(String word) {
        return Arrays.stream(DayOrder.values())
                .filter(order -> order.word().equals(word))
                .findFirst();
    }

    private static long readable(DayOrder order, List<String> days) {
        LocalForm form = LocalForm.stated(order, '.');
        return days.stream().filter(day -> form.day(day).value().isPresent()).count();
    }

    private Optional<Character> point(List<String> figures) {
        Optional<Character> answer = answers.find(DECIMAL).flatMap(SheetForm::sign);
        if (answer.isPresent()) {
            return answer;
        }
        if (!stated.tag().isEmpty()) {
            return Optional.of(stated.point());
        }
        Set<Character> sure = new HashSet<>();
        String unsure = "";
        for (String figure : figures) {
            Matcher signed = SIGNED.matcher(figure.toLowerCase(Locale.ROOT));
            while (signed.find()) {
                if (signed.group(2).length() == THOUSANDS) {
                    unsure = signed.group();
                } else {
                    sure.add(signed.group(1).charAt(0));
                }
            }
        }
        if (sure.size() == 1) {
            return Optional.of(sure.iterator().next());
        }
        if (sure.isEmpty() && unsure.isEmpty()) {
            return Optional.of('.');
        }
        String shown = unsure.isEmpty() ? "12,5 beside 12.5" : unsure;
        return answers.ask(new Question(
                        DECIMAL,
                        "What is the decimal sign of this sheet, as in " + shown + "?",
                        List.of(COMMA, POINT),
                        false))
                .flatMap(SheetForm::sign);
    }

    private static Optional<Character> sign(String word) {
        return switch (word) {
            case COMMA -> Optional.of(',');
            case POINT -> Optional.of('.');
            default -> Optional.empty();
        };
    }
}
