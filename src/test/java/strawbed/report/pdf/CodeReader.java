package strawbed.report.pdf;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.LuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Reads the square code off a page as a phone reads it off a label, black dots on white. */
final class CodeReader {
    /** The dots per inch of common thermal label printers: 8 dots a millimetre. */
    private static final float LABEL_PRINTER = 203.2f;

    private CodeReader() {}

    static String read(PDDocument document, int page) throws IOException, ReaderException {
        return read(dots(document, page));
    }

    /** Of a sheet with two cards, the upper half or the lower. */
    static String readHalf(PDDocument document, int page, boolean upper) throws IOException, ReaderException {
        BufferedImage dots = dots(document, page);
        int half = dots.getHeight() / 2;
        return read(dots.getSubimage(0, upper ? 0 : half, dots.getWidth(), half));
    }

    private static BufferedImage dots(PDDocument document, int page) throws IOException {
        return new PDFRenderer(document).renderImageWithDPI(page, LABEL_PRINTER, ImageType.BINARY);
    }

    private static String read(BufferedImage dots) throws ReaderException {
        return new QRCodeReader()
                .decode(new BinaryBitmap(new HybridBinarizer(new Picture(dots))))
                .getText();
    }

    /** A picture as ZXing wants it: the lightness of each dot. */
    private static final class Picture extends LuminanceSource {
        private final BufferedImage image;

        Picture(BufferedImage image) {
            super(image.getWidth(), image.getHeight());
            this.image = image;
        }

        @Override
        public byte[] getRow(int y, byte[] row) {
            byte[] lightness = row != null && row.length >= getWidth() ? row : new byte[getWidth()];
            for (int x = 0; x < getWidth(); x++) {
                lightness[x] = (byte) (image.getRGB(x, y) & 0xFF);
            }
            return lightness;
        }

        @Override
        public byte[] getMatrix() {
            byte[] all = new byte[getWidth() * getHeight()];
            for (int y = 0; y < getHeight(); y++) {
                System.arraycopy(getRow(y, new byte[getWidth()]), 0, all, y * getWidth(), getWidth());
            }
            return all;
        }
    }
}
