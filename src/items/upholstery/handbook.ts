import { Length } from "../../units/length.ts";
import { wholeRepeats } from "../common/join/centredMotif.ts";
import { handbookRows } from "../common/join/handbookRows.ts";
import type { ClothFacts, HandbookLength, ItemCut } from "../itemKind.ts";

/**
 * The handbook's length of each cloth: pieces in rows across it, matched ones up to whole repeats, the welt's square on top; or,
 * by type, the range's upper end and the usual cloth for the welt.
 */
export function coverHandbook(
  cuts: readonly ItemCut[],
  cloth: (id: string) => ClothFacts | null,
  estimate: { readonly cover: HandbookLength | null; readonly welt: HandbookLength | null },
): HandbookLength[] {
  const sums = new Map<string, Length>();
  const add = (id: string, length: Length) =>
    sums.set(id, (sums.get(id) ?? Length.zero).plus(length));
  for (const given of [estimate.cover, estimate.welt]) if (given) add(given.cloth, given.length);
  for (const id of new Set(cuts.map((c) => c.cloth))) {
    const facts = cloth(id);
    if (!facts?.usableWidth) continue;
    const pieces = cuts
      .filter((c) => c.cloth === id && c.surface !== "welt")
      .flatMap((c) => Array.from({ length: c.count }, () => rowPiece(c, facts)));
    const rows = handbookRows(pieces, facts.usableWidth);
    if (rows === null) continue;
    const welts = cuts.filter((c) => c.cloth === id && c.surface === "welt").map((c) => c.height);
    add(id, Length.sum([rows, ...welts]));
  }
  const welt = estimate.welt?.cloth === estimate.cover?.cloth ? null : estimate.welt;
  return [...sums].map(([id, length]) => ({
    cloth: id,
    length,
    ...(welt?.estimate && welt.cloth === id ? { estimate: welt.estimate } : {}),
  }));
}

/** A piece that is too wide and may turn lies sideways; a matched one takes whole repeats. */
function rowPiece(cut: ItemCut, facts: ClothFacts) {
  const sideways =
    cut.mayTurn && facts.usableWidth !== null && cut.width.isMoreThan(facts.usableWidth);
  if (sideways) return { width: cut.height, length: cut.width };
  const length =
    cut.along.how === "free" ? cut.height : wholeRepeats(cut.height, facts.repeat?.up ?? null);
  return { width: cut.width, length };
}
