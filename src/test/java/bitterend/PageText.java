package bitterend;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A page as its reader sees it: without what only holds words and figures together on a line. */
public final class PageText {
    private PageText() {}

    public static String of(Path file) throws IOException {
        return of(Files.readString(file));
    }

    public static String of(String html) {
        return html.replaceAll("<span class=\"whole\">([^<]*)</span>", "$1").replace('\u00a0', ' ');
    }
}
