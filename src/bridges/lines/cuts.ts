/**
 * The cuts that a forecast line may name. A dinner takes its shape from its card; a line carries only
 * the name, so the same figures stand here (a test holds the two together). Compositions are rows of
 * the USDA standard reference, proportions common practice.
 */
import type { CutShape } from '../../kitchen/forecast.ts';

const shapes = {
  'rib-roast': {
    form: 'rib',
    kilogramsPerBone: 1.05,
    composition: { water: 0.5524, protein: 0.1653, fat: 0.261 },
  },
  'strip-loin': {
    form: 'long-cylinder',
    aspect: 2.8,
    composition: { water: 0.58, protein: 0.19, fat: 0.2217 },
  },
  tenderloin: {
    form: 'long-cylinder',
    aspect: 4.2,
    composition: { water: 0.715, protein: 0.2167, fat: 0.0693 },
  },
  'top-round': {
    form: 'ellipsoid',
    aspect: 1.8,
    composition: { water: 0.6904, protein: 0.2206, fat: 0.0793 },
  },
  'eye-of-round': {
    form: 'long-cylinder',
    aspect: 1.5,
    composition: { water: 0.7309, protein: 0.2327, fat: 0.0344 },
  },
  'leg-of-lamb': {
    form: 'ellipsoid',
    aspect: 1.8,
    composition: { water: 0.6638, protein: 0.1847, fat: 0.1442 },
  },
  'pork-loin': {
    form: 'long-cylinder',
    aspect: 2.3,
    composition: { water: 0.6692, protein: 0.1974, fat: 0.1258 },
  },
} as const satisfies Record<string, CutShape>;

export type CutName = keyof typeof shapes;
export const cutNames = Object.keys(shapes) as CutName[];

/** Other names of the same cuts. */
const synonyms: Readonly<Record<string, { cut: CutName; boneless?: true }>> = {
  rib: { cut: 'rib-roast' },
  'beef-rib': { cut: 'rib-roast' },
  'prime-rib': { cut: 'rib-roast' },
  'standing-rib': { cut: 'rib-roast' },
  'standing-rib-roast': { cut: 'rib-roast' },
  'boneless-rib-roast': { cut: 'rib-roast', boneless: true },
  'ribeye-roast': { cut: 'rib-roast', boneless: true },
  ribeye: { cut: 'rib-roast', boneless: true },
  'beef-tenderloin': { cut: 'tenderloin' },
  striploin: { cut: 'strip-loin' },
  round: { cut: 'top-round' },
  'round-roast': { cut: 'top-round' },
  'eye-round': { cut: 'eye-of-round' },
  'lamb-leg': { cut: 'leg-of-lamb' },
  'pork-loin-roast': { cut: 'pork-loin' },
};

/** The shape a name stands for, and whether the name says that it has no bones. */
export function cutOf(name: string): { shape: CutShape; boneless: boolean } | undefined {
  const id = name
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, '-');
  const known = cutNames.find((cut) => cut === id);
  if (known !== undefined) return { shape: shapes[known], boneless: false };
  const other = Object.hasOwn(synonyms, id) ? synonyms[id] : undefined;
  return other && { shape: shapes[other.cut], boneless: other.boneless === true };
}
