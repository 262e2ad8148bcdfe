package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.Construction;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Need;
import bitterend.catalogue.Term;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.What;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The page on lengths lists the built-in rows as they are; {@code -Dgolden.rewrite=true} writes the list anew. */
final class TerminationsPageTest {
    private static final Path PAGE = Path.of("docs", "how-a-length-is-made.md");
    private static final String BEGIN = "<!-- terminations: written from the built-in rows -->\n";
    private static final String END = "<!-- end of terminations -->";

    @Test
    void page_listsEveryBuiltInRow() throws IOException {
        String page = Files.readString(PAGE).replace("\r\n", "\n");
        int from = page.indexOf(BEGIN) + BEGIN.length();
        int to = page.indexOf(END);
        if (Boolean.getBoolean("golden.rewrite")) {
            Files.writeString(PAGE, page.substring(0, from) + table() + page.substring(to));
        } else {
            assertEquals(table(), page.substring(from, to));
        }
    }

    private static String table() {
        return "\n| row | suits | tail | take-up | room | source |\n|---|---|---|---|---|---|\n"
                + SplicesJson.builtIn().terminations().stream()
                        .map(TerminationsPageTest::row)
                        .collect(Collectors.joining())
                + "\n";
    }

    private static String row(Termination row) {
        return "| `" + row.id() + "` " + row.name() + " | " + suits(row) + " | " + tail(row) + " | "
                + cell(row.allowance(What.TAKE_UP)) + " | " + cell(row.allowance(What.ROOM)) + " | "
                + row.provenance().source() + " |\n";
    }

    private static String suits(Termination row) {
        String constructions = row.suits().constructions().isEmpty()
                ? "any rope"
                : Kinds.constructions().stream()
                        .filter(row.suits().constructions()::contains)
                        .map(Construction::word)
                        .collect(Collectors.joining(", "));
        String fibres = row.suits().fibres().isEmpty()
                ? ""
                : Kinds.fibres().stream()
                        .filter(row.suits().fibres()::contains)
                        .map(Fibre::word)
                        .collect(Collectors.joining(", ", " of ", ""));
        String needs = row.suits().needs().isEmpty()
                ? ""
                : row.suits().needs().stream().sorted().map(Need::word).collect(Collectors.joining(", ", ": ", ""));
        return constructions + fibres + needs;
    }

    private static String tail(Termination row) {
        Allowance projection = row.tucking().projection();
        Allowance back = row.allowance(What.RETURN);
        return cell(row.allowance(What.TAIL))
                + (projection.isNothing() ? "" : " + " + steps(projection))
                + (back.isNothing() ? "" : "; " + steps(back) + " back out of the socket");
    }

    private static String cell(Allowance allowance) {
        if (allowance.isNothing()) {
            return "";
        }
        String text = allowance.isUnknown() ? "the shop's own" : steps(allowance);
        return text + (allowance.provenance().verified() ? "" : ", unverified");
    }

    private static String steps(Allowance allowance) {
        List<Term> terms = allowance.terms();
        return terms.size() == 1
                        && terms.get(0) instanceof Term.ByDiameter table
                        && table.steps().size() < 4
                ? table.steps().stream().map(step -> step.term().text()).collect(Collectors.joining(" or "))
                        + " by diameter"
                : allowance.text();
    }
}
