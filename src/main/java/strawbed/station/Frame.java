package strawbed.station;

import static strawbed.text.MessageKey.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.text.MessageKey;
import strawbed.text.Messages;
import strawbed.text.Sentences;

/** What all screens have in common. */
record Frame(Messages messages) {
    /** As many keys as the smallest screen has room for. */
    static final int PAGE = 12;

    /** A page that is read from two metres. */
    Screen far(Known known, Body body, List<Key> keys, Optional<Act> confirm, Optional<Act> cancel) {
        return new Screen(
                known.sign(),
                messages.word(known.sign()),
                "",
                known.note(),
                known.operator().map(name -> messages.text(STATION_WORKS, name)).orElse(""),
                body,
                keys,
                confirm,
                cancel);
    }

    /** A page that is worked at from near; what cancels leads back. */
    Screen near(Known known, String heading, Body body, List<Key> keys, Act back) {
        return near(known, heading, known.note(), body, keys, back);
    }

    Screen near(Known known, String heading, String note, Body body, List<Key> keys, Act back) {
        List<Key> all = new ArrayList<>(List.of(Key.of(text(STATION_BACK), Rank.USUAL, back)));
        all.addAll(keys);
        return new Screen(
                known.sign(),
                messages.word(known.sign()),
                heading,
                note,
                "",
                body,
                all,
                Optional.empty(),
                Optional.of(back));
    }

    /** Keys of one page; where they are more, the last one leads to the next, and the last page to the first. */
    List<Key> page(List<Key> all, int page, IntFunction<Place> places) {
        return page(all, PAGE, page, places);
    }

    /** The same with fewer keys on a page, where many stand below. */
    List<Key> page(List<Key> all, int most, int page, IntFunction<Place> places) {
        if (all.size() <= most) {
            return all;
        }
        int size = most - 1;
        int pages = (all.size() + size - 1) / size;
        int shown = Math.floorMod(page, pages);
        List<Key> keys = new ArrayList<>(all.subList(shown * size, Math.min(all.size(), (shown + 1) * size)));
        keys.add(new Key(
                text(STATION_NEXT_PAGE),
                (shown + 1) + "/" + pages,
                Rank.USUAL,
                new Act.Go(places.apply((shown + 1) % pages))));
        return keys;
    }

    String text(MessageKey key, Object... parts) {
        return messages.text(key, parts);
    }

    /** The first words of a text, with dots where it goes on. */
    String shortened(String text, int letters) {
        if (text.length() <= letters) {
            return text;
        }
        int end = text.lastIndexOf(' ', letters - 3);
        return text.substring(0, end > 0 ? end : letters - 3) + "...";
    }

    String capitalised(String words) {
        return Sentences.capitalised(words, messages.locale());
    }

    Key go(MessageKey label, Place place) {
        return Key.of(text(label), Rank.USUAL, new Act.Go(place));
    }

    Key key(MessageKey label, Rank rank, Act act) {
        return Key.of(text(label), rank, act);
    }

    /** A calf in few letters: its number, or its dam's. */
    String number(CalfRecord calf) {
        return calf.number().orElseGet(() -> ofCow(calf.dam().orElse(null)));
    }

    String ofCow(@Nullable String dam) {
        return dam == null ? text(STATION_NO_NUMBER) : text(STATION_OF_COW, dam);
    }
}
