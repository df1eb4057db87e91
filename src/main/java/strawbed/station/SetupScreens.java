package strawbed.station;

import static strawbed.text.MessageKey.*;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.entry.EntryGroup;
import strawbed.statement.Control;
import strawbed.text.MessageKey;

/** What else there is: who works, papers, how this station listens, speaks and looks. */
record SetupScreens(Frame frame) {
    /** How long the bar on the screen should be, in millimetres. */
    private static final int RULER = 50;

    /** As many letters of a device's name as a key has room for. */
    private static final int NAME = 24;

    /** As many letters of a person's name as the screen has room for. */
    private static final int LONGEST_NAME = 16;

    Screen more(Known known) {
        Key pause = known.sign() == Sign.PAUSED
                ? frame.key(STATION_WAKE_UP, Rank.USUAL, new Act.Order(Control.WAKE_UP_RECORDER))
                : frame.key(STATION_PAUSE, Rank.USUAL, new Act.Order(Control.PAUSE_RECORDER));
        int open = known.open().size();
        long waiting = known.papers().waiting();
        List<Key> keys = List.of(
                pause,
                frame.key(STATION_WHAT_IS_DUE, Rank.USUAL, new Act.Order(Control.WHAT_IS_DUE)),
                new Key(
                        frame.text(STATION_OPEN),
                        open == 0 ? "" : frame.text(STATION_OPEN_COUNT, Integer.toString(open)),
                        Rank.USUAL,
                        new Act.Go(new Place.OpenStatements(0))),
                new Key(
                        frame.text(STATION_OPERATOR),
                        known.operator().orElse(""),
                        Rank.USUAL,
                        new Act.Go(new Place.Operators())),
                frame.key(STATION_HANDOVER, Rank.USUAL, new Act.PrintHandover()),
                new Key(
                        frame.text(STATION_PRINTS),
                        waiting == 0 ? "" : frame.text(STATION_PRINTS_COUNT, Long.toString(waiting)),
                        Rank.USUAL,
                        new Act.Go(new Place.Prints(0))),
                frame.go(STATION_SETUP, new Place.Setup()),
                frame.go(STATION_END, new Place.End()));
        return frame.near(
                known,
                frame.text(STATION_MORE_HEADING),
                new Body.Choices(keys),
                List.of(),
                new Act.Go(new Place.Now()));
    }

    Screen operators(Known known) {
        Stream<Key> names =
                known.choices().operators().stream().limit(Frame.PAGE - 1).map(name -> operator(name, name, known));
        List<Key> keys = Stream.concat(names, Stream.of(operator(frame.text(STATION_NOBODY), null, known)))
                .toList();
        return frame.near(
                known,
                frame.text(known.choices().operators().isEmpty() ? STATION_NO_OPERATORS : STATION_OPERATOR_HEADING),
                new Body.Choices(keys),
                known.choices().operators().size() < Frame.PAGE - 1
                        ? List.of(frame.go(STATION_NEW_NAME, new Place.NewOperator("", "")))
                        : List.of(),
                new Act.Go(new Place.More()));
    }

    /** A name of a few letters, each by two keys: its group, as there is no room for all at once, and itself. */
    Screen newOperator(Place.NewOperator place, Known known) {
        String name = place.name();
        boolean isGroup = place.letters().isEmpty();
        Stream<Key> letters = isGroup
                ? Arrays.stream(frame.text(STATION_LETTERS).split(" ", -1))
                        .map(group -> Key.of(spaced(group), Rank.USUAL, new Act.Go(new Place.NewOperator(name, group))))
                : place.letters().codePoints().mapToObj(Character::toString).map(letter -> letter(letter, name));
        List<Key> foot = new ArrayList<>();
        if (isGroup && !name.isBlank()) {
            String shorter = name.substring(0, name.offsetByCodePoints(name.length(), -1));
            foot.add(frame.go(STATION_DELETE, new Place.NewOperator(shorter, "")));
            if (!name.endsWith(" ")) {
                foot.add(frame.go(STATION_SPACE, new Place.NewOperator(name + " ", "")));
            }
            foot.add(frame.key(STATION_ENTER, Rank.YES, new Act.AddOperator(name.strip())));
        }
        return frame.near(
                known,
                name.isEmpty() ? frame.text(STATION_NAME_HEADING) : name,
                new Body.Choices(letters.toList()),
                foot,
                new Act.Go(isGroup ? new Place.Operators() : new Place.NewOperator(name, "")));
    }

    private static String spaced(String letters) {
        return letters.codePoints().mapToObj(Character::toString).collect(Collectors.joining(" "));
    }

    /** Large at the beginning of a name, else small. */
    private Key letter(String letter, String name) {
        boolean isFirst = name.isEmpty() || name.endsWith(" ");
        String written = isFirst ? letter : letter.toLowerCase(frame.messages().locale());
        String longer = name.length() < LONGEST_NAME ? name + written : name;
        return Key.of(written, Rank.USUAL, new Act.Go(new Place.NewOperator(longer, "")));
    }

    private static Key operator(String label, @Nullable String name, Known known) {
        boolean isChosen = known.operator().equals(Optional.ofNullable(name));
        return Key.of(label, isChosen ? Rank.CHOSEN : Rank.USUAL, new Act.Operate(name));
    }

