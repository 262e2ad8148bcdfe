package bitterend.exchange.form;

import java.util.List;
import java.util.stream.Stream;

/** In which order a day is written with figures. */
public enum DayOrder {
    DAY_FIRST("day-first", "d#M#uuuu", "d#M#uu"),
    MONTH_FIRST("month-first", "M#d#uuuu", "M#d#uu"),
    YEAR_FIRST("year-first", "uuuu#M#d", "uu#M#d");

    private final String word;
    private final String whole;
    private final String shortened;

    DayOrder(String word, String whole, String shortened) {
        this.word = word;
        this.whole = whole;
        this.shortened = shortened;
    }

    /** As an answer says it. */
    public String word() {
        return word;
    }

    /** Forms of a day in this order, whatever separates its parts; years of four figures first. */
    List<String> patterns() {
        return Stream.of(whole, shortened)
                .flatMap(pattern -> Stream.of(".", "/", "-").map(sign -> pattern.replace("#", sign)))
                .toList();
    }
}
