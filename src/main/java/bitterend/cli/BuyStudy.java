package bitterend.cli;

import bitterend.buying.HoldOutComparison;
import bitterend.buying.KnotValue;
import bitterend.buying.Offer;
import bitterend.buying.RackWorth;
import bitterend.buying.Reorder;
import bitterend.buying.Scenario;
import bitterend.buying.Share;
import bitterend.buying.Simulation;
import bitterend.buying.Study;
import bitterend.buying.Verdict;
import bitterend.catalogue.Rope;
import bitterend.exchange.BuyJson;
import bitterend.exchange.Shop;
import bitterend.exchange.StudyJson;
import bitterend.exchange.StudyPart;
import bitterend.finding.Findings;
import bitterend.packing.strategy.StudyStrategy;
import bitterend.report.BuyHintsPage;
import bitterend.report.BuyStudyPage;
import bitterend.report.Figures;
import bitterend.report.FindingsPage;
import bitterend.stock.StockValue;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/** The studies of a shop's ropes: worked out, shared out or put together. */
final class BuyStudy {
    static final String NOTHING = "no rope to study has both an offer in offers.csv and a past in history.csv";
    private static final int DAYS_OF_A_WEEK = 7;

    private final Terminal terminal;
    private final Shop shop;
    private final Study.Size size;
    private final int threads;
    private final List<Study> studies;

    /** {@code only} names the ropes to study; all that have offers and a past when it is empty. */
    BuyStudy(Terminal terminal, Shop shop, Study.Size size, List<String> only, int threads, LocalDate day) {
        this.terminal = terminal;
        this.shop = shop;
        this.size = size;
        this.threads = threads;
        studies = studies(shop, size, only, rope -> worth(shop, rope, day));
    }

    /** What coils of a rope are worth on a rack: as the shop typed it, else by the coil curve. */
    private static RackWorth worth(Shop shop, Rope rope, LocalDate day) {
        KnotValue typed = shop.supplies().values().typed().get(rope.id());
        return typed == null ? coils(shop, rope, day) : typed(shop, typed, rope);
    }

    /** What coils of a rope are worth by a curve of the shop's own, never more than the cheapest offer by the metre. */
    static RackWorth typed(Shop shop, StockValue typed, Rope rope) {
        return Offer.cheapest(rope.id(), shop.supplies().offers())
                .map(offer -> RackWorth.always(typed, offer.byMetre()))
                .orElseGet(() -> RackWorth.always(typed));
    }

    /** What coils of a rope are worth by the coil curve, where the cheapest offer by the metre is bought. */
    static RackWorth coils(Shop shop, Rope rope, LocalDate day) {
        return Offer.cheapest(rope.id(), shop.supplies().offers())
                .map(offer -> RackWorth.of(shop.coilValue(rope, day, offer.byMetre(), offer.usable())))
                .orElseGet(() -> RackWorth.of(shop.coilValue(rope, day)));
    }

    /** The studies of a shop, coils being worth what is given for their rope. */
    static List<Study> studies(Shop shop, Study.Size size, List<String> only, Function<Rope, RackWorth> worth) {
        return shop.catalogue().ropes().stream()
                .filter(rope -> only.isEmpty() || only.contains(rope.id()))
                .filter(rope -> shop.supplies().offers().stream()
                        .anyMatch(offer -> offer.rope().equals(rope.id()) && offer.plannable()))
                .filter(rope -> shop.supplies().history().ropes().contains(rope.id()))
                .map(rope -> Study.of(
                        rope,
                        worth.apply(rope),
                        shop.settings().prices(),
                        shop.supplies().offers(),
                        shop.supplies().history().cutsOf(rope.id()),
                        size))
                .toList();
    }

    /** Prints one share for others to put together. */
    ExitCode share(Share share) {
        if (nothingToStudy()) {
            return ExitCode.BAD_INPUT;
        }
        try (Interrupt interrupt = Interrupt.listening()) {
            terminal.out().print(StudyJson.text(part(workedOut(share, interrupt))));
            terminal.out().flush();
        }
        return ExitCode.DONE;
    }

    /** Prints the pages, of shares already worked out where files are given. */
    ExitCode report(List<Path> shares, Figures figures, boolean json, BuyPapers papers) {
        if (nothingToStudy()) {
            return ExitCode.BAD_INPUT;
        }
        try (Interrupt interrupt = Interrupt.listening()) {
            Findings findings = new Findings();
            Optional<StudyPart> part = shares.isEmpty()
                    ? Optional.of(part(workedOut(Share.ALL, interrupt)))
                    : StudyJson.merged(shares, part(Map.of()), findings);
            terminal.err().print(FindingsPage.text(findings.sorted(), terminal.ink()));
            if (part.isEmpty()) {
                return ExitCode.BAD_INPUT;
            }
            List<Verdict> verdicts = verdicts(part.get());
            print(verdicts, figures, json);
            terminal.out().flush();
            papers.write(shop.settings().name(), verdicts, figures, terminal);
        }
        return ExitCode.DONE;
    }

    private boolean nothingToStudy() {
        if (studies.isEmpty()) {
            terminal.err().println("error: " + NOTHING);
        }
        return studies.isEmpty();
    }

    private Map<String, List<Scenario>> workedOut(Share share, Interrupt interrupt) {
        Map<String, List<Scenario>> scenarios = new TreeMap<>();
        for (Study study : studies) {
            Simulation simulation = new Simulation(
                    new StudyStrategy(),
                    threads,
                    interrupt::isAsked,
                    new StudyProgress(terminal.err(), study.rope().id()));
            scenarios.put(study.rope().id(), simulation.scenarios(study, share));
        }
        return scenarios;
    }

    private StudyPart part(Map<String, List<Scenario>> scenarios) {
        return new StudyPart(StudyPart.key(shop, Version.number()), size, scenarios);
    }

    private List<Verdict> verdicts(StudyPart part) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Study study : studies) {
            List<Scenario> scenarios = part.ropes().getOrDefault(study.rope().id(), List.of());
            if (HoldOutComparison.isEnough(scenarios)) {
                verdicts.add(HoldOutComparison.of(study, scenarios));
            } else {
                terminal.err()
                        .println(
                                study.rope().id() + ": " + scenarios.size() + " scenarios are too few to say anything");
            }
        }
        return verdicts;
    }

    private void print(List<Verdict> verdicts, Figures figures, boolean json) {
        List<Reorder> hints = studies.stream().map(this::hint).toList();
        if (json) {
            terminal.out().print(new BuyJson(shop.settings().money()).study(verdicts, hints));
            return;
        }
        verdicts.forEach(verdict -> terminal.out()
                .println(new BuyStudyPage(figures, verdict).document().text(terminal.ink())));
        terminal.out().print(new BuyHintsPage(figures).of(hints).text(terminal.ink()));
    }

    /** The weeks until the quickest offer could be on the rack, begun weeks in full, and one more. */
    private Reorder hint(Study study) {
        int lead = shop.supplies().offers().stream()
                .filter(offer -> offer.rope().equals(study.rope().id()) && offer.plannable())
                .mapToInt(offer -> offer.terms().leadDays())
                .min()
                .orElse(0);
        int weeks = (lead + DAYS_OF_A_WEEK - 1) / DAYS_OF_A_WEEK + 1;
        return Reorder.of(
                study.rope(), study.weeks(), shop.reels(), shop.supplies().onOrder(), weeks, size.seed());
    }
}
