package bitterend.cli;

import bitterend.buying.Share;
import bitterend.exchange.Shop;
import bitterend.exchange.StudyJson;
import bitterend.exchange.StudyPart;
import bitterend.finding.Findings;
import bitterend.front.TradePages;
import bitterend.report.Figures;
import bitterend.report.FindingsPage;
import bitterend.report.page.Document;
import bitterend.work.trade.StudyReels;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The study of a shop's ropes: worked out, shared out or put together, and shown. */
final class BuyStudy {
    private final Terminal terminal;
    private final StudyReels study;
    private final int threads;
    private final Interrupt interrupt;

    BuyStudy(Terminal terminal, StudyReels study, int threads, Interrupt interrupt) {
        this.terminal = terminal;
        this.study = study;
        this.threads = threads;
        this.interrupt = interrupt;
    }

    /** Prints one share for others to put together. */
    ExitCode share(Share share) {
        StudyPart part = workedOut(share);
        if (isStoppedEmpty(part)) {
            return ExitCode.STOPPED;
        }
        terminal.out().print(StudyJson.text(part));
        terminal.out().flush();
        return ExitCode.DONE;
    }

    /** Prints the pages, of shares already worked out where files are given. */
    ExitCode report(List<Path> shares, Shop shop, Figures figures, boolean json, BuyPapers papers) {
        Findings findings = new Findings();
        boolean merges = !shares.isEmpty();
        Optional<StudyPart> part = merges ? study.merged(shares, findings) : Optional.of(workedOut(Share.ALL));
        terminal.err().print(FindingsPage.text(findings.sorted(), terminal.ink()));
        if (part.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        if (!merges && isStoppedEmpty(part.get())) {
            return ExitCode.STOPPED;
        }
        StudyReels.Found found = study.found(part.get());
        TradePages.unsaid(found, figures).forEach(terminal.err()::println);
        Document page = TradePages.of(shop, found, figures);
        if (merges) {
            interrupt.begin("the pages are written");
        }
        terminal.out().print(json ? TradePages.json(shop, found) : page.text(terminal.ink()));
        terminal.out().flush();
        papers.write(page, found.verdicts(), figures, terminal);
        papers.tables.write(terminal, () -> TradePages.tables(found, figures));
        return ExitCode.DONE;
    }

    private StudyPart workedOut(Share share) {
        interrupt.begin("the study of the scenarios worked out so far is shown");
        return study.workedOut(
                share,
                new StudyReels.Watched(threads, interrupt::isAsked, rope -> new StudyProgress(terminal.err(), rope)));
    }

    /** Tells that the study was broken off; whether there is nothing of it. */
    private boolean isStoppedEmpty(StudyPart part) {
        boolean nothing = interrupt.isAsked()
                && part.ropes().values().stream()
                        .allMatch(rope -> rope.scenarios().isEmpty());
        interrupt.tell(
                nothing
                        ? "no scenario of the study was worked out yet. Nothing was kept or written; the same command begins anew."
                        : "the study is of the scenarios worked out so far, so what it says is less sure.");
        return nothing;
    }
}
