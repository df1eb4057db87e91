package strawbed.app;

import java.io.PrintWriter;
import picocli.CommandLine;
import strawbed.audio.AudioException;
import strawbed.crib.CribException;
import strawbed.exchange.ExchangeException;
import strawbed.grammar.GrammarException;
import strawbed.journal.JournalException;
import strawbed.protocol.file.ProtocolFileException;
import strawbed.speech.LexiconException;

/** Turns every failure into a sentence for the person and an exit code. */
final class Failures implements CommandLine.IExecutionExceptionHandler {
    static final int FAILED = 1;
    static final int BAD_INPUT = 2;

    @Override
    public int handleExecutionException(Exception failure, CommandLine command, CommandLine.ParseResult parsed) {
        PrintWriter err = command.getErr();
        if (isKnown(failure)) {
            err.println(failure.getMessage());
        } else {
            err.println("Something went wrong inside the program: " + failure
                    + ". Nothing that was saved is hurt. Please report this with the lines below.");
            failure.printStackTrace(err);
        }
        return isBadInput(failure) ? BAD_INPUT : FAILED;
    }

    /** A command that cannot be read as it was typed. */
    static int badUse(CommandLine.ParameterException failure, String... args) {
        CommandLine command = failure.getCommandLine();
        command.getErr().println(failure.getMessage());
        command.getErr()
                .println("Type \"" + command.getCommandSpec().qualifiedName() + " --help\" to see what it takes.");
        return BAD_INPUT;
    }

    static boolean isBadInput(Throwable failure) {
        return failure instanceof BadInputException
                || failure instanceof CribException
                || failure instanceof AudioException
                || failure instanceof GrammarException
                || failure instanceof LexiconException
                || failure instanceof ExchangeException
                || failure instanceof JournalException
                || failure instanceof ProtocolFileException;
    }

    /** All exceptions of ours come with a sentence made for people. */
    private static boolean isKnown(Exception failure) {
        return failure.getMessage() != null
                && failure.getClass().getName().startsWith("strawbed.")
                && failure.getClass().getSimpleName().endsWith("Exception");
    }
}
