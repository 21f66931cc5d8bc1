package stokewell.rig;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What one entry of a rig may hold. The checks of the records, the reader of rig files, the JSON Schema, the list of
 * defaults and the handbook's tables are all made from these.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Entry {

    /** No default: the entry must be given. */
    String REQUIRED = "(required)";

    /** The entry may be left out and is then absent: {@code null} for a record, an empty list, {@code NaN} for a number. */
    String ABSENT = "(absent)";

    /** The kind of quantity; leave {@code NONE} for words, records and lists. */
    Dimension is() default Dimension.NONE;

    /** Smallest value allowed, SI, end included. */
    double low() default Double.NEGATIVE_INFINITY;

    /** Largest value allowed, SI, end included. */
    double high() default Double.POSITIVE_INFINITY;

    /** The default as a person would write it in a rig file, or one of {@link #REQUIRED} and {@link #ABSENT}. */
    String orElse() default REQUIRED;

    /** Whether it is the bore of a pipe, which may be named as it is sold: {@code 1 in sch 40}. */
    boolean pipe() default false;

    /** One sentence for a person who welds. */
    String says();
}
