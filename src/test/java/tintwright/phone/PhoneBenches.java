package tintwright.phone;

import tintwright.files.BenchJob;

/** Jobs for the tests of the phone's faces. */
public final class PhoneBenches {
    private PhoneBenches() {}

    /** @return the demo's boat with an empty cup for its first place */
    public static BenchJob job() {
        return PhonePagesTest.job();
    }
}
