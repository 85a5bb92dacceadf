package tintwright.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;
import tintwright.colour.JudgedLight;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.Covariance;
import tintwright.shelf.Chip;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.Tint;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.study.HiddenShop;

class MatcherTest {
    private static final Set<String> ALL = Set.of(
            "carbon-black",
            "red-iron-oxide",
            "yellow-iron-oxide",
            "phthalo-blue",
            "phthalo-green",
            "brown-oxide",
            "organic-yellow",
            "organic-red");

    private static Knowledge knowledge(HiddenShop shop) {
        List<Chip> chips = new ArrayList<>();
        chips.add(shop.chip("base", Parts.of(Map.of("white", 20.0))));
        for (Tint tint : shop.tints()) {
            chips.add(shop.chip(tint.id(), Parts.of(Map.of("white", 20.0, tint.id(), 0.2))));
        }
        return Knowledge.of(shop.shelf(chips));
    }

    private static Target target(double l, double a, double b) {
        return new Target(
                "hull",
                new Lab(l, a, b, Viewing.D65_10),
                Covariance.same(0.1),
                Geometry.SPECULAR_INCLUDED,
                Optional.empty());
    }

    @Test
    void reachesColoursThatTheTintsCanMake() {
        for (int seed = 0; seed < 8; seed++) {
            HiddenShop shop = new HiddenShop(seed);
            Knowledge knowledge = knowledge(shop);
            Lab wanted = knowledge.colour(
                    Parts.of(Map.of(
                            "white", 99.0, "carbon-black", 0.15, "yellow-iron-oxide", 0.4, "phthalo-green", 0.1)),
                    Viewing.D65_10,
                    Geometry.SPECULAR_INCLUDED);
            MatchAnswer answer = new Matcher(knowledge)
                    .match(Wish.of(target(wanted.lightness(), wanted.a(), wanted.b()), 200, 0.001));
            assertInstanceOf(MatchAnswer.Reached.class, answer);
            assertTrue(
                    answer.best().deltaE() < 0.3,
                    "seed " + seed + ": " + answer.best().deltaE());
            assertEquals(200, answer.best().exact().total(), 1e-9);
        }
    }

    /** Black in white, as one that says its strength falls with the dose: at a twentieth of a chip's it is 2.1 times as strong. */
    private static Chip faintChip(HiddenShop shop) {
        Parts stronger = Parts.of(Map.of("white", 400.0, "carbon-black", 0.2 * Math.pow(20, 0.25)));
        return new Chip(
                "faint",
                Parts.of(Map.of("white", 400.0, "carbon-black", 0.2)),
                List.of(shop.read(shop.colour(stronger))),
                Optional.empty(),
                "");
    }

    @Test
    void aRecipeCountsHowTheStrengthOfATintGoesWithItsDose() {
        HiddenShop shop = new HiddenShop(6);
        List<Chip> chips = new ArrayList<>(knowledge(shop).shelf().chips());
        chips.add(faintChip(shop));
        Knowledge knowledge = Knowledge.of(shop.shelf(chips));
        for (double grams : new double[] {0.1, 1, 3}) {
            Lab wanted = knowledge.colour(
                    Parts.of(Map.of("white", 400.0, "carbon-black", grams)),
                    Viewing.D65_10,
                    Geometry.SPECULAR_INCLUDED);
            Recipe best = new Matcher(knowledge)
                    .match(Wish.of(target(wanted.lightness(), wanted.a(), wanted.b()), 1000, 0.001))
                    .best();
            assertTrue(best.deltaE() < 0.3, grams + " g: " + best.deltaE());
        }
    }

    @Test
    void everyListedRecipeIsBetterThanThoseAboveItInSomething() {
        HiddenShop shop = new HiddenShop(11);
        MatchAnswer answer = new Matcher(knowledge(shop)).match(Wish.of(target(70, 1, 9), 100, 0.01));
        List<Recipe> recipes = answer.recipes();
        assertTrue(recipes.size() > 1 && recipes.size() <= 5, "listed " + recipes.size());
        assertTrue(recipes.get(0).betterIn().isEmpty());
        for (int i = 1; i < recipes.size(); i++) {
            Recipe recipe = recipes.get(i);
            assertFalse(recipe.betterIn().isEmpty());
            if (recipe.betterIn().contains("less tint")) {
                for (Recipe above : recipes.subList(0, i)) {
                    assertTrue(recipe.tintGrams() < above.tintGrams());
                }
            }
        }
    }

