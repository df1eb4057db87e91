package strawbed.station;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import strawbed.calf.CalfRecord;
import strawbed.entry.FarmChoices;
import strawbed.text.DuePhrases;
import strawbed.text.MessageKey;
import strawbed.text.Messages;

/** Makes the screen of a place from what is known. Immutable. */
public final class Screens {
    private final NowScreens now;
    private final CalfScreens calves;
    private final OpenScreens open;
    private final PrintScreens prints;
    private final SetupScreens setup;
    private final EntryScreens entry;

    /**
     * @param zone the farm's
     * @param farm what the farm has on its keys
     */
    public Screens(Messages messages, ZoneId zone, FarmChoices farm) {
        Frame frame = new Frame(messages);
        DuePhrases due = new DuePhrases(messages, zone);
        now = new NowScreens(frame, due);
        calves = new CalfScreens(frame, due, zone);
        open = new OpenScreens(frame, calves, zone);
        prints = new PrintScreens(frame);
        setup = new SetupScreens(frame);
        entry = new EntryScreens(frame, calves, zone, farm);
    }

    /** While record and speech model are loaded. */
    public static Screen starting(Messages messages) {
        return new Screen(
                Sign.STARTING,
                messages.word(Sign.STARTING),
                "",
                "",
                "",
                new Body.Telling("", messages.text(MessageKey.STATION_TITLE)),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    /** What ended the recorder, with a key to close it. */
    public static Screen failed(Messages messages, String sentence) {
        Act quit = new Act.Quit();
        return new Screen(
                Sign.STOPPED,
                messages.word(Sign.STOPPED),
                "",
                "",
                "",
                new Body.Telling("", sentence),
                List.of(Key.of(messages.text(MessageKey.STATION_END), Rank.NO, quit)),
                Optional.of(quit),
                Optional.of(quit));
    }

    /** The screen of a place. Where what it showed is gone, such as a calf that was undone, what is now. */
    public Screen of(Place place, Known known) {
        if (place instanceof Place.Calves page) {
            return calves.all(page, known);
        }
        if (place instanceof Place.OneCalf one) {
            return known.herd().calves().stream()
                    .filter(calf -> calf.id().equals(one.calf()))
                    .findFirst()
                    .map(calf -> calf(one, calf, known))
                    .orElseGet(() -> now.of(known));
        }
        if (place instanceof Place.WhoseFacts whose) {
            return entry.whose(whose, known);
        }
        if (place instanceof Place.Naming naming) {
            return entry.naming(naming, known);
        }
        if (place instanceof Place.Entering entering) {
            return entry.entering(entering, known);
        }
        if (place instanceof Place.OpenStatements page) {
            return open.all(page.page(), known);
        }
        if (place instanceof Place.OneOpen one) {
            return known.open().stream()
                    .filter(statement -> statement.id().equals(one.id()))
                    .findFirst()
                    .map(statement -> open.one(statement, known))
                    .orElseGet(() -> open.all(0, known));
        }
        if (place instanceof Place.NoteOf note) {
            return open.noteOf(note, known);
        }
        if (place instanceof Place.ThrowAway away) {
            return open.throwAway(away.id(), known);
        }
        if (place instanceof Place.Prints page) {
            return prints.all(page.page(), known);
        }
        if (place instanceof Place.OnePrint one) {
            return known.papers()
                    .numbered(one.number())
                    .map(paper -> prints.one(paper, known))
                    .orElseGet(() -> prints.all(0, known));
        }
        return ofSetup(place, known);
    }

    private Screen calf(Place.OneCalf place, CalfRecord calf, Known known) {
        return calves.one(place, calf, known, entry.begin(calf, known, Optional.empty()));
    }

    private Screen ofSetup(Place place, Known known) {
        if (place instanceof Place.More) {
            return setup.more(known);
        }
        if (place instanceof Place.Operators) {
            return setup.operators(known);
        }
        if (place instanceof Place.Setup) {
            return setup.setup(known);
        }
        if (place instanceof Place.Voice) {
            return setup.voice(known);
        }
        if (place instanceof Place.NewOperator named) {
            return setup.newOperator(named, known);
        }
        if (place instanceof Place.Microphones microphones) {
            return setup.microphones(microphones, known);
        }
        if (place instanceof Place.Pedal pedal) {
            return setup.pedal(pedal, known);
        }
        if (place instanceof Place.Ruler) {
            return setup.ruler(known);
        }
        return place instanceof Place.End ? setup.end(known) : now.of(known);
    }
}
