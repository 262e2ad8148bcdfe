package bitterend.catalogue;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.params.converter.ArgumentConversionException;
import org.junit.jupiter.params.converter.ArgumentConverter;
import org.junit.jupiter.params.converter.ConvertWith;

/** A construction or a fibre that a row of a test names as a constant of {@link Kinds}. */
@Target(ElementType.PARAMETER)
@Retention(RetentionPolicy.RUNTIME)
@ConvertWith(Kind.ByConstant.class)
public @interface Kind {
    /** Looks the constant up. */
    final class ByConstant implements ArgumentConverter {
        @Override
        public Object convert(Object source, ParameterContext context) {
            try {
                return Kinds.class.getField(source.toString()).get(null);
            } catch (ReflectiveOperationException unknown) {
                throw new ArgumentConversionException("no " + source, unknown);
            }
        }
    }
}
