package tintwright.window.picture;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tintwright.colour.JudgedLight;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;

/** Invented states of the three pictures. */
public final class Samples {
    static final Shade HULL = shade(62.1, -3.4, 11.0);
    static final Shade CUP = shade(66.5, -1.2, 8.0);

    private Samples() {}

    static Shade shade(double l, double a, double b) {
        return Shade.of(new Lab(l, a, b, Viewing.D65_10));
    }

    public static SwatchState swatch(boolean chip) {
        return new SwatchState(
                "Hull",
                "Cup, as computed",
                "Chip, as read",
                "Hull and cup",
                Map.of(
                        JudgedLight.DAYLIGHT,
                        new SwatchState.UnderLight(
                                HULL,
                                CUP,
                                chip ? Optional.of(shade(65, -1.5, 9)) : Optional.empty(),
                                5.1,
                                "clearly lighter",
                                OptionalDouble.of(6.2)),
                        JudgedLight.LAMP,
                        new SwatchState.UnderLight(
                                shade(62.5, -2, 12),
                                shade(66.4, 0, 9),
                                Optional.empty(),
                                4.8,
                                "clearly lighter",
                                OptionalDouble.of(6.2)),
                        JudgedLight.TUBE,
                        new SwatchState.UnderLight(
                                shade(62, -4, 12),
                                shade(66.8, -2, 8),
                                Optional.empty(),
                                5.6,
                                "clearly lighter",
                                OptionalDouble.of(6.2))));
    }

    public static SwatchState unshowable() {
        return new SwatchState(
                "Hull",
                "Mix",
                "",
                "Hull and mix",
                Map.of(
                        JudgedLight.DAYLIGHT,
                        new SwatchState.UnderLight(
                                shade(60, -90, 10),
                                shade(60, -60, 10),
                                Optional.empty(),
                                12,
                                "much too dirty",
                                OptionalDouble.empty())));
    }

    public static DepthState tooLight() {
        return new DepthState(
                94.6,
                62.1,
                HULL,
                78.4,
                shade(78.4, -1, 4),
                "Cup",
                1.6,
                78.4,
                List.of(
                        new DepthState.Step("0.21 g black", 70.2),
                        new DepthState.Step("0.11 g black", 65.6),
                        new DepthState.Step("0.84 g yellow", 63.5)),
                Optional.empty());
    }

    public static DepthState tooDark() {
        return new DepthState(
                94.6,
                62.1,
                HULL,
                58.3,
                shade(58.3, -3, 9),
                "Cup",
                0.8,
                58.3,
                List.of(),
                Optional.of(new DepthState.Climb(58.3, 62.1, "38 g white")));
    }

    public static RoseState rose() {
        return new RoseState(
                new RoseState.Point(-3.4, 11),
                HULL,
                new RoseState.Point(-1, 4),
                CUP,
                "Cup",
                1.1,
                List.of(
                        new RoseState.Pull("yellow", 0.5, 6, true), new RoseState.Pull("red oxide", 4, 2.4, false),
                        new RoseState.Pull("blue", -1.2, -6, false), new RoseState.Pull("green", -5.5, -0.6, true),
                        new RoseState.Pull("umber", 1, 2, false), new RoseState.Pull("black", -0.2, -0.6, false)),
                List.of(
                        new RoseState.Point(6, 3),
                        new RoseState.Point(4, 14),
                        new RoseState.Point(-4, 17),
                        new RoseState.Point(-11, 8),
                        new RoseState.Point(-9, -6),
                        new RoseState.Point(0, -10)));
    }
}
