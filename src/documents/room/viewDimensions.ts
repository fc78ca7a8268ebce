import { chainOffset } from "../../drawing/dimensionPlaces.ts";
import type { Dimension } from "../../drawing/shape.ts";
import type { Wall } from "../../room/walls.ts";
import { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import { LYING } from "./carried.ts";
import { factsOf } from "./itemView.ts";
import type { StandingItem } from "./standingItem.ts";

/** A computed measure of a drawing as an exact length: drawings are in whole tenths of a millimetre. */
function asLength(mm: number): Length {
  return Length.mm((Math.round(mm * 10) / 10).toString());
}

/** A drawing's measure for a client: to half an inch, or to a centimetre without its unit. */
function measure(mm: number, units: UnitSystem): string {
  return units === "inches"
    ? printLength(asLength(mm).nearest(Length.inches("0.5")), units)
    : printLength(asLength(mm).nearest(Length.mm(10)), units).replace(/\u202fcm$/, "");
}

/** What lies on another item has no dimension of its own. */
const WORN: ReadonlySet<string> = new Set(["cushion", "tieback", "lampshade", ...LYING]);

/** Rugs and lamps are moved as one likes. */
function isLoose(i: StandingItem): boolean {
  const shape = factsOf(i.item)?.shape;
  return shape === "rug" || shape === "lamp";
}

/** What hangs from a height that a fitter and a client ask for, and its name. */
const HUNG_FROM: Readonly<Record<string, { readonly figure: string; readonly words: string }>> = {
  curtains: { figure: "poleAboveFloorMm", words: "to the pole" },
  blind: { figure: "headAboveFloorMm", words: "to the head" },
  valance: { figure: "headAboveFloorMm", words: "to the board" },
  pelmet: { figure: "headAboveFloorMm", words: "to the board" },
};
/** Two heights nearer than this are one to the eye; more than two chains are a ladder. */
const SAME_HEIGHT = 30;
const MOST_HEIGHTS = 2;

/** Heights above the floor of poles, boards and heads of blinds on a wall, the lowest first, each once. */
function hungHeights(
  items: readonly StandingItem[],
): { readonly mm: number; readonly words: string }[] {
  const all = items
    .flatMap(({ item }) => {
      const from = HUNG_FROM[item.kind.kind];
      const mm = from ? item.made.figures[from.figure] : undefined;
      return from && mm ? [{ mm, words: from.words }] : [];
    })
    .sort((a, b) => a.mm - b.mm);
  return all
    .filter((h, at) => at === 0 || h.mm - (all[at - 1]?.mm ?? 0) > SAME_HEIGHT)
    .slice(-MOST_HEIGHTS);
}

/** What the heights at the left of a wall take, millimetres of paper. */
export function heightsMm(items: readonly StandingItem[]): number {
  const { length } = hungHeights(items);
  return length === 0 ? 0 : chainOffset(length) + HEIGHT_TEXT_MM;
}
/** A figure that stands along its chain. */
const HEIGHT_TEXT_MM = 5;

/** Chains above the wall: what hangs and stands there from left to right, then the whole; its height at the right, the height of poles and boards at the left. */
export function dimensionsOf(
  wall: Wall,
  height: number,
  items: readonly StandingItem[],
  units: UnitSystem,
  withHeight = true,
): Dimension[] {
  const length = wall.length.toMm();
  const main = items.filter(
    (i) => !WORN.has(i.item.kind.kind) && !i.standsOn && !i.before && !isLoose(i) && i.width > 200,
  );
  const taken: { from: number; to: number }[] = [];
  for (const item of [...main].sort((a, b) => b.width - a.width)) {
    const box = {
      from: Math.max(0, item.x),
      to: Math.min(length, item.x + item.width),
    };
    if (taken.every((t) => box.to <= t.from + 1 || box.from >= t.to - 1)) taken.push(box);
  }
  taken.sort((a, b) => a.from - b.from);
  const print = (mm: number): string => measure(mm, units);
  const out: Dimension[] = [];
  let at = 0;
  for (const t of taken) {
    if (t.from - at > 60)
      out.push({
        axis: "horizontal",
        from: at,
        to: t.from,
        side: "top",
        level: 1,
        text: print(t.from - at),
      });
    out.push({
      axis: "horizontal",
      from: t.from,
      to: t.to,
      side: "top",
      level: 1,
      text: print(t.to - t.from),
    });
    at = t.to;
  }
  if (taken.length > 0 && length - at > 60)
    out.push({
      axis: "horizontal",
      from: at,
      to: length,
      side: "top",
      level: 1,
      text: print(length - at),
    });
  out.push({
    axis: "horizontal",
    from: 0,
    to: length,
    side: "top",
    level: taken.length > 0 ? 2 : 1,
    text: print(length),
  });
  for (const [at, { mm, words }] of hungHeights(items).entries())
    out.push({
      axis: "vertical",
      from: height - mm,
      to: height,
      side: "left",
      level: at + 1,
      text: `${print(mm)} ${words}`,
    });
  if (withHeight)
    out.push({
      axis: "vertical",
      from: 0,
      to: height,
      side: "right",
      level: 1,
      text: print(height),
    });
  return out;
}

/** The width of each piece of a row, above it. */
export function widthsOf(items: readonly StandingItem[], units: UnitSystem): Dimension[] {
  return items
    .filter((i) => i.item.kind.kind !== "cushion")
    .map((i) => ({
      axis: "horizontal",
      from: i.x,
      to: i.x + i.width,
      side: "top",
      level: 1,
      text: measure(i.width, units),
    }));
}
