package strawbed.report.pdf;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import strawbed.report.CalfCard;

/**
 * Writes a calf's card as a PDF file of one page.
 *
 * <p>The same card, paper and time give the same bytes. One writer may be used by any number of threads.
 */
public final class PdfCardWriter {
    /**
     * The card as the bytes of a PDF file.
     *
     * @param printedAt when the card is printed; the timeline is black up to that moment
     * @throws CardPdfException if the fonts are missing from the program or the file cannot be put together
     */
    public byte[] write(CalfCard card, CardPaper paper, Instant printedAt) {
        try (Type type = Type.open()) {
            return PdfFile.of(
                    type,
                    List.of(CardLayout.of(type, card, paper, printedAt)),
                    paper.width(),
                    paper.height(),
                    Description.of("Calf card " + card.number(), identity(card.id(), printedAt), printedAt));
        } catch (IOException e) {
            throw new CardPdfException(
                    "The card of " + card.number() + " could not be made: " + e.getMessage()
                            + " The records are safe; read the calf's times on the screen.",
                    e);
        }
    }

    /** Made of calf and time. */
    private static byte[] identity(UUID calf, Instant printedAt) {
        ByteBuffer bytes = ByteBuffer.allocate(3 * Long.BYTES);
        bytes.putLong(calf.getMostSignificantBits());
        bytes.putLong(calf.getLeastSignificantBits());
        bytes.putLong(printedAt.toEpochMilli());
        return bytes.array();
    }
}
