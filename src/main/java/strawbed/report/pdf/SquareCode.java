package strawbed.report.pdf;

import com.google.zxing.EncodeHintType;
import com.google.zxing.ReaderException;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.decoder.Decoder;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.detector.Detector;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A text as a QR code.
 *
 * @param modules how many small squares a side has
 * @param runs the black ones, merged along each row, in modules from the upper left corner
 */
record SquareCode(int modules, List<Box> runs) {
    /** Five dots of a 203 dpi printer, so that no edge falls between two dots. */
    static final double MODULE = 5 * 25.4 / 203.2;

    private static final int DOTS = 5;
    private static final int BORDER = 4;

    /** The white border that ISO/IEC 18004 asks for. */
    static final double QUIET_ZONE = 4 * MODULE;
    /** The white border, and a little for the eye, beside words. */
    static final double GAP = QUIET_ZONE + 1;

    SquareCode {
        runs = List.copyOf(runs);
    }

    /**
     * The code of a text. Some texts draw what looks like a corner where none is, and readers lose their way: such a code
     * is drawn in another of the eight patterns that ISO/IEC 18004 has for this.
     */
    static SquareCode of(String content) {
        try {
            ByteMatrix usual = matrix(content, Map.of());
            if (isRead(usual, content)) {
                return of(usual);
            }
            for (int mask = 0; mask < QRCode.NUM_MASK_PATTERNS; mask++) {
                ByteMatrix other = matrix(content, Map.of(EncodeHintType.QR_MASK_PATTERN, mask));
                if (isRead(other, content)) {
                    return of(other);
                }
            }
            return of(usual);
        } catch (WriterException e) {
            throw new IllegalStateException("a text of " + content.length() + " letters fits any QR code", e);
        }
    }

    private static ByteMatrix matrix(String content, Map<EncodeHintType, ?> hints) throws WriterException {
        return Encoder.encode(content, ErrorCorrectionLevel.Q, hints).getMatrix();
    }

    /** Whether a reader finds the text in it, drawn as on a label. */
    private static boolean isRead(ByteMatrix matrix, String content) {
        int side = (matrix.getWidth() + 2 * BORDER) * DOTS;
        BitMatrix dots = new BitMatrix(side);
        for (int y = 0; y < matrix.getHeight(); y++) {
            for (int x = 0; x < matrix.getWidth(); x++) {
                if (matrix.get(x, y) == 1) {
                    dots.setRegion((x + BORDER) * DOTS, (y + BORDER) * DOTS, DOTS, DOTS);
                }
            }
        }
        try {
            return new Decoder()
                    .decode(new Detector(dots).detect().getBits())
                    .getText()
                    .equals(content);
        } catch (ReaderException notRead) {
            // One pattern less; the next is tried.
            return false;
        }
    }

    double side() {
        return modules * MODULE;
    }

    private static SquareCode of(ByteMatrix matrix) {
        List<Box> runs = new ArrayList<>();
        for (int row = 0; row < matrix.getHeight(); row++) {
            int column = 0;
            while (column < matrix.getWidth()) {
                int start = column;
                while (column < matrix.getWidth() && matrix.get(column, row) == 1) {
                    column++;
                }
                if (column > start) {
                    runs.add(new Box(start, row, column - start, 1));
                }
                column++;
            }
        }
        return new SquareCode(matrix.getWidth(), runs);
    }
}
