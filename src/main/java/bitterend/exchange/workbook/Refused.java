package bitterend.exchange.workbook;

import java.io.IOException;

/** Says why a workbook or a part of it is not read on. */
final class Refused extends IOException {
    private static final long serialVersionUID = 1L;

    private final String found;
    private final String wanted;

    Refused(String found, String wanted) {
        super(found + ": " + wanted);
        this.found = found;
        this.wanted = wanted;
    }

    String found() {
        return found;
    }

    String wanted() {
        return wanted;
    }
}
