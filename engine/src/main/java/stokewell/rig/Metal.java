package stokewell.rig;

/** A material that meets the water. */
public enum Metal {
    STEEL,
    STAINLESS,
    COPPER,
    GALVANISED,
    PLASTIC,
    RUBBER
}
