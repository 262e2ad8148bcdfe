package bitterend.demand;

import bitterend.catalogue.SpliceBook;
import bitterend.measure.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which code a leg for lifting is made under, and what that asks of it. */
final class CodeNotes {
    private final SpliceBook splices;

    CodeNotes(SpliceBook splices) {
        this.splices = splices;
    }

    /** The code in force; nothing where nothing is lifted. */
    Optional<CodeInForce> inForce(Leg leg, Assembly.Terms terms) {
        if (!terms.use().isLifting()) {
            return Optional.empty();
        }
        List<Sentence> asks = new ArrayList<>();
        new ClearRopeCheck(splices, leg).note(terms).ifPresent(asks::add);
        asks.addAll(new CodeCheck(splices.codes()).lines(leg, terms));
        return Optional.of(new CodeInForce(splices.codes().holding(terms.code()), asks));
    }
}
