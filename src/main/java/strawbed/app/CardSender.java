package strawbed.app;

import java.nio.file.Path;
import java.util.Optional;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;

/** Takes a card that was asked for by voice further than its file. */
interface CardSender {
    /** What came of it; empty if the file is all there is. */
    Optional<Answers.Said> send(Path file, CalfRecord calf, Herd herd);
}
