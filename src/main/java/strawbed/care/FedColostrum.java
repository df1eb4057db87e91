package strawbed.care;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Feed;
import strawbed.calf.Timed;
import strawbed.event.Event.ColostrumSourceNoted;
import strawbed.event.Term;
import strawbed.protocol.Protocol;

/**
 * One feed with the test that tells of its colostrum. Which test that is, is our own rule; common practice, no published
 * source.
 *
 * <p>While the source stays the same, or none was noted, the last test noted for the calf counts for all its feeds, else
 * the Brix of the batch. Where the source changes, a test counts for the source that it was noted under; a feed that has
 * none so gets the last test of all, and that is assumed.
 *
 * @param quality not judged of replacer, and where nothing was tested
 * @param isAssumed whether the test may be of other colostrum
 */
record FedColostrum(Feed feed, Judged<ColostrumQuality> quality, boolean isAssumed) {
    /**
     * An amount of antibody keeps this many decimals. No amount that is said has as many, so that none is rounded; what
     * degrees Fahrenheit make of it, in ninths, meets here the line that it reaches.
     */
    private static final int DECIMALS = 20;

    /** Feeds of one source, one after the other. */
    private record Run(@Nullable ColostrumSourceNoted source, Instant from, List<Feed> feeds) {}

    /** These feeds of one calf, as they happened; only tests before the end count. */
    static List<FedColostrum> of(CalfRecord calf, List<Feed> feeds, Instant end, Protocol protocol, Farm farm) {
        ColostrumTests tests = new ColostrumTests(calf, end, protocol, farm);
        List<Run> runs = runs(calf, feeds);
        List<FedColostrum> fed = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            Run run = runs.get(i);
            Instant until = i + 1 < runs.size() ? runs.get(i + 1).from() : end;
            run.feeds().forEach(feed -> fed.add(of(feed, run, until, tests)));
        }
        return List.copyOf(fed);
    }

    private static FedColostrum of(Feed feed, Run run, Instant until, ColostrumTests tests) {
        ColostrumSourceNoted source = run.source();
        if (source != null && source.source() == Term.ColostrumSource.REPLACER) {
            return new FedColostrum(feed, Judged.not(WhyNot.REPLACER), false);
        }
        Optional<ColostrumQuality> own = tests.lastBetween(run.from(), until);
        Optional<ColostrumQuality> told =
                own.or(() -> Optional.ofNullable(source).flatMap(noted -> tests.ofBatch(noted, feed.at())));
        return new FedColostrum(
                feed,
                told.or(tests::last).map(Judged::of).orElseGet(() -> Judged.not(WhyNot.NOT_TESTED)),
                told.isEmpty() || (own.isPresent() && run.feeds().size() > 1));
    }

    /** A test may be older than the first word on where the colostrum came from. */
    private static List<Run> runs(CalfRecord calf, List<Feed> feeds) {
        List<Run> runs = new ArrayList<>();
        for (Feed feed : feeds) {
            Timed<ColostrumSourceNoted> noted = sourceOf(feed, calf).orElse(null);
            ColostrumSourceNoted source = noted == null ? null : noted.event();
            if (runs.isEmpty() || !Objects.equals(runs.get(runs.size() - 1).source(), source)) {
                runs.add(
                        new Run(source, runs.isEmpty() || noted == null ? Instant.MIN : noted.at(), new ArrayList<>()));
            }
            runs.get(runs.size() - 1).feeds().add(feed);
        }
        return runs;
    }

    /**
     * The source of a feed: the last that was noted up to it, else the first noted after it and before the next feed. A
     * word on treatment alone names no source.
     */
    static Optional<Timed<ColostrumSourceNoted>> sourceOf(Feed feed, CalfRecord calf) {
        List<Timed<ColostrumSourceNoted>> noted = calf.all(ColostrumSourceNoted.class).stream()
                .filter(each -> ColostrumTests.namesSource(each.event()))
                .toList();
        Instant next = calf.feeds().stream()
                .map(Feed::at)
                .filter(at -> at.isAfter(feed.at()))
                .findFirst()
                .orElse(Instant.MAX);
        return noted.stream()
                .filter(each -> !each.at().isAfter(feed.at()))
                .reduce((earlier, later) -> later)
                .or(() ->
                        noted.stream().filter(each -> each.at().isBefore(next)).findFirst());
    }

    /** The antibody in this feed, in grams. */
    Judged<FedAntibody> antibody() {
        return quality.then(ColostrumQuality::antibody)
                .then(known -> Judged.of(new FedAntibody(
                        feed,
                        grams(known.gramsPerLitre()),
                        grams(known.least()),
                        grams(known.most()),
                        known.isEstimate(),
                        isAssumed)));
    }

    private BigDecimal grams(BigDecimal gramsPerLitre) {
        return feed.litres().multiply(gramsPerLitre).setScale(DECIMALS, RoundingMode.HALF_UP);
    }
}
