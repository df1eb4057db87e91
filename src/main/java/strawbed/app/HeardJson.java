package strawbed.app;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import strawbed.audio.SoundCondition;
import strawbed.grammar.ParseTree;
import strawbed.hearing.Heard;
import strawbed.journal.EventCodec;
import strawbed.statement.CalfReference;
import strawbed.statement.Control;
import strawbed.statement.Interpretation;
import strawbed.statement.SaidFact;
import strawbed.statement.Statement;

/** One heard utterance as an object for {@code hear --json}. */
final class HeardJson {
    private final EventCodec codec = new EventCodec();

    /**
     * The object's fields.
     *
     * @param file as it was given on the command line
     * @param sameCalf the number of the calf named last in this file
     */
    Map<String, @Nullable Object> of(String file, Heard heard, @Nullable String sameCalf) {
        Interpretation meaning = heard.meaning();
        Statement statement = statement(meaning);
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("file", file);
        object.put("from", seconds(heard.sound().start()));
        object.put("to", seconds(heard.sound().start().plus(heard.sound().duration())));
        object.put("words", String.join(" ", meaning.words()));
        object.put("verdict", meaning.verdict());
        object.put("calf", number(statement == null ? null : statement.calf(), meaning, sameCalf));
        object.put("control", control(meaning));
        object.put("events", statement == null ? List.of() : events(statement));
        object.put("tags", tags(meaning));
        object.put("sound", SoundCondition.of(heard.sound()).word());
        return object;
    }

    static @Nullable Statement statement(Interpretation meaning) {
        if (meaning instanceof Interpretation.Understood understood) {
            return understood.statement();
        }
        return meaning instanceof Interpretation.Unsure unsure ? unsure.best() : null;
    }

    static @Nullable String number(@Nullable CalfReference calf, Interpretation meaning, @Nullable String sameCalf) {
        if (meaning instanceof Interpretation.ControlHeard heard) {
            return number(heard.calf(), sameCalf);
        }
        return number(calf, sameCalf);
    }

    private static @Nullable String number(@Nullable CalfReference calf, @Nullable String sameCalf) {
        if (calf instanceof CalfReference.Numbered numbered) {
            return numbered.number();
        }
        if (calf instanceof CalfReference.New fresh) {
            return fresh.number();
        }
        if (calf instanceof CalfReference.Renumbered renumbered) {
            return renumbered.number();
        }
        return calf instanceof CalfReference.Same ? sameCalf : null;
    }

    private static @Nullable String control(Interpretation meaning) {
        Control control = meaning instanceof Interpretation.ControlHeard heard ? heard.control() : null;
        return control == null ? null : control.word();
    }

    private List<Map<String, Object>> events(Statement statement) {
        List<Map<String, Object>> events = new ArrayList<>();
        for (SaidFact fact : statement.facts()) {
            Map<String, Object> event = new LinkedHashMap<>();
            event.put("type", fact.event().type());
            event.putAll(codec.fields(fact.event()));
            if (fact.timeWasSaid() && !event.containsKey("earliest")) {
                event.putIfAbsent("at", fact.occurredAt().toString());
            }
            events.add(event);
        }
        return events;
    }

    private static List<Map<String, @Nullable Object>> tags(Interpretation meaning) {
        ParseTree tree = null;
        if (meaning instanceof Interpretation.Understood understood) {
            tree = understood.tree();
        } else if (meaning instanceof Interpretation.Unsure unsure) {
            tree = unsure.tree();
        } else if (meaning instanceof Interpretation.ControlHeard heard) {
            tree = heard.tree();
        } else if (meaning instanceof Interpretation.Matched matched) {
            tree = matched.tree();
        }
        return tree == null ? List.of() : tree.descendants().map(HeardJson::tag).toList();
    }

    private static Map<String, @Nullable Object> tag(ParseTree tree) {
        Map<String, @Nullable Object> tag = new LinkedHashMap<>();
        tag.put("rule", tree.rule());
        tag.put("tag", tree.tag());
        tag.put("words", String.join(" ", tree.words()));
        return tag;
    }

    private static BigDecimal seconds(Duration duration) {
        return new BigDecimal(duration.toMillis()).movePointLeft(3).setScale(2, RoundingMode.HALF_UP);
    }
}
