package strawbed.care;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.calf.Timed;
import strawbed.event.Event;
import strawbed.event.Event.BreathingNoted;
import strawbed.event.Event.CalfBorn;
import strawbed.event.Event.CalfFound;
import strawbed.event.Event.CalfMoved;
import strawbed.event.Event.CalfWeighed;
import strawbed.event.Event.CalvingEaseNoted;
import strawbed.event.Event.ColostrumFed;
import strawbed.event.Event.NavelDipped;
import strawbed.event.Event.SignNoted;
import strawbed.event.Event.TemperatureTaken;
import strawbed.event.EventId;
import strawbed.event.Term;
import strawbed.event.Term.Breathing;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/** A warning that holds for a calf or for those who handle it, gravest first. It never keeps anything from being recorded. */
public enum Caution {
    /**
     * The calf does not breathe, or gasps. Tickle the nostril with clean straw, never hang it by the hind legs, call
     * the veterinarian. Common practice, no published source; gasping as an alarm: newborn clinical list in the
     * magazine Bovine Veterinarian.
     */
    NOT_BREATHING,
    /** Its temperature is so low that the veterinarian comes first. Common practice, no published source. */
    VERY_COLD,
    /**
     * Its temperature is low: dry it, warm it, take its temperature again. University of Nevada Reno, Cattle
     * Producer's Library CL 788.
     */
    COLD,
    /** The birth was hard, or the calf shows it: watch it. Common practice, no published source. */
    HARD_BIRTH,
    /**
     * Fed by tube: trained people only. Dairy Calf and Heifer Association, Gold Standards III; how to place it and how
     * the calf must lie is common practice, no published source.
     */
    TUBE_FEEDING,
    /** Iodine of 7 % or of unknown strength: corrosive, and harmful to breathe. OSHA sampling data, CAS 7553-56-2. */
    STRONG_IODINE,
    /** A heifer born with a bull: more than 9 in 10 are infertile. Beef cattle extension; Canadian veterinary column. */
    FREEMARTIN,
    /** A heifer of several whose sex is not all known. Common practice, no published source. */
    FREEMARTIN_UNKNOWN,
    /**
     * A fresh cow may attack whoever touches her calf: a barrier first. Cornell Cooperative Extension 2024. Holds until
     * the calf was moved.
     */
    FRESH_COW,
    /**
     * Hands in birth fluids, which can carry Q fever: gloves, eye cover and mask, and some people stay out. CDC advice
     * as quoted by the veterinary press 2011.
     */
    BIRTH_FLUIDS,
    /** A scouring calf can infect people: wash hands, eat nothing there. Common practice, no published source. */
    SCOURING,
    /** A calf is heavy for one person. Common practice, no published source. */
    LIFTING;

    private static final Set<Caution> IN_DANGER = Set.of(NOT_BREATHING, VERY_COLD, COLD);

    private static final BigDecimal STRONG_FROM = new BigDecimal(7);

    /** The cautions that hold for a living calf by its whole record, gravest first; none for a dead one. */
    public static List<Caution> of(CalfRecord calf, Herd herd) {
        if (!calf.isAlive()) {
            return List.of();
        }
        Protocol protocol = Farm.of(herd).protocolFor(calf);
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        calf.all(Event.class).stream()
                .map(Timed::event)
                .filter(event -> !(event instanceof BreathingNoted)
                        && !(event instanceof TemperatureTaken)
                        && !(event instanceof CalvingEaseNoted))
                .forEach(event -> cautions.addAll(of(event, protocol)));
        calf.breathing().ifPresent(last -> cautions.addAll(of(last.event(), protocol)));
        calf.last(TemperatureTaken.class).ifPresent(last -> cautions.addAll(of(last.event(), protocol)));
        calf.last(CalvingEaseNoted.class).ifPresent(last -> cautions.addAll(of(last.event(), protocol)));
        cautions.remove(HARD_BIRTH);
        HardBirth.of(calf, protocol).ifPresent(hard -> cautions.add(HARD_BIRTH));
        switch (Freemartin.of(calf, herd)) {
            case LIKELY -> cautions.add(FREEMARTIN);
            case UNKNOWN -> cautions.add(FREEMARTIN_UNKNOWN);
            case NO -> {}
        }
        cautions.add(FRESH_COW);
        if (calf.has(CalfMoved.class)) {
            cautions.removeAll(Set.of(FRESH_COW, BIRTH_FLUIDS, LIFTING));
        }
        return List.copyOf(cautions);
    }

