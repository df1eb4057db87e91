package strawbed.care;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.calf.Told;
import strawbed.care.Vigour.State;
import strawbed.event.Event;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.event.Term.SerumMeasure;
import strawbed.event.When;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.protocol.CountedSign;

/**
 * A worked example of outcomes in one line, as in {@link Story}: facts with their times, parted by semicolons, and one
 * question at the end. {@code B} and {@code C} before a fact name other calves. {@code 37 x 00:00 born | 04:00 fed 2
 * quart} are 37 calves of the same facts, each with a record of its own. A time may also be a date with its zone. The
 * births of the first 30 days are counted, as they stand at their end.
 */
final class OutcomeStory {
    private static final Instant END = Told.MIDNIGHT.plus(Duration.ofDays(30));
    private static final BirthPeriod PERIOD = new BirthPeriod(Told.MIDNIGHT, END);

    private final Told told = new Told();
    private int copies;
    private ZoneId zone = ZoneId.of("UTC");

    static String answer(String line) {
        OutcomeStory story = new OutcomeStory();
        List<String> parts =
                Arrays.stream(line.split(";", -1)).map(String::strip).toList();
        parts.subList(0, parts.size() - 1).forEach(story::tell);
        return story.ask(Story.words(parts.get(parts.size() - 1)));
    }

    private void tell(String fact) {
        List<String> words = Story.words(fact);
        if (words.get(0).equals("protocol")) {
            TreeMap<String, String> settings = new TreeMap<>();
            settings.put(words.get(1), words.get(2).replace("+", ", "));
            told.tell(null, Told.MIDNIGHT, new Event.ProtocolAdopted(settings));
        } else if (words.size() > 1 && words.get(1).equals("x")) {
            String facts = fact.substring(fact.indexOf(" x ") + 3);
            for (int i = 0; i < Integer.parseInt(words.get(0)); i++) {
                tellCopy(
                        "copy " + copies++,
                        Arrays.stream(facts.split("\\|", -1)).map(String::strip).toList());
            }
        } else if (words.get(0).equals("B") || words.get(0).equals("C")) {
            tell(words.get(0), words.subList(1, words.size()));
        } else {
            tell("A", words);
        }
    }

    private void tellCopy(String calf, List<String> facts) {
        told.tell(Told.calf(calf), time(Story.words(facts.get(0)).get(0)), new Event.CalfOpened(null, null));
        facts.forEach(fact -> tell(calf, Story.words(fact)));
    }

    private void tell(String calf, List<String> words) {
        Instant at = time(words.get(0));
        told.tell(Told.calf(calf), at, event(at, words.subList(1, words.size())));
    }

    private Event event(Instant at, List<String> words) {
        return switch (words.get(0)) {
            case "born" ->
                new Event.CalfBorn(
                        words.size() > 1 ? new When.Between(time(words.get(1)), time(words.get(2))) : new When.At(at));
            case "found" -> new Event.CalfFound(new When.At(at));
            case "died" -> new Event.CalfDied(at, Term.DeathTime.LATER);
            case "stillborn" -> new Event.CalfDied(at, Term.DeathTime.AT_BIRTH);
            case "serum" ->
                words.size() > 3
                        ? new Event.SerumTested(measure(words.get(1)), new BigDecimal(words.get(2)), time(words.get(4)))
                        : Story.event(words);
            case "sign" ->
                words.size() > 2
                        ? new Event.SignNoted(
                                Term.Sign.valueOf(words.get(1).toUpperCase(Locale.ROOT)), null, words.get(2))
                        : Story.event(words);
            case "source" ->
                new Event.ColostrumSourceNoted(
                        Term.ColostrumSource.valueOf(words.get(1).toUpperCase(Locale.ROOT)), null, null, null);
            case "breed" -> new Event.BreedNoted(words.get(1));
            case "left" ->
                new Event.ColostrumLeft(new Volume(
                        new BigDecimal(words.get(1)),
                        VolumeUnit.valueOf(words.get(2).toUpperCase(Locale.ROOT))));
            default -> Story.event(words);
        };
    }

    private Instant time(String text) {
        if (text.contains("[")) {
            ZonedDateTime at = ZonedDateTime.parse(text);
            zone = at.getZone();
            return at.toInstant();
        }
        return Told.time(text);
    }

