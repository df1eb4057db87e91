package strawbed.station;

import static strawbed.text.MessageKey.*;

import java.util.List;

/** The pages on their way to the printer: how far each came, and what can be done about it. */
record PrintScreens(Frame frame) {
    /** As many letters as a key has room for above its second line. */
    private static final int WHAT = 13;

    Screen all(int page, Known known) {
        List<Key> keys = known.papers().all().stream().map(this::key).toList();
        return frame.near(
                known,
                frame.text(keys.isEmpty() ? STATION_NO_PRINTS : STATION_PRINTS),
                note(known),
                new Body.Choices(frame.page(keys, page, Place.Prints::new)),
                List.of(),
                new Act.Go(new Place.More()));
    }

    private Key key(Paper paper) {
        return new Key(
                frame.capitalised(brief(paper.what())),
                frame.messages().word(paper.state()),
                Rank.USUAL,
                new Act.Go(new Place.OnePrint(paper.number())));
    }

    /** Its last words, as which calf it is stands at the end: "calf 12" of "the card of calf 12". */
    private String brief(String what) {
        List<String> small = List.of(frame.text(STATION_SMALL_WORDS).split(" ", -1));
        List<String> words = List.of(what.split(" ", -1));
        int from = 0;
        while (from < words.size() - 1
                && (small.contains(words.get(from)) || rest(words, from).length() > WHAT)) {
            from++;
        }
        return frame.shortened(rest(words, from), WHAT);
    }

    private static String rest(List<String> words, int from) {
        return String.join(" ", words.subList(from, words.size()));
    }

    Screen one(Paper paper, Known known) {
        return frame.near(
                known,
                frame.capitalised(paper.what()),
                note(known),
                new Body.Telling("", state(paper)),
                keys(paper),
                new Act.Go(new Place.Prints(0)));
    }

    private String state(Paper paper) {
        return switch (paper.state()) {
            case WAITING -> frame.text(STATION_PRINT_WAITS, paper.printer(), paper.why());
            case HANDED_OVER -> frame.text(STATION_PRINT_HANDED_OVER, paper.printer());
            case GIVEN_UP -> frame.text(STATION_PRINT_GIVEN_UP, paper.printer());
        };
    }

    private List<Key> keys(Paper paper) {
        if (paper.state() == PaperState.WAITING) {
            return List.of(
                    frame.key(STATION_TRY_AGAIN, Rank.USUAL, new Act.OfPaper(paper.number(), PaperStep.TRY)),
                    frame.key(STATION_GIVE_UP, Rank.NO, new Act.OfPaper(paper.number(), PaperStep.GIVE_UP)));
        }
        return List.of(frame.key(STATION_PRINT_AGAIN, Rank.USUAL, new Act.OfPaper(paper.number(), PaperStep.AGAIN)));
    }

    /** News of the moment before what has been wrong for longer. */
    private static String note(Known known) {
        return known.note().isEmpty() ? known.papers().trouble() : known.note();
    }
}
