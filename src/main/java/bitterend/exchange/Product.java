package bitterend.exchange;

import bitterend.demand.EndWork;
import java.util.List;
import java.util.Map;

/**
 * A standard product of the shop: what an order line takes over from it. Texts may hold {@code {names}} of parameters, and
 * {@code {length}} and {@code {legs}} of the line.
 *
 * @param id the name orders use
 * @param parameters what an order line may set, with the usual value; an empty one must be set
 * @param line texts for the columns of the main part
 * @param parts texts for the columns of further parts, by the name of the part
 * @param hardware parts to pick for each assembly
 */
record Product(
        String id,
        Map<String, String> parameters,
        Map<String, String> line,
        Map<String, Map<String, String>> parts,
        List<EndWork.Picked> hardware) {}
