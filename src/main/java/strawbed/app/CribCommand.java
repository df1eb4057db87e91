package strawbed.app;

import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import strawbed.crib.CribContents;
import strawbed.hearing.Phrasebook;
import strawbed.print.PrintUse;
import strawbed.report.CribSheet;
import strawbed.report.pdf.PdfCribWriter;
import strawbed.report.pdf.SheetPaper;
import strawbed.text.Messages;

/** The command {@code strawbed crib}: what can be said, on a sheet for the pen. */
@Command(
        name = "crib",
        description =
                "Writes a sheet of what can be said as a PDF, to laminate and hang in the pen. It is made from the"
                        + " grammar, the farm's own where there is one.",
        mixinStandardHelpOptions = true)
final class CribCommand implements Callable<Integer> {
    @ParentCommand
    @Nullable
    Main main;

    @Option(names = "--paper", paramLabel = "letter|a4", description = "The paper; letter, if not given.")
    String paper = "letter";

    @Option(
            names = "-o",
            paramLabel = "FILE",
            description = "Where the sheet goes; else crib-sheet-letter.pdf or crib-sheet-a4.pdf in the data folder.")
    @Nullable
    Path file;

    @Mixin
    PrintOption print = new PrintOption();

    @Override
    public Integer call() {
        Main program = Main.of(main);
        Settings settings = program.settings();
        SheetPaper sheetPaper = PaperOption.paper(paper);
        CribSheet sheet = CribContents.of(
                Phrasebook.grammar(settings.grammar()),
                Phrasebook.versionOf(settings.grammar()),
                new Messages(Locale.US));
        Path wanted =
                file == null ? settings.data().resolve("crib-sheet-" + PaperOption.word(sheetPaper) + ".pdf") : file;
        PrintedFile.write(wanted, new PdfCribWriter().write(sheet, sheetPaper), "The crib sheet");
        program.out().println(wanted);
        return print.send(program, wanted, "the crib sheet", PrintUse.SHEETS);
    }
}
