package stokewell.shop;

import stokewell.file.SensorKind;
import stokewell.file.SensorUnit;

/**
 * A sensor that the shop knows.
 *
 * @param id    its number in the shop
 * @param name  what the person or the logger calls it
 * @param unit  what is measured, and the unit that it is written in; readings are held in SI
 * @param place where in the rig it sits, such as {@code room} or {@code store top}; empty until known
 */
public record Sensor(long id, String name, SensorUnit unit, String place) {

    /** What it measures. */
    public SensorKind kind() {
        return unit.kind();
    }
}
