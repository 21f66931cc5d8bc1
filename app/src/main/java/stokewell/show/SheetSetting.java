package stokewell.show;

/**
 * How a sheet is set.
 *
 * @param type  size of type on paper, points; 0 for a screen
 * @param loose whether tables that stand side by side may run over a page's end
 */
record SheetSetting(double type, boolean loose) {

    /** For a screen. */
    static final SheetSetting SCREEN = new SheetSetting(0, true);

    boolean screen() {
        return type == 0;
    }
}
