package bitterend.cli;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;

/** A picture of a sheet of labels, 70 x 37 mm each, on A4. */
final class TagPicture {
    private static final double MM = 96 / 25.4;

    private final BufferedImage picture;
    private final double scale;

    TagPicture(Path file, double scale) throws IOException {
        picture = ImageIO.read(file.toFile());
        this.scale = scale * MM;
    }

    /** The codes that can be read, label by label. */
    List<String> codes(int columns, int rows) {
        List<String> codes = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                label(column, row).ifPresent(codes::add);
            }
        }
        return codes;
    }

    private Optional<String> label(int column, int row) {
        int x = (int) (70 * scale * column);
        int y = (int) ((0.5 + 37 * row) * scale);
        int width = Math.min((int) (70 * scale), picture.getWidth() - x);
        int height = Math.min((int) (37 * scale), picture.getHeight() - y);
        int[] pixels = picture.getRGB(x, y, width, height, null, 0, width);
        try {
            BinaryBitmap bits = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, pixels)));
            return Optional.of(new QRCodeReader()
                    .decode(bits, Map.of(DecodeHintType.TRY_HARDER, true))
                    .getText());
        } catch (ReaderException empty) {
            return Optional.empty();
        }
    }
}
