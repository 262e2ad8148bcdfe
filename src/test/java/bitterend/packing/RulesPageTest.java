package bitterend.packing;

import bitterend.Golden;
import bitterend.packing.Rule.Level;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** docs/rules.md is printed from the list of rules; {@code -Dgolden.rewrite=true} writes it anew. */
final class RulesPageTest {
    private static final Path PAGE = Path.of("docs", "rules.md");

    @Test
    void page_listsTheRulesAsTheProgramKnowsThem() {
        Golden.checkPage(PAGE, page());
    }

    private static String page() {
        return """
                # The rules of the bench

                Every plan is weighed by these rules, and every reason that a plan gives names one of them. This page is printed
                from the list in the program; a test compares the two.

                ## Never broken

                A plan that breaks one of these cannot be cut. The checker looks for each of them again, with code of its own.

                %s
                ## Work left undone

                Weighed by priority and due date, and always before money: a plan with less weight left undone wins however much it
                costs. A piece weighs 10 less its priority, four times that when it is due by the day itself, twice that when it is
                due within a week.

                %s
                ## Money

                Prices stand in `shop.json`. A reel that is not touched costs nothing. A reel earns a credit for every full year on
                the rack, at most its opening and changing.

                %s"""
                .formatted(table(Level.HARD), table(Level.MEDIUM), table(Level.SOFT));
    }

    private static String table(Level level) {
        StringBuilder table = new StringBuilder("| rule | what it says |\n|---|---|\n");
        for (Rule rule : Rule.values()) {
            if (rule.level() == level) {
                String name = rule.name().toLowerCase(Locale.ROOT).replace('_', ' ');
                table.append("| ")
                        .append(name)
                        .append(" | ")
                        .append(rule.sentence())
                        .append(" |\n");
            }
        }
        return table.toString();
    }
}
