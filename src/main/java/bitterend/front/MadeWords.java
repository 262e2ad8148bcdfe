package bitterend.front;

import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanFacts;
import java.util.Map;

/** How a plan was made, for the foot of a page. */
public final class MadeWords {
    private static final int SHOWN = 12;

    private MadeWords() {}

    /** The words, and how far the ledger of the shop has got now, so that the paper shows it if its end is cut off. */
    public static String of(PlanDocument document, PlanFacts.LedgerMark now) {
        return of(document) + (now.isKept() ? " Printed when the head of the ledger was " + now.head() + "." : "");
    }

    private static String of(PlanDocument document) {
        PlanDocument.Made made = document.made();
        StringBuilder words = new StringBuilder("Planned by " + made.engine() + ", seed " + made.seed() + ", from");
        String comma = " ";
        for (Map.Entry<String, String> input : made.inputs().entrySet()) {
            String digest = input.getValue();
            words.append(comma)
                    .append(input.getKey())
                    .append(" (")
                    .append(digest, 0, Math.min(SHOWN, digest.length()))
                    .append(")");
            comma = ", ";
        }
        if (document.facts() instanceof PlanFacts.Whole whole && whole.ledger().isKept()) {
            words.append(", ledger ").append(whole.ledger().head());
        }
        return words.append(".").toString();
    }
}
