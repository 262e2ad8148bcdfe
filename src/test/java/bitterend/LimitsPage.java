package bitterend;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The tables of docs/limits.md. */
public final class LimitsPage {
    private static final Pattern ROW = Pattern.compile("(?m)^\\| ([^|]+) \\| ([0-9,.]+) \\| .* \\|$");
    private static final Map<String, BigDecimal> MOST = read();

    private LimitsPage() {}

    /** The figure of every limit, by its words. */
    public static Map<String, BigDecimal> all() {
        return MOST;
    }

    /** What a limit is by the page. */
    public static long most(String limit) {
        BigDecimal most = MOST.get(limit);
        if (most == null) {
            throw new IllegalArgumentException("docs/limits.md has no limit " + limit);
        }
        return most.longValueExact();
    }

    private static Map<String, BigDecimal> read() {
        Map<String, BigDecimal> all = new LinkedHashMap<>();
        try {
            Matcher row = ROW.matcher(Files.readString(Path.of("docs", "limits.md")));
            while (row.find()) {
                all.put(row.group(1), new BigDecimal(row.group(2).replace(",", "")));
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        return all;
    }
}
