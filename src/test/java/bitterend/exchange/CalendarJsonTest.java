package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.finding.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Days off and limits of urgency that cannot be meant, each told where it stands. */
final class CalendarJsonTest {
    @TempDir
    private Path shop = Path.of("");

    private List<String> findings(String members) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data", "eider-shed"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, shop.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        Path settings = shop.resolve("shop.json");
        Files.writeString(settings, Files.readString(settings).replaceFirst("\\{", "{" + members + ","));
        return ShopFolder.read(shop).findings().stream()
                .filter(finding -> finding.file().equals("shop.json"))
                .map(CalendarJsonTest::told)
                .toList();
    }

    private static String told(Finding finding) {
        return (finding.isError() ? "error " : "warning ") + finding.place() + " " + finding.field() + " \""
                + finding.found() + "\": " + finding.expected();
    }

    @Test
    void closedDay_isToldByItsPlaceInTheList() throws IOException {
        assertEquals(
                List.of(
                        "error /closed/1  \"2026-13-24\": a day such as 2026-03-02",
                        "warning /closed/2  \"2026-12-24\": a day that is not in the list yet"),
                findings("\"closed\": [\"2026-12-24\", \"2026-13-24\", \"2026-12-24\"]"));
    }

    /** Five working days reach a week; eight days reach further than that, seven do not. */
    @Test
    void thirdClass_reachesNoFurtherThanTheFourth() throws IOException {
        assertEquals(
                List.of(
                        "warning /urgency third \"8 days\": no further ahead than the fourth class, which reaches 5 working days"),
                findings("\"urgency\": {\"third\": \"8 days\", \"fourth\": \"5 working days\"}"));
        assertEquals(
                List.of(
                        "warning /urgency fourth \"1 day\": no less far ahead than the third class, which reaches 1 working day"),
                findings("\"urgency\": {\"fourth\": \"1 day\"}"));
        assertEquals(List.of(), findings("\"urgency\": {\"third\": \"7 days\", \"fourth\": \"5 working days\"}"));
    }
}
