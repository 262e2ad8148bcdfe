package bitterend.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** An order of rope and by how many working days it would come later: {@code P-88=3}. */
final class LateText implements ITypeConverter<LateText.Late> {
    private static final int MOST = 366;

    /**
     * One delay.
     *
     * @param order the shop's number for the order of reels
     * @param days working days; at least 1
     */
    record Late(String order, int days) {}

    @Override
    public Late convert(String text) {
        int at = text.lastIndexOf('=');
        String days = text.substring(at + 1);
        if (at < 1 || !days.matches("[1-9][0-9]{0,2}") || Integer.parseInt(days) > MOST) {
            throw new TypeConversionException("expected the number of an order of rope and by how many working days it"
                    + " comes later, such as P-88=3; at most " + MOST);
        }
        return new Late(text.substring(0, at), Integer.parseInt(days));
    }
}
