package bitterend.catalogue;

import bitterend.measure.FineLength;
import bitterend.measure.Ratio;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a shop knows about making ends.
 *
 * @param fids how long the fid of a rope is
 * @param layTurns one turn of a strand, in diameters; where it is not known the yardstick is nothing
 * @param terminations ways of making an end, each id once
 * @param preparations what is done before a cut; the first that suits the rope counts
 * @param clearRope rope that must stay free between splices
 * @param bench counter and handling limit
 * @param codes what the codes of the regions ask of slings
 * @param thimbles linings for eyes
 * @param fittings metal ends
 * @param hardware what hangs on eyes and fittings
 */
public record SpliceBook(
        FidTable fids,
        Map<Construction, Ratio> layTurns,
        List<Termination> terminations,
        List<Preparation> preparations,
        List<ClearRope> clearRope,
        BenchRules bench,
        Codes codes,
        List<Thimble> thimbles,
        List<Fitting> fittings,
        List<Hardware> hardware) {
    public SpliceBook {
        layTurns = Map.copyOf(layTurns);
        terminations = List.copyOf(terminations);
        preparations = List.copyOf(preparations);
        clearRope = List.copyOf(clearRope);
        thimbles = List.copyOf(thimbles);
        fittings = List.copyOf(fittings);
        hardware = List.copyOf(hardware);
    }

    /** Without hardware. */
    public SpliceBook(
            FidTable fids,
            Map<Construction, Ratio> layTurns,
            List<Termination> terminations,
            List<Preparation> preparations,
            List<ClearRope> clearRope,
            BenchRules bench,
            Codes codes,
            List<Thimble> thimbles,
            List<Fitting> fittings) {
        this(fids, layTurns, terminations, preparations, clearRope, bench, codes, thimbles, fittings, List.of());
    }

    /** The same with these thimbles and fittings. */
    public SpliceBook withHardware(List<Thimble> linings, List<Fitting> metalEnds) {
        return new SpliceBook(
                fids, layTurns, terminations, preparations, clearRope, bench, codes, linings, metalEnds, hardware);
    }

    /** The same with this to hang on eyes and fittings. */
    public SpliceBook hanging(List<Hardware> hung) {
        return new SpliceBook(
                fids, layTurns, terminations, preparations, clearRope, bench, codes, thimbles, fittings, hung);
    }

    /** The same under these codes. */
    public SpliceBook with(Codes other) {
        return new SpliceBook(
                fids, layTurns, terminations, preparations, clearRope, bench, other, thimbles, fittings, hardware);
    }

    /** The same on a bench that measures with these tools. */
    public SpliceBook on(BenchTools tools) {
        return new SpliceBook(
                fids.on(tools),
                layTurns,
                terminations,
                preparations,
                clearRope,
                bench,
                codes,
                thimbles,
                fittings,
                hardware);
    }

    /** The same with these terminations. */
    public SpliceBook withTerminations(List<Termination> rows) {
        return new SpliceBook(
                fids, layTurns, rows, preparations, clearRope, bench, codes, thimbles, fittings, hardware);
    }

    /**
     * The termination an order means by a name on a rope: the row of that id if it suits the rope, else a row of that
     * family that suits it. When none suits, the first row of the name, so that its refusal can be told; empty when
     * nothing has that name.
     */
    public Optional<Termination> findTermination(String name, Rope rope) {
        List<Termination> rows = Stream.concat(
                        terminations.stream().filter(row -> row.id().equals(name)),
                        terminations.stream().filter(row -> row.family().equals(name)))
                .toList();
        return rows.stream().filter(row -> row.suits().admits(rope)).findFirst().or(() -> rows.stream()
                .findFirst());
    }

    /** Every id and family that an order may use. */
    public List<String> names() {
        return terminations.stream()
                .flatMap(row -> Stream.of(row.id(), row.family()))
                .filter(name -> !name.isEmpty())
                .distinct()
                .toList();
    }

    public Optional<Thimble> findThimble(String id) {
        return thimbles.stream().filter(thimble -> thimble.id().equals(id)).findFirst();
    }

    public Optional<Fitting> findFitting(String id) {
        return fittings.stream().filter(fitting -> fitting.id().equals(id)).findFirst();
    }

    public Optional<Hardware> findHardware(String id) {
        return hardware.stream().filter(each -> each.id().equals(id)).findFirst();
    }

    /** What is done to a rope before it is cut. */
    public Optional<Preparation> findPreparation(Rope rope) {
        return preparations.stream()
                .filter(preparation -> preparation.suits().concerns(rope))
                .findFirst();
    }

    /** One turn of a strand round the rope, as typed for it or usual for its construction; zero when not known. */
    public FineLength layTurn(Rope rope) {
        if (rope.layLength().isPositive()) {
            return rope.layLength();
        }
        return rope.diameter().times(layTurns.getOrDefault(rope.construction(), Ratio.ZERO));
    }
}
