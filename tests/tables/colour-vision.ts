/*
 * Simulation of colour vision deficiency: matrices over linear sRGB for eyes that lack one of the three kinds of cone. Machado, Oliveira
 * and Fernandes, "A physiologically-based model for simulation of color vision deficiency", IEEE Transactions on Visualization and
 * Computer Graphics 15(6), 2009, table of severity 1.0.
 */
export type Matrix = readonly (readonly [number, number, number])[];

/** By the names of a browser's own simulation. */
export const SEEN_BY: Readonly<Record<'protanopia' | 'deuteranopia' | 'tritanopia', Matrix>> = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};
