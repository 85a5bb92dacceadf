package tintwright.shelf.knowledge;

/**
 * A chip that contradicts the others. It counts little in what is learned, and it is shown.
 *
 * @param chipId  the chip
 * @param partId  the tint it says most about; empty when it holds base alone
 * @param factor  how many times stronger (above 1) or weaker (below 1) this chip makes that tint than the others
 * @param misfit  how far it lies from what the others foretell, in standard deviations
 * @param others  how many other chips hold that tint
 * @param words   the doubt in one or two sentences
 */
public record Doubt(String chipId, String partId, double factor, double misfit, int others, String words) {}
