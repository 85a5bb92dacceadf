package tintwright.demo;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.ToggleButton;
import javafx.stage.Window;
import tintwright.Main;
import tintwright.files.Demo;
import tintwright.phone.Browser;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeVerdict.Hue;
import tintwright.shelf.Shelf;
import tintwright.study.HiddenEye;

/**
 * The demo's job walked with a phone: the program's own window on a display, the phone's pages in a Chromium beside it,
 * from the photo to the log. Hull, pigments and eye are the invented world's. Says what was pressed where and how long
 * the program took for it; a person's weighing and a dab's curing come on top.
 *
 * <p>Under a display: {@code mvn -q test-compile exec:java -Dexec.mainClass=tintwright.demo.PhoneWalk
 * -Dexec.classpathScope=test}, with TINTWRIGHT_HOME naming a new folder.
 */
public final class PhoneWalk {
    private static final Pattern DOSE = Pattern.compile("(Weigh in|Pour off)\\s+([0-9.]+)\\s+g ([^\\n]+)");
    private static final Pattern LETDOWN = Pattern.compile("(.+) letdown, 1 in (\\d+)");
    private static final int MOST_DEEDS = 60;

    private final DemoPhoto world = DemoGenerator.hiddenPhoto();
    private final HiddenEye eye = new HiddenEye(1, 0);
    private final Shelf shelf = Demo.shelf();
    private final Map<String, Double> cup = new LinkedHashMap<>();
    private Browser phone;
    private int onThePhone;
    private int inTheWindow;
    private int looks;
    private int doses;

    private PhoneWalk() {}

    public static void main(String[] args) throws Exception {
        int code = 1;
        Thread window = new Thread(() -> Main.main(new String[0]), "window");
        window.setDaemon(true);
        window.start();
        PhoneWalk walk = new PhoneWalk();
        try {
            walk.walk();
            code = 0;
        } finally {
            if (walk.phone != null) {
                walk.phone.close();
            }
            System.exit(code);
        }
    }

    private void walk() throws Exception {
        waitFor(() -> onScreen(() -> !Window.getWindows().isEmpty()
                && !root().lookupAll(".station-key").isEmpty()));
        long begun = System.nanoTime();
        station("Hull");
        press("phone-door");
        waitFor(() -> !address().isEmpty());
        phone = new Browser("--window-position=1290,0", "--window-size=390,880", "--app=data:,", "--test-type");
        phone.open(address());
        onThePhone++; // the camera that scans the code
        thumb("button.main");
        waitFor(() -> says("Take the photo") || says("Weigh in"));
        say("the phone is in", begun);

        Path photo = Files.createTempDirectory("walk").resolve("bow.jpg");
        Demo.copyPhoto(photo);
        goTo("photo");
        onThePhone += 2; // "Take the photo", and the camera's own button
        phone.type("#photo", photo.toString());
        waitFor(() -> says("The hull is read"));
        say("the hull is read", begun);

        goTo("dose");
        for (int i = 0; i < 4 && says("No cup is begun"); i++) {
            press("now-button");
            waitFor(150, () -> !says("No cup is begun"));
        }
        say("the cup is begun", begun);
        String now = text();
        for (int i = 0; i < MOST_DEEDS && !now.contains("Stop here"); i++) {
            if (DOSE.matcher(now).find()) {
                dose(now);
            } else if (now.contains("See the ways back")) {
                thumb("a.main");
                waitFor(() -> says("Go this way"));
                thumb("button.main");
            } else {
                look();
            }
            String before = now;
            waitFor(() -> !text().equals(before));
            now = text();
        }
        System.out.printf("%d doses, %d looks at a dab%n", doses, looks);
        say(now.contains("Stop here") ? "the cup is done" : "the cup is NOT done", begun);
        System.out.printf(
                Locale.ROOT,
                "in truth %.1f from the hull%n",
                tintwright.colour.Ciede2000.between(world.dab(cup), world.truth()));

        station("Log");
        pressWords("Done with this cup");
        goTo("log");
        waitFor(() -> says("Its recipe"));
        say("it is in the log, on both faces", begun);
        System.out.printf("pressed on the phone %d times, in the window %d times%n", onThePhone, inTheWindow);
    }

