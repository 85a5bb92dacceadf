package tintwright.window.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.top.BenchTop;
import tintwright.phone.LocalNetwork;
import tintwright.phone.PhoneServer;
import tintwright.phone.RawPhone;

/** The door for a phone, as the window opens and closes it. */
class PhoneModelTest {
    private static final BenchTop TOP = new BenchTop(
            new BenchTop.Sight("Tarrowmere", "Tarrowmere", BenchTop.Wanted.HULL, Optional.empty(), Optional.empty()),
            (key, act) -> {
                throw new AssertionError("nothing is done here");
            });

    @TempDir
    Path folder;

    private PhoneModel model;

    private PhoneModel on(LocalNetwork... networks) {
        model = new PhoneModel(TOP, folder, Clock.systemUTC(), () -> List.of(networks), Runnable::run);
        return model;
    }

    private static LocalNetwork here() {
        return new LocalNetwork("lo", InetAddress.getLoopbackAddress());
    }

    @AfterEach
    void close() {
        model.close();
    }

    @Test
    void isClosedOpensByOnePressAndClosesByTheNext() {
        on(here());
        assertEquals("", model.addressProperty().get());
        model.press();
        assertTrue(model.addressProperty().get().startsWith("http://127.0.0.1:"));
        model.press();
        assertEquals("", model.addressProperty().get());
    }

    @Test
    void noNetworkIsSaid() {
        on().press();
        assertTrue(model.problemProperty().get().startsWith("This machine is on no local network."));
        assertEquals("", model.addressProperty().get());
    }

    @Test
    void ofSeveralNetworksOneIsChosen() throws Exception {
        LocalNetwork other = new LocalNetwork("lo2", InetAddress.getByName("127.0.0.2"));
        on(here(), other).press();
        assertTrue(model.problemProperty().get().startsWith("This machine is on several networks: lo (127.0.0.1)"));
        assertEquals(List.of(here(), other), model.choiceProperty().get());
        model.on(here());
        assertTrue(model.addressProperty().get().startsWith("http://127.0.0.1:"));
        assertEquals(List.of(), model.choiceProperty().get());
        assertEquals("", model.problemProperty().get());
    }

    @Test
    void aTakenPortIsGotRoundByAnother() throws Exception {
        try (ServerSocket taken = new ServerSocket()) {
            taken.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), PhoneServer.USUAL_PORT));
            on(here()).press();
            assertTrue(model.addressProperty().get().startsWith("http://127.0.0.1:"));
            assertTrue(!model.addressProperty().get().contains(":" + PhoneServer.USUAL_PORT + "/"));
        }
    }

    @Test
    void theCodeIsAnotherOneForTheNextPhoneAndAllAreLetOut() throws Exception {
        on(here()).press();
        String first = model.addressProperty().get();
        RawPhone guest = RawPhone.at(first);
        assertNotEquals(first, model.addressProperty().get());
        assertEquals(1, model.phonesProperty().get());
        assertEquals(200, guest.get("photo").status());
        model.renew();
        assertEquals(0, model.phonesProperty().get());
        assertEquals(404, guest.get("photo").status());
    }
}
