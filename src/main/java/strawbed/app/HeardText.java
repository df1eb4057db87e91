package strawbed.app;

import java.time.Duration;
import java.util.Locale;
import java.util.stream.Collectors;
import strawbed.audio.SoundCondition;
import strawbed.grammar.ParseTree;
import strawbed.hearing.Heard;
import strawbed.statement.Interpretation;

/** One heard utterance as lines for a person. */
final class HeardText {
    private HeardText() {}

    static String of(Heard heard) {
        Interpretation meaning = heard.meaning();
        String head = String.format(
                        Locale.ROOT,
                        "%6.2f s  %-10s %s",
                        seconds(heard.sound().start()),
                        meaning.verdict(),
                        String.join(" ", meaning.words()))
                + sound(heard);
        return meaning instanceof Interpretation.Matched matched
                ? head + System.lineSeparator() + rules(matched)
                : head;
    }

    private static String sound(Heard heard) {
        SoundCondition condition = SoundCondition.of(heard.sound());
        return condition == SoundCondition.GOOD ? "" : "  (" + condition.word() + ")";
    }

    /** What was heard, in quotes; the words of something that is no statement mean nothing and are not shown. */
    static String words(Heard heard) {
        return heard.meaning() instanceof Interpretation.NoMatch
                ? "something that is no statement"
                : "\"" + String.join(" ", heard.meaning().words()) + "\"";
    }

    private static String rules(Interpretation.Matched matched) {
        return matched.tree().descendants().map(HeardText::rule).collect(Collectors.joining(System.lineSeparator()));
    }

    private static String rule(ParseTree tree) {
        return "            $" + tree.rule() + (tree.tag() == null ? "" : " {" + tree.tag() + "}") + "  "
                + String.join(" ", tree.words());
    }

    private static double seconds(Duration duration) {
        return duration.toMillis() / 1000.0;
    }
}
