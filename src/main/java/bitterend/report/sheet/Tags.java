package bitterend.report.sheet;

import bitterend.demand.Piece;
import bitterend.demand.PieceId;
import bitterend.finding.NaturalOrder;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.report.EndsInWords;
import bitterend.report.Figures;
import bitterend.report.PlanView;
import bitterend.report.ReelWords;
import bitterend.report.RowWords;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The tags of a plan: one for every piece, one for every assembly that is made of several, and one for
 * every coil and rest that is kept. */
final class Tags {
    /** Longer lots are cut short in the code; a ledger of old may hold any. */
    static final int LONGEST_LOT = 100;

    private final PlanView view;
    private final Figures figures;

    private final TagMeasures measures;
    private final RowWords words;
    private final ReelWords reels;

    Tags(PlanView view, Figures figures, List<CardWork> work) {
        this.view = view;
        this.figures = figures;
        measures = new TagMeasures(figures, work);
        words = new RowWords(view, figures);
        reels = new ReelWords(view, figures);
    }

    List<Tag> all() {
        Map<String, Piece> pieces = view.pieces();
        List<Tag> tags = new ArrayList<>();
        Map<String, List<Piece>> assemblies = new TreeMap<>(NaturalOrder.IDS);
        for (ReelDraw draw : view.draws()) {
            for (Cut cut : draw.cuts()) {
                Piece piece = pieces.get(cut.piece());
                if (piece == null) {
                    throw new IllegalArgumentException("no piece " + cut.piece());
                }
                tags.add(piece(piece, cut, draw));
                assemblies
                        .computeIfAbsent(piece.pieceId().assembly(), name -> new ArrayList<>())
                        .add(piece);
            }
        }
        assemblies.values().stream()
                .filter(Tags::isOfSeveral)
                .map(this::assembly)
                .forEach(tags::add);
        CoilTags coils = new CoilTags(view, figures);
        view.draws().forEach(draw -> tags.addAll(coils.of(draw)));
        return tags;
    }

    private Tag piece(Piece piece, Cut cut, ReelDraw draw) {
        Reel reel = view.reel(draw);
        List<String> lines = new ArrayList<>();
        lines.addAll(measures.of(piece));
        add(lines, reels.heavy(draw, cut.length()));
        add(lines, customer(piece));
        lines.add(order(piece, words.ofHowMany(piece)));
        lines.add("reel " + reel.id() + (reel.lot().isEmpty() ? "" : ", lot " + reel.lot()));
        if (!reel.papers().certificate().isEmpty()) {
            lines.add("certificate "
                    + (reel.papers().certificate() + " " + reel.papers().number()).strip());
        }
        lines.addAll(words.set(draw, piece));
        lines.add(view.rope(draw).name());
        lines.add(figures.written(EndsInWords.of(piece.ends())));
        released(piece).ifPresent(lines::add);
        String measure = "cut " + figures.length(view.exactly(draw, cut.length())) + ", finished "
                + figures.written(piece.finished());
        if (!view.mark().changesOf(reel.id()).isEmpty()) {
            lines.add(0, "CHANGED since it was planned: see the sheet");
        }
        return new Tag(piece.id(), Tag.PIECE, mark(reel), measure, lines, QrCode.of(code(piece, cut, reel)));
    }

    private String code(Piece piece, Cut cut, Reel reel) {
        String lot = reel.lot().length() > LONGEST_LOT ? reel.lot().substring(0, LONGEST_LOT) + "..." : reel.lot();
        return new TagCode(TagCode.Kind.PIECE, piece.id()).text() + " reel " + reel.id() + " lot " + lot + " cut "
                + cut.length().mm() + " mm" + (mark(reel).isEmpty() ? "" : " " + mark(reel));
    }

    private String mark(Reel reel) {
        return view.mark().words(reel.id());
    }

    private String mark() {
        return view.mark().words();
    }

    private static boolean isOfSeveral(List<Piece> planned) {
        return planned.size() > 1 || planned.get(0).pieceId().legs() > 1;
    }

    /** What the assembly is made of, as ordered, and its ends, which are not those of a part; named are the pieces of this plan. */
    private Tag assembly(List<Piece> planned) {
        Piece first = planned.get(0);
        Map<String, List<PieceId>> parts = planned.stream()
                .map(Piece::pieceId)
                .sorted(Comparator.comparing(PieceId::text, NaturalOrder.IDS))
                .collect(Collectors.groupingBy(PieceId::part, TreeMap::new, Collectors.toList()));
        List<String> lines = parts.values().stream().map(Tags::part).collect(Collectors.toCollection(ArrayList::new));
        planned.stream()
                .filter(piece -> piece.pieceId().part().isEmpty())
                .findFirst()
                .ifPresent(main -> lines.add(figures.written(EndsInWords.of(main.ends()))));
        released(first).ifPresent(lines::add);
        String code = parts.values().stream().map(Tags::count).collect(Collectors.joining(", "));
        String name = first.pieceId().assembly();
        String marked = mark().isEmpty() ? code : code + "; " + mark();
        List<String> asked = new ArrayList<>();
        add(asked, customer(first));
        lines.addAll(0, asked);
        return new Tag(
                name,
                "assembly",
                mark(),
                order(first, ""),
                lines,
                QrCode.of(new TagCode(TagCode.Kind.ASSEMBLY, name).text() + "; " + marked));
    }

    private static String part(List<PieceId> pieces) {
        String ids = pieces.stream().map(PieceId::text).collect(Collectors.joining(", "));
        boolean whole = pieces.size() == pieces.get(0).legs();
        return count(pieces) + (whole ? ": " : ", of which here: ") + ids;
    }

    private static String count(List<PieceId> pieces) {
        PieceId first = pieces.get(0);
        String legs = first.legs() + (first.legs() == 1 ? " leg" : " legs");
        return first.part().isEmpty() ? legs : first.legs() == 1 ? first.part() : first.part() + ", " + legs;
    }

    private static Optional<String> released(Piece piece) {
        return Optional.of(piece.matching().released()).filter(words -> !words.isEmpty());
    }

    /** {@code order G-2101, line 2, due 2026-03-03, 1 of 2}. */
    private static String order(Piece piece, String which) {
        LocalDate due = piece.source().due();
        return "order " + piece.order() + ", line " + piece.source().line()
                + (due.equals(LocalDate.MAX) ? "" : ", due " + due)
                + (which.isEmpty() ? "" : ", " + which);
    }

    /** {@code ketch Brambling: jib sheets, a pair}. */
    private String customer(Piece piece) {
        return Stream.of(words.customer(piece), words.note(piece))
                .filter(said -> !said.isEmpty())
                .collect(Collectors.joining(": "));
    }

    private static void add(List<String> lines, String line) {
        if (!line.isEmpty()) {
            lines.add(line);
        }
    }
}
