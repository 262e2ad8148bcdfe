package bitterend.demand;

import bitterend.catalogue.EyeFormula;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Thimble;
import bitterend.catalogue.Yardsticks;
import bitterend.finding.Nearest;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Ratio;
import bitterend.measure.Sentence;
import java.util.Optional;

/** Works out the shape of an eye from what an order states of it. */
final class EyeShaper {
    private final SpliceBook splices;

    EyeShaper(SpliceBook splices) {
        this.splices = splices;
    }

    /** The shape; empty, with an error told, when such an eye cannot be made. */
    Optional<EyeShape> shape(EndSpec spec, Rope rope, String end, Problems problems) {
        EyeSpec eye = spec.eye();
        Diameter thickness = rope.diameter();
        Asked asked = new Asked(end, thickness, spec.words());
        if (eye instanceof EyeSpec.FlatLength flat) {
            return flat(flat.length(), flat.pin(), asked, problems);
        }
        if (eye instanceof EyeSpec.Perimeter perimeter) {
            return flat(perimeter.perimeter().times(new Ratio(1, 2)), perimeter.pin(), asked, problems);
        }
        if (eye instanceof EyeSpec.RoundEye round) {
            return round(round, asked, problems);
        }
        if (eye instanceof EyeSpec.PinRatio ratio) {
            return ratio(ratio, thickness, end, problems);
        }
        if (eye instanceof EyeSpec.OnThimble lined) {
            return thimble(lined, rope, end, problems);
        }
        return Optional.of(EyeShape.NONE);
    }

    /**
     * Where an eye is asked for.
     *
     * @param end {@code end A} or {@code end B}
     * @param rope diameter of its rope
     * @param words the end as the order wrote it; empty for one that nobody wrote
     */
    private record Asked(String end, Diameter rope, String words) {
        Sentence or(FineLength inside) {
            return words.isEmpty() ? Sentence.of("an eye of ").and(inside) : Sentence.of(words);
        }
    }

    private static Optional<EyeShape> flat(FineLength inside, Diameter pin, Asked asked, Problems problems) {
        Diameter rope = asked.rope();
        if (!EyeFormula.closes(inside, Diameter.NONE, rope)) {
            problems.error(
                    asked.end(),
                    asked.or(inside),
                    Sentence.of("an inside length above half the rope, ").and(rope.times(new Ratio(1, 2))));
            return Optional.empty();
        }
        FineLength round = EyeFormula.round(inside, Diameter.NONE, rope);
        return working(new Rest(round, inside, inside, across(inside)), pin, asked, problems);
    }

    private static Optional<EyeShape> round(EyeSpec.RoundEye eye, Asked asked, Problems problems) {
        Diameter rope = asked.rope();
        FineLength round = EyeFormula.choked(new Diameter(eye.across().units()), rope);
        FineLength flat = EyeFormula.insideLength(round, Diameter.NONE, rope);
        return working(new Rest(round, flat, eye.across(), eye.across()), eye.pin(), asked, problems);
    }

    /** A soft eye at rest: rope round it, inside length laid flat and as it lies, inside diameter as a circle. */
    private record Rest(FineLength round, FineLength flat, FineLength lying, FineLength across) {}

    /** The rope round the eye is held; on its pin the eye is shorter than at rest. */
    private static Optional<EyeShape> working(Rest rest, Diameter pin, Asked asked, Problems problems) {
        Diameter rope = asked.rope();
        if (!EyeFormula.reachesRound(rest.round(), pin, rope)) {
            problems.error(
                    asked.end(),
                    asked.or(rest.lying()),
                    Sentence.of("an eye that closes on its pin of ")
                            .and(pin)
                            .and(": at least ")
                            .noLessThan(closing(pin, rope))
                            .and(" laid flat"));
            return Optional.empty();
        }
        FineLength used = pin.equals(Diameter.NONE) ? rest.lying() : EyeFormula.insideLength(rest.round(), pin, rope);
        return Optional.of(soft(rest.round(), rest.flat(), used, rest.across(), pin));
    }

    private static Optional<EyeShape> ratio(EyeSpec.PinRatio eye, Diameter rope, String end, Problems problems) {
        FineLength used = eye.pin().times(eye.ratio());
        if (!EyeFormula.closes(used, eye.pin(), rope)) {
            FineLength least = eye.pin().asLength().plus(rope.times(new Ratio(1, 2)));
            problems.error(
                    end,
                    Sentence.of("an eye of ").and(used).and(" on its pin"),
                    Sentence.of("an eye that closes: an inside length in use above ")
                            .and(least));
            return Optional.empty();
        }
        FineLength round = EyeFormula.round(used, eye.pin(), rope);
        FineLength flat = EyeFormula.insideLength(round, Diameter.NONE, rope);
        return Optional.of(soft(round, flat, used, across(flat), eye.pin()));
    }

    /** The shortest eye laid flat that closes on a pin. */
    private static FineLength closing(Diameter pin, Diameter rope) {
        return EyeFormula.leastFlat(pin, rope).plus(new FineLength(1));
    }

    private static EyeShape soft(FineLength round, FineLength flat, FineLength used, FineLength across, Diameter pin) {
        return new EyeShape(round, flat, used, across, pin, false, FineLength.ZERO, Provenance.ARITHMETIC);
    }

    private Optional<EyeShape> thimble(EyeSpec.OnThimble lined, Rope rope, String end, Problems problems) {
        Optional<Thimble> found = splices.findThimble(lined.thimble());
        if (found.isEmpty()) {
            problems.error(
                    end,
                    lined.thimble(),
                    "the id of a thimble in thimbles.json, or of the program's own such as light-12 or heavy-1/2in"
                            + Nearest.hint(
                                    lined.thimble(),
                                    splices.thimbles().stream().map(Thimble::id).toList()));
            return Optional.empty();
        }
        Thimble thimble = found.get();
        if (!thimble.takes(rope.diameter())) {
            problems.error(
                    end,
                    Sentence.of("thimble " + thimble.id() + " on ").and(rope.diameter()),
                    Sentence.of("rope from ")
                            .and(thimble.ropeFrom())
                            .and(" to ")
                            .and(thimble.ropeTo())
                            .and(EndMaker.named(
                                    "thimbles",
                                    splices.thimbles().stream()
                                            .filter(each -> each.takes(rope.diameter()))
                                            .map(Thimble::id)
                                            .toList())));
            return Optional.empty();
        }
        if (!thimble.provenance().verified()) {
            problems.remark(
                    end,
                    "thimble " + thimble.id() + ", from " + thimble.provenance().source(),
                    "the shop's own measurements in thimbles.json: sheets differ by up to 15 %");
        }
        FineLength bearing = thimble.throatToBearing();
        FineLength round = EyeFormula.roundThimble(thimble.groove(), thimble.throatAngle(), rope.diameter());
        Provenance source = thimble.provenance().verified() ? Provenance.ARITHMETIC : thimble.provenance();
        return Optional.of(
                new EyeShape(round, bearing, bearing, FineLength.ZERO, lined.pin(), true, thimble.crown(), source));
    }

    /** A flat eye opened to a circle: its perimeter 2 h over pi. */
    private static FineLength across(FineLength flat) {
        return flat.times(2).times(Yardsticks.PI.inverse());
    }
}
