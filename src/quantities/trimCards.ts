import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ClothFacts } from "../items/itemKind.ts";
import type { FurnishedRoom } from "../room/furnishRoom.ts";

/**
 * A warning at each item whose trim is no trim by its card, and at each whose cloth is one. A trim is bought by the length that is sewn
 * on and never cut: a cloth named there would be bought by that length at its whole width, and a braid cannot cover anything.
 */
export function trimCards(
  rooms: readonly FurnishedRoom[],
  cloth: (id: string) => ClothFacts | null,
): Diagnostic[] {
  return rooms.flatMap(({ items }) =>
    items.flatMap(({ kind, record }) =>
      kind.cloths(record.fields as never).flatMap((use): Diagnostic[] => {
        const facts = cloth(use.cloth);
        if (!facts || (use.surface === "trim") === (facts.type === "trim")) return [];
        const isTrim = facts.type === "trim";
        return [
          diagnostic(
            record.place(use.keyPath),
            isTrim ? "trim-as-cloth" : "cloth-as-trim",
            isTrim
              ? `${facts.name} is a trim by its card, and something is to be made of it here.`
              : `${facts.name} is to be sewn on as a trim, and by its card it is none.`,
            {
              severity: "warning",
              actual: use.cloth,
              hint: isTrim
                ? "Name a cloth here, or take type: trim off its card."
                : "A braid or fringe has type: trim on its card, and is bought by the length that is sewn on. A cloth would be bought by that length at its whole width: for a band cut from cloth, say so to the maker in a note, and buy it apart.",
            },
          ),
        ];
      }),
    ),
  );
}
