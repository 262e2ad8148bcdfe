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

    BuyStudy(Terminal terminal, StudyReels study, int threads) {
        this.terminal = terminal;
        this.study = study;
        this.threads = threads;
    }

    /** Prints one share for others to put together. */
    ExitCode share(Share share) {
        try (Interrupt interrupt = Interrupt.listening()) {
            terminal.out().print(StudyJson.text(workedOut(share, interrupt)));
            terminal.out().flush();
        }
        return ExitCode.DONE;
    }

    /** Prints the pages, of shares already worked out where files are given. */
    ExitCode report(List<Path> shares, Shop shop, Figures figures, boolean json, BuyPapers papers) {
        try (Interrupt interrupt = Interrupt.listening()) {
            Findings findings = new Findings();
            Optional<StudyPart> part =
                    shares.isEmpty() ? Optional.of(workedOut(Share.ALL, interrupt)) : study.merged(shares, findings);
            terminal.err().print(FindingsPage.text(findings.sorted(), terminal.ink()));
            if (part.isEmpty()) {
                return ExitCode.BAD_INPUT;
            }
            StudyReels.Found found = study.found(part.get());
            TradePages.unsaid(found, figures).forEach(terminal.err()::println);
            Document page = TradePages.of(shop, found, figures);
            terminal.out().print(json ? TradePages.json(shop, found) : page.text(terminal.ink()));
            terminal.out().flush();
            papers.write(page, found.verdicts(), figures, terminal);
            papers.tables.write(terminal, () -> TradePages.tables(found, figures));
        }
        return ExitCode.DONE;
    }

    private StudyPart workedOut(Share share, Interrupt interrupt) {
        return study.workedOut(
                share,
                new StudyReels.Watched(threads, interrupt::isAsked, rope -> new StudyProgress(terminal.err(), rope)));
    }
}
