package strawbed.app;

import java.util.Optional;
import strawbed.print.JobState;
import strawbed.print.Porter;
import strawbed.print.PrintException;
import strawbed.print.PrintJob;
import strawbed.print.PrintQueue;
import strawbed.station.PaperStep;

/** What a person wants of one page on its way to the printer. */
record PrintKeys(
        Settings settings, PrintQueue queue, Porter porter, PrintWords words, PrintNews news, PaperList papers) {
    /** Does it, as long as the printer lets it; what came of it is news, and on the list. */
    void pressed(PaperStep step, int number) {
        try {
            news.add(done(step, number));
        } catch (PrintException failure) {
            news.add(words.unusable(queue.folder()));
        } catch (BadInputException broken) {
            news.add(String.valueOf(broken.getMessage()));
        } catch (RuntimeException failure) {
            news.add(words.odd(failure));
        }
        papers.read();
    }

    private String done(PaperStep step, int number) {
        Optional<PrintJob> job = switch (step) {
            case TRY -> queued(number);
            case GIVE_UP -> queue.drop(number);
            case AGAIN -> {
                Optional<PrintJob> old = queued(number);
                Optional<String> printer =
                        old.flatMap(one -> StationFile.in(settings.data()).printer(one.use()));
                if (old.isPresent() && printer.isEmpty()) {
                    throw new BadInputException(words.noPrinter());
                }
                yield printer.flatMap(name -> queue.again(number, name));
            }
        };
        if (job.isEmpty()) {
            return words.gone();
        }
        PrintJob after =
                step == PaperStep.GIVE_UP ? job.get() : porter.carry(job.get()).after();
        news.isTold(after, after.state() == JobState.WAITING);
        return words.told(after);
    }

    private Optional<PrintJob> queued(int number) {
        return queue.contents().jobs().stream()
                .filter(job -> job.number() == number)
                .findFirst();
    }
}
