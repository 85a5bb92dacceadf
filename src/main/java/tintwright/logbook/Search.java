package tintwright.logbook;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import tintwright.logbook.disk.Entry;
import tintwright.logbook.disk.EntryIds;
import tintwright.logbook.disk.Ledger;

/**
 * Finds boats by any words in their log, while they are typed. One plain text per boat, each word once, is kept in
 * memory and looked through whole: for fifty thousand entries that is a few megabytes and takes a few
 * milliseconds.
 */
final class Search {
    private final Map<UUID, Text> texts = new HashMap<>();
    private final Set<UUID> stale = new HashSet<>();
    private boolean asked;

    /** All the words of one boat, its own name first. */
    private record Text(String name, String all, UUID newest) {}

    /** This boat's entries have changed; its text is made again when somebody asks. */
    void changed(UUID boat) {
        stale.add(boat);
    }

    /**
     * @param query words or beginnings of words; each must be found somewhere in the log of a boat
     * @return boats, those found by their names first, then the most recently written; all for an empty query
     */
    List<UUID> find(String query, int most, Ledger ledger) {
        String[] words = Plain.of(query).split(" ");
        freshen(words, ledger);
        String[] beginnings = Stream.of(words).map(word -> " " + word).toArray(String[]::new);
        List<Map.Entry<UUID, Integer>> found = new ArrayList<>();
        texts.forEach((boat, text) -> {
            int rank = rank(text, words, beginnings);
            if (rank >= 0) {
                found.add(Map.entry(boat, rank));
            }
        });
        Comparator<Map.Entry<UUID, Integer>> order = Comparator.comparing(Map.Entry::getValue);
        if (words.length == 1 && words[0].isEmpty()) {
            order = order.thenComparing(one -> texts.get(one.getKey()).name());
        }
        found.sort(order.thenComparing(one -> texts.get(one.getKey()).newest(), EntryIds.ORDER.reversed())
                .thenComparing(Map.Entry::getKey, EntryIds.ORDER));
        return found.stream().limit(most).map(Map.Entry::getKey).toList();
    }

    /** @return 0 to 3, the lower the nearer to the top; -1 for not found */
    private static int rank(Text text, String[] words, String[] beginnings) {
        for (String word : words) {
            if (!text.all().contains(word)) {
                return -1;
            }
        }
        boolean allInName = true;
        boolean beginning = true;
        for (int i = 0; i < words.length; i++) {
            allInName &= text.name().contains(words[i]);
            beginning &= text.all().startsWith(words[i]) || text.all().contains(beginnings[i]);
        }
        return allInName ? text.name().startsWith(words[0]) ? 0 : 1 : beginning ? 2 : 3;
    }

    /**
     * Whoever asks once, as a command does, needs the texts of those boats only that can be found; they are told from
     * the bytes on disk. Whoever asks again is typing, and every text is made ready.
     */
    private void freshen(String[] words, Ledger ledger) {
        byte[][] pieces = Stream.of(words)
                .filter(Plain::isAscii)
                .map(word -> word.getBytes(StandardCharsets.US_ASCII))
                .toArray(byte[][]::new);
        boolean all = asked;
        asked = true;
        for (Iterator<UUID> boats = stale.iterator(); boats.hasNext(); ) {
            UUID boat = boats.next();
            if (all || mayBeFound(boat, pieces, ledger)) {
                freshen(boat, ledger);
                boats.remove();
            } else {
                texts.remove(boat);
            }
        }
    }

    private static boolean mayBeFound(UUID boat, byte[][] pieces, Ledger ledger) {
        return Stream.of(pieces).allMatch(piece -> ledger.mayHold(boat, entry -> entry.mayHold(piece)));
    }

    private void freshen(UUID boat, Ledger ledger) {
        Text text = textOf(boat, ledger);
        if (text == null) {
            texts.remove(boat);
        } else {
            texts.put(boat, text);
        }
    }

    /** Each word once, in the order they first come: a log says the same few words again and again. */
    private static String once(String words) {
        return String.join(" ", new LinkedHashSet<>(Arrays.asList(words.split(" "))));
    }

    /** @return null for a boat that was taken back, or is not in the log yet */
    private static Text textOf(UUID boat, Ledger ledger) {
        Entry itself = ledger.current(boat).orElse(null);
        if (itself == null) {
            return null;
        }
        StringBuilder all = new StringBuilder(itself.words());
        UUID newest = itself.id();
        for (Entry entry : ledger.currentOf(boat)) {
            if (entry != itself) {
                all.append('\n').append(entry.words());
            }
            newest = EntryIds.ORDER.compare(entry.id(), newest) > 0 ? entry.id() : newest;
        }
        int end = itself.words().indexOf('\n');
        return new Text(
                Plain.of(end < 0 ? itself.words() : itself.words().substring(0, end)),
                once(Plain.of(all.toString())),
                newest);
    }
}
