package bitterend.packing.strategy;

import bitterend.packing.check.Fault;
import java.util.List;
import java.util.stream.Collectors;

/** The checker found a fault in a plan of ours: the plan is not shown and not saved. */
public final class UnsoundPlanException extends IllegalStateException {
    private static final long serialVersionUID = 1L;

    UnsoundPlanException(List<Fault> faults) {
        super(faults.stream().map(Fault::toString).collect(Collectors.joining("; ", "the plan is not sound: ", "")));
    }
}
