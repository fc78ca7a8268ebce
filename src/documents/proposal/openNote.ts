import type { TaxedLine } from "../../money/lines.ts";
import { isToCome } from "../../money/pricesIn.ts";
import { isKept } from "../../money/reserve.ts";
import { capital, small } from "../../units/capital.ts";
import { listed } from "../words/phrases.ts";

/** A cloth has its name; work is called what it is, in the middle of a sentence. */
const namesOf = (lines: readonly TaxedLine[]): string[] => [
  ...new Set(lines.map((l) => (l.what === "making" ? small(l.label) : l.label))),
];

/** What a star beside a sum means: which prices the total leaves out, and which shares of them it holds only in part; empty without any. */
export function openNote(lines: readonly TaxedLine[]): string {
  const toCome = namesOf(lines.filter(isToCome));
  const isReserved = lines.some((l) => isKept(l) && l.client.minor > 0n);
  const parts = [
    ...namesOf(lines.filter((l) => l.open && !isToCome(l))),
    ...(isReserved ? ["the reserve"] : []),
  ];
  if (toCome.length === 0) return "";
  const left = `* Price to come: ${listed(toCome)}. The total leaves it out.`;
  if (parts.length === 0) return left;
  const shares = parts.length === 1 ? "is a share" : "are shares";
  return `${left} ${capital(listed(parts))} ${shares} of the prices that are in, and will grow with the others.`;
}
