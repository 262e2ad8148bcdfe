package bitterend.work.rack;

import bitterend.day.BenchCut;
import bitterend.day.OpenWork;
import bitterend.day.RackToday;
import bitterend.demand.Piece;
import bitterend.exchange.OrderedPieces;
import bitterend.exchange.Shop;
import bitterend.finding.CommandWord;
import bitterend.measure.Length;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.Words;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Ordered;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import bitterend.work.Booking;
import bitterend.work.DayProblem;
import bitterend.work.ShopNow;
import java.time.LocalDate;

/** Books a cut that is in no plan: over the counter, a sample, a piece off another reel than planned. */
public final class CutOffPlan {
    private final RackDesk desk;
    private final Shop shop;

    public CutOffPlan(RackDesk desk, ShopNow shop) {
        this.desk = desk;
        this.shop = shop.shop();
    }

    /**
     * What was cut.
     *
     * @param reel the reel it came off
     * @param length how long it came out
     * @param use what it is for
     * @param sure whether it may reach over a flaw, be far off what its piece needs, or be sold past its last day
     * @param day the day it is
     */
    public record Request(String reel, Length length, Use use, boolean sure, LocalDate day) {}

    /** What a cut is for. */
    public sealed interface Use {
        /** In the words of who cuts it. */
        String words();

        private static void checkSaid(String words) {
            if (words.isBlank()) {
                throw new LedgerException.Contradictory(
                        "say in words whom or what it is cut for; nothing follows the option");
            }
        }

        /** Sold over the counter. */
        record SoldTo(String words) implements Use {
            public SoldTo {
                checkSaid(words);
            }
        }

        /** A piece of an order. */
        record OrderedPiece(String words) implements Use {
            public OrderedPiece {
                checkSaid(words);
            }
        }

        /** What no order may be made of: it is a spare piece. */
        record Spare(String words) implements Use {
            public Spare {
                checkSaid(words);
            }
        }

        /** Used up as a sample. */
        record Sample(String words) implements Use {
            public Sample {
                checkSaid(words);
            }
        }
    }

    /** Books it, or says why not. */
    public Booking cut(Request request) {
        return Booking.of(() -> {
            Reel off = shop.reels().stream()
                    .filter(each -> each.id().equals(request.reel()))
                    .findFirst()
                    .orElseThrow(() -> noReel(request.reel()));
            checkUseBy(off, request);
            Length loss = shop.catalogue().rope(off.rope()).cutting().loss();
            BenchCut.Cut cut = new BenchCut.Cut(request.reel(), request.length(), loss, request.sure(), request.day());
            Booking booking = desk.book(ledger -> booked(new BenchCut(ledger, desk.caller()), cut, request));
            return booking instanceof Booking.Booked booked
                    ? new Booking.Booked(
                            booked.event(), HeldTold.of(booked.event().movements(), request.day()))
                    : booking;
        });
    }

    private Event booked(BenchCut bench, BenchCut.Cut cut, Request request) {
        if (request.use() instanceof Use.SoldTo customer) {
            return bench.sold(cut, customer.words());
        }
        if (request.use() instanceof Use.Spare spare) {
            return bench.spare(cut, spare.words());
        }
        return request.use() instanceof Use.Sample sample
                ? bench.sample(cut, sample.words())
                : bench.piece(cut, request.use().words(), stock -> wanted(request, stock));
    }

    /** Rope past its last day goes over the counter only with a word: whoever buys it cannot know. */
    private static void checkUseBy(Reel off, Request request) {
        if (request.use() instanceof Use.SoldTo && !request.sure()) {
            Rack.pastItsLastDay(off, request.day()).ifPresent(why -> {
                throw new LedgerException.Contradictory(why);
            });
        }
    }

    /** What is wanted, where the rules let the piece come off this reel by what the ledger says at that moment. */
    private BenchCut.Wanted wanted(Request request, Ledger.Stock stock) {
        String piece = request.use().words();
        PackingProblem open = new OpenWork(DayProblem.of(shop, request.day()), RackToday.of(stock)).fresh();
        Piece wanted = open.pieces().stream()
                .filter(each -> each.id().equals(piece))
                .findFirst()
                .orElseThrow(
                        () -> new LedgerException.Refused("no order asks for a piece " + piece + asSpare(request)));
        Reel off = stock.findHolding(request.reel()).map(Holding::reel).orElseThrow(() -> noReel(request.reel()));
        new Eligibility(open).against(wanted, off).ifPresent(reason -> {
            throw new LedgerException.Refused("piece " + piece + " may not come off reel " + off.id() + ": "
                    + reason.sentence().exact() + asSpare(request));
        });
        return new BenchCut.Wanted(
                OrderedPieces.of(shop).getOrDefault(wanted.id(), Ordered.NONE),
                wanted.lengthOn(off.rope()).orElseThrow());
    }

    private static LedgerException.Refused noReel(String reel) {
        return new LedgerException.Refused("there is no reel " + reel + "; see bitterend stock list SHOP");
    }

    private static String asSpare(Request request) {
        return "\n  if it was cut all the same it is a spare piece: bitterend stock cut SHOP "
                + CommandWord.of(request.reel()) + " " + CommandWord.of(Words.of(request.length())) + " --spare "
                + CommandWord.of(request.use().words());
    }
}
