package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.Folders;
import bitterend.store.LoftServer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every command that the command line itself knows, as text in both systems of units and as JSON. Those that ask are looked
 * at by {@link AskingCommandsTest}, since they are long.
 */
final class EveryCommandTest {
    /** What comes before, then what is looked at; {@code EVENT} is the last event that was booked. */
    private static final Map<String, List<String>> WRITING = new TreeMap<>(Map.ofEntries(
            Map.entry("init", List.of("init OUT/new", "init OUT/new --example")),
            Map.entry("import", List.of("import SHOP SHOP/own.csv", "import SHOP SHOP/own.csv --accept")),
            Map.entry("serve", List.of("serve SHOP --port 0 --for 1ms")),
            Map.entry("sheet", List.of("sheet SHOP", "sheet SHOP --tags --csv --cards", "sheet SHOP --html --pdf")),
            Map.entry(
                    "measure",
                    List.of("measure SHOP E-32/1.4 --cut 6.72m --came-out 6m", "measure SHOP E-32/1.4 --passed")),
            Map.entry(
                    "orders release", List.of("stock post SHOP --piece E-31/2.1; orders release SHOP Redshank_sheets")),
            Map.entry("orders again", List.of("stock post SHOP --piece E-31/2.1; orders again SHOP Redshank_sheets")),
            Map.entry("orders spare", List.of("orders spare SHOP E-32/1.2")),
            Map.entry("orders give", List.of("orders spare SHOP E-32/1.2; orders give SHOP E-32/1.2 E-32/1.2")),
            Map.entry("orders back", List.of("orders spare SHOP E-32/1.2; orders back SHOP E-32/1.2")),
            Map.entry("orders keep", List.of("shorter; orders keep SHOP E-32/1.2")),
            Map.entry("orders deliver", List.of("orders deliver SHOP E-32 --unpassed")),
            Map.entry("quote revise", List.of("quote revise SHOP Q-2601 --time 200ms")),
            Map.entry("quote sent", List.of("quote sent SHOP Q-2601 --note by_post")),
            Map.entry("quote accept", List.of("quote accept SHOP Q-2601 --order E-60 --due 2026-03-20")),
            Map.entry("quote decline", List.of("quote decline SHOP Q-2601")),
            Map.entry(
                    "quote back",
                    List.of(
                            "quote sent SHOP Q-2601; quote back SHOP Q-2601",
                            "quote accept SHOP Q-2601; quote back SHOP Q-2601")),
            Map.entry("stock open", List.of("forget; stock open SHOP")),
            Map.entry("stock restore", List.of("stock backup SHOP OUT/b.db; stock restore SHOP OUT/b.db")),
            Map.entry(
                    "stock move-ledger",
                    List.of(
                            "server; stock move-ledger SHOP",
                            "server; stock move-ledger SHOP; stock move-ledger SHOP --to-file")),
            Map.entry(
                    "stock order",
                    List.of(
                            "stock order SHOP SHOP/proposal.csv",
                            "stock order SHOP SHOP/proposal.csv --accept",
                            "stock order SHOP SHOP/proposal.csv --accept; stock order SHOP --back")),
            Map.entry(
                    "stock receive",
                    List.of(
                            "stock receive SHOP E11 LAID-14 110m --lot 16 --tolerance 1.5%",
                            "stock receive SHOP --file SHOP/came.csv",
                            "stock receive SHOP --file SHOP/came.csv --accept --sure")),
            Map.entry("stock post", List.of("stock post SHOP --all", "stock post SHOP --reel E8 --left E8=0m")),
            Map.entry(
                    "stock cut",
                    List.of("stock cut SHOP E7 5m --for sloop", "stock cut SHOP E10 6.8m --spare E-32/1.1")),
            Map.entry("stock flaw", List.of("stock flaw SHOP E10 2_m_to_2.2_m:_chafed")),
            Map.entry(
                    "stock correct",
                    List.of(
                            "stock correct SHOP E10 --lot 16 --use-by 2030-01-31",
                            "stock correct SHOP E10 --paid 84.50 --freight 3.20; stock correct SHOP E10 --paid 85.50")),
            Map.entry("stock spoil", List.of("stock spoil SHOP E-32/1.2 --back 5m")),
            Map.entry("stock undo", List.of("stock hold SHOP E10; stock undo SHOP EVENT")),
            Map.entry(
                    "stock count",
                    List.of("stock count SHOP E10 23m", "stock count SHOP --file SHOP/count.csv --accept")),
            Map.entry("stock hold", List.of("stock hold SHOP E10")),
            Map.entry("stock release", List.of("stock hold SHOP E10; stock release SHOP E10")),
            Map.entry(
                    "stock reserve",
                    List.of(
                            "stock reserve SHOP E10 E-32",
                            "stock reserve SHOP E10 E-32 --length 10m --until 2026-03-06")),
            Map.entry("stock move", List.of("stock move SHOP E10 the_cellar_below_the_stairs")),
            Map.entry("stock rewind", List.of("stock rewind SHOP E9")),
            Map.entry("stock split", List.of("stock split SHOP E9 20m E9-half")),
            Map.entry("stock return", List.of("stock return SHOP E9")),
            Map.entry("stock sell", List.of("stock sell SHOP E9")),
            Map.entry("stock condemn", List.of("stock condemn SHOP E9 --note wet_since_the_roof_let_rain_in")),
            Map.entry("stock send", List.of("stock send SHOP E9 North_Quay")),
            Map.entry(
                    "stock arrive",
                    List.of(
                            "server; stock move-ledger SHOP; neighbour; stock arrive SHOP",
                            "server; stock move-ledger SHOP; neighbour; stock arrive SHOP E9 --as N9"))));

