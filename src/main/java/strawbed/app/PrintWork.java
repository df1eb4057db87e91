package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.print.Porter;
import strawbed.print.PrintException;
import strawbed.print.PrintJob;
import strawbed.print.PrintQueue;
import strawbed.print.PrintUse;
import strawbed.print.Printers;
import strawbed.print.SystemPrinters;
import strawbed.station.PaperStep;
import strawbed.station.Papers;
import strawbed.text.Messages;
import strawbed.text.PrintPhrases;

/**
 * What is printed beside the recorder's work, by a thread of its own: cards asked for by voice, and whatever waits. The
 * recorder itself waits for the printer only so long as somebody would for an answer.
 */
final class PrintWork implements AutoCloseable, CardSender {
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final Duration OF_AN_ANSWER = Duration.ofSeconds(2);
    private static final long EACH_SECONDS = 15;

    private final Settings settings;
    private final PrintQueue queue;
    private final Porter porter;
    private final Duration ofAnAnswer;
    private final PrintPhrases shown;
    private final PrintPhrases spoken;
    private final PrintWords words;
    private final PrintNews news;
    private final PaperList papers;
    private final PrintKeys keys;

    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread made = new Thread(work, "printing");
        made.setDaemon(true);
        return made;
    });

    /**
     * @param messages the language in which people are told
     * @param ofAnAnswer how long the recorder waits for the printer
     */
    PrintWork(Settings settings, Messages messages, Printers printers, Duration patience, Duration ofAnAnswer) {
        this.settings = settings;
        this.queue = PrintDesk.queue(settings);
        this.porter = new Porter(queue, printers, settings.clock(), patience);
        this.ofAnAnswer = ofAnAnswer;
        this.shown = PrintPhrases.shown(messages);
        this.spoken = PrintPhrases.spoken(messages);
        this.words = new PrintWords(messages);
        this.news = new PrintNews(words);
        this.papers = new PaperList(queue, words);
        this.keys = new PrintKeys(settings, queue, porter, words, news, papers);
    }

    /** Looks now and then whether something waits that may be tried again. */
    static PrintWork begin(Settings settings, Messages messages) {
        PrintWork work = new PrintWork(settings, messages, new SystemPrinters(), PATIENCE, OF_AN_ANSWER);
        // Its result is told as news; it never throws.
        ScheduledFuture<?> unused =
                work.thread.scheduleWithFixedDelay(work::tryAgain, 0, EACH_SECONDS, TimeUnit.SECONDS);
        return work;
    }

    /** The next line for a person; null while there is none. */
    @Nullable
    String news() {
        return news.poll();
    }

    /** A hand over may end; what is not noted as handed over is tried again at the next start. */
    @Override
    public void close() {
        thread.shutdown();
        papers.close();
    }

    @Override
    public Optional<Answers.Said> send(Path file, CalfRecord calf, Herd herd) {
        try {
            Optional<String> printer = StationFile.in(settings.data()).printer(PrintUse.CARDS);
            if (printer.isEmpty()) {
                return Optional.empty();
            }
            byte[] pdf = Files.readAllBytes(file);
            return Optional.of(send(queue.add(pdf, words.card(calf, herd), PrintUse.CARDS, printer.get()), calf, herd));
        } catch (PrintException | BadInputException | IOException failure) {
            String sentence = words.notSent(file, why(failure));
            return Optional.of(new Answers.Said(sentence, sentence));
        }
    }

    /** Takes a sheet further than its file, where a printer for sheets is chosen; tells what came of it. */
    String sendSheet(Path file) {
        String isWritten = shown.sheetWritten(file.toString());
        try {
            Optional<String> printer = StationFile.in(settings.data()).printer(PrintUse.SHEETS);
            if (printer.isEmpty()) {
                return isWritten;
            }
            queue.add(Files.readAllBytes(file), words.handover(), PrintUse.SHEETS, printer.get());
            // Nobody waits for it as for an answer; a fault is told as news.
            thread.execute(this::tryAgain);
            return shown.sheetSent();
        } catch (PrintException | BadInputException | IOException failure) {
            return isWritten + " " + why(failure);
        }
    }

    private String why(Exception failure) {
        return failure instanceof PrintException
                ? words.unusable(queue.folder())
                : String.valueOf(failure.getMessage());
    }

    private Answers.Said send(PrintJob job, CalfRecord calf, Herd herd) {
        // Its answer tells of a fault, so that no line need.
        news.isTold(job, true);
        CompletableFuture<Porter.Tried> carried = CompletableFuture.supplyAsync(() -> porter.carry(job), thread);
        try {
            Porter.Tried tried = carried.get(ofAnAnswer.toMillis(), TimeUnit.MILLISECONDS);
            if (tried.isHandedOver()) {
                news.isTold(job, false);
                return new Answers.Said(shown.sent(), spoken.sent());
            }
            return new Answers.Said(shown.held(calf, herd) + " " + words.why(tried.after()), spoken.held(calf, herd));
        } catch (TimeoutException e) {
            CompletableFuture<?> unused = carried.whenComplete((tried, failure) -> {
                if (tried != null) {
                    news.tell(tried);
                }
            });
        } catch (ExecutionException e) {
            news.add(String.valueOf(e.getCause()));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return new Answers.Said(shown.silent(calf, herd), spoken.silent(calf, herd));
    }

    /** What it throws would end all later ones unheard. */
    void tryAgain() {
        try {
            porter.carryDue().forEach(news::tell);
        } catch (PrintException failure) {
            news.addOnce(words.unusable(queue.folder()));
        } catch (RuntimeException failure) {
            news.addOnce(words.odd(failure));
        }
    }

    /** The pages on their way, as they were when somebody last looked. */
    Papers papers() {
        return papers.known();
    }

    /** Looks at them anew, beside the work. */
    void lookForPapers() {
        papers.look();
    }

    /** Does what a person wants of a page, beside the work; what came of it is news, and on the list. */
    void press(PaperStep step, int number) {
        if (step == PaperStep.GIVE_UP) {
            // It asks no printer, so a silent one must not hold it up.
            papers.execute(() -> keys.pressed(step, number));
        } else {
            thread.execute(() -> keys.pressed(step, number));
        }
    }
}
