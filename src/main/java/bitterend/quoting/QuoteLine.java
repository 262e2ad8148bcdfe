package bitterend.quoting;

import bitterend.demand.Assembly;
import bitterend.demand.Demanded;
import bitterend.demand.EndWork;
import bitterend.demand.PickList;
import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.Written;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One line of a request: an assembly so many times.
 *
 * @param assembly what is asked for
 * @param demanded its pieces, and what its ends ask of the splicer
 * @param asked what else counts towards its price, and how far the customer would give way
 * @param booked minutes of its ends as they were booked at the bench; they come before what the terminations state
 */
public record QuoteLine(Assembly assembly, Demanded demanded, Asked asked, List<EndTime> booked) {
    /** Parts that a customer gets and sees; twine and tape go without saying. */
    private static final Pattern FITTINGS =
            Pattern.compile("(?<thing>thimble|fitting|shackle|hook|ring|swivel|link|master link"
                    + "|intermediate link|turnbuckle|wire rope clip|sleeve)\\b.*");

    public QuoteLine {
        booked = List.copyOf(booked);
    }

    /** Whose ends nobody has booked minutes for. */
    public QuoteLine(Assembly assembly, Demanded demanded, Asked asked) {
        this(assembly, demanded, asked, List.of());
    }

    /** Whether a part is one that the customer gets and sees, not twine or tape. */
    public static boolean isFitting(EndWork.Picked part) {
        return FITTINGS.matcher(part.item()).matches();
    }

    /** The words of so many of such parts: {@code 8 thimbles T20}. */
    public static String counted(EndWork.Picked part, String words) {
        Matcher fitting = FITTINGS.matcher(words);
        boolean several = part.count() > 1 && fitting.matches();
        return part.count() + " "
                + (several ? fitting.group("thing") + "s" + words.substring(fitting.end("thing")) : words);
    }

    /**
     * What else counts.
     *
     * @param hardware thimbles, fittings, shackles of one assembly
     * @param minutes labour for one assembly; {@link #BY_THE_ENDS} to take what the terminations state
     * @param test testing and papers for the whole line
     * @param leeway how far the customer would give way
     * @param terms how it is offered
     */
    public record Asked(Money hardware, int minutes, Money test, Leeway leeway, Terms terms) {
        /** Minutes as the terminations of the two ends state them. */
        public static final int BY_THE_ENDS = -1;
        /** Nothing stated. */
        public static final Asked NOTHING = new Asked(Money.ZERO, BY_THE_ENDS, Money.ZERO, Leeway.NONE);

        /** Offered as usual. */
        public Asked(Money hardware, int minutes, Money test, Leeway leeway) {
            this(hardware, minutes, test, leeway, Terms.USUAL);
        }
    }

    /**
     * How a line is offered.
     *
     * @param tax name of its rate of tax; empty for that of the customer
     * @param insteadOf name of the line that it could take the place of; empty for a line that is wanted itself
     */
    public record Terms(String tax, String insteadOf) {
        public static final Terms USUAL = new Terms("", "");
    }

    /**
     * How far the customer would give way.
     *
     * @param shorter how much shorter it may be
     * @param longer how much longer it may be
     * @param fewest fewest that would do; 0 for the quantity asked
     * @param most most that would be taken; 0 for the quantity asked
     */
    public record Leeway(Length shorter, Length longer, int fewest, int most) {
        public static final Leeway NONE = new Leeway(Length.ZERO, Length.ZERO, 0, 0);

        public Leeway {
            if (shorter.isNegative() || longer.isNegative() || fewest < 0 || most < 0) {
                throw new IllegalArgumentException(
                        "shorter " + shorter + ", longer " + longer + ", from " + fewest + " to " + most);
            }
        }
    }

    /** The line within its request, and which part of a product it is. */
    public String name() {
        String line = assembly.ordered().source().line();
        String part = assembly.membership().part();
        return part.isEmpty() ? line : line + " " + part;
    }

