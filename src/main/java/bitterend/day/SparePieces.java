package bitterend.day;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Length;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.Words;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.PieceAccount.Made;
import bitterend.stock.PieceCut;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The spare pieces of a shop, and which of its open pieces each could become. */
public final class SparePieces {
    private SparePieces() {}

    /** Those that a person made spare and those that no order asks for, by name. */
    public static List<SparePiece> of(Ledger.Stock stock, OrderBook book) {
        CutPieces pieces = new CutPieces(stock);
        Set<String> delivered = DeliveredPieces.of(stock);
        List<SparePiece> spares = new ArrayList<>();
        pieces.spares().forEach((name, made) -> spares.add(spare(stock, name, made, true)));
        pieces.good().forEach((id, made) -> {
            boolean known = made.made().entry().piece().ordered().isKnown();
            if (known && book.find(id).isEmpty() && !delivered.contains(id)) {
                spares.add(spare(stock, id, made, false));
            }
        });
        spares.sort(Comparator.comparing(SparePiece::piece, NaturalOrder.IDS));
        return spares;
    }

    private static SparePiece spare(Ledger.Stock stock, String name, Made made, boolean declared) {
        PieceCut piece = made.made().entry().piece();
        Reel reel = RopeBack.today(stock, made.cut());
        return new SparePiece(name, made.piece(), piece.length(), reel, piece.ordered(), declared);
    }

    /**
     * The spare piece that a person names, by its own name or by the id it was cut under.
     *
     * @throws LedgerException.Refused when there is none, or several were cut under that id
     */
    public static SparePiece named(String words, Ledger.Stock stock, OrderBook book) {
        String name = new CutPieces(stock).named(words);
        return of(stock, book).stream()
                .filter(each -> each.piece().equals(name))
                .findFirst()
                .orElseThrow(() -> new LedgerException.Refused("there is no spare piece " + words));
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
        StockValue value = open.values().get(spare.reel().rope());
        return value == null ? Length.ZERO : value.keepFrom().orElse(new Length(StockValue.LONGEST_MM));
    }

    /** Why a spare piece cannot become an open one; empty when it can. Ends are not looked at: they are still to be made. */
    public static Optional<String> against(SparePiece spare, Piece piece, PackingProblem open) {
        Optional<String> barred = new Eligibility(open)
                .against(piece, spare.reel())
                .map(reason -> reason.sentence().exact());
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
