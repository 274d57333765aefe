package org.stillrail.library;

import java.time.LocalDate;
import java.util.UUID;
import org.stillrail.sweepfile.accuracy.InstrumentAccuracy;
import org.stillrail.sweepfile.accuracy.ShieldLoop;
import org.stillrail.web.Form;

/** From the fields on accuracy, calibration and fixture of the import form to a {@link MeasurementSetup}. */
final class SetupForm {

    private SetupForm() {
    }

    /** Reads every field; wrong ones are in {@code form.errors()}. */
    static MeasurementSetup read(Form form) {
        LocalDate calibratedOn = form.read("calibratedOn", "Calibrated on", false, ProvenanceForm::date);
        Double delayS = form.quantity("portDelay", "Port extension", "s", false);
        return new MeasurementSetup(accuracy(form), calibratedOn, shields(form), delayS,
                id(form, "openFixture"), id(form, "shortFixture"), id(form, "loadFixture"));
    }

    private static InstrumentAccuracy accuracy(Form form) {
        Double reflection = percent(form, "accuracyReflection", "Accuracy of S11");
        Double transmission = percent(form, "accuracyTransmission", "Accuracy of S21");
        Double floorDb = form.quantity("accuracyFloor", "Floor of S21", "dB", false);
        Double impedance = percent(form, "accuracyImpedance", "Accuracy of |Z|");
        if (floorDb != null && floorDb >= 0) {
            form.errors().add("accuracyFloor", "The floor of S21 lies below 0 dB, such as -100");
            return null;
        }
        if (reflection == null && transmission == null && floorDb == null && impedance == null) {
            return null;
        }
        InstrumentAccuracy usual = MeasurementSetup.USUAL;
        return new InstrumentAccuracy(
                reflection == null ? usual.reflection() : reflection, transmission == null ? usual.transmission() : transmission,
                floorDb == null ? usual.transmissionFloor() : InstrumentAccuracy.linear(floorDb), impedance == null ? usual.impedance() : impedance);
    }

    private static Double percent(Form form, String name, String label) {
        Double percent = form.notNegative(name, label, "%", false);
        if (percent != null && percent >= 100) {
            form.errors().add(name, label + " must be under 100 %");
            return null;
        }
        return percent == null ? null : (Double) (percent / 100);
    }

    private static ShieldLoop shields(Form form) {
        Double source = form.positive("shieldSource", "Shield of the source's cable", "ohm", !form.isBlank("shieldReceiver"));
        Double receiver = form.positive("shieldReceiver", "Shield of the receiver's cable", "ohm", !form.isBlank("shieldSource"));
        Double loop = form.notNegative("shieldLoop", "Inductance of the shield loop", "H", false);
        return source == null || receiver == null ? null : new ShieldLoop(source, receiver, loop == null ? 0 : loop);
    }

    private static UUID id(Form form, String name) {
        return form.read(name, "Fixture sweep", false, text -> {
            try {
                return UUID.fromString(text);
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException("There is no such fixture sweep", e);
            }
        });
    }
}