    @Test
    void staysWithinTheLoadingLimitAndOnTheScale() {
        HiddenShop shop = new HiddenShop(12);
        Knowledge knowledge = knowledge(shop);
        for (double lightness : new double[] {20, 40, 60, 85}) {
            for (Recipe recipe : new Matcher(knowledge)
                    .match(Wish.of(target(lightness, 5, 20), 80, 0.05))
                    .recipes()) {
                for (Parts parts : List.of(recipe.exact(), recipe.weighed())) {
                    for (String id : parts.grams().keySet()) {
                        double most = knowledge
                                .shelf()
                                .tint(id)
                                .map(Tint::loadingLimit)
                                .orElse(1.0);
                        assertTrue(parts.share(id) <= most * (1 + 1e-9), id + " at L* " + lightness + ": " + parts);
                    }
                }
                recipe.weighed()
                        .grams()
                        .forEach((id, grams) -> assertEquals(Math.round(grams / 0.05) * 0.05, grams, 1e-9, id));
                assertTrue(recipe.chanceWithin1() <= recipe.chanceWithin2());
                assertTrue(recipe.expected() > 0 && recipe.within90() >= recipe.expected() * 0.8);
            }
        }
    }

    @Test
    void saysWhichFamilyWouldReachAColourOutOfReach() {
        HiddenShop shop = new HiddenShop(13);
        Knowledge knowledge = knowledge(shop);
        Set<String> noReds =
                Set.of("red-iron-oxide", "organic-red", "brown-oxide", "organic-yellow", "yellow-iron-oxide");
        MatchAnswer answer = new Matcher(knowledge)
                .match(Wish.of(target(62, 24, 10), 100, 0.01).without(noReds));
        MatchAnswer.OutOfReach miss = assertInstanceOf(MatchAnswer.OutOfReach.class, answer);
        assertTrue(miss.deltaE() > 8, "nearest " + miss.deltaE());
        assertTrue(
                EnumSet.of(PigmentFamily.ORGANIC_RED, PigmentFamily.ORANGE, PigmentFamily.RED_IRON_OXIDE)
                        .contains(miss.wouldReach().orElseThrow()),
                miss.wouldReach().toString());
        assertTrue(miss.withFamily() < 0.5 * miss.deltaE(), miss.withFamily() + " of " + miss.deltaE());
        for (Recipe recipe : miss.recipes()) {
            for (String left : noReds) {
                assertEquals(0, recipe.exact().grams(left));
            }
        }
    }

    @Test
    void aScaleTooCoarseForTheBatchIsNotTakenForAMissingTint() {
        int coarse = 0;
        for (int seed = 0; seed < 8; seed++) {
            Knowledge knowledge = knowledge(new HiddenShop(seed));
            Lab wanted = knowledge.colour(
                    Parts.of(Map.of(
                            "white", 99.0, "carbon-black", 0.15, "yellow-iron-oxide", 0.4, "phthalo-green", 0.1)),
                    Viewing.D65_10,
                    Geometry.SPECULAR_INCLUDED);
            Target target = target(wanted.lightness(), wanted.a(), wanted.b());
            MatchAnswer answer = new Matcher(knowledge).match(Wish.of(target, 5, 0.1));
            if (answer instanceof MatchAnswer.TooCoarse found) {
                coarse++;
                assertTrue(found.exact() < 0.3, "seed " + seed + ": " + found.exact());
                assertTrue(found.best().deltaE() > MatchAnswer.REACH, "seed " + seed);
            } else {
                assertInstanceOf(MatchAnswer.Reached.class, answer, "seed " + seed);
            }
        }
        assertTrue(coarse >= 4, "a tenth of a gram is too coarse for 5 g, found in " + coarse + " of 8 shops");
    }