    Screen setup(Known known) {
        Choices is = known.choices();
        List<Key> keys = List.of(
                toggle(
                        STATION_LISTEN,
                        is.holdToTalk() ? STATION_LISTEN_HOLD : STATION_LISTEN_OPEN,
                        "listen",
                        is.holdToTalk() ? "open" : "hold"),
                toggle(STATION_HEADSET, onOff(is.headset()), "headset", is.headset() ? "no" : "yes"),
                new Key(
                        frame.text(STATION_VOICE),
                        frame.text(onOff(is.voice())),
                        Rank.USUAL,
                        new Act.Go(new Place.Voice())),
                toggle(STATION_LOOK, is.dark() ? STATION_DARK : STATION_LIGHT, "look", is.dark() ? "light" : "dark"),
                toggle(
                        STATION_LANGUAGE,
                        is.spanish() ? STATION_SPANISH : STATION_ENGLISH,
                        "language",
                        is.spanish() ? "en" : "es"),
                frame.go(STATION_MICROPHONE, new Place.Microphones(0)),
                frame.go(STATION_PEDAL, new Place.Pedal(Optional.empty())),
                frame.go(STATION_SCREEN_SIZE, new Place.Ruler()));
        return frame.near(
                known, frame.text(STATION_SETUP), new Body.Choices(keys), List.of(), new Act.Go(new Place.More()));
    }

    private static MessageKey onOff(boolean isOn) {
        return isOn ? STATION_ON : STATION_OFF;
    }

    private Key toggle(MessageKey what, MessageKey is, String line, String next) {
        return new Key(frame.text(what), frame.text(is), Rank.USUAL, new Act.Set(line, next));
    }

    /** Of what the station reads back by voice; a doubt is always spoken. */
    Screen voice(Known known) {
        Choices is = known.choices();
        Key all = toggle(STATION_VOICE, onOff(is.voice()), "voice", is.voice() ? "off" : "on");
        Stream<Key> groups = Arrays.stream(EntryGroup.values()).map(group -> {
            boolean isSpoken = !is.unspoken().contains(group);
            return Key.of(
                    frame.capitalised(frame.messages().word(group)),
                    isSpoken ? Rank.CHOSEN : Rank.USUAL,
                    new Act.Speak(group, !isSpoken));
        });
        return frame.near(
                known,
                frame.text(STATION_VOICE_HEADING),
                new Body.Choices(
                        is.voice() ? Stream.concat(Stream.of(all), groups).toList() : List.of(all)),
                List.of(),
                new Act.Go(new Place.Setup()));
    }

    Screen microphones(Place.Microphones place, Known known) {
        Key usual = microphone(frame.text(STATION_USUAL_MICROPHONE), "", known);
        List<Key> keys = Stream.concat(
                        Stream.of(usual),
                        known.microphones().stream().map(name -> microphone(frame.shortened(name, NAME), name, known)))
                .toList();
        return frame.near(
                known,
                frame.text(STATION_MICROPHONE_HEADING),
                new Body.Choices(frame.page(keys, place.page(), Place.Microphones::new)),
                List.of(),
                new Act.Go(new Place.Setup()));
    }

    private static Key microphone(String label, String name, Known known) {
        boolean isChosen = known.choices().microphone().orElse("").equals(name);
        return Key.of(label, isChosen ? Rank.CHOSEN : Rank.USUAL, new Act.Set("microphone", name));
    }

    Screen pedal(Place.Pedal place, Known known) {
        Map<Integer, Meaning> pedal = known.choices().pedal();
        List<Key> keys = Arrays.stream(Meaning.values())
                .map(meaning -> new Key(
                        frame.messages().word(meaning),
                        String.join(
                                ", ",
                                pedal.entrySet().stream()
                                        .filter(bound -> bound.getValue() == meaning)
                                        .map(bound ->
                                                known.keyNames().getOrDefault(bound.getKey(), "" + bound.getKey()))
                                        .sorted()
                                        .toList()),
                        place.learning().equals(Optional.of(meaning)) ? Rank.CHOSEN : Rank.USUAL,
                        new Act.Go(new Place.Pedal(Optional.of(meaning)))))
                .toList();
        String heading = place.learning()
                .map(meaning -> frame.text(STATION_PEDAL_PRESS, frame.messages().word(meaning)))
                .orElseGet(() -> frame.text(STATION_PEDAL_HEADING));
        return frame.near(known, heading, new Body.Choices(keys), List.of(), new Act.Go(new Place.Setup()));
    }

    Screen ruler(Known known) {
        return frame.near(
                known,
                frame.text(STATION_RULER_HEADING),
                new Body.Ruler(frame.text(STATION_RULER_TEXT, Integer.toString(RULER)), RULER),
                List.of(
                        frame.key(STATION_SHORTER, Rank.USUAL, new Act.Stretch(-1)),
                        frame.key(STATION_LONGER, Rank.USUAL, new Act.Stretch(1))),
                new Act.Go(new Place.Setup()));
    }

    Screen end(Known known) {
        return frame.near(
                known,
                frame.text(STATION_END),
                new Body.Telling("", frame.text(STATION_END_TEXT)),
                List.of(frame.key(STATION_END, Rank.NO, new Act.Quit())),
                new Act.Go(new Place.More()));
    }
}
