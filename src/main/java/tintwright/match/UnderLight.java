package tintwright.match;

import tintwright.colour.Lab;

/**
 * Mix and target under one light.
 *
 * @param mix    the mix as foretold
 * @param target the target
 * @param deltaE CIEDE2000 between them
 */
public record UnderLight(Lab mix, Lab target, double deltaE) {}
