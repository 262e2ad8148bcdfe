package bitterend.stock;

import java.util.Map;

/**
 * The canonical text of an event: one line for each fact of it, in a fixed order, names and values as they were typed but
 * for line breaks and backslashes, which are written {@code \n}, {@code \r} and {@code \\}. Lengths in millimetres, masses in
 * grams, moments in UTC.
 */
final class EventText {
    private final StringBuilder text = new StringBuilder();

    private EventText() {}

    static String of(Event event) {
        EventText text = new EventText();
        text.event(event);
        event.movements().forEach(text::movement);
        return text.text.toString();
    }

    private void event(Event event) {
        Event.Act act = event.act();
        line("event", event.number());
        line("id", act.id());
        line("at", event.at());
        line("who", act.who());
        line("kind", act.kind().name());
        line("note", act.note());
        line("undoes", act.undoes());
        for (Map.Entry<String, String> fact : act.facts().entrySet()) {
            line("fact", fact.getKey());
            line("is", fact.getValue());
        }
    }

    private void movement(Movement movement) {
        Movement.Entry entry = movement.entry();
        Movement.Origin origin = entry.origin();
        line("movement", movement.number());
        line("kind", entry.kind().name());
        line("count", movement.count());
        line("by", movement.by().mm());
        line("gone", entry.gone());
        line("note", entry.note());
        line("parent", origin.parent());
        line("plan", origin.plan());
        line("step", origin.step());
        line("piece", origin.piece());
        line("was", origin.was());
        line("undoes", origin.undoes());
        piece(entry.piece());
        reel(entry.after());
    }

    private void piece(PieceCut piece) {
        Ordered ordered = piece.ordered();
        line("piece length", piece.length().mm());
        if (ordered.equals(Ordered.NONE)) {
            return;
        }
        line("order", ordered.piece().order());
        line("line", ordered.piece().line());
        line("number", ordered.piece().number());
        line("leg", ordered.piece().leg());
        line("part", ordered.piece().part());
        line("ordered rope", ordered.make().rope());
        line("finished", ordered.make().finished());
        line("ends", ordered.make().ends());
        line("needed", ordered.make().needed().mm());
        line("set", ordered.bond().set());
        line("match", ordered.bond().match());
        line("customer", ordered.wish().customer());
        line("due", ordered.wish().due());
        terms(ordered.terms());
    }

    /** Only where they were kept: the text of older events stays as it was. */
    private void terms(Ordered.Terms terms) {
        if (!terms.equals(Ordered.Terms.NOT_KEPT)) {
            line("certificate asked", terms.certificate());
            line("own rope", terms.ownRope());
            line("measured", terms.measured());
        }
    }

    private void reel(Reel reel) {
        Reel.Contents contents = reel.contents();
        line("reel", reel.id());
        line("rope", reel.rope());
        line("lot", reel.lot());
        line("length", contents.length().mm());
        if (!contents.written().text().isEmpty()) {
            line("length text", contents.written().text());
        }
        line("uncertainty", contents.uncertainty().mm());
        line("lead trim", contents.leadTrim().mm());
        line("inner wraps", contents.innerWraps().mm());
        line("known", contents.known().name());
        for (Flaw flaw : reel.flaws()) {
            line("flaw from", flaw.from().mm());
            line("to", flaw.to().mm());
            line("within", flaw.uncertainty().mm());
            line("what", flaw.what());
        }
        line("certificate", reel.papers().certificate());
        line("certificate number", reel.papers().number());
        line("use by", reel.papers().useBy());
        line("received", reel.papers().received());
        line("owner", reel.custody().owner());
        line("state", reel.custody().state().name());
        line("for order", reel.custody().order());
        if (!reel.custody().held().isEmpty()) {
            line("held", Held.text(reel.custody().held()));
        }
        line("full", reel.full());
        line("place", reel.where().place());
        line("mass", reel.where().mass().grams());
        line("draw", reel.where().draw().name());
        line("reel note", reel.where().note());
    }

    private void line(String name, Object value) {
        text.append(name).append('=');
        String plain = value.toString();
        for (int i = 0; i < plain.length(); i++) {
            switch (plain.charAt(i)) {
                case '\\' -> text.append("\\\\");
                case '\n' -> text.append("\\n");
                case '\r' -> text.append("\\r");
                default -> text.append(plain.charAt(i));
            }
        }
        text.append('\n');
    }
}
