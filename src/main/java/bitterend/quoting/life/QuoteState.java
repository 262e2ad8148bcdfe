package bitterend.quoting.life;

/** How far a quote has come. */
public enum QuoteState {
    DRAWN_UP("drawn up"),
    SENT("sent"),
    ACCEPTED("accepted"),
    DECLINED("declined"),
    /** The last day it held has passed, and nobody has answered. */
    LAPSED("lapsed");

    private final String word;

    QuoteState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Whether the customer has answered. */
    public boolean isAnswered() {
        return this == ACCEPTED || this == DECLINED;
    }
}