    /** The cautions that this event calls for at once, gravest first, whatever else is known. */
    public static List<Caution> of(Event event, Protocol protocol) {
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        if (event instanceof BreathingNoted noted && isAlarming(noted)) {
            cautions.add(NOT_BREATHING);
        } else if (HardBirth.tells(event, protocol)) {
            cautions.add(HARD_BIRTH);
        }
        if (event instanceof TemperatureTaken taken) {
            if (Cold.isVeryCold(taken.temperature(), protocol)) {
                cautions.add(VERY_COLD);
            } else if (Cold.isCold(taken.temperature(), protocol)) {
                cautions.add(COLD);
            }
        }
        if (event instanceof ColostrumFed fed && fed.method() == Term.FeedingMethod.TUBE) {
            cautions.add(TUBE_FEEDING);
        }
        if (event instanceof NavelDipped dipped && isStrongIodine(dipped, protocol)) {
            cautions.add(STRONG_IODINE);
        }
        if (event instanceof CalfBorn || event instanceof CalfFound) {
            cautions.add(FRESH_COW);
        }
        if (event instanceof CalvingEaseNoted noted && isAssisted(noted)) {
            cautions.add(BIRTH_FLUIDS);
        }
        if (event instanceof SignNoted noted && noted.sign() == Term.Sign.SCOURING) {
            cautions.add(SCOURING);
        }
        if (event instanceof CalfWeighed) {
            cautions.add(LIFTING);
        }
        return List.copyOf(cautions);
    }

    /**
     * The cautions to tell with new events: each once for a calf, and a danger to its life each time it comes anew.
     *
     * @param fresh the new events, all of one calf
     * @param calf its record; null when it has none yet
     * @param saved those of the new events that are in the record already
     */
    public static List<Caution> toTell(List<Event> fresh, @Nullable CalfRecord calf, Set<EventId> saved, Herd herd) {
        Farm farm = Farm.of(herd);
        Protocol protocol = calf == null ? farm.protocol() : farm.protocolFor(calf);
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        fresh.forEach(event -> cautions.addAll(of(event, protocol)));
        if (calf != null) {
            EnumMap<Caution, Event> last = new EnumMap<>(Caution.class);
            List<Event> before = calf.all(Event.class).stream()
                    .filter(timed -> !saved.contains(timed.id()))
                    .map(Timed::event)
                    .toList();
            before.forEach(event -> of(event, protocol).forEach(told -> last.put(told, event)));
            last.forEach((told, event) -> {
                if (!IN_DANGER.contains(told) || event.equals(lastLike(event, before))) {
                    cautions.remove(told);
                }
            });
        }
        return List.copyOf(cautions);
    }

    /** The last event of the same kind: a danger is over when that one no longer tells of it. */
    private static Event lastLike(Event event, List<Event> events) {
        return events.stream()
                .filter(each -> each.getClass() == event.getClass())
                .reduce(event, (earlier, later) -> later);
    }

    /** Whether a calf that breathes like this is in danger now. */
    static boolean isAlarming(BreathingNoted noted) {
        return noted.breathing() == Breathing.NONE || noted.breathing() == Breathing.GASPING;
    }

    /** Hands were in it: by word, or by a score of more than 1. */
    private static boolean isAssisted(CalvingEaseNoted noted) {
        Integer score = noted.score();
        return score == null ? noted.ease() != Term.CalvingEase.UNASSISTED : score > 1;
    }

    /**
     * Iodine of no told strength is the farm's own, strong where the farm says that it has none. A dip of 7 % whose agent
     * was not said counts as iodine, to be on the safe side.
     */
    private static boolean isStrongIodine(NavelDipped dipped, Protocol protocol) {
        BigDecimal percent = dipped.percent();
        if (percent == null) {
            BigDecimal own = protocol.number(Setting.IODINE_PERCENT);
            return dipped.agent() == Term.NavelAgent.IODINE && (own.signum() == 0 || own.compareTo(STRONG_FROM) >= 0);
        }
        return dipped.agent() != Term.NavelAgent.CHLORHEXIDINE && percent.compareTo(STRONG_FROM) >= 0;
    }
}
