package bitterend.quoting.life;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.quoting.BuildUp.Item;
import bitterend.quoting.BuildUp.Kind;
import bitterend.quoting.QuotedLine;
import bitterend.quoting.QuotedWork;
import bitterend.quoting.life.QuoteChange.What;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is other in a line: what hangs on it and what is tested of it, too, not only the price that it moves. */
final class QuoteChangeTest {
    private static QuotedWork of(int quantity, long hardware, long samples) {
        QuotedLine line = new QuotedLine(
                "1",
                new QuotedLine.What("A", "3 m", "whipped / whipped", 1, quantity, false, Length.ZERO),
                new Length(3_000),
                new Length(3_000),
                20,
                List.of(),
                Optional.empty(),
                List.of(new Item(Kind.HARDWARE, new Money(hardware)), new Item(Kind.SAMPLES, new Money(samples))),
                new Money(hardware + samples));
        return new QuotedWork("Q", List.of(), List.of(line));
    }

    private static List<What> between(QuotedWork before, QuotedWork now) {
        return QuoteChange.between(before, now).stream().map(QuoteChange::what).toList();
    }

    @Test
    void hardwareAndTests_areNamed() {
        assertEquals(List.of(What.HARDWARE, What.PRICE), between(of(2, 10, 40), of(2, 12, 40)));
        assertEquals(List.of(What.SAMPLES, What.PRICE), between(of(2, 10, 40), of(2, 10, 0)));
    }

    @Test
    void hardwareOfMorePieces_isNoOtherHardware() {
        assertEquals(List.of(What.QUANTITY, What.PRICE), between(of(2, 10, 0), of(3, 15, 0)));
    }
}
