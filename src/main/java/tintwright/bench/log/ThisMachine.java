package tintwright.bench.log;

import java.io.IOException;
import java.net.NetworkInterface;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/**
 * What tells this machine from another, whatever it is called: its machine id where the system keeps one
 * (machine-id(5)), and the addresses of its network cards. Nothing here asks the network, so a dead name server cannot
 * hold up the start.
 */
final class ThisMachine {
    private static final Path MACHINE_ID = Path.of("/etc/machine-id");
    /** In the first byte of a card's address: given by a program, and so perhaps on many machines (IEEE 802). */
    private static final int GIVEN_BY_A_PROGRAM = 2;

    private ThisMachine() {}

    /** @return at least one mark; one that is found again is enough to know the machine by */
    static List<String> marks() {
        List<String> marks = new ArrayList<>();
        try {
            String id = Files.isRegularFile(MACHINE_ID)
                    ? Files.readString(MACHINE_ID).strip()
                    : "";
            if (!id.isEmpty()) {
                marks.add("id " + id);
            }
            for (NetworkInterface card : NetworkInterface.networkInterfaces().toList()) {
                byte[] address = card.getHardwareAddress();
                if (address != null && (address[0] & GIVEN_BY_A_PROGRAM) == 0) {
                    marks.add("card " + HexFormat.of().formatHex(address));
                }
            }
        } catch (IOException cannotTell) {
            return marks.isEmpty() ? List.of("system " + System.getProperty("os.name")) : marks;
        }
        return marks.isEmpty() ? List.of("system " + System.getProperty("os.name")) : marks;
    }
}
