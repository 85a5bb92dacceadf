package tintwright.shelf.knowledge;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tintwright.colour.Ciede2000;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.reading.SpectralReading;
import tintwright.shelf.Chip;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;
import tintwright.shelf.Tint;
import tintwright.study.HiddenShop;

class KnowledgeTest {
    private static final Parts WHITE = Parts.of(Map.of("white", 20.0));

    private static Parts tinted(String tint, double grams) {
        return Parts.of(Map.of("white", 20.0, tint, grams));
    }

    private static List<Chip> chips(HiddenShop shop, double... grams) {
        List<Chip> chips = new ArrayList<>();
        chips.add(shop.chip("base", WHITE));
        for (Tint tint : shop.tints()) {
            for (double amount : grams) {
                chips.add(shop.chip(tint.id() + " " + amount, tinted(tint.id(), amount)));
            }
        }
        return chips;
    }

    @Test
    void isTheSameBitForBitInWhateverOrderTheChipsStand() {
        HiddenShop shop = new HiddenShop(1);
        List<Chip> chips = chips(shop, 0.1, 0.3);
        Knowledge first = Knowledge.learn(shop.shelf(chips));
        Collections.shuffle(chips, new Random(5));
        Knowledge second = Knowledge.learn(shop.shelf(chips));
        for (int part = 0; part < first.ids().size(); part++) {
            assertArrayEquals(first.absorption()[part], second.absorption()[part]);
            assertArrayEquals(first.scattering()[part], second.scattering()[part]);
        }
        assertEquals(
                first.predict(tinted("carbon-black", 0.2), Viewing.D65_10, Geometry.SPECULAR_INCLUDED),
                second.predict(tinted("carbon-black", 0.2), Viewing.D65_10, Geometry.SPECULAR_INCLUDED));
    }

    /** Taking a chip back, and another boat and back, come to a shelf that was learned from before. */
    @Test
    void aShelfThatWasAskedAboutLatelyIsNotLearnedFromAgain() {
        HiddenShop shop = new HiddenShop(2);
        List<Chip> chips = chips(shop, 0.1, 0.3);
        Knowledge first = Knowledge.of(shop.shelf(chips));
        assertNotSame(first, Knowledge.of(shop.shelf(chips.subList(1, chips.size()))));
        assertSame(first, Knowledge.of(shop.shelf(new ArrayList<>(chips))));
        for (int left = 1; left < 4; left++) {
            Knowledge.of(shop.shelf(chips.subList(0, left)));
        }
        assertNotSame(first, Knowledge.of(shop.shelf(chips)), "only the last few are kept");
    }

    @Test
    void aChipBringsTheColourOfItsTintNearAndMakesItSurer() {
        double before = 0;
        double after = 0;
        for (int seed = 0; seed < 10; seed++) {
            HiddenShop shop = new HiddenShop(seed);
            Parts mix = tinted("phthalo-blue", 0.15);
            Knowledge none = Knowledge.of(shop.shelf(List.of(shop.chip("base", WHITE))));
            Knowledge one = Knowledge.of(
                    shop.shelf(List.of(shop.chip("base", WHITE), shop.chip("blue", tinted("phthalo-blue", 0.2)))));
            before += Ciede2000.between(shop.colour(mix), none.colour(mix, Viewing.D65_10, Geometry.SPECULAR_INCLUDED))
                    / 10;
            after += Ciede2000.between(shop.colour(mix), one.colour(mix, Viewing.D65_10, Geometry.SPECULAR_INCLUDED))
                    / 10;
            assertTrue(one.strengthDeviation("phthalo-blue") < 0.5 * none.strengthDeviation("phthalo-blue"));
            assertTrue(one.strengthDeviation("carbon-black") <= none.strengthDeviation("carbon-black"));
        }
        assertTrue(after < 0.35 * before, before + " before, " + after + " after");
    }

    /** Black in so much white that its weighing does not matter. */
    private static Parts black(double share) {
        return Parts.of(Map.of("white", 400.0, "carbon-black", 400 * share));
    }

