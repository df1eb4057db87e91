package strawbed.app;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.print.PrintUse;
import strawbed.report.pdf.CardPaper;
import strawbed.text.CalfNames;
import strawbed.text.Messages;

/** The command {@code strawbed card}: one calf's card as a PDF. */
@Command(name = "card", description = "Writes the hutch card of a calf as a PDF.", mixinStandardHelpOptions = true)
final class CardCommand implements Callable<Integer> {
    @ParentCommand
    @Nullable
    Main main;

    @Parameters(paramLabel = "CALF", description = "The calf's number, or its id as \"strawbed calves\" shows it.")
    String calf = "";

    @Option(
            names = "-o",
            paramLabel = "FILE",
            description = "Where the card goes; else the folder cards of the record.")
    @Nullable
    Path file;

    @Option(names = "--a6", description = "On A6 paper; else 4 by 6 inch.")
    boolean a6;

    @Mixin
    PrintOption print = new PrintOption();

    @Override
    public Integer call() {
        Main program = Main.of(main);
        Settings settings = program.settings();
        Herd herd = RecordReading.around(settings, calf, settings.clock().instant(), Instant.MAX);
        CalfRecord wanted = RecordReading.calf(herd, calf);
        CardPaper paper = a6 ? CardPaper.A6 : CardPaper.FOUR_BY_SIX_INCH;
        Answers answers = new Answers(new Messages(Locale.US), settings);
        Path written = file == null
                ? answers.writeCard(wanted, herd, settings.data().resolve("cards"), paper)
                : answers.writeCardTo(wanted, herd, file, paper);
        program.out().println(written);
        String name = new CalfNames(new Messages(Locale.US)).of(wanted, herd);
        return print.send(program, written, "the card of " + name, PrintUse.CARDS);
    }
}
