package bitterend.cli;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Options that were typed and would change nothing: each is refused with what it takes, since a person meant something by it. */
final class IdleOptions {
    /** A command and an option of it, which counts or not by what else was typed. */
    private record Rule(String command, Set<String> options, boolean wanted, Set<String> others, String why) {
        /** The options do nothing unless one of the others is there. */
        static Rule without(String command, Set<String> options, Set<String> others, String why) {
            return new Rule(command, options, true, others, why);
        }

        /** The options do nothing when one of the others is there. */
        static Rule with(String command, Set<String> options, Set<String> others, String why) {
            return new Rule(command, options, false, others, why);
        }

        Optional<String> refusal(String name, Set<String> typed) {
            boolean idle = (command.isEmpty() || name.equals(command))
                    && others.stream().anyMatch(typed::contains) != wanted;
            return idle
                    ? options.stream()
                            .sorted()
                            .filter(typed::contains)
                            .findFirst()
                            .map(option -> option + ": " + why)
                    : Optional.empty();
        }
    }

    private static final Set<String> ASKED = Set.of("--explain", "--shares");
    private static final Set<String> STUDIED = Set.of("--from-history", "--share", "--merge");
    private static final Set<String> PAGES = Set.of("--html", "--pdf", "--paper", "--pictures", "--xlsx", "--csv");

    /** Commands that take a person's name since their kind does, and book nothing. */
    private static final Set<String> BOOK_NOTHING = Set.of(
            "stock list",
            "stock history",
            "stock trace",
            "stock export",
            "stock verify",
            "stock backup",
            "orders note");

