package bitterend.day;

import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Length;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.Words;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.stock.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The spare pieces of a shop, and which of its open pieces each could become. */
public final class SparePieces {
    private SparePieces() {}

    /** Those that a person made spare and those that no order asks for, by id. */
    public static List<SparePiece> of(Ledger.Stock stock, OrderBook book) {
        CutPieces pieces = new CutPieces(stock);
        Map<String, Movement> cuts = lastCuts(stock);
        Set<String> delivered = DeliveredPieces.of(stock);
        List<SparePiece> spares = new ArrayList<>();
        pieces.spares()
                .forEach((id, made) -> spares.add(new SparePiece(
                        id,
                        made.entry().piece().length(),
                        cuts.getOrDefault(id, made).entry().after(),
                        made.entry().piece().ordered(),
                        true)));
        pieces.cuts().forEach((id, cut) -> {
            boolean known = cut.entry().piece().ordered().isKnown();
            if (known && book.find(id).isEmpty() && !delivered.contains(id)) {
                spares.add(new SparePiece(
                        id,
                        cut.entry().piece().length(),
                        cut.entry().after(),
                        cut.entry().piece().ordered(),
                        false));
            }
        });
        spares.sort(Comparator.comparing(SparePiece::piece, NaturalOrder.IDS));
        return spares;
    }

    /** The movement that cut each piece last. */
    private static Map<String, Movement> lastCuts(Ledger.Stock stock) {
        Map<String, Movement> cuts = new HashMap<>();
        for (Movement movement : Standing.movements(stock.ofPieces())) {
            if (movement.entry().kind() == Movement.Kind.CUT) {
                cuts.put(movement.entry().origin().piece(), movement);
            }
        }
        return cuts;
    }

    /**
     * A spare piece that an open piece could be made of.
     *
     * @param spare the spare piece
     * @param piece id of the open piece
     * @param surplus rope to cut off it
     */
    public record Use(SparePiece spare, String piece, Length surplus) {}

    /**
     * What the spare pieces could become: the best fit first, every spare and every open piece once. Offered where what is
     * cut off is shorter than a coil that would be kept.
     *
     * @param open what is still to be cut, with the sets as they are bound
     */
    public static List<Use> uses(List<SparePiece> spares, PackingProblem open) {
        List<Use> all = new ArrayList<>();
        for (SparePiece spare : spares) {
            for (Piece piece : open.pieces()) {
                if (against(spare, piece, open).isEmpty()) {
                    Length surplus = spare.length()
                            .minus(piece.lengthOn(spare.reel().rope()).orElseThrow());
                    if (surplus.isShorterThan(keepFrom(spare, open))) {
                        all.add(new Use(spare, piece.id(), surplus));
                    }
                }
            }
        }
        all.sort(Comparator.comparing(Use::surplus)
                .thenComparing(use -> use.spare().piece(), NaturalOrder.IDS)
                .thenComparing(Use::piece, NaturalOrder.IDS));
        Set<String> taken = new HashSet<>();
        return all.stream()
                .filter(use -> !taken.contains("spare " + use.spare().piece()) && !taken.contains(use.piece()))
                .filter(use -> taken.add("spare " + use.spare().piece()) && taken.add(use.piece()))
                .toList();
    }

    private static Length keepFrom(SparePiece spare, PackingProblem open) {
        Rope rope = open.ropes().get(spare.reel().rope());
        return rope == null ? Length.ZERO : rope.worth().keepFrom();
    }

    /** Why a spare piece cannot become an open one; empty when it can. Ends are not looked at: they are still to be made. */
    public static Optional<String> against(SparePiece spare, Piece piece, PackingProblem open) {
        Optional<String> barred =
                new Eligibility(open).against(piece, spare.reel()).map(reason -> reason.sentence());
        if (barred.isPresent()) {
            return barred;
        }
        Length needed = piece.lengthOn(spare.reel().rope()).orElseThrow();
        if (needed.isLongerThan(spare.length())) {
            return Optional.of(piece.id() + " takes " + Words.of(needed) + "; " + spare.piece() + " is "
                    + Words.of(spare.length()));
        }
        boolean alone = !piece.isMatched() || !piece.matching().begun().isEmpty();
        return alone
                ? Optional.empty()
                : Optional.of(piece.id() + " is of set " + piece.matching().set()
                        + ", of which nothing is cut: one spare piece would bind all of it");
    }
}
