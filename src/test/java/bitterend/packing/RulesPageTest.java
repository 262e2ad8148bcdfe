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

                Always before money: a plan that leaves less undone wins however much it costs. Work is left undone in classes, and
                each class comes before all later ones, however many pieces those have:

                1. what has priority 1, and what is overdue;
                2. what is due on the day of the plan;
                3. what is due by the next working day;
                4. what is due within seven days;
                5. what is due later, or has no date.

                A piece is due here on the last day on which it may be cut: its due day less the working days of its `finishing`
                (splicing, finishing, testing behind the cut), or the working day before where the shop is closed then. Where the
                shop states its `benchHours`, those are at least the days that the labour of the order line fills (`minutes` of its
                ends, times its pieces, in days of the mean length), less the first.

                The hours of the bench change what is cut from which reel in one case: where today is too full, pieces that would be cut
                ahead today go to reels of a later day, if less is late in all then and no more is undone. Else they are held against the
                plan: on each day come first the
                reels it fetches and the pieces it cuts; what is left goes to splicing, of all pieces that are cut those of the earliest due
                day first (if any order is in time, this one is). A day is too full by the minutes that are due and not done, and by cutting
                it has no room for. Where that happens, reels are brought forward: each to the last day for which least is late in all, never
                before its rope is there, never to a day on which nobody is at the bench, never a piece that is not to be cut ahead while rope
                is short. `show SHOP week` prints every day, the reels that are brought forward, and of days that are too full all the same
                what is cut ahead there and may wait, which order lines are not done in time, and which reels may be cut on an earlier day
                that has room; the screen of a plan names the first such day.

                A plan looks ahead as far as `horizon` says: what must be cut later is for a later plan, but what has priority 1, what is
                left of a begun set, and what a sheet at the bench holds.

                A piece that rope is held for comes before all others: it is in the first class and weighs 10,000 more. It comes off that
                rope, as far as what is held covers its finished length.

                Within a class a piece weighs 10 less its priority: priority 1 weighs 9, priority 9 weighs 1. A matched set is in
                the class of its most urgent piece and weighs what its pieces weigh together. Of two plans the better is the one
                that leaves less weight undone in the first class in which they differ. Working days are Monday to Friday less the
                `closed` days of `shop.json`; `urgency` there may set the limits of the third and fourth class.

                %s
                ## Money

                Prices are in `shop.json`. A reel that is not touched costs nothing.

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
