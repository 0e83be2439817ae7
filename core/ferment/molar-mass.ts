// IUPAC conventional atomic weights.
const carbon = 12.011;
const hydrogen = 1.008;
const oxygen = 15.999;

function compound(c: number, h: number, o: number): number {
  return c * carbon + h * hydrogen + o * oxygen;
}

/** Grams per mole, from the IUPAC conventional atomic weights (C 12.011, H 1.008, O 15.999). */
export const molarMass_g_per_mol = {
  hexose: compound(6, 12, 6),
  sucrose: compound(12, 22, 11),
  ethanol: compound(2, 6, 1),
  carbonDioxide: compound(1, 0, 2),
  water: compound(0, 2, 1),
  lactic: compound(3, 6, 3),
  acetic: compound(2, 4, 2),
  citric: compound(6, 8, 7),
  malic: compound(4, 6, 5),
  tartaric: compound(4, 6, 6),
} as const;
