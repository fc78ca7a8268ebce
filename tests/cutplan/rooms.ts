import type { ClothPattern, CutPiece, Grains } from "../../src/cutplan/piece.ts";
import { RandomStream } from "../../src/cutplan/search/random.ts";

/** Invented rooms for tests and measurements: each family and seed gives the same room on every machine. */
export type Family = "curtains" | "cushions" | "mixed" | "half-drop" | "turnable" | "no repeat";

export const FAMILIES: readonly Family[] = [
  "curtains",
  "cushions",
  "mixed",
  "half-drop",
  "turnable",
  "no repeat",
];

export interface Room {
  readonly usableWidth: Grains;
  readonly pattern: ClothPattern | null;
  readonly pieces: readonly CutPiece[];
}

export const CM = 1600;

type Add = (
  name: string,
  count: number,
  size: readonly [Grains, Grains],
  rules: Pick<CutPiece, "across" | "along"> & { mayTurn?: boolean },
) => void;

/** A room of about `pieces` pieces. */
export function room(family: Family, seed: number, pieces: number): Room {
  const random = new RandomStream(seed * 31 + FAMILIES.indexOf(family) * 7919 + pieces);
  const between = (low: number, high: number) => low + random.below(high - low + 1);
  const pick = <T>(list: readonly T[]): T => list[random.below(list.length)] as T;
  const usableWidth = pick([130, 135, 137, 140, 145]) * CM;
  const plain = family === "turnable" || family === "no repeat";
  const horizontal = pick([
    Math.floor(usableWidth / 2),
    Math.floor(usableWidth / 2),
    34 * CM,
    32 * CM,
    46 * CM,
  ]);
  const vertical = pick([32, 46, 53, 64, 64, 76]) * CM;
  const match = family === "half-drop" ? "half-drop" : "straight";
  const pattern: ClothPattern | null = plain ? null : { horizontal, vertical, match };
  const list: CutPiece[] = [];
  const add: Add = (name, count, [width, height], { across, along, mayTurn = false }) => {
    for (let i = 0; i < count; i++) {
      const id = `${name}-${list.length + 1}`;
      list.push({ id, group: name, width, height, mayTurn, across, along });
    }
  };
  const motifX = pick([
    Math.floor(horizontal / 2),
    Math.floor(horizontal / 2),
    between(20, 30) * CM,
  ]);
  const motifY = between(0, 70) * CM;
  const dropY = between(0, 63) * CM;
  const free = { across: { rule: "free" }, along: { rule: "free" } } as const;
  const centred = (w: Grains, h: Grains) =>
    ({
      across: { rule: "register", residue: motifX - w / 2 },
      along: { rule: "register", residue: motifY - h / 2 },
    }) as const;
  const fits = (w: Grains) => {
    for (let x = motifX % horizontal; x <= usableWidth; x += horizontal) {
      if (x - w / 2 >= 0 && x + w / 2 <= usableWidth) return true;
    }
    return false;
  };
  const addDrops = (count: number) => {
    const height = between(150, 290) * CM;
    const along = { rule: plain ? "free" : "register", residue: dropY } as const;
    const half = { rule: "register", residue: dropY + vertical / 2 } as const;
    const name = `drop-${height}`;
    const at = (x: Grains) => ({ rule: "at", positions: [x] }) as const;
    if (match === "half-drop" && pattern) {
      add(`${name}-even`, Math.ceil(count / 2), [usableWidth, height], { across: at(0), along });
      add(`${name}-odd`, Math.floor(count / 2), [usableWidth, height], {
        across: at(0),
        along: half,
      });
      return;
    }
    const parts = count >= 2 && random.below(2) === 0 ? 2 : 0;
    add(name, count - parts, [usableWidth, height], { across: at(0), along });
    if (parts > 0) {
      const w = between(40, 80) * CM;
      add(`${name}-left`, 1, [w, height], { across: at(0), along });
      add(`${name}-right`, 1, [w, height], { across: at(usableWidth - w), along });
    }
  };
  const addCushions = (count: number, tallest = 66) => {
    for (let tries = 0; tries < 50; tries++) {
      const w = pick([40, 43, 45, 48, 50, 53, 56, 60, 63]) * CM;
      const h = random.below(3) > 0 ? w : between(34, tallest) * CM;
      if (!fits(w)) continue;
      add(`cushion-${w}-${h}`, count, [w, h], centred(w, h));
      return;
    }
    add("cushion-small", count, [30 * CM, 30 * CM], free);
  };
  const addPlain = (count: number) => {
    const w = between(25, 75) * CM;
    const h = between(25, 90) * CM;
    add(`plain-${w}-${h}`, count, [w, h], { ...free, mayTurn: family === "turnable" });
  };
  const rest = () => pieces - list.length;
  const part = (most: number) => Math.min(rest(), between(2, most));
  const run = Math.max(2, Math.round(pieces / 6));
  while (rest() > 0) {
    if (family === "curtains") addDrops(part(run + 2));
    else if (family === "cushions") addCushions(part(run + 3));
    else if (family === "turnable") addPlain(part(run));
    else if (family === "no repeat") (random.below(4) === 0 ? addDrops : addPlain)(part(run));
    else pick([addDrops, addCushions, addCushions, addPlain])(part(run));
  }
  return { usableWidth, pattern, pieces: list };
}
