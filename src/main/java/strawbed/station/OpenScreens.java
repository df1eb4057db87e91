package strawbed.station;

import static strawbed.text.MessageKey.*;

import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import strawbed.care.Farm;
import strawbed.journal.NewOpenStatement;
import strawbed.journal.OpenStatement;
import strawbed.text.Figures;

/** What was said and not confirmed: to hear it, to mend it, to keep it as a note, to throw it away. */
record OpenScreens(Frame frame, CalfScreens calves, ZoneId zone) {
    /** As many letters as a key has room for in its second line. */
    private static final int WORDS = 20;

    Screen all(int page, Known known) {
        List<Key> keys = known.open().stream()
                .map(open -> new Key(
                        when(open, known),
                        frame.shortened(words(open.statement()), WORDS),
                        Rank.USUAL,
                        new Act.Go(new Place.OneOpen(open.id()))))
                .toList();
        return frame.near(
                known,
                frame.text(keys.isEmpty() ? STATION_NO_OPEN : STATION_OPEN_HEADING),
                new Body.Choices(frame.page(keys, page, Place.OpenStatements::new)),
                List.of(),
                new Act.Go(new Place.More()));
    }

    private String when(OpenStatement open, Known known) {
        return Figures.written(
                        frame.messages(), zone, Farm.of(known.herd()).protocol().units())
                .clockAsSeenFrom(known.now(), open.statement().from());
    }

    private String words(NewOpenStatement statement) {
        return statement.words().isEmpty() ? frame.text(STATION_NO_WORDS) : String.join(" ", statement.words());
    }

    Screen one(OpenStatement open, Known known) {
        UUID id = open.id();
        return frame.near(
                known,
                frame.text(STATION_SAID_AT, when(open, known)),
                new Body.Telling("", words(open.statement())),
                List.of(
                        frame.key(STATION_PLAY, Rank.USUAL, new Act.Replay(id)),
                        frame.key(STATION_HEAR_AGAIN, Rank.USUAL, new Act.HearAgain(id)),
                        frame.go(STATION_MEND, new Place.WhoseFacts(0, Optional.of(id))),
                        frame.go(STATION_KEEP_AS_NOTE, new Place.NoteOf(id, 0)),
                        frame.key(STATION_THROW_AWAY, Rank.NO, new Act.Go(new Place.ThrowAway(id)))),
                new Act.Go(new Place.OpenStatements(0)));
    }

    Screen noteOf(Place.NoteOf place, Known known) {
        List<Key> keys = calves.keys(known, calf -> new Act.KeepAsNote(place.id(), calf.id()));
        return frame.near(
                known,
                frame.text(keys.isEmpty() ? STATION_NO_CALVES : STATION_NOTE_HEADING),
                new Body.Choices(frame.page(keys, place.page(), page -> new Place.NoteOf(place.id(), page))),
                List.of(),
                new Act.Go(new Place.OneOpen(place.id())));
    }

    Screen throwAway(UUID id, Known known) {
        List<Key> keys = Arrays.stream(ThrownAway.values())
                .map(why -> Key.of(frame.messages().word(why), Rank.USUAL, new Act.Settle(id, why)))
                .toList();
        return frame.near(
                known,
                frame.text(STATION_THROW_HEADING),
                new Body.Choices(keys),
                List.of(),
                new Act.Go(new Place.OneOpen(id)));
    }
}
