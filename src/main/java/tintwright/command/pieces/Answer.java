package tintwright.command.pieces;

import java.util.List;
import java.util.Map;

/**
 * What a command has to say: the same in words and for machines.
 *
 * @param lines  for a person, top to bottom; numbers with a decimal point whatever the locale
 * @param fields for machines, in order: texts, finite numbers, truth values, lists and maps of these; the names
 *               are part of {@code docs/formats.md} and stay as they are
 */
public record Answer(List<String> lines, Map<String, Object> fields) {}