    @Test
    void aCoarseScaleMakesItLessSure() {
        Knowledge knowledge = knowledge(new HiddenShop(3));
        Lab wanted = knowledge.colour(
                Parts.of(Map.of("white", 99.5, "carbon-black", 0.12, "phthalo-green", 0.1)),
                Viewing.D65_10,
                Geometry.SPECULAR_INCLUDED);
        Target target = target(wanted.lightness(), wanted.a(), wanted.b());
        double fine =
                new Matcher(knowledge).match(Wish.of(target, 80, 0.01)).best().within90();
        Recipe coarse = new Matcher(knowledge).match(Wish.of(target, 80, 0.1)).best();
        // One standard deviation of the touchiest tint alone costs as much.
        double slip = coarse.stepCost() * Knowledge.weighingGrams(0.1) / 0.1;
        assertTrue(
                coarse.within90() > Math.max(fine + 0.5, slip),
                fine + " to " + coarse.within90() + ", one step costs " + coarse.stepCost());
    }

    @Test
    void saysWhenStartingFromALeftoverHelps() {
        HiddenShop shop = new HiddenShop(14);
        Shelf plain = knowledge(shop).shelf();
        Leftover red = new Leftover(
                "red-cup", "Red cup", Parts.of(Map.of("white", 60.0, "organic-red", 1.5)), List.of(), Optional.empty());
        Knowledge knowledge = Knowledge.of(plain.with(red));
        Lab wanted = knowledge.colour(
                Parts.of(Map.of("white", 50.0, "red-cup", 30.0, "carbon-black", 0.05)),
                Viewing.D65_10,
                Geometry.SPECULAR_INCLUDED);
        Set<String> onlyBlackAndBlue = new java.util.HashSet<>(ALL);
        onlyBlackAndBlue.removeAll(Set.of("carbon-black", "phthalo-blue"));
        Wish wish = Wish.of(target(wanted.lightness(), wanted.a(), wanted.b()), 80, 0.01)
                .without(onlyBlackAndBlue);
        MatchAnswer.OutOfReach miss =
                assertInstanceOf(MatchAnswer.OutOfReach.class, new Matcher(knowledge).match(wish));
        assertEquals(Optional.of("red-cup"), miss.leftover());
        Wish from = new Wish(wish.target(), 80, 0.01, onlyBlackAndBlue, Optional.empty(), Optional.of("red-cup"));
        Recipe recipe = assertInstanceOf(MatchAnswer.Reached.class, new Matcher(knowledge).match(from))
                .best();
        assertTrue(recipe.exact().grams("red-cup") > 0 && recipe.exact().grams("red-cup") <= 61.5);
    }

    @Test
    void eachTintMayGoToItsOwnLimit() {
        Knowledge knowledge = knowledge(new HiddenShop(12));
        Parts both = Parts.of(Map.of("white", 93.0, "red-iron-oxide", 3.5, "brown-oxide", 3.5));
        Lab wanted = knowledge.colour(both, Viewing.D65_10, Geometry.SPECULAR_INCLUDED);
        Wish wish = Wish.of(target(wanted.lightness(), wanted.a(), wanted.b()), 100, 0.01)
                .without(Set.of(
                        "carbon-black",
                        "yellow-iron-oxide",
                        "phthalo-blue",
                        "phthalo-green",
                        "organic-yellow",
                        "organic-red"));
        Recipe recipe = assertInstanceOf(MatchAnswer.Reached.class, new Matcher(knowledge).match(wish))
                .best();
        assertTrue(recipe.deltaE() < 0.3, "two tints at 3.5 of 4 % each reach it: " + recipe.deltaE());
    }