    /** Whether it could take the place of another line, and is not wanted beside that. */
    public boolean isAlternative() {
        return !asked.terms().insteadOf().isEmpty();
    }

    /** The same in another length and as often as that. */
    QuoteLine changed(Written finished, int quantity, Function<Assembly, Demanded> model) {
        Assembly.Ordered ordered = assembly.ordered();
        Assembly.Make make = assembly.make();
        Assembly other = new Assembly(
                assembly.origin(),
                new Assembly.Ordered(
                        ordered.source(),
                        ordered.customer(),
                        ordered.product(),
                        quantity,
                        ordered.legs(),
                        ordered.note()),
                assembly.ropes(),
                new Assembly.Make(
                        finished, make.measuring(), make.endA(), make.endB(), make.extras(), make.asked(), make.hang()),
                assembly.terms(),
                assembly.membership());
        return new QuoteLine(other, model.apply(other), asked, booked);
    }

    /** The rope as asked for. */
    public String rope() {
        return assembly.ropes().get(0);
    }

    /** The day by which it is asked for; {@link LocalDate#MAX} when none is named. */
    public LocalDate due() {
        return assembly.ordered().source().due();
    }

    public int quantity() {
        return assembly.ordered().quantity();
    }

    public List<Piece> pieces() {
        return demanded.pieces();
    }

    /** Whether it is made of the customer's own rope, which costs the shop nothing. */
    public boolean ownRope() {
        return assembly.terms().ownRope();
    }

    /** All cut lengths together. */
    public Length cut() {
        return pieces().stream().map(Piece::cut).reduce(Length.ZERO, Length::plus);
    }

    /** Rope that is cut off its first piece for a test; nothing for most. */
    public Length sample() {
        return assembly.make().extras().sample().roundedUp();
    }

    /** All finished lengths together. */
    public Length finished() {
        return assembly.make().finished().roundedUp().times(assembly.ordered().pieces());
    }

    /** Labour for one assembly, as stated, else as its ends say. */
    public int minutes() {
        return asked.minutes() != Asked.BY_THE_ENDS
                ? asked.minutes()
                : assembly.ordered().legs()
                        * demanded.work().stream().mapToInt(this::minutes).sum();
    }

    /** Of one end: as booked at the bench, else as its termination states. */
    public int minutes(EndWork end) {
        return findBooked(end).map(EndTime::minutes).orElse(end.minutes());
    }

    /** What was booked at the bench for such ends; nothing where that is too little. */
    public Optional<EndTime> findBooked(EndWork end) {
        return booked.stream()
                .filter(time -> time.ends() >= EndTime.LEAST
                        && time.termination().equals(end.termination())
                        && time.rope().equals(rope()))
                .findFirst();
    }

    /** The same with the minutes that were booked for ends. */
    public QuoteLine with(List<EndTime> times) {
        return new QuoteLine(assembly, demanded, asked, times);
    }

    /** Parts to be picked for the whole line; none where the request states one price for them all. */
    public List<EndWork.Picked> parts() {
        return asked.hardware().equals(Money.ZERO) ? picked() : List.of();
    }

    /** Everything that is picked for the whole line. */
    public List<EndWork.Picked> picked() {
        PickList parts = new PickList();
        parts.add(assembly, demanded);
        return parts.items();
    }

    /** Hardware of the whole line: as the request states it for each assembly, else the parts that have a price. */
    public Money hardware(PartPrices prices) {
        return asked.hardware().times(quantity()).plus(prices.of(parts()));
    }

    /** Ends that take time which nobody has stated. */
    public List<String> untimedEnds() {
        return asked.minutes() != Asked.BY_THE_ENDS
                ? List.of()
                : demanded.work().stream()
                        .filter(end -> !end.isTimed() && findBooked(end).isEmpty())
                        .map(EndWork::name)
                        .distinct()
                        .toList();
    }
}
