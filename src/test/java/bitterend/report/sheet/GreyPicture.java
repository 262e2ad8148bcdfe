package bitterend.report.sheet;

import com.google.zxing.LuminanceSource;
import java.util.Arrays;

/** A square picture in shades of grey. */
final class GreyPicture extends LuminanceSource {
    private final byte[] grey;

    GreyPicture(byte[] grey, int size) {
        super(size, size);
        this.grey = grey.clone();
    }

    @Override
    public byte[] getRow(int y, byte[] row) {
        return Arrays.copyOfRange(grey, y * getWidth(), (y + 1) * getWidth());
    }

    @Override
    public byte[] getMatrix() {
        return grey.clone();
    }
}
