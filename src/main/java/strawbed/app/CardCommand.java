package strawbed.app;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import strawbed.calf.Herd;
import strawbed.event.CalfId;
import strawbed.event.NewEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.JournalException;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.print.PrintUse;
import strawbed.report.pdf.CardPaper;
import strawbed.report.pdf.SheetPaper;
import strawbed.text.Messages;

/** The command {@code strawbed card}: calves' cards as PDF files, noted in the record where it can be written. */
@Command(
        name = "card",
        description =
                "Writes the hutch card of a calf as a PDF, of a dead one the sheet of what was recorded, and notes the"
                        + " print in the record.",
        mixinStandardHelpOptions = true)
final class CardCommand implements Callable<Integer> {
    private static final String FOUR_BY_SIX = "4x6";
    private static final String A6 = "a6";

    @ParentCommand
    @Nullable
    Main main;

    @Parameters(
            paramLabel = "CALF",
            arity = "1..*",
            description = "The calf's number, or its id as \"strawbed calves\" shows it; or several.")
    List<String> calves = List.of();

    @Option(
            names = "-o",
            paramLabel = "FILE",
            description = "Where the card goes; else the folder cards of the record.")
    @Nullable
    Path file;

    @Option(names = "--card", paramLabel = "SIZE", description = "4x6 (inch) or a6; else 4x6, and a6 on a sheet of a4.")
    @Nullable
    String size;

    @Option(names = "--a6", description = "The same as --card a6.")
    boolean a6;

    @Option(names = "--upright", description = "Standing on the short side, with a layout of its own.")
    boolean upright;

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            description = "letter or a4: two cards on a sheet of an office printer, with marks to cut along.")
    @Nullable
    String paper;

    @Mixin
    PrintOption print = new PrintOption();

    @Override
    public Integer call() {
        SheetPaper sheet = paper == null ? null : PaperOption.paper(paper);
        CardPaper card = card(sheet);
        if (file != null && sheet == null && calves.size() > 1) {
            throw new BadInputException(
                    "One file holds one card, and " + calves.size()
                            + " calves were named. Leave out -o, or give --paper letter or --paper a4 to have all in one file.");
        }
        Main program = Main.of(main);
        Settings settings = program.settings();
        try (Source source = Source.of(settings)) {
            List<CardPrinting.Printed> printed = print(source, settings, card, sheet);
            printed.forEach(one -> program.out().println(one.file()));
            printed.stream()
                    .flatMap(one -> one.notNoted().stream())
                    .findFirst()
                    .ifPresent(why -> program.err()
                            .println((printed.size() == 1 && calves.size() == 1 ? "This is a copy" : "These are copies")
                                    + " without a number and not noted in the record, because " + why));
            for (CardPrinting.Printed one : printed) {
                print.send(program, one.file(), one.what(), sheet == null ? PrintUse.CARDS : PrintUse.SHEETS);
            }
        }
        return 0;
    }

    private List<CardPrinting.Printed> print(
            Source source, Settings settings, CardPaper card, @Nullable SheetPaper sheet) {
        List<CardPrinting.Wanted> wanted = wanted(source, settings.clock().instant());
        CardPrinting printing = new CardPrinting(new Messages(Locale.US), settings, source::note);
        Path folder = settings.data().resolve("cards");
        if (sheet != null) {
            Path written = file == null ? folder.resolve(printing.fileName(wanted, sheet)) : file;
            return List.of(printing.printSheets(wanted, card, sheet, written));
        }
        List<CardPrinting.Printed> printed = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (CardPrinting.Wanted one : wanted) {
            String name = printing.fileName(one, card);
            if (!taken.add(name)) {
                name = one.calf().id() + "-" + name;
            }
            printed.add(printing.print(one, card, file == null ? folder.resolve(name) : file));
        }
        return printed;
    }

    /** Each calf once, all of them before the first is printed. */
    private List<CardPrinting.Wanted> wanted(Source source, Instant now) {
        List<CardPrinting.Wanted> wanted = new ArrayList<>();
        Set<CalfId> named = new HashSet<>();
        for (String calf : calves) {
            Herd herd = source.around(calf, now);
            CardPrinting.Wanted one = new CardPrinting.Wanted(RecordReading.calf(herd, calf), herd);
            if (named.add(one.calf().id())) {
                wanted.add(one);
            }
        }
        return wanted;
    }

    private CardPaper card(@Nullable SheetPaper sheet) {
        if (upright && sheet != null) {
            throw new BadInputException("On a sheet the cards lie. Give --upright or --paper, not both.");
        }
        String wanted = size == null ? a6 || sheet == SheetPaper.A4 ? A6 : FOUR_BY_SIX : size.toLowerCase(Locale.ROOT);
        if (a6 && !wanted.equals(A6)) {
            throw new BadInputException("--a6 and --card " + size + " do not go together. Give one of them.");
        }
        return switch (wanted) {
            case FOUR_BY_SIX -> upright ? CardPaper.FOUR_BY_SIX_INCH_UPRIGHT : CardPaper.FOUR_BY_SIX_INCH;
            case A6 -> upright ? CardPaper.A6_UPRIGHT : CardPaper.A6;
            default ->
                throw new BadInputException(
                        "There is no card of the size \"" + size + "\". Give --card 4x6 or --card a6.");
        };
    }

    /**
     * The record, for writing where that is possible.
     *
     * @param journal null where it can only be read
     * @param refusal why it can only be read
     */
    private record Source(Settings settings, @Nullable SqliteEventJournal journal, String refusal)
            implements AutoCloseable {
        static Source of(Settings settings) {
            // A record that is not there is not begun for a card.
            if (!RecordReading.isThere(settings)) {
                return new Source(settings, null, "there is no record.");
            }
            try {
                return new Source(
                        settings,
                        SqliteEventJournal.open(
                                settings.data(),
                                settings.clock(),
                                settings.zone(),
                                new TimeOrderedIds(settings.clock(), new SecureRandom())),
                        "");
            } catch (JournalException failure) {
                return new Source(
                        settings,
                        null,
                        failure.reason() == JournalException.Reason.BUSY
                                ? "the recorder, or another program, holds it."
                                : "it cannot be written: " + LeftOpen.sentence(failure));
            }
        }

        Herd around(String calf, Instant now) {
            return journal == null
                    ? RecordReading.around(settings, calf, now, Instant.MAX)
                    : HerdReading.around(journal, calf, now, Instant.MAX);
        }

        Optional<String> note(List<NewEvent> prints) {
            if (journal == null) {
                return Optional.of(refusal);
            }
            try {
                journal.append(prints);
                return Optional.empty();
            } catch (JournalException failure) {
                return Optional.of("it cannot be written: " + LeftOpen.sentence(failure));
            }
        }

        @Override
        public void close() {
            if (journal != null) {
                journal.close();
            }
        }
    }
}
