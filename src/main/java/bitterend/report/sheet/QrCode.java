package bitterend.report.sheet;

import bitterend.finding.Unseen;
import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/**
 * A QR code as the path of an SVG, one unit for a module, with its quiet zone of four.
 *
 * @param size modules along a side, quiet zone included
 * @param path filled where it is dark
 */
public record QrCode(int size, String path) {

    private static final int MOST = 400;

    /**
     * A text in UTF-8, of which a seventh may be dirty. One longer than 400 characters is cut, with three dots at its end: it
     * would not be read off a label.
     */
    static QrCode of(String whole) {
        String text = whole.codePointCount(0, whole.length()) <= MOST
                ? whole
                : whole.substring(0, whole.offsetByCodePoints(0, MOST - 3)) + "...";
        try {
            BitMatrix dots = new QRCodeWriter()
                    .encode(
                            Unseen.shown(text),
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.CHARACTER_SET,
                                    "UTF-8",
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.M,
                                    EncodeHintType.MARGIN,
                                    4));
            return new QrCode(dots.getWidth(), path(dots));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("no QR code holds " + text, tooLong);
        }
    }

    private static String path(BitMatrix dots) {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < dots.getHeight(); y++) {
            for (int x = 0; x < dots.getWidth(); x++) {
                int from = x;
                while (x < dots.getWidth() && dots.get(x, y)) {
                    x++;
                }
                if (x > from) {
                    path.append('M')
                            .append(from)
                            .append(' ')
                            .append(y)
                            .append('h')
                            .append(x - from)
                            .append("v1h-")
                            .append(x - from)
                            .append('z');
                }
            }
        }
        return path.toString();
    }
}
