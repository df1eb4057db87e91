package strawbed.herd;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import strawbed.care.Figure;
import strawbed.care.Share;
import strawbed.report.Range;
import strawbed.text.Figures;
import strawbed.text.HerdReportPhrases;
import strawbed.text.MessageKey;
import strawbed.text.Messages;

/** The words that the chapters share. */
record Wordings(Messages messages, Figures figures, HerdReportPhrases phrases, ZoneId zone) {
    String text(MessageKey key, Object... parts) {
        return messages.text(key, parts);
    }

    String number(long number) {
        return figures.number(BigDecimal.valueOf(number));
    }

    String number(BigDecimal number, int decimals) {
        return figures.number(number.setScale(decimals, RoundingMode.HALF_UP));
    }

    /** "2 Mar". */
    String date(LocalDate day) {
        return figures.date(day.atStartOfDay(zone).toInstant());
    }

    /** The share in percent, or the counts where there are too few. */
    String share(Figure figure) {
        if (figure.of() == 0) {
            return text(MessageKey.HERD_PAPER_NONE_KNOWN);
        }
        return figure.share()
                .value()
                .map(share -> percent(share.percent(1)))
                .orElseGet(() -> counted(figure.count(), figure.of()));
    }

    /** To one decimal at least, also where it is a zero: figures stand below each other. */
    String percent(BigDecimal percent) {
        return text(MessageKey.HERD_PAPER_PERCENT, decimal(percent));
    }

    private String decimal(BigDecimal number) {
        return String.format(messages.locale(), "%." + Math.max(1, number.scale()) + "f", number);
    }

    String counted(int count, int of) {
        return text(MessageKey.HERD_PAPER_COUNTS, number(count), number(of));
    }

    /** What stands behind a share: how many of how many, and the interval; and of how many calves it is not known. */
    String counts(Figure figure) {
        String counted = figure.share()
                .value()
                .map(share -> interval(counted(figure.count(), figure.of()), share))
                .orElse("");
        String unknown = figure.unknown() == 0 ? "" : text(MessageKey.HERD_PAPER_NOT_KNOWN, number(figure.unknown()));
        return list(Stream.of(counted, unknown).filter(part -> !part.isEmpty()).toList());
    }

    String interval(String counted, Share share) {
        return text(
                MessageKey.HERD_PAPER_INTERVAL,
                counted,
                decimal(share.interval().lowPercent()),
                decimal(share.interval().highPercent()));
    }

    Optional<Range> range(Figure figure, Optional<BigDecimal> compared, Optional<Figure> before) {
        return figure.share()
                .value()
                .map(share -> range(
                        share, compared, before.flatMap(then -> then.share().value())));
    }

    static Range range(Share share, Optional<BigDecimal> compared, Optional<Share> before) {
        return new Range(
                exact(share),
                share.interval().low().doubleValue() * 100,
                share.interval().high().doubleValue() * 100,
                number(compared.map(BigDecimal::doubleValue)),
                number(before.map(Wordings::exact)));
    }

    /** Words one after another. */
    String list(List<String> words) {
        return words.stream()
                .reduce((one, other) -> text(MessageKey.HERD_PAPER_PICTURE_JOIN, one, other))
                .orElse("");
    }

    private static double exact(Share share) {
        // The interval is worked out to twenty digits, so that at its ends a share rounded otherwise could lie outside.
        double percent = 100.0 * share.count() / share.of();
        return Math.max(
                share.interval().low().doubleValue() * 100,
                Math.min(share.interval().high().doubleValue() * 100, percent));
    }

    private static OptionalDouble number(Optional<Double> number) {
        return number.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