    private String ask(List<String> question) {
        return switch (question.get(0)) {
            case "category" ->
                ImmunityCategory.of(measure(question.get(1)), new BigDecimal(question.get(2)))
                        .name();
            case "shown" ->
                ImmunityCategory.shown(measure(question.get(1)), new BigDecimal(question.get(2)))
                        .toPlainString();
            case "link" ->
                SerumScales.proteinFor(new BigDecimal(question.get(1))).toPlainString();
            case "scales" ->
                SerumScales.disagree(new BigDecimal(question.get(1)), new BigDecimal(question.get(2)))
                        ? "disagree"
                        : "agree";
            case "wilson" -> wilson(Integer.parseInt(question.get(1)), Integer.parseInt(question.get(2)));
            case "at-most" -> chance(question);
            case "bull-twin" -> Freemartin.chanceOfBullTwinInPercent().toPlainString();
            case "immunity" -> text(PassiveImmunity.of(told.record(), farm()), OutcomeStory::immunity);
            case "outcome" -> text(BirthOutcome.of(told.record(), farm()), OutcomeStory::outcome);
            case "ease" -> text(EaseClass.of(told.record()), ease -> ease + (ease.isAssisted() ? " assisted" : ""));
            case "fed-age" -> text(FirstFeedAge.of(told.record()), OutcomeStory::fedAge);
            case "freemartin" -> freemartin(question.size() > 1 ? question.get(1) : "A");
            case "vigour" -> vigour(Vigour.of(record(), farm()));
            case "state" -> state(CountedSign.valueOf(question.get(1)));
            case "figure" -> figure(figureOf(question.get(1)));
            case "hours" -> hours(figures().firstFeeds());
            case "still-young" -> String.valueOf(figures().stillYoung());
            case "unobserved" -> String.valueOf(figures().unobserved());
            case "counts", "shares", "goal", "not-counted", "jerseys", "ages-estimated" ->
                herd(question.get(0), HerdImmunity.of(told.herd(), farm(), PERIOD));
            default -> time(question);
        };
    }

    private String time(List<String> question) {
        return switch (question.get(0)) {
            case "first-feed" ->
                text(
                        FirstDose.of(told.record(), farm().protocolFor(told.record()), latestNow())
                                .ageAtFirstFeed(),
                        OutcomeStory::text);
            case "age" ->
                text(AgeStart.of(told.record())
                        .orElseThrow()
                        .ageAt(told.events().get(told.events().size() - 1).occurredAt()));
            case "instant" -> told.events().get(0).occurredAt().toString();
            case "age-basis" -> AgeStart.of(told.record()).orElseThrow().basis().name();
            case "from" -> item(question.get(1)).from().atZone(zone).toString();
            case "due-at" -> item(question.get(1)).dueAt().atZone(zone).toString();
            case "until" ->
                Optional.ofNullable(item(question.get(1)).hardLimit())
                        .orElseThrow()
                        .atZone(zone)
                        .toString();
            case "window" ->
                text(Duration.between(Told.MIDNIGHT, item(question.get(1)).from())) + " "
                        + text(Duration.between(
                                Told.MIDNIGHT, item(question.get(1)).dueAt()));
            case "contradictions" -> contradictions();
            default -> throw new IllegalArgumentException("no such question: " + question);
        };
    }

    private Farm farm() {
        return Farm.of(told.herd());
    }

    /** Calf A, also when nothing was told of it but what the question needs. */
    private CalfRecord record() {
        Herd herd = told.herd();
        return herd.calf(Told.calf("A")).orElseThrow();
    }

    private static SerumMeasure measure(String name) {
        return SerumMeasure.valueOf(name.toUpperCase(Locale.ROOT));
    }

    private static <T> String text(Judged<T> judged, Function<T, String> verdict) {
        return judged.value()
                .map(verdict)
                .orElseGet(() -> judged.whyNot().orElseThrow().name());
    }

    private static String text(Duration duration) {
        return String.format(
                Locale.ROOT, "%02d:%02d:%02d", duration.toHours(), duration.toMinutesPart(), duration.toSecondsPart());
    }

    private static String immunity(PassiveImmunity immunity) {
        Stream<String> notes = immunity.notes().stream().map(Enum::name);
        return Stream.concat(
                        Stream.of(immunity.category().name(), immunity.measure().name()), notes)
                .collect(Collectors.joining(" "));
    }

    private static String outcome(BirthOutcome outcome) {
        return outcome.kind() + (outcome.isStillborn() ? " stillborn" : "") + (outcome.isAssumed() ? " assumed" : "");
    }

    private static String fedAge(FirstFeedAge age) {
        return text(age.least()) + " " + text(age.middle()) + " " + text(age.most())
                + (age.isEstimated() ? " estimated" : "");
    }

