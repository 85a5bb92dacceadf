package tintwright.logbook;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * A page of the log with its place in it.
 *
 * @param id   its name, the same through all corrections
 * @param at   when its present wording was written
 * @param boat the boat it belongs to
 * @param page what it says today
 */
public record Noted<P extends Page>(UUID id, Instant at, Optional<UUID> boat, P page) {}
