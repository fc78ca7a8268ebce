import { Length } from "../../units/length.ts";
import { centredAcross, wholeRepeats } from "../common/join/centredMotif.ts";
import { handbookRows } from "../common/join/handbookRows.ts";
import type { ClothFacts, ItemCut } from "../itemKind.ts";

/**
 * The handbook's length of each cloth: pieces with a centred motif stand in rows, as many in a row as motifs whose squares fit
 * between the selvedges, each row whole repeats long; the others in rows by size; the welt's square on top. Cloths whose width
 * is unknown, or on which a piece does not fit, have no figure.
 */
export function cushionHandbook(
  cuts: readonly ItemCut[],
  cloth: (id: string) => ClothFacts | null,
): { cloth: string; length: Length }[] {
  const ids = [...new Set(cuts.map((c) => c.cloth))];
  const out: { cloth: string; length: Length }[] = [];
  for (const id of ids) {
    const facts = cloth(id);
    if (!facts?.usableWidth) continue;
    const lengths = cuts
      .filter((c) => c.cloth === id)
      .map((c) => lengthOf(c, facts, facts.usableWidth as Length));
    if (lengths.some((l) => l === null)) continue;
    out.push({ cloth: id, length: Length.sum(lengths as Length[]) });
  }
  return out;
}

function lengthOf(cut: ItemCut, facts: ClothFacts, usableWidth: Length): Length | null {
  if (cut.across.how !== "motif-at") {
    // Parts of a join stand in rows too; where they must meet in register each takes whole repeats.
    const length =
      cut.along.how === "free" ? cut.height : wholeRepeats(cut.height, facts.repeat?.up ?? null);
    return handbookRows(
      Array.from({ length: cut.count }, () => ({ width: cut.width, length })),
      usableWidth,
    );
  }
  const perRow = centredAcross(facts, cut.width);
  if (perRow === 0) return null;
  const up = cut.along.how === "motif-at" ? (facts.repeat?.up ?? null) : null;
  const rows = wholeRepeats(cut.height, up).times(Math.ceil(cut.count / perRow));
  // Neighbouring columns of a half-drop stand half a repeat apart, so the last row reaches that much further.
  const shifted =
    up !== null && facts.repeat?.match === "half-drop" && Math.min(perRow, cut.count) > 1;
  return shifted ? rows.plus(up.dividedBy(2)) : rows;
}
