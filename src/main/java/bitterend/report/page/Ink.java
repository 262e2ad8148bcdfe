package bitterend.report.page;

/** How a page marks what should catch the eye. Meaning never depends on it: the words say the same. */
public enum Ink {
    /** Plain text, for files, pipes and those who asked for no colour. */
    PLAIN("", "", ""),
    /** Bold and yellow by terminal escape sequences. */
    TERMINAL("\u001B[1m", "\u001B[33m", "\u001B[0m");

    private final String strong;
    private final String alert;
    private final String end;

    Ink(String strong, String alert, String end) {
        this.strong = strong;
        this.alert = alert;
        this.end = end;
    }

    public String strong(String text) {
        return strong + text + end;
    }

    public String alert(String text) {
        return alert + text + end;
    }
}
