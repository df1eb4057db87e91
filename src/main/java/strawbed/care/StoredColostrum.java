package strawbed.care;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strawbed.calf.CalfRecord;
import strawbed.calf.Feed;
import strawbed.calf.Herd;
import strawbed.calf.Timed;
import strawbed.event.Event.ColostrumSourceNoted;
import strawbed.event.Event.ColostrumStored;
import strawbed.event.EventId;
import strawbed.event.Term;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * Colostrum in stock: how long it keeps, how good it is, how much of it was fed. The limits are the farm's, of the
 * protocol in force when it was put in stock; sources with {@link Setting#REFRIGERATOR_HOURS} and
 * {@link Setting#FREEZER_DAYS}.
 *
 * @param stored when it was put in stock, and what was noted of it
 * @param keepsUntil the last acceptable time
 * @param fedLitres what calves took of it in measured feeds, in litres, exact
 * @param offeredLitres what was taken out for them, in litres, exact; what a calf left is no stock any more
 */
public record StoredColostrum(
        Timed<ColostrumStored> stored,
        Instant keepsUntil,
        BigDecimal fedLitres,
        BigDecimal offeredLitres,
        Protocol protocol) {
    /** How stored colostrum stands. */
    public enum StockState {
        KEEPS,
        /** Its time ends within 12 hours. */
        USE_SOON,
        PAST_ITS_TIME
    }

    private static final Duration SOON = Duration.ofHours(12);

    /**
     * All in stock now, what must be used first first; of a number used again the latest. What is used up is left out;
     * where more was fed than stored, what is left is not known, and it stays.
     */
    public static List<StoredColostrum> of(Herd herd, Instant now) {
        Farm farm = Farm.of(herd);
        Map<EventId, List<Feed>> fed = fed(herd, farm);
        List<StoredColostrum> stock = new ArrayList<>();
        for (Timed<ColostrumStored> stored : farm.stored()) {
            boolean isLatest = farm.storedAs(stored.event().batch(), now)
                    .filter(stored::equals)
                    .isPresent();
            StoredColostrum colostrum =
                    of(stored, fed.getOrDefault(stored.id(), List.of()), farm.protocolAt(stored.at()));
            if (isLatest && !colostrum.isUsedUp()) {
                stock.add(colostrum);
            }
        }
        stock.sort(Comparator.comparing(StoredColostrum::keepsUntil));
        return List.copyOf(stock);
    }

    /** The feeds from each colostrum in stock, by the source that counts for each of them. */
    private static Map<EventId, List<Feed>> fed(Herd herd, Farm farm) {
        Map<EventId, List<Feed>> fed = new HashMap<>();
        for (CalfRecord calf : herd.calves()) {
            if (calf.has(ColostrumSourceNoted.class)) {
                for (Feed feed : calf.feeds()) {
                    source(feed, calf, farm)
                            .ifPresent(stored -> fed.computeIfAbsent(stored.id(), id -> new ArrayList<>())
                                    .add(feed));
                }
            }
        }
        return fed;
    }

    private static Optional<Timed<ColostrumStored>> source(Feed feed, CalfRecord calf, Farm farm) {
        return FedColostrum.sourceOf(feed, calf)
                .map(Timed::event)
                .filter(source -> source.source() != Term.ColostrumSource.REPLACER)
                .map(ColostrumSourceNoted::batch)
                .flatMap(batch -> farm.storedAs(batch, feed.at()));
    }

    private static StoredColostrum of(Timed<ColostrumStored> stored, List<Feed> feeds, Protocol protocol) {
        Duration keeps = protocol.time(isFrozen(stored) ? Setting.FREEZER_DAYS : Setting.REFRIGERATOR_HOURS);
        return new StoredColostrum(
                stored,
                stored.at().plus(keeps),
                feeds.stream().map(Feed::litres).reduce(BigDecimal.ZERO, BigDecimal::add),
                feeds.stream().map(feed -> feed.volume().inLitres()).reduce(BigDecimal.ZERO, BigDecimal::add),
                protocol);
    }

    public boolean isFrozen() {
        return isFrozen(stored);
    }

    public StockState stateAt(Instant now) {
        if (now.isAfter(keepsUntil)) {
            return StockState.PAST_ITS_TIME;
        }
        return now.isAfter(keepsUntil.minus(SOON)) ? StockState.USE_SOON : StockState.KEEPS;
    }

    /** Its class by Brix; not judged where none was noted, or where it cannot be. */
    public Judged<ColostrumClass> grade() {
        BigDecimal brix = stored.event().brix();
        return brix == null
                ? Judged.not(WhyNot.NOT_TESTED)
                : new ColostrumQuality(new ColostrumQuality.Test.Brix(brix), true, protocol).grade();
    }

    public boolean isHeatTreated() {
        return stored.event().treatment() == Term.ColostrumTreatment.HEAT_TREATED;
    }

    /** What should be left of it, in litres, exact; not judged when more was fed from it than was stored. */
    public Judged<BigDecimal> leftLitres() {
        BigDecimal left = stored.event().volume().inLitres().subtract(offeredLitres);
        return left.signum() < 0 ? Judged.not(WhyNot.NOT_PLAUSIBLE) : Judged.of(left);
    }

    private boolean isUsedUp() {
        return leftLitres().value().filter(left -> left.signum() == 0).isPresent();
    }

    private static boolean isFrozen(Timed<ColostrumStored> stored) {
        return stored.event().treatment() == Term.ColostrumTreatment.FROZEN;
    }
}
