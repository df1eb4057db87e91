package strawbed.report.pdf;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.List;

/**
 * A text as a QR code.
 *
 * @param modules how many small squares a side has
 * @param runs the black ones, merged along each row, in modules from the upper left corner
 */
record SquareCode(int modules, List<Box> runs) {
    /** Five dots of a 203 dpi printer, so that no edge falls between two dots. */
    static final double MODULE = 5 * 25.4 / 203.2;
    /** The white border that ISO/IEC 18004 asks for. */
    static final double QUIET_ZONE = 4 * MODULE;
    /** The white border, and a little for the eye, beside words. */
    static final double GAP = QUIET_ZONE + 1;

    SquareCode {
        runs = List.copyOf(runs);
    }

    static SquareCode of(String content) {
        try {
            return of(Encoder.encode(content, ErrorCorrectionLevel.M).getMatrix());
        } catch (WriterException e) {
            throw new IllegalStateException("a text of " + content.length() + " letters fits any QR code", e);
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
