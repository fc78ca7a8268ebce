import type { TaxedLine } from "../../money/lines.ts";
import { addMoney, compareMoney, money } from "../../units/money.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData } from "../projectData.ts";
import type { StairPart } from "./stair.ts";

/** What a line buys, and what that looks like. */
export function stairPart(data: ProjectData, line: TaxedLine, book: PictureBook): StairPart {
  const sum = data.money.taxIncluded ? line.client : addMoney(line.client, line.tax);
  const swatch = line.cloth ? data.swatches.get(line.cloth) : undefined;
  const tile = swatch && line.what !== "freight" ? book.tile(swatch, 5) : null;
  if (tile)
    return { label: line.label, sum, fill: { tile, scale: 5, ground: swatch?.average ?? null } };
  if (line.what === "paint") {
    const room = data.rooms.find((r) => r.record.id === line.room);
    const colour = (
      room?.items.find((i) => i.record.id === line.item)?.record.fields as
        | { colour?: string }
        | undefined
    )?.colour;
    return { label: line.label, sum, fill: { flat: colour ?? "#e8e4da" } };
  }
  if (swatch?.average) return { label: line.label, sum, fill: { flat: swatch.average } };
  return {
    label: line.label,
    sum,
    fill: line.what === "making" || line.what === "fee" ? { hatch: true } : { flat: "#c9c5bb" },
  };
}

/** Lines of a step merged by cloth, so that its bar has few parts: cloths first in the order of their sums, hatching last. */
export function mergeParts(parts: readonly StairPart[], currency: string): StairPart[] {
  const key = (p: StairPart): string =>
    "tile" in p.fill ? p.fill.tile.href : "flat" in p.fill ? p.fill.flat : "hatch";
  const groups = new Map<string, StairPart>();
  for (const p of parts) {
    const before = groups.get(key(p));
    groups.set(key(p), before ? { ...before, sum: addMoney(before.sum, p.sum) } : p);
  }
  const rank = (p: StairPart): number => ("hatch" in p.fill ? 1 : 0);
  return [...groups.values()]
    .filter((p) => compareMoney(p.sum, money(0, currency)) > 0)
    .sort((a, b) => rank(a) - rank(b) || compareMoney(b.sum, a.sum));
}