    private String freemartin(String calf) {
        CalfRecord record = told.record(calf);
        return Freemartin.of(record, told.herd()) + " "
                + Freemartin.chanceInPercent(record, told.herd())
                        .map(BigDecimal::toPlainString)
                        .orElse("none");
    }

    private static String vigour(Vigour vigour) {
        String open = vigour.with(State.NOT_RECORDED).stream()
                .map(seen -> seen.sign().name())
                .collect(Collectors.joining(" "));
        return vigour.normal() + " of " + vigour.judged() + "; not recorded: " + (open.isEmpty() ? "none" : open);
    }

    private String state(CountedSign sign) {
        return Vigour.of(record(), farm()).signs().stream()
                .filter(seen -> seen.sign() == sign)
                .map(seen -> seen.state().name())
                .findFirst()
                .orElseThrow();
    }

    private static String wilson(int count, int of) {
        Share share = new Share(count, of);
        return share.percent(1) + " (" + share.interval().lowPercent() + "-"
                + share.interval().highPercent() + ")";
    }

    private static String chance(List<String> question) {
        return HerdImmunity.chanceOfSeeingAtMost(
                        Integer.parseInt(question.get(1)),
                        new BigDecimal(question.get(2)),
                        Integer.parseInt(question.get(3)))
                .movePointRight(2)
                .setScale(1, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static String herd(String question, HerdImmunity herd) {
        return switch (question) {
            case "counts" -> ofAll(category -> String.valueOf(herd.count(category)));
            case "shares" -> ofAll(category -> text(herd.shownPercent(category), BigDecimal::toPlainString));
            case "goal" -> text(herd.goal(), OutcomeStory::goal);
            case "not-counted" ->
                herd.notCounted().entrySet().stream()
                        .map(reason -> reason.getKey() + " " + reason.getValue())
                        .collect(Collectors.joining("; "));
            case "jerseys" -> String.valueOf(herd.jerseys());
            default -> String.valueOf(herd.agesEstimated());
        };
    }

    private static String ofAll(Function<ImmunityCategory, String> text) {
        return Arrays.stream(ImmunityCategory.values()).map(text).collect(Collectors.joining("/"));
    }

    private static String goal(HerdImmunity.Goal goal) {
        if (goal.isMet()) {
            return "met";
        }
        return Stream.of(goal.enoughExcellent() ? "" : "too few excellent", goal.fewPoor() ? "" : "too many poor")
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private HerdFigures figures() {
        return HerdFigures.of(told.herd(), farm(), PERIOD, END);
    }

    private Figure figureOf(String name) {
        HerdFigures figures = figures();
        return switch (name) {
            case "fed" -> figures.fedWithinFourHours();
            case "stillborn" -> figures.stillborn();
            case "assisted" -> figures.assisted();
            case "difficult" -> figures.difficult();
            case "brix" -> figures.goodBrix();
            default -> throw new IllegalArgumentException("no such figure: " + name);
        };
    }

    private static String figure(Figure figure) {
        return figure.count() + "/" + figure.of() + " "
                + text(figure.share(), share -> share.percent(1).toPlainString()) + " unknown " + figure.unknown()
                + " flagged " + figure.flagged();
    }

    private static String hours(FirstFeedAges ages) {
        String known = ages.median()
                .map(median -> "median " + FirstFeedAges.hours(median) + " mean "
                        + FirstFeedAges.hours(ages.mean().orElseThrow()))
                .orElse("none");
        return known + " unknown " + ages.unknown() + " flagged " + ages.flagged();
    }

    private DueItem item(String kind) {
        return DueList.of(told.record(), farm(), Told.MIDNIGHT).stream()
                .filter(item -> item.kind() == DueKind.valueOf(kind))
                .findFirst()
                .orElseThrow();
    }

    private String contradictions() {
        RecordedEvent last = told.events().get(told.events().size() - 1);
        String found =
                Contradiction.of(
                                last.event(),
                                last.occurredAt(),
                                told.record().born().orElseThrow(),
                                latestNow())
                        .stream()
                        .map(each -> each.getClass().getSimpleName())
                        .collect(Collectors.joining(" "));
        return found.isEmpty() ? "none" : found;
    }

    /** The end of the period, or a day after a birth that lies beyond it. */
    private Instant latestNow() {
        Instant dayAfterBirth = AgeStart.of(told.record()).orElseThrow().at().plus(Duration.ofDays(1));
        return dayAfterBirth.isAfter(END) ? dayAfterBirth : END;
    }
}
