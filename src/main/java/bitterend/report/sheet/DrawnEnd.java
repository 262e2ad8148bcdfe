package bitterend.report.sheet;

import java.util.List;

/**
 * One end as it is drawn.
 *
 * @param eye whether it has an eye
 * @param fitting whether it has a metal end
 * @param tail whether a tail runs back into the standing part
 * @param amounts what it adds and takes, such as {@code tail 252 mm}
 */
public record DrawnEnd(boolean eye, boolean fitting, boolean tail, List<String> amounts) {
    public DrawnEnd {
        amounts = List.copyOf(amounts);
    }
}
