package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;

import stokewell.rig.Rig;

/** Says that a rule finds what is wrong with a rig and does not find it on the one that is mended. */
final class Found {

    private Found() {}

    static void finds(Check broken, Check mended, String id, Level level) {
        assertThat(broken.of(id)).as(id + " on the broken rig").isNotNull();
        assertThat(broken.of(id).level()).as(id).isEqualTo(level);
        assertThat(broken.of(id).what()).isNotBlank();
        assertThat(broken.of(id).why()).isNotBlank();
        assertThat(broken.of(id).remedy()).isNotBlank();
        assertThat(broken.of(id).basis()).isNotBlank();
        Finding after = mended.of(id);
        if (after != null)
            assertThat(after.level()).as(id + " on the mended rig").isGreaterThan(level);
    }

    static void answer(Rig broken, String id, Level level) {
        finds(Sound.answered(broken), Sound.answered(sound(broken)), id, level);
    }

    static Rig sound(Rig like) {
        return like.name().equals("pumped") ? Sound.pumped() : Sound.thermosiphon();
    }
}
