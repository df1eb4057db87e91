package strawbed.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import strawbed.crib.CribContents;
import strawbed.hearing.Phrasebook;
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

    @Override
    public Integer call() {
        Main program = Main.of(main);
        Settings settings = program.settings();
        SheetPaper sheetPaper = paper();
        CribSheet sheet = CribContents.of(
                Phrasebook.grammar(settings.grammar()),
                Phrasebook.versionOf(settings.grammar()),
                new Messages(Locale.US));
        Path wanted = file == null ? settings.data().resolve("crib-sheet-" + name(sheetPaper) + ".pdf") : file;
        write(wanted, new PdfCribWriter().write(sheet, sheetPaper));
        program.out().println(wanted);
        return 0;
    }

    private SheetPaper paper() {
        for (SheetPaper known : SheetPaper.values()) {
            if (name(known).equals(paper.toLowerCase(Locale.ROOT))) {
                return known;
            }
        }
        throw new BadInputException("There is no paper \"" + paper + "\" here. Give --paper letter or --paper a4.");
    }

    private static String name(SheetPaper paper) {
        return paper.name().toLowerCase(Locale.ROOT);
    }

    private static void write(Path file, byte[] bytes) {
        try {
            Path parent = file.toAbsolutePath().getParent();
            if (parent != null) {
                OwnersFile.makeFolder(parent);
            }
            OwnersFile.write(file, bytes);
        } catch (IOException e) {
            throw new BadInputException("The sheet cannot be written to " + file
                    + ". Check that the folder can be written to and that the disk has room, or give another file with"
                    + " -o.");
        }
    }
}
