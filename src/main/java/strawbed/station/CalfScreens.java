package strawbed.station;

import static strawbed.text.MessageKey.*;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import strawbed.calf.CalfRecord;
import strawbed.card.FirstDayLine;
import strawbed.care.AgeStart;
import strawbed.care.Caution;
import strawbed.care.DueItem;
import strawbed.care.DueList;
import strawbed.care.DueState;
import strawbed.care.Farm;
import strawbed.text.CalfNames;
import strawbed.text.CautionPhrases;
import strawbed.text.DuePhrases;
import strawbed.text.Figures;

/** The calves of the first day, and one of them. */
record CalfScreens(Frame frame, DuePhrases due, ZoneId zone) {
    private static final Duration FIRST_DAY = Duration.ofHours(24);

    /** Beside the drawn day the most urgent only; on the pages behind it all. */
    private static final int FIRST_LINES = 3;

    private static final int ALL_LINES = 8;

    /** The calves of the first day, and older ones for which something must be done now; the youngest first. */
    static List<CalfRecord> young(Known known) {
        return known.herd().calves().stream()
                .filter(CalfRecord::isOpen)
                .filter(calf ->
                        isYoung(calf, known.now()) || pressing(calf, known).isPresent())
                .sorted(Comparator.comparing(
                        (CalfRecord calf) -> calf.bornAbout().orElse(Instant.MAX), Comparator.reverseOrder()))
                .toList();
    }

    private static boolean isYoung(CalfRecord calf, Instant now) {
        return AgeStart.of(calf)
                .map(start -> start.ageAt(now).compareTo(FIRST_DAY) < 0)
                .orElse(true);
    }

    private static Optional<DueItem> pressing(CalfRecord calf, Known known) {
        return known.due().stream()
                .filter(item -> item.calf().equals(calf.id()) && item.state().isPressing())
                .findFirst();
    }

    /** A key for each, with what is most urgent for it. */
    List<Key> keys(Known known, Function<CalfRecord, Act> acts) {
        return young(known).stream()
                .map(calf -> key(calf, acts.apply(calf), known))
                .toList();
    }

    /** A key for a calf, with what is most urgent for it. */
    Key key(CalfRecord calf, Act act, Known known) {
        Optional<DueItem> first = pressing(calf, known);
        boolean isLate = first.filter(item -> item.state() == DueState.LATE).isPresent();
        return new Key(frame.number(calf), first.map(due::brief).orElse(""), isLate ? Rank.PRESSING : Rank.USUAL, act);
    }

    Screen all(Place.Calves place, Known known) {
        List<Key> keys = keys(known, calf -> new Act.Go(new Place.OneCalf(calf.id(), 0)));
        return frame.near(
                known,
                frame.text(keys.isEmpty() ? STATION_NO_CALVES : STATION_CALVES_HEADING),
                new Body.Choices(frame.page(keys, place.page(), Place.Calves::new)),
                List.of(),
                new Act.Go(new Place.Now()));
    }

    Screen one(Place.OneCalf place, CalfRecord calf, Known known, Act byHand) {
        Farm farm = Farm.of(known.herd());
        Figures figures =
                Figures.written(frame.messages(), zone, farm.protocol().units());
        List<DueItem> items = DueList.of(calf, farm, known.now());
        List<String> lines = lines(calf, items, known);
        List<Key> keys = new ArrayList<>();
        if (lines.size() > FIRST_LINES) {
            keys.add(frame.go(STATION_ALL_LINES, next(place, lines.size())));
        }
        keys.add(frame.key(STATION_BY_HAND, Rank.USUAL, byHand));
        keys.add(frame.key(STATION_PRINT_CARD, Rank.USUAL, new Act.PrintCard(calf.id())));
        String name = frame.capitalised(new CalfNames(frame.messages()).of(calf, known.herd()));
        if (place.page() > 0) {
            return frame.near(
                    known,
                    name,
                    new Body.Lines(lines.stream()
                            .skip((long) (place.page() - 1) * ALL_LINES)
                            .limit(ALL_LINES)
                            .toList()),
                    keys,
                    new Act.Go(new Place.OneCalf(calf.id(), 0)));
        }
        return frame.near(
                known,
                name,
                new Body.OneCalf(
                        frame.number(calf),
                        facts(calf, figures),
                        new FirstDayLine(calf, known.now(), frame.messages(), figures).timeline(items),
                        lanes(),
                        lines.stream().limit(FIRST_LINES).toList()),
                keys,
                new Act.Go(new Place.Calves(0)));
    }

    /** The words of the lines on the drawn day: feeds, dips, looks at the calf. */
    private List<String> lanes() {
        return List.of(frame.text(STATION_LANE_FEED), frame.text(STATION_LANE_DIP), frame.text(STATION_LANE_CHECK));
    }

    private static Place next(Place.OneCalf place, int lines) {
        int pages = 1 + (lines + ALL_LINES - 1) / ALL_LINES;
        return new Place.OneCalf(place.calf(), (place.page() + 1) % pages);
    }

    private String facts(CalfRecord calf, Figures figures) {
        List<String> facts = new ArrayList<>();
        calf.sex().map(frame.messages()::word).ifPresent(facts::add);
        calf.birth()
                .map(birth -> frame.text(
                        calf.isBirthOnlyFound() ? EVENT_FOUND : EVENT_BORN, figures.dayAndClock(birth.midpoint())))
                .ifPresent(facts::add);
        calf.dam().map(dam -> frame.text(EVENT_DAM, dam)).ifPresent(facts::add);
        calf.place().ifPresent(facts::add);
        return frame.capitalised(String.join(", ", facts));
    }

    private List<String> lines(CalfRecord calf, List<DueItem> items, Known known) {
        CautionPhrases cautions = new CautionPhrases(frame.messages());
        List<String> lines = new ArrayList<>();
        Caution.of(calf, known.herd())
                .forEach(caution -> lines.add(
                        cautions.title(caution) + ": " + frame.messages().word(caution)));
        items.stream()
                .filter(item -> item.state().isOpen())
                .forEach(item -> lines.add(frame.capitalised(due.what(item)) + ": " + due.when(item, known.now())));
        return lines;
    }
}