    /** What such a mix is like when each gram counts as this power of its share has it, one in a hundred being usual. */
    private static Parts byDose(double share, double power) {
        return black(share * Math.pow(share / 0.01, power));
    }

    @Test
    void twoDosesOfATintTeachHowItsStrengthGoesWithTheDose() {
        double[] off = new double[2];
        for (int seed = 0; seed < 8; seed++) {
            double power = seed % 2 == 0 ? 0.2 : -0.2;
            HiddenShop shop = new HiddenShop(seed);
            List<Chip> chips = chips(shop, 0.2);
            chips.add(new Chip(
                    "little",
                    black(0.001),
                    List.of(shop.read(shop.colour(byDose(0.001, power)))),
                    Optional.empty(),
                    ""));
            Knowledge knowledge = Knowledge.of(shop.shelf(chips));
            assertEquals(List.of(), knowledge.doubts());
            Lab truth = shop.colour(byDose(0.0003, power));
            Lab foretold = knowledge.colour(black(0.0003), Viewing.D65_10, Geometry.SPECULAR_INCLUDED);
            off[0] += Ciede2000.between(truth, foretold) / 8;
            off[1] += Ciede2000.between(truth, shop.colour(black(0.0003))) / 8;
        }
        assertTrue(off[0] < 0.4 * off[1], off[0] + " with both chips, " + off[1] + " as if all grams were alike");
    }

    @Test
    void aMixFarFromTheDoseOfItsChipIsLessSure() {
        HiddenShop shop = new HiddenShop(4);
        Parts faint = black(0.001);
        double far = spread(Knowledge.of(shop.shelf(chips(shop, 0.2))), faint);
        List<Chip> chips = chips(shop, 0.2);
        chips.add(shop.chip("faint", faint));
        double near = spread(Knowledge.of(shop.shelf(chips)), faint);
        assertTrue(far > 2.5 * near, "L* good to " + far + " without a chip near, " + near + " with one");
    }

    /** Standard deviation of L*. */
    private static double spread(Knowledge knowledge, Parts mix) {
        return Math.sqrt(knowledge
                .predict(mix, Viewing.D65_10, Geometry.SPECULAR_INCLUDED)
                .covariance()
                .ll());
    }

    @Test
    void theBestEstimateIsTheSameInBothForms() {
        HiddenShop shop = new HiddenShop(2);
        Knowledge knowledge = Knowledge.of(shop.shelf(chips(shop, 0.2)));
        Parts mix = Parts.of(Map.of("white", 99.0, "carbon-black", 0.2, "red-iron-oxide", 0.5));
        Lab quick = knowledge.colour(mix, Viewing.D65_10, Geometry.SPECULAR_INCLUDED);
        Lab full = knowledge
                .predict(mix, Viewing.D65_10, Geometry.SPECULAR_INCLUDED)
                .lab();
        assertEquals(0, Ciede2000.between(quick, full), 1e-9);
    }

    @Test
    void namesTheChipThatContradictsTheOthersAndSaysByHowMuch() {
        HiddenShop shop = new HiddenShop(3);
        List<Chip> chips = chips(shop, 0.05, 0.1, 0.2, 0.3);
        Chip slip = shop.chip("7", tinted("phthalo-blue", 0.1));
        chips.add(new Chip("7", tinted("phthalo-blue", 0.3), slip.readings(), Optional.empty(), ""));
        Knowledge knowledge = Knowledge.of(shop.shelf(chips));
        assertEquals(1, knowledge.doubts().size(), knowledge.doubts().toString());
        Doubt doubt = knowledge.doubts().get(0);
        assertEquals("7", doubt.chipId());
        assertEquals("phthalo-blue", doubt.partId());
        assertEquals(1 / 3.0, doubt.factor(), 0.06);
        assertEquals(
                "Chip 7 says phthalocyanine blue is 3 times weaker than the other 4 do. Was it weighed right?",
                doubt.words());

        Parts mix = tinted("phthalo-blue", 0.15);
        Knowledge without = Knowledge.of(shop.shelf(chips.subList(0, chips.size() - 1)));
        double dragged = Ciede2000.between(
                without.colour(mix, Viewing.D65_10, Geometry.SPECULAR_INCLUDED),
                knowledge.colour(mix, Viewing.D65_10, Geometry.SPECULAR_INCLUDED));
        assertTrue(dragged < 0.5, "the slip moved what is believed by " + dragged);
    }

