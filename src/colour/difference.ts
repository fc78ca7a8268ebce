import { differenceCiede2000 } from "culori";
import { type LabD65, labD65Of } from "./labD65.ts";

const ciede = differenceCiede2000();

/** CIEDE2000 between two CIE L*a*b* values of one white (CIE 142-2001, ISO/CIE 11664-6; kL = kC = kH = 1). */
export function differenceOfLab(one: LabD65, other: LabD65): number {
  return ciede(
    { mode: "lab65", l: one[0], a: one[1], b: one[2] },
    { mode: "lab65", l: other[0], a: other[1], b: other[2] },
  );
}

/** CIEDE2000 between two hex colours. About 1 is just seen side by side; above 10 a different colour. */
export function difference(hex: string, other: string): number {
  return differenceOfLab(labD65Of(hex), labD65Of(other));
}
