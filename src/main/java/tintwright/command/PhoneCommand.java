package tintwright.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tintwright.bench.log.ShopLog;
import tintwright.bench.top.KeptBench;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.files.Fields;
import tintwright.files.FileProblem;
import tintwright.logbook.disk.LogFailure;
import tintwright.phone.LocalNetwork;
import tintwright.phone.PhoneFailure;
import tintwright.phone.PhoneServer;
import tintwright.reading.photo.sheet.CodePattern;
import tintwright.shelf.knowledge.Knowledge;

/** The pages for the phone, served from a terminal. */
@CommandLine.Command(
        name = "phone",
        sortOptions = false,
        description = {
            "Serves the job in hand to a phone on the same Wi-Fi, until it is stopped: dose, photo and day.",
            "Prints a code for the phone's camera and the address in it. Each code lets one phone in; Enter prints the",
            "code for the next one, \"end\" ends it. Close the window first: one hand holds the job at a time."
        },
        footer = {"", "Examples:", "  tintwright phone", "  tintwright phone --network wlan0 --port 9000"})
final class PhoneCommand extends Command {
    @Option(
            names = "--bench",
            paramLabel = "FILE",
            description = "The job in hand; the one that the window keeps when not said.")
    private Path bench;

    @Option(
            names = "--network",
            paramLabel = "NAME",
            description = "Network card or address to serve on; needed when there are several.")
    private String network;

    @Option(names = "--port", paramLabel = "N", description = "Port; 8417 when not said, 0 for any that is free.")
    private int port = PhoneServer.USUAL_PORT;

    @Spec
    private CommandSpec command;

    private final InputStream in;
    private final NetworksHere networks;
    private final LogHere logs;

    /** The networks that this machine is on. */
    interface NetworksHere {
        List<LocalNetwork> all() throws PhoneFailure;
    }

    /** Opens the log that the cup is written into. */
    interface LogHere {
        ShopLog open(Clock clock) throws LogFailure;
    }

    PhoneCommand() {
        this(System.in, LocalNetwork::all, clock -> ShopLog.open(ShopLog.usualFolder(), ShopLog.usualHome(), clock));
    }

    PhoneCommand(InputStream in, NetworksHere networks, LogHere logs) {
        this.in = in;
        this.logs = logs;
        this.networks = networks;
    }

    @Override
    protected Answer answer() throws FileProblem, LogFailure, PhoneFailure, IOException, InterruptedException {
        if (port < 0 || port > 65535) {
            throw new IllegalArgumentException("--port must be 0 to 65535, was " + port);
        }
        LocalNetwork here = LocalNetwork.choose(networks.all(), Optional.ofNullable(network));
        Path home = ShopLog.usualHome();
        Path file = bench == null ? home.resolve("bench").resolve("bench.json") : bench;
        Path photos = home.resolve("photos");
        Clock clock = Clock.system(ZoneId.systemDefault());
        try (ShopLog log = logs.open(clock);
                KeptBench kept = KeptBench.open(file, clock, Knowledge::of, Optional.of(log));
                PhoneServer server = PhoneServer.open(here, port, kept.top(), photos, clock)) {
            serve(server);
            return new Answer(
                    List.of("Ended. Phones that were let in: " + server.phones() + ". Photos are in " + photos + "."),
                    Fields.of("network", here.words())
                            .with("phones", server.phones())
                            .with("photos", photos));
        }
    }

    /** The code goes where it does not get into an answer for machines. */
    private void serve(PhoneServer server) throws IOException, InterruptedException {
        boolean machine = command.commandLine().getParseResult().hasMatchedOption("--json");
        PrintWriter out =
                machine ? command.commandLine().getErr() : command.commandLine().getOut();
        code(server, out);
        BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            if (line.strip().equalsIgnoreCase("end")) {
                return;
            }
            code(server, out);
        }
        // Nobody at the keys, as under a service: serve until the process is stopped.
        new CountDownLatch(1).await();
    }

    private static void code(PhoneServer server, PrintWriter out) {
        String address = server.invitation();
        blocks(CodePattern.of(address)).forEach(line -> out.print(line + "\n"));
        out.print(address + "\n");
        out.print("Scan it with the phone's camera. Enter: the code for another phone. end: stop.\n");
        out.flush();
    }

    /** Two rows of squares in a line of text, light on a dark terminal, as most are; cameras read the other way too. */
    static List<String> blocks(CodePattern code) {
        List<String> lines = new ArrayList<>();
        int end = code.side() + CodePattern.QUIET;
        for (int y = -CodePattern.QUIET; y < end; y += 2) {
            StringBuilder line = new StringBuilder();
            for (int x = -CodePattern.QUIET; x < end; x++) {
                boolean above = code.dark(x, y);
                boolean below = code.dark(x, y + 1);
                line.append(above ? below ? ' ' : '\u2584' : below ? '\u2580' : '\u2588');
            }
            lines.add(line.toString());
        }
        return lines;
    }
}