    @Test
    void aLeftoverBringsItsTintsUnderTheirLimits() {
        HiddenShop shop = new HiddenShop(14);
        Leftover black = new Leftover(
                "dark",
                "Dark rest",
                Parts.of(Map.of("white", 90.0, "carbon-black", 6.0, "red-iron-oxide", 3.0)),
                List.of(),
                Optional.empty());
        Knowledge knowledge = Knowledge.of(knowledge(shop).shelf().with(black));
        for (double lightness : new double[] {3, 20, 35, 60, 80}) {
            Wish from = new Wish(target(lightness, 3, 4), 100, 0.01, Set.of(), Optional.empty(), Optional.of("dark"));
            for (Recipe recipe : new Matcher(knowledge).match(from).recipes()) {
                assertTrue(recipe.weighed().grams("dark") > 0, "no leftover in it at L* " + lightness);
                for (Parts parts : List.of(recipe.exact(), recipe.weighed())) {
                    double[] shares = knowledge.shares(parts);
                    for (Tint tint : knowledge.shelf().tints()) {
                        double share = shares[knowledge.ids().indexOf(tint.id())];
                        assertTrue(
                                share <= tint.loadingLimit() * (1 + 1e-9),
                                tint.id() + " " + share + " at L* " + lightness + ": " + parts);
                    }
                }
            }
        }
    }

    @Test
    void refusesWhatIsNotOnTheShelf() {
        Matcher matcher = new Matcher(Knowledge.of(new HiddenShop(1).shelf(List.of())));
        Wish wish = Wish.of(target(60, 0, 0), 100, 0.01);
        assertTrue(assertThrows(IllegalArgumentException.class, () -> matcher.match(wish.without(Set.of("pink"))))
                .getMessage()
                .contains("pink"));
        assertThrows(
                IllegalArgumentException.class,
                () -> matcher.match(
                        new Wish(wish.target(), 100, 0.01, Set.of(), Optional.of("grey"), Optional.empty())));
        assertThrows(IllegalArgumentException.class, () -> Wish.of(wish.target(), -1, 0.01));
        assertThrows(IllegalArgumentException.class, () -> Wish.of(wish.target(), 100, 0));
    }

    @Test
    void theNextChipIsOfTheTintThatIsLeastKnown() {
        HiddenShop shop = new HiddenShop(15);
        List<Chip> chips = new ArrayList<>(knowledge(shop).shelf().chips());
        chips.removeIf(chip -> chip.id().equals("carbon-black"));
        Knowledge knowledge = Knowledge.of(shop.shelf(chips));
        Target grey = target(70, 0, 1);
        Recipe recipe = new Matcher(knowledge)
                .match(Wish.of(grey, 100, 0.01)
                        .without(Set.of(
                                "phthalo-blue", "phthalo-green", "brown-oxide", "red-iron-oxide", "organic-red")))
                .best();
        NextChip next = NextChip.of(knowledge, recipe, grey, 0.01).orElseThrow();
        assertTrue(next.share() * next.grams() >= 0.1, "ten steps of the scale at least: " + next);
        assertEquals("carbon-black", next.tintId());
        assertTrue(next.after() < 0.5 * next.before(), next.toString());
        chips.add(shop.chip(
                "new", Parts.of(Map.of("white", 20 * (1 - next.share()), "carbon-black", 20 * next.share()))));
        Knowledge wiser = Knowledge.of(shop.shelf(chips));
        assertTrue(wiser.strengthDeviation("carbon-black") < 0.5 * knowledge.strengthDeviation("carbon-black"));
    }

    @Test
    void otherLightsKeepTheObserverOfTheTarget() {
        Target twoDegrees = new Target(
                "hull",
                new Lab(70, 1, 9, Viewing.D50_2),
                Covariance.same(0.1),
                Geometry.SPECULAR_INCLUDED,
                Optional.empty());
        Recipe recipe = new Matcher(knowledge(new HiddenShop(11)))
                .match(Wish.of(twoDegrees, 100, 0.01))
                .best();
        assertEquals(Set.of(JudgedLight.values()), recipe.lights().keySet());
        assertEquals(
                Viewing.D50_2,
                recipe.lights().get(JudgedLight.DAYLIGHT).target().viewing(),
                "in the daylight it was read in");
        assertEquals(recipe.deltaE(), recipe.lights().get(JudgedLight.DAYLIGHT).deltaE(), 0);
        for (UnderLight under : recipe.lights().values()) {
            assertEquals(Viewing.D50_2.observer(), under.mix().viewing().observer());
        }
        assertTrue(recipe.metamerism() >= 0);
    }
}
