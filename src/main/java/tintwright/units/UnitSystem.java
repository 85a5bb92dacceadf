package tintwright.units;

import java.util.Locale;

/** The units a person reads: what a metric amount looks like on a screen or on paper. */
public enum UnitSystem {
    /** Millimetres, grams, millilitres, degrees Celsius. */
    METRIC {
        @Override
        public String length(double mm) {
            return mm >= 1000 ? number(mm / 1000) + " m" : number(mm) + " mm";
        }

        @Override
        public String film(double mm) {
            return String.format(Locale.ROOT, "%.2f mm", mm);
        }

        @Override
        public String mass(double grams) {
            return number(grams) + " g";
        }

        @Override
        public String volume(double ml) {
            return number(ml) + " ml";
        }

        @Override
        public String temperature(double celsius) {
            return String.format(Locale.ROOT, "%.0f °C", celsius);
        }
    },
    /**
     * Inches, mils, avoirdupois ounces, US fluid ounces, degrees Fahrenheit. Grams stand behind ounces, because the
     * scales that weigh a cup show them; under 5 ml stays in millilitres, as droppers and syringes are marked.
     */
    US {
        @Override
        public String length(double mm) {
            return mm >= 10 * Units.MM_PER_FOOT
                    ? number(mm / Units.MM_PER_FOOT) + " ft"
                    : number(mm / Units.MM_PER_INCH) + " in";
        }

        @Override
        public String film(double mm) {
            return String.format(Locale.ROOT, "%.0f mil", mm / Units.MM_PER_MIL);
        }

        @Override
        public String mass(double grams) {
            double ounces = grams / Units.GRAMS_PER_OUNCE;
            return String.format(Locale.ROOT, ounces >= 1 ? "%.2f oz" : "%.3f oz", ounces) + " (" + number(grams)
                    + " g)";
        }

        @Override
        public String volume(double ml) {
            return ml < 5
                    ? number(ml) + " ml"
                    : String.format(Locale.ROOT, "%.2f fl oz", ml / Units.ML_PER_US_FLUID_OUNCE);
        }

        @Override
        public String temperature(double celsius) {
            return String.format(Locale.ROOT, "%.0f °F", Units.fahrenheit(celsius));
        }
    };

    /** @return a length, width, depth or diameter given in mm */
    public abstract String length(double mm);

    /** @return the thickness of a film given in mm: millimetres or mils */
    public abstract String film(double mm);

    /** @return a mass given in grams */
    public abstract String mass(double grams);

    /**
     * A mass no finer than the scale that weighs it; grams always, because scales for such amounts show them.
     *
     * @param stepG what the scale shows at the finest, g
     */
    public String weighed(double grams, double stepG) {
        double shown = Math.rint(grams / stepG) * stepG;
        if (grams > 0 && shown == 0) {
            return "under " + number(stepG) + " g";
        }
        String scale = Grams.onScale(shown, stepG);
        return this == METRIC ? scale : mass(grams).replaceFirst(" \\(.*", "") + " (" + scale + ")";
    }

    /** @return a volume given in millilitres */
    public abstract String volume(double ml);

    /** @return a temperature given in degrees Celsius */
    public abstract String temperature(double celsius);

    /** @return the system of this name, in any case */
    public static UnitSystem named(String name) {
        for (UnitSystem system : values()) {
            if (system.name().equalsIgnoreCase(name.trim())) {
                return system;
            }
        }
        throw new IllegalArgumentException("units must be metric or us, were \"" + name + "\"");
    }

    /** Enough digits for a bench: three figures or so, never more than thousandths, no trailing noise. */
    private static String number(double value) {
        double size = Math.abs(value);
        int decimals = size >= 99.95 ? 0 : size >= 9.995 ? 1 : size >= 0.0995 || size == 0 ? 2 : 3;
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
