package strawbed.app;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.card.CardContents;
import strawbed.card.Print;
import strawbed.event.Event.CardPrinted;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.Term;
import strawbed.report.CalfPage;
import strawbed.report.pdf.CardPaper;
import strawbed.report.pdf.PdfCardWriter;
import strawbed.report.pdf.SheetPaper;
import strawbed.text.CalfNames;
import strawbed.text.Messages;

/**
 * Writes the cards of calves and has them noted in the record. A card is noted once it is written; what cannot be noted
 * is written again as a copy, so that no card bears a number that the record does not know.
 */
final class CardPrinting {
    private final Messages messages;
    private final Settings settings;
    private final Notes notes;
    private final PdfCardWriter writer = new PdfCardWriter();
    private final CalfNames names;

    /** @param notes where prints are noted */
    CardPrinting(Messages messages, Settings settings, Notes notes) {
        this.messages = messages;
        this.settings = settings;
        this.notes = notes;
        this.names = new CalfNames(messages);
    }

    /** Takes prints into the record. */
    @FunctionalInterface
    interface Notes {
        /** All or none; empty if they are safe in the record, else the sentence that says why not. */
        Optional<String> note(List<NewEvent> prints);
    }

    /** A calf whose card is wanted, among those that have to do with it. */
    record Wanted(CalfRecord calf, Herd herd) {}

    /**
     * A file that was written.
     *
     * @param what it is, for a list of what waits for a printer
     * @param notNoted why it is a copy, if it is one
     */
    record Printed(Path file, String what, Optional<String> notNoted) {}

    /**
     * Writes the card of a living calf, or the record sheet of a dead one.
     *
     * @throws BadInputException if it cannot be written; then nothing is noted
     */
    Printed print(Wanted wanted, CardPaper paper, Path file) {
        return print(
                List.of(wanted),
                paper,
                (pages, now) -> PrintedFile.write(file, writer.write(pages.get(0), paper, now), "The card"),
                file);
    }

    /**
     * Writes the same of several, two on a sheet.
     *
     * @param paper a lying one
     * @throws BadInputException if they cannot be written; then nothing is noted
     */
    Printed printSheets(List<Wanted> wanted, CardPaper paper, SheetPaper sheet, Path file) {
        return print(
                wanted,
                paper,
                (pages, now) ->
                        PrintedFile.write(file, writer.writeSheets(pages, paper, sheet, now), "The sheet of cards"),
                file);
    }

    /** Puts finished pages into the file. */
    private interface Writing {
        void write(List<CalfPage> pages, Instant now);
    }

    private Printed print(List<Wanted> wanted, CardPaper paper, Writing writing, Path file) {
        Instant now = settings.clock().instant();
        List<CalfPage> numbered = new ArrayList<>();
        List<CalfPage> copies = new ArrayList<>();
        List<NewEvent> prints = new ArrayList<>();
        for (Wanted one : wanted) {
            Print next = Print.next(one.calf());
            numbered.add(page(one, now, next));
            copies.add(page(one, now, Print.COPY));
            prints.add(new NewEvent(
                    one.calf().id(),
                    new CardPrinted(number(next), printout(one.calf()), Term.CardSize.valueOf(paper.name())),
                    now,
                    Provenance.of(Provenance.Source.COMMAND)));
        }
        writing.write(numbered, now);
        Optional<String> refused = notes.note(prints);
        if (refused.isPresent()) {
            writing.write(copies, now);
        }
        return new Printed(file, what(wanted), refused);
    }

    private String what(List<Wanted> wanted) {
        String first = names.of(wanted.get(0).calf(), wanted.get(0).herd());
        return wanted.size() == 1
                ? "the card of " + first
                : "the cards of " + first + " and " + (wanted.size() - 1) + " more";
    }

    private CalfPage page(Wanted wanted, Instant now, Print print) {
        return CardContents.of(
                wanted.calf(), wanted.herd(), now, messages, settings.zone(), StationFile.farmName(settings), print);
    }

    private static int number(Print print) {
        if (print.number() == null) {
            throw new AssertionError("a copy is not noted");
        }
        return print.number();
    }

    private static Term.Printout printout(CalfRecord calf) {
        return calf.isAlive() ? Term.Printout.HUTCH_CARD : Term.Printout.RECORD_SHEET;
    }

    /** A clear name for the file, such as {@code card-calf-312-A6.pdf}. */
    String fileName(Wanted wanted, CardPaper paper) {
        String kind = wanted.calf().isAlive() ? "card" : "record";
        String size = switch (paper) {
            case FOUR_BY_SIX_INCH -> "";
            case A6 -> "-A6";
            case FOUR_BY_SIX_INCH_UPRIGHT -> "-upright";
            case A6_UPRIGHT -> "-A6-upright";
        };
        return kind + "-" + name(wanted) + size + ".pdf";
    }

    /** A clear name for a file of sheets, such as {@code cards-calf-312-and-1-more-letter.pdf}. */
    String fileName(List<Wanted> wanted, SheetPaper sheet) {
        String more = wanted.size() == 1 ? "" : "-and-" + (wanted.size() - 1) + "-more";
        return "cards-" + name(wanted.get(0)) + more + "-" + PaperOption.word(sheet) + ".pdf";
    }

    /** Numbers and names of an import may have signs that no file name can have. */
    private String name(Wanted wanted) {
        return names.of(wanted.calf(), wanted.herd()).replaceAll("[^\\p{L}\\p{N}]+", "-");
    }
}