    @Test
    void honestChipsAreNotDoubted() {
        int doubted = 0;
        for (int seed = 0; seed < 12; seed++) {
            HiddenShop shop = new HiddenShop(seed);
            doubted += Knowledge.of(shop.shelf(chips(shop, 0.1, 0.3))).doubts().size();
        }
        assertTrue(doubted <= 2, doubted + " of 204 honest chips were doubted");
    }

    @Test
    void chipsOfOnePhotoShareTheirBiasSoTheirDifferenceIsKept() {
        HiddenShop shop = new HiddenShop(4);
        shop.noise = 0.05;
        double[] bias = {4, -3, 5};
        List<Chip> chips = new ArrayList<>();
        chips.add(shop.chip("base", WHITE));
        for (Tint tint : shop.tints()) {
            if (!tint.id().equals("carbon-black")) {
                chips.add(shop.chip(tint.id(), tinted(tint.id(), 0.2)));
            }
        }
        List<Chip> together = new ArrayList<>(chips);
        List<Chip> alone = new ArrayList<>(chips);
        for (double grams : new double[] {0, 0.03, 0.1}) {
            Parts parts = grams == 0 ? WHITE : tinted("carbon-black", grams);
            Lab seen = shop.colour(shop.weigh(parts));
            Lab biased = new Lab(seen.lightness() + bias[0], seen.a() + bias[1], seen.b() + bias[2], seen.viewing());
            together.add(photoChip("p" + grams, parts, biased, "photo"));
            alone.add(photoChip("p" + grams, parts, biased, "photo" + grams));
        }
        Parts mix = tinted("carbon-black", 0.06);
        Lab truth = shop.colour(mix);
        double withShared = Ciede2000.between(
                truth, Knowledge.of(shop.shelf(together)).colour(mix, Viewing.D65_10, Geometry.SPECULAR_INCLUDED));
        double withoutShared = Ciede2000.between(
                truth, Knowledge.of(shop.shelf(alone)).colour(mix, Viewing.D65_10, Geometry.SPECULAR_INCLUDED));
        assertTrue(withShared < 1.2, "one photo: " + withShared);
        assertTrue(withShared < withoutShared, withShared + " against " + withoutShared);
    }

    private static Chip photoChip(String id, Parts parts, Lab lab, String photo) {
        return new Chip(
                id,
                parts,
                List.of(new ColourReading(
                        lab,
                        Covariance.same(0.3),
                        Geometry.SPECULAR_INCLUDED,
                        FilmState.CURED,
                        Optional.of(new ColourReading.PhotoBias(photo, Covariance.same(4))))),
                Optional.empty(),
                "");
    }

    @Test
    void pairsOfWetAndCuredTeachTheShift() {
        HiddenShop shop = new HiddenShop(6);
        List<Chip> chips = chips(shop, 0.2);
        double[][] before = Knowledge.of(shop.shelf(chips)).wetShift();
        for (int i = 0; i < 4; i++) {
            Chip dry = shop.chip("pair" + i, tinted("carbon-black", 0.05 * (i + 1)));
            Lab cured = ((ColourReading) dry.readings().get(0)).lab();
            Reading wet = new ColourReading(
                    new Lab(cured.lightness() - 2, cured.a(), cured.b() + 1, cured.viewing()),
                    Covariance.same(0.3),
                    Geometry.SPECULAR_INCLUDED,
                    FilmState.WET,
                    Optional.empty());
            chips.add(new Chip("pair" + i, dry.parts(), List.of(dry.readings().get(0), wet), Optional.empty(), ""));
        }
        double[][] after = Knowledge.of(shop.shelf(chips)).wetShift();
        assertEquals(-2, after[0][0], 0.9);
        assertEquals(1, after[2][0], 0.6);
        assertTrue(after[0][1] < 0.6 * before[0][1]);
    }

