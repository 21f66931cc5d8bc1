package stokewell.show;

import java.util.List;
import stokewell.check.Check;
import stokewell.file.UnitSystem;
import stokewell.matter.Wood;
import stokewell.rig.Rig;
import stokewell.run.Night;

/**
 * What a card needs to know beside the run.
 *
 * @param stackedDensity of the wood as stacked, kg/m3; see {@link stokewell.matter.Wood#stackedDensity}
 * @param stack          how stacked wood is counted
 * @param weather        the weather that the run lived in, in words; empty says nothing
 * @param cautions       what else must be said, worst first, such as the findings of a check
 * @param before         the same night of another rig to compare with; null for none
 * @param beforeName     what to call that one: {@code as filed}
 * @param check          what was found on the rig itself; null where nobody has looked
 */
public record CardFacts(
        double stackedDensity,
        Stack stack,
        String weather,
        List<String> cautions,
        Night before,
        String beforeName,
        Check check) {

    public CardFacts {
        if (!(stackedDensity > 0)) throw new IllegalArgumentException("stacked density " + stackedDensity + " kg/m3");
        cautions = List.copyOf(cautions);
    }

    /** Nothing but the wood. */
    public static CardFacts of(double stackedDensity, UnitSystem units) {
        return new CardFacts(stackedDensity, Stack.of(units), "", List.of(), null, "", null);
    }

    /** Nothing but the wood that a rig burns. */
    public static CardFacts of(Rig rig, UnitSystem units) {
        Wood wood = Wood.named(rig.fuel().species()).orElse(Wood.values()[0]);
        return of(wood.stackedDensity(rig.fuel().wetBasis(), rig.fuel().stackSolid()), units);
    }

    /** The same with the weather told. */
    public CardFacts in(String words) {
        return new CardFacts(stackedDensity, stack, words, cautions, before, beforeName, check);
    }

    /** The same with other cautions. */
    public CardFacts warning(List<String> said) {
        return new CardFacts(stackedDensity, stack, weather, said, before, beforeName, check);
    }

    /** The same with another night to compare with. */
    public CardFacts against(Night other, String name) {
        return new CardFacts(stackedDensity, stack, weather, cautions, other, name, check);
    }

    /** The same with what was found told in these units. */
    CardFacts spoken(UnitSystem units) {
        return checked(Spoken.in(check, units));
    }

    /** The same for programs: steres and SI whatever a person reads in. */
    CardFacts forPrograms() {
        return new CardFacts(stackedDensity, Stack.of(UnitSystem.SI), weather, cautions, before, beforeName, check)
                .spoken(UnitSystem.SI);
    }

    /** The same with what was found on the rig itself, as it is worded. */
    public CardFacts checked(Check found) {
        return new CardFacts(stackedDensity, stack, weather, cautions, before, beforeName, found);
    }
}
