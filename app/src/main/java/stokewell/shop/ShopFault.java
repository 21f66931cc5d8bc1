package stokewell.shop;

/** A shop's file that cannot be used as asked: what is wrong, and how to mend it. */
public final class ShopFault extends RuntimeException {

    private static final long serialVersionUID = 1;

    public final String what;
    public final String remedy;

    ShopFault(String what, String remedy) {
        super(what + " " + remedy);
        this.what = what;
        this.remedy = remedy;
    }

    ShopFault(String what, String remedy, Throwable cause) {
        super(what + " " + remedy, cause);
        this.what = what;
        this.remedy = remedy;
    }
}
