package bitterend.work;

import bitterend.exchange.ShopFiles;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A file of its own for a fault of the program: what is needed to see it again, for whoever mends the program. It is written into
 * the temporary folder of the user, never into the shop, and readable by the user alone. No word of the shop goes into it: of the
 * files their digests, of faults their kinds and places in the program. Messages are left out, since they may name customers.
 *
 * <p>The same fault is written once, and of one run at most so many: a page that is asked for again and again fills no disk.
 */
public final class CrashLog {
    /** So many files one run of the program writes at most. */
    public static final int MOST_FILES = 20;

    private static final int MOST_FRAMES = 200;
    private static final int MOST_CAUSES = 20;

    private final Path shop;
    private final Clock clock;
    private final Map<String, Path> written = new HashMap<>();

    /** @param shop the shop folder */
    public CrashLog(Path shop, Clock clock) {
        this.shop = shop;
        this.clock = clock;
    }

    /**
     * What was being done.
     *
     * @param what the command or the page, without anything that a person typed in words of his own
     * @param seed what random choices began with; empty where there were none
     * @param named files that were named beside those of the shop, or given in place of them
     */
    public record Doing(String what, String seed, List<Path> named) {
        public Doing {
            named = List.copyOf(named);
        }
    }

    /** Writes the fault down; where it is then, and nothing where no file could be written. */
    public synchronized Optional<Path> write(Doing doing, Throwable fault) {
        try {
            String trace = trace(fault);
            Path before = written.get(trace);
            if (before != null || written.size() == MOST_FILES) {
                return Optional.ofNullable(before);
            }
            Path folder = Path.of(System.getProperty("java.io.tmpdir", "")).toRealPath();
            if (Files.exists(shop) && folder.startsWith(shop.toRealPath())) {
                return Optional.empty();
            }
            Path file = Files.createTempFile(folder, "bitterend-fault-", ".txt");
            Files.writeString(file, text(doing, trace), StandardCharsets.UTF_8);
            written.put(trace, file);
            return Optional.of(file);
        } catch (IOException | RuntimeException notWritten) {
            return Optional.empty();
        }
    }

    private String text(Doing doing, String trace) {
        Runtime machine = Runtime.getRuntime();
        StringBuilder text = new StringBuilder();
        text.append("A fault in Bitter End. With this file and the shop folder as it was, it can be seen again.\n")
                .append("There are no names in it: messages and whatever was typed in words are left out.\n\n");
        line(text, "written", clock.instant().truncatedTo(ChronoUnit.SECONDS).toString());
        line(text, "program", Release.name());
        line(text, "doing", doing.what());
        line(text, "seed", doing.seed().isEmpty() ? "none" : doing.seed());
        line(text, "java", property("java.version") + ", " + property("java.vendor"));
        line(text, "system", property("os.name") + " " + property("os.version") + " " + property("os.arch"));
        line(text, "processors", Integer.toString(machine.availableProcessors()));
        line(text, "memory", machine.maxMemory() / 1_000_000 + " MB at most");
        line(
                text,
                "place",
                Locale.getDefault().toLanguageTag() + ", " + ZoneId.systemDefault() + ", " + Charset.defaultCharset());
        text.append("\nFiles of the shop, with the SHA-256 of each:\n");
        ShopFiles.digests(shop).forEach((name, digest) -> text.append("  ")
                .append(name)
                .append(' ')
                .append(digest)
                .append('\n'));
        int number = 0;
        for (Path file : doing.named()) {
            number++;
            text.append("  named file ")
                    .append(number)
                    .append(' ')
                    .append(ShopFiles.digest(file))
                    .append('\n');
        }
        return text.append("\nWhere it was:\n").append(trace).toString();
    }

    private static void line(StringBuilder text, String name, String value) {
        text.append(name).append(": ").append(value).append('\n');
    }

    private static String property(String name) {
        return System.getProperty(name, "unknown");
    }

    /** Kinds and places, down to what it came of; no message. */
    private static String trace(Throwable fault) {
        StringBuilder text = new StringBuilder();
        List<Throwable> told = new ArrayList<>();
        for (Throwable each = fault;
                each != null && !told.contains(each) && told.size() < MOST_CAUSES;
                each = each.getCause()) {
            text.append(told.isEmpty() ? "" : "of ")
                    .append(each.getClass().getName())
                    .append('\n');
            told.add(each);
            Arrays.stream(each.getStackTrace())
                    .limit(MOST_FRAMES)
                    .forEach(frame -> text.append("  at ").append(frame).append('\n'));
        }
        return text.toString();
    }
}
