package strawbed.station;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.care.Caution;
import strawbed.care.DueList;
import strawbed.dialog.Pending;
import strawbed.dialog.Prompt;
import strawbed.entry.EntryGroup;
import strawbed.entry.FarmChoices;
import strawbed.journal.OpenStatement;
import strawbed.testkit.Barn;
import strawbed.testkit.SpokenSentence;
import strawbed.text.Language;
import strawbed.text.MessageKey;
import strawbed.text.Messages;
import strawbed.text.Prompts;

/** Every page of the station, of a busy night with long names, in one language. */
public final class StationPages {
    public static final Instant NOW = SpokenSentence.SPOKEN_AT.plus(Duration.ofMinutes(90));

    private static final List<String> DIGITS =
            List.of("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine");

    private final Messages messages;
    private final Screens screens;
    private final Map<String, Screen> pages = new LinkedHashMap<>();

    private StationPages(Language language) {
        messages = new Messages(language.locale());
        screens = new Screens(messages, SpokenSentence.ZONE, FarmChoices.USUAL);
    }

    /** Name and screen of each page, reached by following every key to pages from the first one on. */
    public static Map<String, Screen> all(Language language) {
        return new StationPages(language).collect();
    }

    /** A night with calves by number and by dam, late tasks, and statements that nobody confirmed. */
    public static Barn busyNight() {
        Barn barn = Barn.with("5");
        for (int number : List.of(12, 207, 417, 1088, 33, 34, 35, 36, 37, 38, 39, 4123)) {
            barn.hears("new calf " + digits(number) + " heifer born now");
            barn.hears("confirm entry");
        }
        barn.hears("new calf of cow two one two bull difficult assist backwards");
        barn.hears("confirm entry");
        barn.hears("calf twelve navel dipped three quarts fed by bottle");
        barn.hears("confirm entry");
        barn.hears("calf four one seven not breathing");
        barn.hears("confirm entry");
        barn.hears("calf two oh seven temperature one hundred one point five");
        barn.waits();
        barn.hears("calf thirty three two quarts fed");
        barn.waits();
        return barn;
    }

    private static String digits(int number) {
        return Integer.toString(number)
                .chars()
                .mapToObj(digit -> DIGITS.get(digit - '0'))
                .collect(Collectors.joining(" "));
    }

    /** What the station knows of a night. */
    public static Known known(Barn barn, Messages messages, Choices choices, Sign sign, String note) {
        Herd herd = barn.herd();
        List<OpenStatement> open = new ArrayList<>(barn.journal().openStatements());
        Collections.reverse(open);
        Optional<Pending> pending = barn.pending();
        Prompts prompts = new Prompts(messages, SpokenSentence.ZONE, java.time.Clock.fixed(NOW, SpokenSentence.ZONE));
        String asked = pending.map(waits ->
                        prompts.shown(waits.doubts().isEmpty() ? new Prompt.ReadBack(waits) : new Prompt.Ask(waits)))
                .orElse("");
        Prompt last = new Prompt.Saved(2, "12");
        return new Known(
                herd,
                NOW,
                sign,
                note,
                Optional.of("Guadalupe"),
                pending,
                herd.byNumber("12").map(CalfRecord::id),
                new Told(Told.word(last, messages), prompts.shown(last)),
                asked,
                DueList.open(herd, NOW).stream()
                        .filter(item -> item.state().isOpen())
                        .toList(),
                open,
                true,
                List.of("Built-in Audio Analog Stereo", "USB PnP Sound Device"),
                papers(messages),
                Map.of(33, "Page Up", 34, "Page Down"),
                choices);
    }

    /** More than a page of prints, with the longest names and reasons. */
    private static Papers papers(Messages messages) {
        String printer = "Label_printer_calf_barn";
        String order = messages.text(MessageKey.ORDER_WORDS).split(" ", -1)[1];
        String why =
                messages.text(MessageKey.PRINT_FAULT_PAUSED_WHY, printer, "Paper jam or open cover: check the roll");
        List<Paper> papers = new ArrayList<>(List.of(
                new Paper(
                        31, card(messages, MessageKey.CALF_IN_ORDER, order, "4123"), printer, PaperState.WAITING, why),
                new Paper(30, messages.text(MessageKey.PRINT_HANDOVER_SHEET), printer, PaperState.HANDED_OVER, "")));
        for (int number = 29; number > 15; number--) {
            PaperState state = number % 3 == 0 ? PaperState.GIVEN_UP : PaperState.HANDED_OVER;
            papers.add(new Paper(number, card(messages, MessageKey.CALF_NUMBERED, "41" + number), printer, state, ""));
        }
        return new Papers(papers, "");
    }

    private static String card(Messages messages, MessageKey calf, Object... parts) {
        return messages.text(MessageKey.PRINT_CARD_OF, messages.text(calf, parts));
    }

