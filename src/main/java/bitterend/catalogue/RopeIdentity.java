package bitterend.catalogue;

import bitterend.measure.Diameter;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What makes two ropes the same rope. Empty text where the maker states nothing.
 *
 * @param construction how the strands are put together
 * @param fibre what carries the load
 * @param core core material or kind
 * @param grade strength grade
 * @param diameter nominal diameter
 * @param lay direction of lay
 * @param finish coating, galvanising, heat setting
 * @param colour colour of the rope
 * @param tracer coloured marker yarn
 * @param makeUp of wire, how its wires are put together; {@link MakeUp#NONE} where it is not stated
 */
public record RopeIdentity(
        Construction construction,
        Fibre fibre,
        String core,
        String grade,
        Diameter diameter,
        Lay lay,
        String finish,
        String colour,
        String tracer,
        MakeUp makeUp) {
    /** One whose make-up is not stated. */
    public RopeIdentity(
            Construction construction,
            Fibre fibre,
            String core,
            String grade,
            Diameter diameter,
            Lay lay,
            String finish,
            String colour,
            String tracer) {
        this(construction, fibre, core, grade, diameter, lay, finish, colour, tracer, MakeUp.NONE);
    }

    /** {@code polyester 3-strand}, {@code steel wire 7x19}. */
    public String build() {
        return Stream.of(fibre.word(), construction.word(), makeUp.word())
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(" "));
    }

    /** {@code 3-strand of polyester}, {@code wire 7x19 of steel}. */
    public String described() {
        String madeUp = makeUp.word().isEmpty() ? "" : " " + makeUp.word();
        return construction.word() + madeUp + " of " + fibre.word();
    }
}
