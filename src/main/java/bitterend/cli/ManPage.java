package bitterend.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual page of the program for {@code man}, section 1, made of what {@code --help} says of every command. */
final class ManPage {
    private final List<String> lines = new ArrayList<>();

    private ManPage() {}

    /** The page of a root command whose subcommands are whole. */
    static String of(CommandLine root, String version) {
        ManPage page = new ManPage();
        page.macro("TH", root.getCommandName().toUpperCase(Locale.ROOT), "1", "", version, "");
        page.macro("SH", "NAME");
        page.words(root.getCommandName() + " - how long to cut rope, off which reel, and what is left");
        page.macro("SH", "SYNOPSIS");
        page.words(synopsis(root));
        page.macro("SH", "DESCRIPTION");
        page.words(String.join(" ", root.getCommandSpec().usageMessage().description()));
        page.macro("SH", "OPTIONS");
        page.options(root.getCommandSpec());
        page.macro("SH", "COMMANDS");
        root.getSubcommands().values().forEach(page::command);
        page.macro("SH", "EXIT STATUS");
        root.getCommandSpec().usageMessage().exitCodeList().forEach((code, meaning) -> {
            page.macro("TP");
            page.words(code);
            page.words(meaning);
        });
        return String.join("\n", page.lines) + "\n";
    }

    private void command(CommandLine command) {
        CommandSpec spec = command.getCommandSpec();
        macro("SS", spec.qualifiedName());
        words(String.join(" ", spec.usageMessage().header()));
        macro("PP");
        words(synopsis(command));
        macro("PP");
        words(String.join(" ", spec.usageMessage().description()));
        for (PositionalParamSpec each : spec.positionalParameters()) {
            if (!each.hidden()) {
                macro("TP");
                words(each.paramLabel());
                words(String.join(" ", each.description()));
            }
        }
        options(spec);
        command.getSubcommands().values().forEach(this::command);
    }

    private void options(CommandSpec spec) {
        for (OptionSpec option : spec.options()) {
            if (!option.hidden()) {
                String value = option.arity().max() > 0 ? "=" + option.paramLabel() : "";
                macro("TP");
                words(String.join(", ", option.names()) + value);
                words(String.join(" ", option.description())
                        .replace("${DEFAULT-VALUE}", String.valueOf(option.defaultValueString())));
            }
        }
    }

    private static String synopsis(CommandLine command) {
        return command.getHelp().synopsis(0).replaceAll("\\s+", " ").strip();
    }

    private void macro(String name, String... arguments) {
        StringBuilder line = new StringBuilder("." + name);
        for (String argument : arguments) {
            line.append(" \"").append(escaped(argument).replace("\"", "\\(dq")).append('"');
        }
        lines.add(line.toString());
    }

    /** Text in one line; what would be a macro at its beginning is made text. */
    private void words(String text) {
        String plain =
                Ansi.OFF.string(text.replace("%n", " ")).replaceAll("\\s+", " ").strip();
        if (!plain.isEmpty()) {
            String escaped = escaped(plain);
            lines.add(escaped.startsWith(".") || escaped.startsWith("'") ? "\\&" + escaped : escaped);
        }
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\e").replace("-", "\\-");
    }
}
