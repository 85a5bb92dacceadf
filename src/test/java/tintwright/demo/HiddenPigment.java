package tintwright.demo;

/**
 * An invented pigment as nature would have it: what it absorbs and scatters at each wavelength, per gram of paste
 * and with the scattering of the white base at 560 nm as 1. Shapes follow what such pigments are known for (where
 * they absorb and how steeply the absorption ends); every figure is invented.
 */
enum HiddenPigment {
    /** Rutile in resin: scatters a little more in the blue, absorbs next to nothing until the violet, then sharply. */
    WHITE {
        @Override
        double absorption(double nm) {
            return 0.0016 + 0.0012 * hill(nm, 400, 60) + 1.6 * StrictMath.exp((390 - nm) / 5.8);
        }

        @Override
        double scattering(double nm) {
            return StrictMath.pow(560 / nm, 0.75) / (1 + StrictMath.exp((396 - nm) / 7));
        }
    },
    /** Fine carbon: absorbs everywhere, a little more in the blue. */
    BLACK {
        @Override
        double absorption(double nm) {
            return 24 * StrictMath.pow(560 / nm, 0.35);
        }

        @Override
        double scattering(double nm) {
            return 0.2;
        }
    },
    RED_OXIDE {
        @Override
        double absorption(double nm) {
            return 0.75 + 9.5 * below(nm, 577, 9) + 1.6 * hill(nm, 530, 28) + 0.35 * hill(nm, 665, 45);
        }

        @Override
        double scattering(double nm) {
            return 0.35 + 0.65 * above(nm, 585, 14);
        }
    },
    YELLOW_OXIDE {
        @Override
        double absorption(double nm) {
            return 0.13 + 8.2 * below(nm, 501, 13) + 0.25 * hill(nm, 645, 40);
        }

        @Override
        double scattering(double nm) {
            return 0.3 + 0.5 * above(nm, 520, 18);
        }
    },
    BLUE {
        @Override
        double absorption(double nm) {
            return 0.3
                    + 34 * hill(nm, 617, 34)
                    + 24 * hill(nm, 697, 32)
                    + 17 * hill(nm, 566, 27)
                    + 4.5 * below(nm, 402, 14);
        }

        @Override
        double scattering(double nm) {
            return 0.06;
        }
    },
    GREEN {
        @Override
        double absorption(double nm) {
            return 1 + 62 * hill(nm, 645, 34) + 34 * hill(nm, 698, 28) + 26 * below(nm, 437, 13);
        }

        @Override
        double scattering(double nm) {
            return 0.14;
        }
    },
    UMBER {
        @Override
        double absorption(double nm) {
            return 5.2 + 19 * StrictMath.exp((400 - nm) / 130) + 2.3 * below(nm, 520, 30);
        }

        @Override
        double scattering(double nm) {
            return 0.55;
        }
    },
    ORGANIC_YELLOW {
        @Override
        double absorption(double nm) {
            return 0.04 + 19 * below(nm, 487, 9) * (0.75 + 0.25 * hill(nm, 430, 40));
        }

        @Override
        double scattering(double nm) {
            return 0.1;
        }
    },
    ORGANIC_RED {
        @Override
        double absorption(double nm) {
            return 0.06 + 14 * hill(nm, 545, 34) + 8 * hill(nm, 500, 40) + 3.2 * below(nm, 430, 30);
        }

        @Override
        double scattering(double nm) {
            return 0.09;
        }
    };

    /** @return K, in units of the white base's scattering at 560 nm */
    abstract double absorption(double nm);

    /** @return S, in the same units */
    abstract double scattering(double nm);

    private static double below(double nm, double edge, double width) {
        return 1 / (1 + StrictMath.exp((nm - edge) / width));
    }

    private static double above(double nm, double edge, double width) {
        return 1 - below(nm, edge, width);
    }

    private static double hill(double nm, double centre, double width) {
        return StrictMath.exp(-(nm - centre) * (nm - centre) / (2 * width * width));
    }
}
