package strawbed.app;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import strawbed.print.Porter;
import strawbed.print.PrintJob;
import strawbed.print.PrintUse;
import strawbed.print.Printers;
import strawbed.print.SystemPrinters;
import strawbed.text.Messages;

/** The command {@code strawbed printer}: which printers there are, and what is on its way to them. */
@Command(
        name = "printer",
        description = "Lists the printers, which are chosen, and the pages that wait or were handed over.",
        mixinStandardHelpOptions = true)
final class PrinterCommand implements Callable<Integer> {
    private static final String FOR = "cards or sheets; both, if not given.";

    @ParentCommand
    @Nullable
    Main main;

    private final Printers printers = new SystemPrinters();

    @Override
    public Integer call() {
        PrintTelling.list(settings(), printers).forEach(out()::println);
        return 0;
    }

    @Command(description = "Chooses the printer for hutch cards, for sheets, or for both.")
    int use(
            @Parameters(paramLabel = "NAME", description = "As \"strawbed printer\" lists it.") String name,
            @Option(names = "--for", paramLabel = "USE", description = FOR) @Nullable String use) {
        List<PrintUse> uses = uses(use);
        PrintDesk desk = desk();
        List<Printers.Known> known = desk.porter().printers();
        if (known.stream().noneMatch(one -> one.name().equals(name))) {
            throw new BadInputException("There is no printer \"" + name + "\". "
                    + (known.isEmpty()
                            ? "This computer knows none: set one up in the system's settings (Debian: packages cups and"
                                    + " cups-bsd)."
                            : "There are: "
                                    + known.stream().map(Printers.Known::name).collect(Collectors.joining(", "))
                                    + "."));
        }
        for (PrintUse one : uses) {
            StationEdit.set(settings().data(), StationFile.printerLine(one), name);
            int moved = desk.queue().move(one, name);
            out().println(PrintDesk.word(one) + " go to the printer " + name + " from now on"
                    + (moved == 0 ? "" : ", and so do the pages that wait: " + moved)
                    + ". Print a test page with \"strawbed printer test --for " + PrintDesk.word(one) + "\".");
        }
        PrintTelling.trouble(name, known).ifPresent(out()::println);
        return 0;
    }

    @Command(description = "Sends a test page: bars to lay a ruler on, a frame, thin lines, small letters.")
    int test(
            @Option(names = "--for", paramLabel = "USE", description = FOR) @Nullable String use,
            @Option(
                            names = "--paper",
                            paramLabel = "PAPER",
                            description = "4x6, a6, letter or a4; else 4x6 and letter.")
                    @Nullable
                    String paper) {
        PrintDesk desk = desk();
        List<PrintUse> uses = paper == null ? uses(use) : List.of(TestPages.use(paper));
        if (!uses(use).containsAll(uses)) {
            throw new BadInputException("The paper " + paper + " is not for " + use + ". Leave out --for or --paper.");
        }
        List<PrintUse> chosen = uses.stream()
                .filter(one -> StationFile.in(settings().data()).printer(one).isPresent())
                .toList();
        // Of both, one may have no printer; of neither, the sentence tells what to do.
        for (PrintUse one : chosen.isEmpty() ? uses.subList(0, 1) : chosen) {
            out().println(desk.send(
                    TestPages.of(one, paper, new Messages(Locale.US)), "a test page for " + PrintDesk.word(one), one));
        }
        out().println("Lay a ruler on the bars. If they are too long or too short, switch off \"fit to page\" in the"
                + " printer's settings and choose the right paper there.");
        return 0;
    }

    @Command(description = "Tries at once all pages that wait.")
    int retry() {
        List<Porter.Tried> tried = desk().porter().carryAll();
        if (tried.isEmpty()) {
            out().println("No page waits.");
        }
        tried.forEach(one -> out().println(PrintDesk.sentence(one.after())));
        return tried.stream().map(Porter.Tried::after).allMatch(PrintDesk::isDone) ? 0 : Failures.FAILED;
    }

    @Command(description = "Gives a page up: it is not tried any more. It stays to be printed again for a while.")
    int drop(@Parameters(paramLabel = "N", description = NUMBER) int number) {
        PrintDesk desk = desk();
        if (desk.queue().removeDamaged(number)) {
            out().println("Removed: job " + number + ", which could not be read.");
            return 0;
        }
        out().println(PrintDesk.sentence(desk.queue().drop(number).orElseThrow(() -> noJob(number))));
        return 0;
    }

    @Command(description = "Sends a page once more that was handed over or given up, to the printer chosen now.")
    int again(@Parameters(paramLabel = "N", description = NUMBER) int number) {
        PrintDesk desk = desk();
        PrintJob before = desk.queue().contents().jobs().stream()
                .filter(job -> job.number() == number)
                .findFirst()
                .orElseThrow(() -> noJob(number));
        PrintJob job = desk.queue().again(number, desk.chosen(before.use())).orElseThrow(() -> noJob(number));
        out().println(PrintDesk.sentence(desk.porter().carry(job).after()));
        return 0;
    }

    private static final String NUMBER = "The page's number, as \"strawbed printer\" lists it.";

    private static BadInputException noJob(int number) {
        return new BadInputException(
                "There is no page " + number + ". Type \"strawbed printer\" to see which there are.");
    }

    private static List<PrintUse> uses(@Nullable String typed) {
        if (typed == null) {
            return List.of(PrintUse.values());
        }
        return List.of(Arrays.stream(PrintUse.values())
                .filter(use -> PrintDesk.word(use).equals(typed.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new BadInputException("A printer is for cards or for sheets, not for \"" + typed
                        + "\". Give --for cards or --for" + " sheets.")));
    }

    private PrintDesk desk() {
        return new PrintDesk(settings(), printers);
    }

    private Settings settings() {
        return Main.of(main).settings();
    }

    private PrintWriter out() {
        return Main.of(main).out();
    }
}
