package bitterend.report;

import bitterend.report.Mark.Kind;

/** The strip of rope drawn beside a cutting table, working end at the top: first line at the mark, second below it. */
public enum Tape {
    /** Line-drawing characters. */
    DRAWN(" │ ", "─┼─", "═╤═", " ┆ ", " ╳ ", "─┴─"),
    /** For terminals that know no others. */
    TYPED(" | ", "-+-", "===", " : ", " X ", "---");

    private final String rope;
    private final String cut;
    private final String clean;
    private final String waste;
    private final String flaw;
    private final String end;

    Tape(String rope, String cut, String clean, String waste, String flaw, String end) {
        this.rope = rope;
        this.cut = cut;
        this.clean = clean;
        this.waste = waste;
        this.flaw = flaw;
        this.end = end;
    }

    /** The cell of a mark: what stands at it, then what runs on below it. Below the last mark there is nothing. */
    String cell(Kind kind, boolean last) {
        return at(kind) + (last ? "" : "\n" + below(kind));
    }

    private String at(Kind kind) {
        return switch (kind) {
            case LEAD_TRIM, COUNT_FIRST -> waste;
            case CLEAN_END -> clean;
            case CUT, REMNANT, SCRAP -> cut;
            case FLAW -> flaw;
            case STAYS, MEASURE -> rope;
            case INNER_WRAPS -> end;
        };
    }

    private String below(Kind kind) {
        return kind == Kind.LEAD_TRIM || kind == Kind.COUNT_FIRST ? waste : rope;
    }
}
