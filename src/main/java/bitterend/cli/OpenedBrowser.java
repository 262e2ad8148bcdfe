package bitterend.cli;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.util.List;
import java.util.Locale;

/** The browser of whoever began to serve a page, opened by the system's own command for that. */
final class OpenedBrowser {
    private OpenedBrowser() {}

    /** Opens it at an address; whether the system has a command for that. What becomes of it is not waited for. */
    static boolean at(String url) {
        try {
            new ProcessBuilder(command(System.getProperty("os.name", ""), url))
                    .redirectOutput(Redirect.DISCARD)
                    .redirectError(Redirect.DISCARD)
                    .start();
            return true;
        } catch (IOException none) {
            return false;
        }
    }

    /** The command of a system. */
    static List<String> command(String system, String url) {
        String name = system.toLowerCase(Locale.ROOT);
        return name.startsWith("windows")
                ? List.of("rundll32", "url.dll,FileProtocolHandler", url)
                : name.startsWith("mac") ? List.of("open", url) : List.of("xdg-open", url);
    }
}