    private static final List<Rule> RULES = List.of(
            Rule.without("plan", Set.of("--plan"), ASKED, "names the plan that --explain or --shares asks; add one"),
            Rule.with(
                    "plan",
                    Set.of(
                            "--day",
                            "--until",
                            "--effort",
                            "--time",
                            "--seed",
                            "--threads",
                            "--solver-config",
                            "--withdraw"),
                    ASKED,
                    "is for making a plan; --explain and --shares ask one that is there"),
            Rule.with("plan", Set.of("--late"), ASKED, "plans; --explain and --shares ask a plan that is there"),
            Rule.with(
                    "plan",
                    Set.of("--from", "--keep", "--out", "--withdraw"),
                    Set.of("--late"),
                    "is for making a plan; --late asks what would be, and keeps nothing"),
            Rule.with("plan", Set.of("--effort"), Set.of("--solver-config"), "--solver-config says how to search"),
            Rule.without(
                    "quote",
                    Set.of("--apart"),
                    Set.of("--customer"),
                    "is for the customer's page, and the page for the file always says it; add --customer"),
            Rule.without(
                    "buy",
                    Set.of("--rope", "--scenarios", "--weeks", "--service", "--from-rack"),
                    STUDIED,
                    "is for a study of the past; add --from-history"),
            Rule.without(
                    "buy",
                    Set.of("--pictures"),
                    Set.of("--from-history", "--merge"),
                    "draws what a whole study found; add --from-history, or --merge its shares"),
            Rule.with("buy", Set.of("--time"), STUDIED, "is for the orders in hand; a study takes as long as it takes"),
            Rule.with(
                    "buy",
                    Set.of("--budget", "--most-weeks"),
                    STUDIED,
                    "is for the orders in hand; a study buys what the work of the past takes"),
            Rule.with("buy", Set.of("--share"), Set.of("--merge"), "works a share out; --merge puts shares together"),
            Rule.with("buy", PAGES, Set.of("--share"), "a share is no page yet; give it with --merge, for all of them"),
            Rule.with("buy", Set.of("--units"), Set.of("--share"), "a share is exact; give it with --merge"),
            Rule.with("buy", Set.of("--threads"), Set.of("--merge"), "--merge works nothing out"),
            Rule.without(
                    "value",
                    Set.of("--scenarios", "--weeks", "--seed", "--threads"),
                    Set.of("--from-history"),
                    "is for a trial on the past; add --from-history"),
            Rule.without("sheet", Set.of("--paper"), Set.of("--pdf", "--tags"), "is for --pdf and --tags; add one"),
            Rule.without("sheet", Set.of("--label"), Set.of("--tags"), "is for --tags; add it"),
            Rule.with(
                    "sheet",
                    Set.of("--day"),
                    Set.of("--all", "--reel"),
                    "is one day; ask without it for --all or --reel"),
            Rule.with("sheet", Set.of("--all"), Set.of("--reel"), "is every reel; ask without it for one"),
            Rule.without("sheet", Set.of("--who"), Set.of("--issue"), "says who issues the sheets; add --issue"),
            Rule.without(
                    "measure",
                    Set.of("--cut", "--rope", "--how", "--splicer", "--minutes", "--day", "--html", "--pdf"),
                    Set.of("--came-out"),
                    "is of a piece that was measured; add --came-out"),
            Rule.with(
                    "import",
                    Set.of("--accept", "--ask", "--answer", "--html", "--pdf"),
                    Set.of("--back"),
                    "is of a FILE that is imported; --back takes the last one back"),
            asWritten("import", "prints each length as it was written"),
            Rule.without(
                    "quote", Set.of("--who", "--note"), Set.of("--keep"), "is of a quote that is kept; add --keep"),
            Rule.with(
                    "quote",
                    Set.of("--keep"),
                    Set.of("--order"),
                    "files what a customer asks; an order is one already"),
            asWritten("quote show", "prints a quote as it was filed"),
            asWritten("quote list", "prints no length"),
            asWritten("quote sent", "prints no length"),
            asWritten("quote accept", "prints no length"),
            asWritten("quote decline", "prints no length"),
            asWritten("quote back", "prints no length"),
            asWritten("stock export", "prints each length as it was written"),
            asWritten("stock open", "begins a file and prints no length"),
            asWritten("stock backup", "copies a file and prints no length"),
            asWritten("stock restore", "puts a file in its place and prints no length"),
            Rule.without(
                    "stock reserve",
                    Set.of("--until", "--customer", "--day"),
                    Set.of("--length"),
                    "is of so much of a reel; add --length"),
            Rule.without(
                    "stock count",
                    Set.of("--accept", "--sure", "--html", "--pdf"),
                    Set.of("--file"),
                    "is of a list that was filled in; add --file"),
            Rule.without("stock count", Set.of("--sure"), Set.of("--accept"), "is for booking; add --accept"),
            Rule.with(
                    "stock count",
                    Set.of("--uncertainty", "--known"),
                    Set.of("--file", "--sheet"),
                    "is of one reel; a list says it in its rows"),
            Rule.with(
                    "stock count",
                    Set.of("--note", "--once", "--who"),
                    Set.of("--sheet"),
                    "is of a booking; --sheet prints a list"),
            Rule.with(
                    "stock order",
                    Set.of("--accept", "--html", "--pdf", "--day"),
                    Set.of("--back"),
                    "is of a FILE that is ordered by; --back takes the last order back"),
            Rule.without("stock order", Set.of("--who"), Set.of("--accept", "--back"), "says who orders; add --accept"),
            Rule.without(
                    "stock receive",
                    Set.of("--accept", "--sure", "--html", "--pdf"),
                    Set.of("--file"),
                    "is of a supplier's list; add --file"),
            Rule.without("stock receive", Set.of("--sure"), Set.of("--accept"), "is for booking; add --accept"),
            Rule.with(
                    "stock receive",
                    Set.of(
                            "--lot",
                            "--known",
                            "--tolerance",
                            "--uncertainty",
                            "--lead-trim",
                            "--inner-wraps",
                            "--flaws",
                            "--certificate",
                            "--certificate-number",
                            "--use-by",
                            "--received",
                            "--paid",
                            "--place",
                            "--part",
                            "--reel-note"),
                    Set.of("--file"),
                    "is of one reel; a list says it in its rows"),
            Rule.without(
                    "stock receive",
                    Set.of("--freight"),
                    Set.of("--paid", "--on-order", "--file"),
                    "counts with what was paid for the reel; add --paid"),
            Rule.with(
                    "stock receive",
                    Set.of("--owner", "--order"),
                    Set.of("--file"),
                    "is of a customer's own reel, which is received alone"),
            Rule.without(
                    "stock gauge",
                    Set.of("--note", "--once", "--sure", "--who"),
                    Set.of("--book"),
                    "is of a booking; add --book"),
            Rule.without("stock gauge", Set.of("--tolerance"), Set.of("--gross"), "is of a mass; add --gross, --tare"),
            Rule.with(
                    "stock gauge",
                    Set.of("--barrel", "--traverse", "--depth", "--flange", "--type", "--known", "--factor"),
                    Set.of("--gross", "--tare"),
                    "is of a reel measured by its size; ask by weight without it"));

    private static final Rule PAPER =
            Rule.without("", Set.of("--paper"), Set.of("--pdf"), "is the paper of a PDF; add --pdf");

    private IdleOptions() {}

    /** A command of which no figure depends on the units. */
    private static Rule asWritten(String command, String why) {
        return Rule.with(command, Set.of("--units"), Set.of("--units"), command + " " + why);
    }

    /** What is refused of a command line; nothing when all of it counts. */
    static Optional<String> refusal(ParseResult parsed) {
        ParseResult last = parsed;
        while (last.hasSubcommand()) {
            String inner = last.subcommand().commandSpec().qualifiedName();
            if (!last.matchedArgs().isEmpty()) {
                return Optional.of("write everything after " + inner + "; what is before its last word is lost");
            }
            last = last.subcommand();
        }
        String name = last.commandSpec().qualifiedName().replaceFirst("^bitterend ", "");
        Set<String> typed = last.matchedOptions().stream()
                .map(OptionSpec::longestName)
                .collect(java.util.stream.Collectors.toSet());
        Stream<Rule> paper = name.equals("sheet") ? Stream.empty() : Stream.of(PAPER);
        return Stream.concat(RULES.stream(), paper)
                .flatMap(rule -> rule.refusal(name, typed).stream())
                .findFirst()
                .or(() -> typed.contains("--who") && BOOK_NOTHING.contains(name)
                        ? Optional.of("--who: " + name + " books nothing")
                        : Optional.empty());
    }
}
