package strawbed.account;

import static strawbed.text.MessageKey.*;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import strawbed.care.Assumption;
import strawbed.care.Judged;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;
import strawbed.text.MessageKey;
import strawbed.text.Messages;
import strawbed.text.SettingPhrases;

/** How a judgement reads: the verdict, or why there is none; its rule with the source; what is assumed. */
record Judgements(Messages messages) {
    <T> Line line(MessageKey label, Judged<T> judged, Function<T, String> verdict, List<String> reasons) {
        return judged.value()
                .map(known -> new Line(messages.text(label), verdict.apply(known), reasons))
                .orElseGet(() -> Line.of(
                        messages.text(label),
                        messages.text(
                                ACCOUNT_NOT_JUDGED,
                                messages.word(judged.whyNot().orElseThrow()))));
    }

    /** A rule with the values of its settings, and where the usual ones come from. */
    String rule(MessageKey rule, Protocol protocol, SettingPhrases phrases, Setting... settings) {
        Object[] values = Arrays.stream(settings)
                .map(setting -> phrases.value(setting, protocol))
                .toArray();
        return messages.text(DUE_WHY, messages.text(rule, values), Setting.sources(List.of(settings)));
    }

    /** "Estimate. Assumed: ...", one sentence each. */
    List<String> assumed(Collection<Assumption> assumptions) {
        return assumptions.stream().sorted().map(messages::word).toList();
    }
}
