package strawbed.app;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import strawbed.print.PrintUse;
import strawbed.print.SystemPrinters;

/** The option {@code --print} of the commands that write a page. */
final class PrintOption {
    @Option(
            names = "--print",
            description = "Also send it to the printer; \"strawbed printer use\" chooses one. It waits if it must.")
    boolean print;

    /** Sends what was written, where that is wanted, and gives the exit code. */
    int send(Main program, Path file, String what, PrintUse use) {
        if (print) {
            program.out().println(new PrintDesk(program.settings(), new SystemPrinters()).send(file, what, use));
        }
        return 0;
    }
}
