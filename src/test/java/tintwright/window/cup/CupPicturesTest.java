package tintwright.window.cup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Clock;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;
import tintwright.colour.JudgedLight;
import tintwright.colour.Lab;
import tintwright.colour.SmoothReflectance;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.match.Matcher;
import tintwright.match.Recipe;
import tintwright.match.Target;
import tintwright.match.Wish;
import tintwright.reading.Covariance;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.window.Desks;
import tintwright.window.picture.Shade;
import tintwright.window.picture.SwatchState;

/** What the pictures are told, for a hull that was read under another light than most. */
class CupPicturesTest {
    @Test
    void aHullReadUnderAPrintersLightIsShownUnderTheLightsThatAreNamed() {
        Knowledge knowledge =
                Desks.learn(Desks.demo(Clock.systemUTC()).job().now().shelf());
        Target target = new Target(
                "hull",
                new Lab(62.7, -8.6, 3.1, Viewing.D50_2),
                Covariance.same(0.1),
                Geometry.SPECULAR_EXCLUDED,
                Optional.empty());
        Recipe recipe = new Matcher(knowledge).match(Wish.of(target, 100, 0.01)).best();
        SwatchState swatch = CupPictures.swatch("Mix", recipe);
        Spectrum hull = SmoothReflectance.of(target.colour());
        for (JudgedLight light : JudgedLight.values()) {
            Lab seen = light == JudgedLight.DAYLIGHT
                    ? target.colour()
                    : Lab.of(
                            hull,
                            new Viewing(
                                    light.illuminant(),
                                    target.colour().viewing().observer()));
            assertEquals(Shade.of(seen), swatch.lights().get(light).hull(), light.label());
            assertEquals(
                    recipe.lights().get(light).deltaE(),
                    swatch.lights().get(light).apart(),
                    0,
                    light.label());
        }
    }
}
