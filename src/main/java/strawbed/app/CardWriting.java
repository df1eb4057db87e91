package strawbed.app;

import java.nio.file.Path;
import java.util.List;
import strawbed.calf.Herd;
import strawbed.dialog.Prompt;
import strawbed.event.CalfId;
import strawbed.report.pdf.CardPaper;
import strawbed.report.pdf.CardPdfException;

/** Writes the cards that were asked for and tells where they are, or why not: a full disk stops no recording. */
final class CardWriting {
    private static final CardPaper PAPER = CardPaper.FOUR_BY_SIX_INCH;

    private final CardPrinting printing;
    private final Path folder;

    /** @param folder where cards go */
    CardWriting(CardPrinting printing, Path folder) {
        this.printing = printing;
        this.folder = folder;
    }

    /** The prompts, with what became of each card that is wanted in its place. */
    List<Prompt> written(List<Prompt> prompts, Herd herd) {
        return prompts.stream()
                .map(prompt -> prompt instanceof Prompt.PrintCard wanted ? write(wanted.calf(), herd) : prompt)
                .toList();
    }

    /** Writes a calf's card where cards go, and notes it. */
    Prompt write(CalfId calf, Herd herd) {
        return write(calf, herd, folder);
    }

    /** Writes a calf's card into a folder, and notes it. */
    Prompt write(CalfId calf, Herd herd, Path into) {
        CardPrinting.Wanted wanted = new CardPrinting.Wanted(herd.calf(calf).orElseThrow(), herd);
        try {
            CardPrinting.Printed printed =
                    printing.print(wanted, PAPER, into.resolve(printing.fileName(wanted, PAPER)));
            return new Prompt.CardWritten(
                    calf, printed.file().toString(), printed.notNoted().orElse(null));
        } catch (BadInputException | CardPdfException failure) {
            return new Prompt.CardNotWritten(LeftOpen.sentence(failure));
        }
    }
}
