package bitterend.exchange;

import bitterend.catalogue.BenchTools;
import bitterend.exchange.form.JsonTree;
import java.util.List;

/**
 * What the splicers of a new shop measure with.
 *
 * @param tools metric or inch tools
 * @param fids fids of its own; for ropes without one the table or the rule of practice holds
 */
public record NewBench(BenchTools tools, List<TypedFid> fids) {
    public NewBench {
        fids = List.copyOf(fids);
    }

    /** The file of its own fids. */
    String splices() {
        return new JsonTree()
                .with("format", SplicesJson.FORMAT)
                .with(
                        "fids",
                        new JsonTree()
                                .with("tools", fids.stream().map(TypedFid::tree).toList()))
                .text();
    }
}