    @Test
    void aSpectrumTeachesMoreThanItsColourAlone() {
        double byColour = 0;
        double bySpectrum = 0;
        for (int seed = 20; seed < 30; seed++) {
            HiddenShop shop = new HiddenShop(seed);
            Parts chip = tinted("organic-red", 0.2);
            Parts mix = tinted("organic-red", 0.02);
            Chip colour = shop.chip("red", chip);
            Chip spectral = new Chip(
                    "red",
                    chip,
                    List.of(new SpectralReading(
                            shop.reflectance(chip), 0.002, Geometry.SPECULAR_INCLUDED, FilmState.CURED)),
                    Optional.empty(),
                    "");
            Chip base = new Chip(
                    "base",
                    WHITE,
                    List.of(new SpectralReading(
                            shop.reflectance(WHITE), 0.002, Geometry.SPECULAR_INCLUDED, FilmState.CURED)),
                    Optional.empty(),
                    "");
            Lab lamp = Lab.of(shop.reflectance(mix), Viewing.A_10);
            byColour += Ciede2000.between(
                    lamp,
                    Knowledge.of(shop.shelf(List.of(base, colour)))
                            .colour(mix, Viewing.A_10, Geometry.SPECULAR_INCLUDED));
            bySpectrum += Ciede2000.between(
                    lamp,
                    Knowledge.of(shop.shelf(List.of(base, spectral)))
                            .colour(mix, Viewing.A_10, Geometry.SPECULAR_INCLUDED));
        }
        assertTrue(bySpectrum < byColour, bySpectrum + " against " + byColour);
    }

    @Test
    void aLeftoverCountsAsWhatIsInIt() {
        HiddenShop shop = new HiddenShop(7);
        Shelf plain = shop.shelf(chips(shop, 0.2));
        Parts inside = Parts.of(Map.of("white", 50.0, "carbon-black", 0.5));
        Shelf shelf = plain.with(new Leftover("grey", "Grey cup", inside, List.of(), Optional.empty()));
        Knowledge knowledge = Knowledge.of(shelf);
        Lab throughLeftover = knowledge.colour(
                Parts.of(Map.of("white", 49.5, "grey", 50.5)), Viewing.D65_10, Geometry.SPECULAR_INCLUDED);
        Lab direct = knowledge.colour(
                Parts.of(Map.of("white", 99.5, "carbon-black", 0.5)), Viewing.D65_10, Geometry.SPECULAR_INCLUDED);
        assertEquals(0, Ciede2000.between(throughLeftover, direct), 1e-6);
        assertThrows(IllegalArgumentException.class, () -> knowledge.shares(Parts.of(Map.of("nothing", 1.0))));
    }

    /** More than a shop pours in ten years; ten thousand with -Dchips=10000. */
    @Test
    void aThousandChipsAreSimplyHandled() {
        HiddenShop shop = new HiddenShop(8);
        List<Chip> chips = new ArrayList<>();
        for (int i = 0; i < Integer.getInteger("chips", 1000); i++) {
            Tint tint = shop.tints().get(i % shop.tints().size());
            chips.add(shop.chip("c" + i, tinted(tint.id(), 0.05 + 0.001 * (i % 300))));
        }
        Knowledge knowledge = Knowledge.of(shop.shelf(chips));
        Parts mix = tinted("carbon-black", 0.1);
        assertEquals(
                0,
                Ciede2000.between(shop.colour(mix), knowledge.colour(mix, Viewing.D65_10, Geometry.SPECULAR_INCLUDED)),
                0.3);
    }
}
