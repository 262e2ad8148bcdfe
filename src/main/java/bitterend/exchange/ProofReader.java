package bitterend.exchange;

import bitterend.exchange.form.Fields;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.Reading;
import bitterend.measure.Parsed;
import bitterend.packing.proof.Holder;
import bitterend.packing.proof.PriceList;
import bitterend.packing.proof.PriceList.PiecePrice;
import bitterend.packing.proof.PriceList.Touch;
import bitterend.packing.proof.ProofNode;
import bitterend.packing.proof.ProofTree;
import bitterend.packing.proof.RunOfReel;
import bitterend.packing.proof.Statement;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads a proof by cases as {@link ProofForm} writes it. What it does not know it tells, and makes no proof of. */
final class ProofReader {
    private static final Pattern NUMBERS = Pattern.compile("-?[0-9]{1,18}( -?[0-9]{1,18})*");

    private ProofReader() {}

    static ProofTree read(JsonObject proof) {
        List<ProofTree.Line> lines = proof.objects("lines").stream()
                .map(line -> new ProofTree.Line(line.texts("pieces")))
                .toList();
        List<PriceList> prices =
                proof.objects("prices").stream().map(ProofReader::prices).toList();
        ProofNode root = root(proof).orElseGet(() -> {
            proof.objects("tree").forEach(JsonObject::leave);
            proof.fields()
                    .error(
                            "tree",
                            "two cases behind every statement, at most " + ProofTree.DEEPEST + " one in another");
            return ProofNode.EMPTY;
        });
        return new ProofTree(lines, PlanReader.scale(proof.fields()), prices, root);
    }

    private static PriceList prices(JsonObject list) {
        List<PiecePrice> pieces = new ArrayList<>();
        List<Long> rack = numbers(list.fields(), "rack");
        for (int line = 0; line < rack.size(); line++) {
            if (rack.get(line) != 0) {
                pieces.add(new PiecePrice(line, Holder.RACK, rack.get(line)));
            }
        }
        list.objects("elsewhere")
                .forEach(price -> pieces.add(new PiecePrice(
                        (int) upTo(price.fields(), "line", Integer.MAX_VALUE),
                        holder(price),
                        number(price.fields(), "price"))));
        return new PriceList(
                pieces,
                list.objects("orders").stream().map(ProofReader::touch).toList(),
                list.objects("sets").stream().map(ProofReader::touch).toList(),
                numbers(list.fields(), "undone").stream()
                        .map(price -> Math.max(0, price))
                        .toList());
    }

    private static Touch touch(JsonObject touch) {
        return new Touch(text(touch, "of"), run(touch), upTo(touch.fields(), "price", Long.MAX_VALUE));
    }

    /** The nodes put together from the last one back; empty when they make no tree. */
    private static Optional<ProofNode> root(JsonObject proof) {
        List<JsonObject> nodes = proof.objects("tree");
        Deque<ProofNode> done = new ArrayDeque<>();
        Deque<Integer> depths = new ArrayDeque<>();
        for (int i = nodes.size() - 1; i >= 0; i--) {
            JsonObject node = nodes.get(i);
            String word = text(node, "case");
            int depth = 0;
            if (word.equals("leaf")) {
                done.push(new ProofNode.Leaf((int) upTo(node.fields(), "prices", Integer.MAX_VALUE)));
            } else if (word.equals("empty")) {
                done.push(ProofNode.EMPTY);
            } else if (done.size() < 2) {
                return Optional.empty();
            } else {
                Statement statement = statement(node, word);
                ProofNode yes = done.pop();
                done.push(new ProofNode.Branch(statement, yes, done.pop()));
                depth = 1 + Math.max(depths.pop(), depths.pop());
            }
            depths.push(depth);
            if (depth > ProofTree.DEEPEST) {
                return Optional.empty();
            }
        }
        return done.size() == 1 ? Optional.of(done.pop()) : Optional.empty();
    }

    private static Statement statement(JsonObject node, String word) {
        return switch (word) {
            case "set" -> new Statement.SetOn(text(node, "set"), holder(node));
            case "order" -> new Statement.OrderTakes(text(node, "order"), holder(node));
            case "used" -> new Statement.ReelUsed(text(node, "reel"));
            case "load" -> new Statement.LoadAtMost(run(node), upTo(node.fields(), "mm", Long.MAX_VALUE / 4));
            case "copies" -> new Statement.CopiesAtMost(
                    (int) upTo(node.fields(), "line", Integer.MAX_VALUE), run(node), pieces(node));
            case "undone" -> new Statement.UndoneAtMost(
                    (int) upTo(node.fields(), "line", Integer.MAX_VALUE), pieces(node));
            default -> unknown(node);
        };
    }

    private static Statement unknown(JsonObject node) {
        node.leave();
        node.fields().error("case", "one of: set, order, used, load, copies, undone, leaf, empty");
        return new Statement.UndoneAtMost(0, 0);
    }

    private static int pieces(JsonObject node) {
        return (int) upTo(node.fields(), "pieces", Integer.MAX_VALUE - 1);
    }

    private static RunOfReel run(JsonObject node) {
        return new RunOfReel(text(node, "reel"), (int) Math.max(1, upTo(node.fields(), "run", Integer.MAX_VALUE)));
    }

    private static Holder holder(JsonObject node) {
        return node.has("lot") && !text(node, "lot").isEmpty()
                ? new Holder.Lot(text(node, "rope"), text(node, "lot"))
                : new Holder.OneReel(text(node, "reel"));
    }

    private static String text(JsonObject node, String name) {
        return node.fields().require(name, Parsed::of, "?");
    }

    private static long number(Fields fields, String name) {
        List<Long> one = numbers(fields, name);
        if (one.size() != 1) {
            fields.error(name, "a whole number");
        }
        return one.isEmpty() ? 0 : one.get(0);
    }

    /** A whole number from 0 to a limit. */
    private static long upTo(Fields fields, String name, long most) {
        long number = number(fields, name);
        if (number < 0 || number > most) {
            fields.error(name, "a whole number from 0 to " + most);
            return 0;
        }
        return number;
    }

    private static List<Long> numbers(Fields fields, String name) {
        Reading<List<Long>> reading = text -> NUMBERS.matcher(text).matches()
                ? Parsed.of(Arrays.stream(text.split(" ")).map(Long::parseLong).toList())
                : Parsed.refused("whole numbers, such as 0 36 5");
        return fields.optional(name, reading, List.of());
    }
}