    private void dose(String now) throws Exception {
        Matcher dose = DOSE.matcher(now);
        dose.find();
        double grams = Double.parseDouble(dose.group(2));
        if (dose.group(1).equals("Pour off")) {
            double left =
                    1 - grams / cup.values().stream().mapToDouble(one -> one).sum();
            cup.replaceAll((id, held) -> held * left);
        } else {
            Matcher down = LETDOWN.matcher(dose.group(3).strip());
            if (down.matches()) {
                double tint = grams / Double.parseDouble(down.group(2));
                cup.merge(id(down.group(1)), tint, Double::sum);
                cup.merge(shelf.bases().get(0).id(), grams - tint, Double::sum);
            } else {
                cup.merge(id(dose.group(3).strip()), grams, Double::sum);
            }
        }
        doses++;
        thumb("button.main");
    }

    private String id(String name) {
        return shelf.items().stream()
                .filter(item -> item.name().equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("nothing on the shelf is called " + name))
                .id();
    }

    private void look() throws Exception {
        looks++;
        EyeVerdict seen = eye.look(world.dab(cup), world.truth());
        thumb("a[href=eye]");
        waitFor(() -> says("That is what I see"));
        thumb("input[value=" + seen.depth().orElseThrow().name() + "]");
        Hue hue = seen.hue().orElseThrow();
        thumb("input[value=" + hue.name() + "]");
        if (seen.amount() == Amount.MUCH) {
            thumb("input[value=MUCH]");
        }
        thumb("button.main");
        waitFor(() -> says("Written down"));
    }

    private void thumb(String selector) throws Exception {
        phone.press(selector);
        onThePhone++;
    }

    private void goTo(String page) throws Exception {
        thumb("nav a[href=" + page + "]");
        waitFor(() -> phone.ask("location.pathname").endsWith("/" + page));
    }

    private String text() throws Exception {
        return phone.ask("document.querySelector('main').innerText");
    }

    private boolean says(String words) throws Exception {
        return text().contains(words);
    }

    private static void waitFor(Callable<Boolean> there) throws Exception {
        if (!waitFor(600, there)) {
            throw new IllegalStateException("waited for a minute");
        }
    }

    private static boolean waitFor(int tenths, Callable<Boolean> there) throws Exception {
        for (int i = 0; i < tenths; i++) {
            if (there.call()) {
                return true;
            }
            TimeUnit.MILLISECONDS.sleep(100);
        }
        return false;
    }

    private static void say(String what, long begun) {
        System.out.printf(Locale.ROOT, "%6.1f s  %s%n", (System.nanoTime() - begun) / 1e9, what);
    }

    private static <T> T onScreen(Callable<T> work) throws Exception {
        CompletableFuture<T> answer = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                answer.complete(work.call());
            } catch (Exception e) {
                answer.completeExceptionally(e);
            }
        });
        return answer.get(60, TimeUnit.SECONDS);
    }

    private static Node root() {
        return Window.getWindows().get(0).getScene().getRoot();
    }

    private String address() throws Exception {
        return onScreen(() -> root().lookupAll(".label").stream()
                .map(node -> ((Labeled) node).getText())
                .filter(text -> text != null && text.startsWith("http://"))
                .findFirst()
                .orElse(""));
    }

    private void station(String name) throws Exception {
        inTheWindow++;
        onScreen(() -> {
            root().lookupAll(".station-key").stream()
                    .map(ToggleButton.class::cast)
                    .filter(key -> name.equals(key.getText()))
                    .findFirst()
                    .orElseThrow()
                    .fire();
            return null;
        });
        TimeUnit.MILLISECONDS.sleep(500);
    }

    private void press(String id) throws Exception {
        inTheWindow++;
        onScreen(() -> {
            ((Button) root().lookup("#" + id)).fire();
            return null;
        });
    }

    private void pressWords(String words) throws Exception {
        inTheWindow++;
        onScreen(() -> {
            root().lookupAll(".button").stream()
                    .filter(node -> node instanceof Button button && words.equals(button.getText()))
                    .map(Button.class::cast)
                    .findFirst()
                    .orElseThrow()
                    .fire();
            return null;
        });
    }
}
