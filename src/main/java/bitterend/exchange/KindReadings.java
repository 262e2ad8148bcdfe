package bitterend.exchange;

import bitterend.catalogue.Construction;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.MakeUp;
import bitterend.catalogue.Need;
import bitterend.catalogue.RopeKinds;
import bitterend.catalogue.RopeLimits;
import bitterend.catalogue.Suits;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.finding.Nearest;
import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import bitterend.measure.Parsed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How constructions, fibres and make-ups are named in files, and rows limited to some of them. */
final class KindReadings {
    private static final Reading<Need> NEED = Readings.word(Need.values(), Need::word);
    private static final Pattern SHARE = Pattern.compile("(.+?)\\s+([1-9][0-9]?)\\s*%");

    private final RopeKinds kinds;
    private final boolean anyName;

    private KindReadings(RopeKinds kinds, boolean anyName) {
        this.kinds = kinds;
        this.anyName = anyName;
    }

    /** For files of a shop: a name that no row has is told. */
    static KindReadings of(RopeKinds kinds) {
        return new KindReadings(kinds, false);
    }

    /** For what the program wrote: a name that has lost its row is still a name. */
    static KindReadings ofPlans() {
        return new KindReadings(RopeKindsJson.builtIn(), true);
    }

    /** Whether every name has its row, so that what a row says of it can be relied on. */
    boolean haveRows() {
        return !anyName;
    }

    Parsed<Construction> construction(String text) {
        return named(text, kinds.constructions(), Construction::word, Construction::named);
    }

    Parsed<MakeUp> makeUp(String text) {
        return named(text, kinds.makeUps(), MakeUp::word, MakeUp::named);
    }

    /** One fibre, or a blend such as {@code polyester 60 % + polypropylene 40 %}. */
    Parsed<Fibre> fibre(String text) {
        return text.contains("%") ? blend(text) : pure(text);
    }

    private Parsed<Fibre> pure(String text) {
        return named(text, kinds.fibres(), Fibre::word, Fibre::named);
    }

    private Parsed<Fibre> blend(String text) {
        String expected =
                "shares of two fibres or more that add up to 100 %, such as polyester 60 % + polypropylene 40 %";
        List<Fibre.Share> shares = new ArrayList<>();
        Set<Fibre> met = new HashSet<>();
        int sum = 0;
        for (String part : text.split("\\+", -1)) {
            Matcher share = SHARE.matcher(part.strip());
            if (!share.matches()) {
                return Parsed.refused(expected);
            }
            Parsed<Fibre> fibre = pure(share.group(1));
            if (fibre.value().isEmpty()) {
                return fibre;
            }
            int percent = Integer.parseInt(share.group(2));
            sum += percent;
            Fibre of = fibre.value().get();
            if (of.nature().metal() || !met.add(of)) {
                return Parsed.refused("fibres, each once: steel is in no blend");
            }
            shares.add(new Fibre.Share(of, percent));
        }
        return shares.size() > 1 && sum == 100 ? Parsed.of(Fibre.blend(shares)) : Parsed.refused(expected);
    }

    private <T> Parsed<T> named(String text, List<T> rows, Function<T, String> word, Function<String, T> unknown) {
        Optional<T> found = rows.stream()
                .filter(row -> Readings.plain(word.apply(row)).equals(Readings.plain(text)))
                .findFirst();
        if (found.isPresent() || anyName) {
            return Parsed.of(found.orElseGet(() -> unknown.apply(text)));
        }
        List<String> names = rows.stream().map(word).toList();
        return Parsed.refused("one of: " + String.join(", ", names) + Nearest.hint(text, names));
    }

    /** The ropes a row is for; what it leaves out stays as usual. */
    Suits suits(JsonObject row, Suits usual) {
        return new Suits(
                row.has("constructions") ? set(row, "constructions", this::construction) : usual.constructions(),
                row.has("fibres") ? set(row, "fibres", this::pure) : usual.fibres(),
                row.has("refused") ? refused(row.object("refused")) : usual.warnings(),
                row.has("needs") ? set(row, "needs", NEED) : usual.needs(),
                limits(row, usual.limits()));
    }

    private RopeLimits limits(JsonObject row, RopeLimits usual) {
        boolean sized = row.has("sizes");
        JsonObject sizes = row.object("sizes");
        return new RopeLimits(
                row.has("ropes") ? Set.copyOf(row.texts("ropes")) : usual.ropes(),
                sized ? sizes.fields().optional("from", DiameterText::parse, Diameter.NONE) : usual.from(),
                sized ? BookRow.limit(sizes) : usual.to(),
                row.has("makeUps") ? set(row, "makeUps", this::makeUp) : usual.makeUps(),
                row.has("ropeGrades") ? Set.copyOf(row.texts("ropeGrades")) : usual.grades());
    }

    /** Why a rope is refused, by the name of its construction, its make-up or a fibre. */
    private Map<String, String> refused(JsonObject refused) {
        Map<String, String> warnings = new HashMap<>();
        for (String name : refused.names()) {
            Optional<String> word = construction(name)
                    .value()
                    .map(Construction::word)
                    .or(() -> makeUp(name).value().map(MakeUp::word))
                    .or(() -> pure(name).value().map(Fibre::word));
            String why = refused.fields().require(name, Readings::text, "?");
            word.ifPresentOrElse(known -> warnings.put(known, why), () -> refused.fields()
                    .error(name, "a construction, a make-up or a fibre" + hint(name)));
        }
        return warnings;
    }

    private String hint(String name) {
        List<String> names = new ArrayList<>();
        kinds.constructions().forEach(row -> names.add(row.word()));
        kinds.makeUps().forEach(row -> names.add(row.word()));
        kinds.fibres().forEach(row -> names.add(row.word()));
        return Nearest.hint(name, names);
    }

    private static <T> Set<T> set(JsonObject row, String field, Reading<T> reading) {
        Set<T> set = new HashSet<>();
        row.texts(field).forEach(text -> BookRow.read(row, field, text, reading).ifPresent(set::add));
        return set;
    }
}
