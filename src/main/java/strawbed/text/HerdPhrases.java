package strawbed.text;

import static strawbed.text.MessageKey.*;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import strawbed.care.Figure;
import strawbed.care.FirstFeedAges;
import strawbed.care.HerdFigures;
import strawbed.care.HerdImmunity;
import strawbed.care.ImmunityCategory;
import strawbed.care.Share;
import strawbed.protocol.Units;

/** The herd's figures in words, each with its counts. Immutable, safe for any thread. */
public final class HerdPhrases {
    private static final BigDecimal ONE_IN_TEN = new BigDecimal("0.1");

    private final Messages messages;
    private final Figures figures;

    /** @param zone the farm's */
    public HerdPhrases(Messages messages, ZoneId zone) {
        this.messages = messages;
        this.figures = Figures.written(messages, zone, Units.AS_SPOKEN);
    }

    /** Labels and figures, in the order in which they are read. */
    public Map<String, String> lines(HerdFigures herd, HerdImmunity immunity) {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put(messages.text(HERD_BORN), figures.number(herd.born()));
        lines.put(messages.text(HERD_STILLBORN), figure(herd.stillborn()));
        lines.put(messages.text(HERD_ASSISTED), figure(herd.assisted()));
        lines.put(messages.text(HERD_DIFFICULT), figure(herd.difficult()));
        lines.put(messages.text(HERD_FED_IN_TIME), figure(herd.fedWithinFourHours()));
        herd.firstFeeds()
                .median()
                .ifPresent(median -> lines.put(messages.text(HERD_FIRST_FEED), hours(herd.firstFeeds())));
        lines.put(messages.text(HERD_GOOD_BRIX), figure(herd.goodBrix()));
        lines.put(messages.text(HERD_IMMUNITY), immunity(immunity));
        return lines;
    }

    /** What the shares are and where the goal comes from; where no calf is poor, how little that may mean. */
    public List<String> why(HerdImmunity immunity) {
        List<String> why = new ArrayList<>();
        why.add(messages.text(HERD_WHY));
        if (immunity.counted() > 0 && immunity.count(ImmunityCategory.POOR) == 0) {
            BigDecimal chance = HerdImmunity.chanceOfSeeingAtMost(0, ONE_IN_TEN, immunity.counted());
            why.add(messages.text(
                    HERD_CHANCE,
                    figures.number(immunity.counted()),
                    figures.percent(chance.movePointRight(2).setScale(0, RoundingMode.HALF_UP))));
        }
        return why;
    }

    /** A figure with its counts: its share where there are enough to count, and of how many it is not known. */
    public String figure(Figure figure) {
        String counted = figure.share()
                .value()
                .map(this::share)
                .orElseGet(() ->
                        messages.text(HERD_COUNT_OF, figures.number(figure.count()), figures.number(figure.of())));
        return figure.unknown() == 0 ? counted : messages.text(HERD_UNKNOWN, counted, figures.number(figure.unknown()));
    }

    private String share(Share share) {
        return messages.text(
                HERD_SHARE_OF,
                figures.number(share.count()),
                figures.number(share.of()),
                figures.number(share.percent(1)),
                figures.number(share.interval().lowPercent()),
                figures.number(share.interval().highPercent()));
    }

    /** Median and mean of the known ages, of which there is one at least. */
    public String hours(FirstFeedAges ages) {
        return messages.text(
                HERD_HOURS,
                hours(FirstFeedAges.hours(ages.median().orElseThrow())),
                hours(FirstFeedAges.hours(ages.mean().orElseThrow())));
    }

    private String hours(BigDecimal hours) {
        return figures.number(hours.setScale(1, RoundingMode.HALF_UP));
    }

    /** The categories of passive immunity, and how they stand to the goal. */
    public String immunity(HerdImmunity immunity) {
        String judged = judged(immunity);
        int leftOut = immunity.notCounted().values().stream()
                .mapToInt(Integer::intValue)
                .sum();
        return leftOut == 0 || immunity.counted() == 0
                ? judged
                : messages.text(HERD_IMMUNITY_LEFT_OUT, judged, figures.number(leftOut));
    }

    private String judged(HerdImmunity immunity) {
        if (immunity.counted() == 0) {
            return messages.text(HERD_IMMUNITY_NONE);
        }
        return immunity.goal()
                .value()
                .map(goal -> Arrays.stream(ImmunityCategory.values())
                                .map(category -> share(immunity, category))
                                .collect(Collectors.joining(", "))
                        + "; "
                        + messages.text(goal.isMet() ? HERD_IMMUNITY_MET : HERD_IMMUNITY_NOT_MET))
                .orElseGet(() -> messages.text(
                        HERD_IMMUNITY_FEW, figures.number(immunity.counted()), figures.number(immunity.least())));
    }

    private String share(HerdImmunity immunity, ImmunityCategory category) {
        Share share = immunity.share(category).value().orElseThrow();
        return messages.text(
                HERD_IMMUNITY_SHARE,
                messages.word(category),
                figures.number(immunity.shownPercent(category).value().orElseThrow()),
                figures.number(share.interval().lowPercent()),
                figures.number(share.interval().highPercent()));
    }
}