    /** What is typed to write, with what comes before. */
    static List<String> writing() {
        return WRITING.values().stream().flatMap(List::stream).toList();
    }

    /** What is no page, with the reason; every other command that prints a result offers it as HTML and as PDF. */
    private static final Map<String, Set<String>> NO_PAGE = Map.of(
            "writes the file that it is there for, and prints where",
            Set.of("init", "stock open", "stock backup", "stock restore", "stock move-ledger", "stock export"),
            "books an event: stock history, stock trace, orders and quote list print what was booked as pages",
            Set.of(
                    "orders release",
                    "orders again",
                    "orders spare",
                    "orders give",
                    "orders back",
                    "orders keep",
                    "quote sent",
                    "quote accept",
                    "quote decline",
                    "quote back",
                    "stock post",
                    "stock cut",
                    "stock flaw",
                    "stock correct",
                    "stock spoil",
                    "stock undo",
                    "stock hold",
                    "stock release",
                    "stock reserve",
                    "stock move",
                    "stock rewind",
                    "stock split",
                    "stock return",
                    "stock sell",
                    "stock condemn",
                    "stock send",
                    "stock arrive"),
            "serves pages to a browser",
            Set.of("serve"),
            "lists its commands",
            Set.of("stock"));

    @TempDir
    private Path folder = Path.of("");

    private final AnswersInForm answers = new AnswersInForm();

    @Test
    void everyCommand_offersItsResultInEveryForm_orHasAReasonNotTo() {
        Set<String> listed = new TreeSet<>();
        NO_PAGE.values().forEach(listed::addAll);
        Set<String> without = new TreeSet<>();
        EveryCommand.byWords().forEach((words, command) -> {
            Set<String> options = command.getCommandSpec().optionsMap().keySet();
            if (!options.containsAll(Set.of("--html", "--pdf"))) {
                without.add(words);
            }
            assertEquals(
                    words.equals("stock"),
                    !options.containsAll(Set.of("--json", "--units")),
                    words + ": JSON and units");
        });
        assertEquals(listed, without);
    }

    @Test
    void everyCommand_isLookedAt() {
        Set<String> known = new TreeSet<>(DayInTheShop.ASKS.keySet());
        known.addAll(WRITING.keySet());
        known.add("stock");
        assertEquals(EveryCommand.byWords().keySet(), known);
    }

    @Test
    void everyHelp_isNoWiderThanATerminal() {
        answers.narrow("--help", Run.of("--help").out());
        for (String words : EveryCommand.byWords().keySet()) {
            answers.narrow(words, Run.of((words + " --help").split(" ")).out());
        }
        answers.assertRight();
    }

    @Test
    void everyCommandThatWrites_answersInEveryForm() throws IOException {
        DayInTheShop day = DayInTheShop.in(folder.resolve("first"));
        int copies = 0;
        for (Map.Entry<String, List<String>> writing : WRITING.entrySet()) {
            for (String words : writing.getValue()) {
                for (String form : AnswersInForm.forms(writing.getKey())) {
                    DayInTheShop copy = copy(day, folder.resolve("copy" + copies++));
                    String[] steps = words.split("; ");
                    for (String step : List.of(steps).subList(0, steps.length - 1)) {
                        prepare(copy, step);
                    }
                    look(copy, steps[steps.length - 1] + form);
                }
            }
        }
        answers.assertRight();
    }

    /** Another loft on the same server, that sends a reel to this one. */
    private static void neighbour(Path shop) throws IOException {
        String here = Files.readString(shop.resolve("shop.json")).replaceFirst("(?s).*\"loft\": \"([^\"]*)\".*", "$1");
        Path other = DemoShop.copy("eider-shed", Files.createDirectory(shop.resolveSibling("neighbour")));
        LoftServer.shared().name(other);
        assertEquals(0, Run.of("stock", "open", other.toString()).code());
        assertEquals(0, Run.of("stock", "send", other.toString(), "E9", here).code());
    }

    private static void prepare(DayInTheShop day, String step) throws IOException {
        Path orders = day.shop().resolve("orders.csv");
        switch (step) {
            case "neighbour" -> neighbour(day.shop());
            case "server" -> LoftServer.shared().name(day.shop());
            case "forget" -> {
                for (String file : List.of("stock.db", "stock.db-wal", "stock.db-shm")) {
                    Files.deleteIfExists(day.shop().resolve(file));
                }
            }
            case "shorter" -> Files.writeString(
                    orders, Files.readString(orders).replace("LAID-14,6 m", "LAID-14,5.8 m"));
            default -> day.book(step);
        }
    }

    private void look(DayInTheShop day, String words) {
        String event = words.contains("EVENT") ? lastEvent(day) : "";
        Run run = Run.of(day.typed(words.replace("EVENT", event)));
        answers.look(words, run, day);
    }

    private static String lastEvent(DayInTheShop day) {
        String[] events = day.book("stock history SHOP E10 --json").out().split("\"event\" *: *");
        return events[events.length - 1].replaceAll("(?s)\\D.*", "");
    }

    private static DayInTheShop copy(DayInTheShop day, Path to) throws IOException {
        Path out = Files.createDirectories(to.resolve("out"));
        Path shop = to.resolve(Objects.requireNonNull(day.shop().getFileName()));
        Folders.copy(day.shop(), shop);
        return new DayInTheShop(shop, out, day.note());
    }
}
