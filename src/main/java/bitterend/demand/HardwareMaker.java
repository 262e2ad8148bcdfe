package bitterend.demand;

import bitterend.catalogue.Hardware;
import bitterend.catalogue.Hardware.Kind;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.finding.Nearest;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the hardware of an end, set as the order says, or tells why it cannot hang there. */
final class HardwareMaker {
    private static final String SETTINGS = "how far it is open: closed, half open, open, open 30 % or at 320 mm";

    private final SpliceBook splices;

    HardwareMaker(SpliceBook splices) {
        this.splices = splices;
    }

    /** What hangs on an end, from the rope outwards; empty, with an error told, when it cannot. */
    Optional<List<HungHardware>> hung(EndSpec spec, Termination row, String end, Problems problems) {
        List<HungHardware> hung = new ArrayList<>();
        List<HardwareSpec> wanted = spec.options().hardware();
        if (!wanted.isEmpty() && !takesHardware(row)) {
            problems.error(end, row.id() + " with hardware", "an eye or a fitting that hardware can hang on");
            return Optional.empty();
        }
        for (HardwareSpec each : wanted) {
            hung(each, end, problems).ifPresent(hung::add);
        }
        return hung.size() == wanted.size() ? Optional.of(hung) : Optional.empty();
    }

    private static boolean takesHardware(Termination row) {
        return switch (row.kind()) {
            case EYE, LOOP, FITTING -> true;
            default -> false;
        };
    }

    private Optional<HungHardware> hung(HardwareSpec wanted, String end, Problems problems) {
        if (wanted.what() instanceof HardwareSpec.Stated stated) {
            Hardware hardware = stated.hardware();
            return Optional.of(new HungHardware(hardware, hardware.inside(), "", wanted.shared(), false));
        }
        HardwareSpec.Row row = (HardwareSpec.Row) wanted.what();
        Optional<Hardware> found = splices.findHardware(row.id());
        if (found.isEmpty()) {
            problems.error(
                    end,
                    row.id(),
                    "the id of hardware in thimbles.json that can be used, or its kind and length, such as"
                            + " shackle inside 48 mm"
                            + Nearest.hint(
                                    row.id(),
                                    splices.hardware().stream()
                                            .map(Hardware::id)
                                            .toList()));
            return Optional.empty();
        }
        return set(found.get(), row.setting(), end, problems)
                .map(inside -> new HungHardware(found.get(), inside, words(row.setting()), wanted.shared(), false));
    }

    private static Optional<FineLength> set(
            Hardware hardware, HardwareSpec.Setting setting, String end, Problems problems) {
        boolean turnbuckle = hardware.kind() == Kind.TURNBUCKLE;
        if (setting instanceof HardwareSpec.NotStated) {
            if (turnbuckle) {
                problems.error(end, hardware.name(), SETTINGS);
                return Optional.empty();
            }
            return Optional.of(hardware.inside());
        }
        if (!turnbuckle) {
            problems.error(end, hardware.name() + " " + words(setting), "no setting: only a turnbuckle has one");
            return Optional.empty();
        }
        if (setting instanceof HardwareSpec.Open open) {
            return Optional.of(hardware.openBy(open.part()));
        }
        FineLength at = ((HardwareSpec.At) setting).inside();
        if (at.compareTo(hardware.inside()) < 0 || at.compareTo(hardware.opened()) > 0) {
            problems.error(
                    end,
                    Sentence.of(hardware.name() + " at ").and(at),
                    Sentence.of("from ")
                            .and(hardware.inside())
                            .and(" closed to ")
                            .and(hardware.opened())
                            .and(" open"));
            return Optional.empty();
        }
        return Optional.of(at);
    }

    private static String words(HardwareSpec.Setting setting) {
        if (setting instanceof HardwareSpec.Open open) {
            return open.words();
        }
        return setting instanceof HardwareSpec.At at ? "at " + LengthText.exact(at.inside()) : "";
    }
}
