package stokewell.show;

/**
 * A drawing with what is to be said of it, drawn for a desk and for a phone.
 *
 * @param note how it is to be read; may be empty
 */
public record Picture(String title, String note, Drawing desk, Drawing phone) {}
