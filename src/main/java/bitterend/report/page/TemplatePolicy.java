package bitterend.report.page;

import gg.jte.html.policy.PolicyGroup;
import gg.jte.html.policy.PreventInlineEventHandlers;
import gg.jte.html.policy.PreventInvalidAttributeNames;
import gg.jte.html.policy.PreventOutputInTagsAndAttributes;
import gg.jte.html.policy.PreventUnquotedAttributes;
import gg.jte.html.policy.PreventUppercaseTagsAndAttributes;

/**
 * What the compiler of the templates refuses (named in {@code pom.xml}): handlers of events in a page, attributes without
 * quotes, and values where a tag or the name of an attribute is meant, so that nothing printed can become either.
 */
public final class TemplatePolicy extends PolicyGroup {
    public TemplatePolicy() {
        addPolicy(new PreventUppercaseTagsAndAttributes());
        addPolicy(new PreventOutputInTagsAndAttributes());
        addPolicy(new PreventUnquotedAttributes());
        addPolicy(new PreventInvalidAttributeNames());
        addPolicy(new PreventInlineEventHandlers());
    }
}
