package tintwright.window.phone;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import tintwright.bench.top.BenchTop;
import tintwright.phone.LocalNetwork;
import tintwright.phone.PhoneFailure;
import tintwright.phone.PhoneServer;

/** Whether the bench serves its pages to a phone, and what the code holds. Off until somebody presses. */
public final class PhoneModel {
    /** The networks that this machine is on. */
    public interface NetworksHere {
        List<LocalNetwork> all() throws PhoneFailure;
    }

    private final BenchTop top;
    private final Path photos;
    private final Clock clock;
    private final NetworksHere networks;
    private final Executor screen;
    private final ReadOnlyStringWrapper address = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyIntegerWrapper phones = new ReadOnlyIntegerWrapper(0);
    private final ReadOnlyObjectWrapper<List<LocalNetwork>> choice = new ReadOnlyObjectWrapper<>(List.of());
    private Optional<PhoneServer> server = Optional.empty();

    /**
     * @param photos where photos are put
     * @param screen the screen's thread
     */
    public PhoneModel(BenchTop top, Path photos, Clock clock, NetworksHere networks, Executor screen) {
        this.top = top;
        this.photos = photos;
        this.clock = clock;
        this.networks = networks;
        this.screen = screen;
    }

    /** Opens the door when it is closed, and closes it when it is open. */
    public void press() {
        if (server.isPresent()) {
            close();
            return;
        }
        try {
            List<LocalNetwork> all = networks.all();
            choice.set(all);
            serve(LocalNetwork.choose(all, Optional.empty()));
        } catch (PhoneFailure e) {
            problem.set(e.getMessage());
        }
    }

    /** Opens the door on the network that was chosen. */
    void on(LocalNetwork network) {
        try {
            serve(network);
        } catch (PhoneFailure e) {
            problem.set(e.getMessage());
        }
    }

    private void serve(LocalNetwork network) throws PhoneFailure {
        PhoneServer opened = open(network);
        server = Optional.of(opened);
        opened.whenLetIn(() -> screen.execute(this::show));
        problem.set("");
        choice.set(List.of());
        show();
    }

    /** A second window of the program has the usual port: any other serves as well, since the code holds it. */
    private PhoneServer open(LocalNetwork network) throws PhoneFailure {
        try {
            return PhoneServer.open(network, PhoneServer.USUAL_PORT, top, photos, clock);
        } catch (PhoneFailure taken) {
            return PhoneServer.open(network, 0, top, photos, clock);
        }
    }

    private void show() {
        address.set(server.map(PhoneServer::invitation).orElse(""));
        phones.set(server.map(PhoneServer::phones).orElse(0));
    }

    /** Lets out every phone that was let in; the code is another one. */
    void renew() {
        server.ifPresent(PhoneServer::renew);
        show();
    }

    /** Closes the door; every phone is out. */
    public void close() {
        server.ifPresent(PhoneServer::close);
        server = Optional.empty();
        problem.set("");
        choice.set(List.of());
        show();
    }

    /** @return what the code holds; empty while the door is closed */
    public ReadOnlyStringProperty addressProperty() {
        return address.getReadOnlyProperty();
    }

    /** @return how many phones were let in */
    ReadOnlyIntegerProperty phonesProperty() {
        return phones.getReadOnlyProperty();
    }

    /** @return why it cannot be opened; mostly empty */
    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** @return the networks to choose from, when there are several */
    ReadOnlyObjectProperty<List<LocalNetwork>> choiceProperty() {
        return choice.getReadOnlyProperty();
    }
}
