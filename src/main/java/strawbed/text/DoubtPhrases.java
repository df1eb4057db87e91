package strawbed.text;

import static strawbed.text.MessageKey.*;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import strawbed.care.Contradiction;
import strawbed.dialog.Pending;
import strawbed.dialog.Target;
import strawbed.statement.Doubt;

/** Why a statement is asked about, in one sentence each. */
final class DoubtPhrases {
    private final Wording wording;
    private final Figures figures;
    private final UsualRange usual;

    DoubtPhrases(Wording wording, ZoneId zone) {
        this.wording = wording;
        this.figures = new Figures(wording, zone);
        this.usual = new UsualRange(wording, figures);
    }

    /** Empty where the read-back or the question itself says it. */
    Optional<String> of(Doubt doubt, Pending pending, Instant now) {
        if (doubt instanceof Doubt.NotListed missing) {
            return sentence(DOUBT_NOT_LISTED, wording.digits(missing.number()));
        }
        if (doubt instanceof Doubt.AlreadyOpen open) {
            return sentence(DOUBT_ALREADY_OPEN, wording.digits(open.number()));
        }
        if (doubt instanceof Doubt.NoCalfOfCow none) {
            return sentence(DOUBT_NO_CALF_OF_COW, wording.digits(none.dam()));
        }
        if (doubt instanceof Doubt.NoSameCalf) {
            return pending.target() instanceof Target.Unknown
                    ? Optional.empty()
                    : Optional.of(wording.word(Target.Reason.NO_CALF_NAMED_BEFORE));
        }
        if (doubt instanceof Doubt.Incomplete || doubt instanceof Doubt.Ambiguous) {
            return Optional.empty();
        }
        if (doubt instanceof Doubt.SoundsLike sounds) {
            WordDifference words = WordDifference.between(pending.provenance().words(), sounds.words());
            return sentence(DOUBT_SOUNDS_LIKE, words.one(), words.other());
        }
        if (doubt instanceof Doubt.Unclear) {
            return sentence(DOUBT_UNCLEAR);
        }
        if (doubt instanceof Doubt.UnknownScale scale) {
            return sentence(DOUBT_UNKNOWN_SCALE, figures.number(scale.degrees()));
        }
        if (doubt instanceof Doubt.LongAgo longAgo) {
            String time = wording.text(
                    TIME_SAID, figures.ago(Duration.between(longAgo.at(), now)), figures.timeNear(now, longAgo.at()));
            return sentence(DOUBT_LONG_AGO, time);
        }
        if (doubt instanceof Doubt.Implausible odd) {
            return Optional.of(usual.sentence(odd, pending.statement().facts()));
        }
        if (doubt instanceof Doubt.BadTag tag) {
            String digits = wording.number(BigDecimal.valueOf(tag.number().length()));
            return sentence(
                    DOUBT_BAD_TAG, figures.officialTag(tag.number()), wording.at(Messages.key(tag.fault()), digits));
        }
        if (doubt instanceof Doubt.NoFeedToAmend) {
            return sentence(DOUBT_NO_FEED_TO_AMEND);
        }
        if (doubt instanceof Doubt.Contradicts contradicts) {
            return Optional.of(contradiction(contradicts.what(), now));
        }
        throw new AssertionError(doubt);
    }

    private String contradiction(Contradiction what, Instant now) {
        if (what instanceof Contradiction.BeforeBirth before) {
            return wording.text(
                    DOUBT_BEFORE_BIRTH, figures.clockNear(now, before.at()), figures.clockNear(now, before.birth()));
        }
        if (what instanceof Contradiction.SecondBirth again) {
            return wording.text(
                    DOUBT_SECOND_BIRTH, figures.clockNear(now, again.before()), figures.clockNear(now, again.now()));
        }
        if (what instanceof Contradiction.LaterThanNow later) {
            return wording.text(DOUBT_LATER_THAN_NOW, figures.clockNear(now, later.at()));
        }
        throw new AssertionError(what);
    }

    private Optional<String> sentence(MessageKey key, Object... parts) {
        return Optional.of(wording.text(key, parts));
    }

    /** Where two sentences part, and where they meet again. */
    record WordDifference(String one, String other) {
        static WordDifference between(List<String> one, List<String> other) {
            int shorter = Math.min(one.size(), other.size());
            int start = 0;
            while (start < shorter && one.get(start).equals(other.get(start))) {
                start++;
            }
            int end = 0;
            while (end < shorter - start && one.get(one.size() - 1 - end).equals(other.get(other.size() - 1 - end))) {
                end++;
            }
            // A word that only one of them has says nothing alone: its neighbour goes with it.
            if (start > 0 && Math.min(one.size(), other.size()) - end == start) {
                start--;
            } else if (end > 0 && shorter - end == start) {
                end--;
            }
            return new WordDifference(
                    String.join(" ", one.subList(start, one.size() - end)),
                    String.join(" ", other.subList(start, other.size() - end)));
        }
    }
}