    private Map<String, Screen> collect() {
        Known known = known(busyNight(), messages, Choices.USUAL, Sign.LISTENING, "");
        follow(known);
        for (Sign sign : Sign.values()) {
            Known other = known(busyNight(), messages, hold(), sign, reason(sign));
            pages.put("sign " + sign, screens.of(new Place.Now(), other));
        }
        cautious(known);
        pages.put(
                "ears coming",
                screens.of(
                        new Place.Now(),
                        known(
                                busyNight(),
                                messages,
                                Choices.USUAL,
                                Sign.LISTENING,
                                messages.text(MessageKey.STATION_EARS_COMING))));
        pages.put(
                "pedal refused",
                screens.of(
                        new Place.Pedal(Optional.of(Meaning.UNDO)),
                        known(
                                busyNight(),
                                messages,
                                Choices.USUAL,
                                Sign.LISTENING,
                                messages.text(MessageKey.STATION_PEDAL_VOLUME))));
        waiting("read back", "calf twelve two quarts fed by bottle warmed to one hundred two degrees", known);
        waiting("asked", "calf nine nine seven heifer tagged three one four", known);
        waiting("not whole", "calf twelve temperature", known);
        return pages;
    }

    private static final String NO_MICROPHONE =
            "There is no microphone (the system's microphone); plug one in or choose another name.";

    private String reason(Sign sign) {
        return switch (sign) {
            case NO_SOUND -> NO_MICROPHONE;
            case KEYS_ONLY -> messages.text(MessageKey.STATION_KEYS_ONLY);
            case STARTING, LISTENING, HOLD_TO_TALK, SPEAKING, PAUSED, STOPPED -> "";
        };
    }

    private static Choices hold() {
        return new Choices(
                Optional.empty(),
                Optional.empty(),
                true,
                false,
                true,
                Set.of(EntryGroup.FIRST_MINUTES),
                true,
                false,
                Optional.empty(),
                List.of("Ana", "Guadalupe", "Sam"),
                Duration.ofMinutes(10),
                Duration.ofMinutes(30),
                Map.of(34, Meaning.NEXT, 33, Meaning.CONFIRM));
    }

    /** What is told longest: two cautions behind what was saved. */
    private void cautious(Known known) {
        Prompts prompts = new Prompts(messages, SpokenSentence.ZONE, java.time.Clock.fixed(NOW, SpokenSentence.ZONE));
        String text = Stream.of(
                        new Prompt.Saved(2, "12"),
                        new Prompt.Warn(Caution.TUBE_FEEDING),
                        new Prompt.Warn(Caution.STRONG_IODINE),
                        new Prompt.Warn(Caution.FRESH_COW))
                .map(prompts::shown)
                .collect(Collectors.joining(" "));
        pages.put(
                "cautions",
                screens.of(new Place.Now(), known.telling(new Told(known.told().word(), text))));
    }

    private void waiting(String name, String words, Known like) {
        Barn barn = busyNight().hears(words);
        pages.put(name, screens.of(new Place.Now(), known(barn, messages, like.choices(), Sign.LISTENING, "")));
    }

    /** Breadth first, each kind of page once, so that what was entered before is little. */
    private void follow(Known known) {
        Deque<Map.Entry<String, Place>> next = new ArrayDeque<>(List.of(Map.entry("now", new Place.Now())));
        while (!next.isEmpty()) {
            Map.Entry<String, Place> page = next.removeFirst();
            if (pages.containsKey(page.getKey())) {
                continue;
            }
            Screen screen = screens.of(page.getValue(), known);
            pages.put(page.getKey(), screen);
            for (Key key : keys(screen)) {
                if (key.act() instanceof Act.Go go) {
                    next.add(Map.entry(kind(go.place()), go.place()));
                }
            }
        }
    }

    /** Pages that differ only in what was entered before, or whose it is, are one kind. */
    private static String kind(Place place) {
        if (place instanceof Place.Now) {
            return "now";
        }
        if (place instanceof Place.Entering entering) {
            if (entering.group().isPresent()) {
                return "kinds of " + entering.group().get();
            }
            return "entering "
                    + entering.draft()
                            .step()
                            .filter(step -> !entering.typed().isLeft())
                            .map(step -> entering.draft().kind().map(Enum::name).orElse("") + " " + step.question()
                                    + typed(entering.typed()))
                            .orElse("groups");
        }
        if (place instanceof Place.Naming naming) {
            return "naming " + naming.draft().kind() + " "
                    + naming.draft()
                            .step()
                            .map(asked -> asked.question().name())
                            .orElse("")
                    + typed(naming.typed());
        }
        if (place instanceof Place.NewOperator named) {
            return "letters" + (named.letters().isEmpty() ? "" : " of a group")
                    + (named.name().isEmpty() ? "" : " behind some");
        }
        if (place instanceof Place.OnePrint one) {
            return "OnePrint " + (one.number() < 30 ? one.number() % 3 == 0 ? "given up" : "card" : one.number());
        }
        return place.getClass().getSimpleName() + (place instanceof Place.OneCalf one ? " " + one.page() : "");
    }

    private static String typed(Typed typed) {
        return (typed.onPad() ? " pad" : "")
                + (typed.digits().isEmpty() ? "" : " typed")
                + (typed.refused().isEmpty() ? "" : " refused");
    }

    /** All keys of a screen, those in the middle first. */
    public static List<Key> keys(Screen screen) {
        List<Key> keys = new ArrayList<>();
        if (screen.body() instanceof Body.Choices choices) {
            keys.addAll(choices.keys());
        }
        keys.addAll(screen.keys());
        return keys;
    }
}
