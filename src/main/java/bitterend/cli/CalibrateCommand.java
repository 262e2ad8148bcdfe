package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.demand.calibration.Calibration;
import bitterend.exchange.CalibratedSplices;
import bitterend.exchange.CalibrationJson;
import bitterend.exchange.Shop;
import bitterend.finding.Finding;
import bitterend.report.CalibrationPage;
import bitterend.report.FindingsPage;
import bitterend.work.ShopNow;
import bitterend.work.trade.LearnTakeUp;
import bitterend.work.trade.LearnTakeUp.Result;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code calibrate SHOP}: take-up learned from measured assemblies. */
@Command(
        name = "calibrate",
        header = "Learns take-up from assemblies the shop has measured.",
        description = {
            "",
            "Reads measured.csv, estimates the take-up of each termination on each rope and",
            "says what that changes in the open orders. At least three assemblies measured",
            "alike are needed; gross outliers are named and left out. Planned with is what",
            "the next splice stays below 95 times in 100, not the mean. Where minutes were",
            "booked, their mean for one end is shown beside those that splices.json sets.",
            ""
        },
        sortOptions = false)
final class CalibrateCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Option(names = "--write", description = "Write it into splices.json; the old one is kept as splices.json.old.")
    private boolean write;

    @Option(
            names = "--splicer",
            paramLabel = "NAME",
            description = "Learn from the assemblies of one splicer alone, and plan with them.")
    private String splicer = "";

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    CalibrateCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<ShopNow> read = shop.readOrComplain(terminal);
        return (read.isEmpty() ? ExitCode.BAD_INPUT : calibrate(read.get())).number();
    }

    private ExitCode calibrate(ShopNow now) {
        Shop read = now.shop();
        LearnTakeUp verb = new LearnTakeUp(now);
        Result result = verb.learn(units.figures(read).units(), splicer);
        if (result instanceof Result.NotLearned not) {
            return complain(not.findings());
        }
        Result.Learned learned = (Result.Learned) result;
        Calibration calibration = learned.calibration();
        files.show(
                terminal,
                common.json,
                new Answer(
                        () -> CalibrationJson.of(calibration, learned.effects(), learned.minutes()),
                        () -> new CalibrationPage(units.figures(read))
                                .of(calibration.fits(), learned.effects(), learned.minutes(), read.catalogue())));
        if (!calibration.findings().isEmpty()) {
            terminal.err().print(FindingsPage.text(calibration.findings(), terminal.ink()));
        }
        return write && !calibration.fits().isEmpty() ? write(verb, learned) : finished(calibration);
    }

    /** What could be fitted is written even when something else could not. */
    private ExitCode write(LearnTakeUp verb, Result.Learned learned) {
        List<Finding> findings = verb.write(learned);
        if (!findings.isEmpty()) {
            return complain(findings);
        }
        terminal.err().println("splices.json is written; as it was it is kept as " + CalibratedSplices.KEPT + ".");
        return finished(learned.calibration());
    }

    private static ExitCode finished(Calibration calibration) {
        if (calibration.fits().isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        return calibration.findings().stream().anyMatch(Finding::leavesOut) ? ExitCode.NOT_ALL_PLANNED : ExitCode.DONE;
    }

    private ExitCode complain(List<Finding> findings) {
        terminal.err().print(FindingsPage.text(findings, terminal.ink()));
        terminal.err().println(FindingsPage.summary(findings) + ": nothing was written.");
        return ExitCode.BAD_INPUT;
    }
}
