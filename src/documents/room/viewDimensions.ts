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

/** To what a client's drawing is measured: half an inch or a centimetre, and the finer steps that are taken where a chain would not add up. */
const STEPS: Readonly<Record<UnitSystem, readonly Length[]>> = {
  inches: ["0.5", "0.25", "0.125"].map((step) => Length.inches(step)),
  centimetres: [10, 5, 1].map((step) => Length.mm(step)),
};

/** A drawing's measure for a client, to a step; centimetres without their unit. */
function measure(mm: number, units: UnitSystem, step: Length = STEPS[units][0] as Length): string {
  return printLength(asLength(mm).nearest(step), units).replace(/\u202fcm$/, "");
}

interface Part {
  readonly from: number;
  readonly to: number;
}

/**
 * The coarsest step at which the parts of a chain add up to its whole as printed, the finest where they do at none; the usual one where
 * a gap too narrow for a figure is left out of the chain, which nobody adds up then.
 */
export function stepOf(parts: readonly Part[], whole: number, units: UnitSystem): Length {
  const steps = STEPS[units];
  const unbroken = [...parts, { from: whole, to: whole }].every(
    ({ from }, at) => Math.abs(from - (parts[at - 1]?.to ?? 0)) < 0.05,
  );
  const adds = (step: Length) =>
    Length.sum(parts.map(({ from, to }) => asLength(to - from).nearest(step))).equals(
      asLength(whole).nearest(step),
    );
  const found = unbroken ? (steps.find(adds) ?? steps.at(-1)) : steps[0];
  return found as Length;
}

/** What lies on another item has no dimension of its own. */
const WORN: ReadonlySet<string> = new Set(["cushion", "tieback", "lampshade", ...LYING]);

/** Rugs and lamps are moved as one likes. */
function isLoose(i: StandingItem): boolean {
  const shape = factsOf(i.item)?.shape;
  return shape === "rug" || shape === "lamp";
}

/** What is a board over a window is the tester of a bed. */
const BOARD = {
  figure: "headAboveFloorMm",
  words: "to the board",
  onBed: "to the tester",
} as const;
/** What hangs from a height that a fitter and a client ask for, and its name. */
const HUNG_FROM: Readonly<
  Record<
    string,
    readonly { readonly figure: string; readonly words: string; readonly onBed?: string }[]
  >
> = {
  curtains: [
    { figure: "trackAboveFloorMm", words: "to the track" },
    { figure: "poleAboveFloorMm", words: "to the pole" },
  ],
  blind: [{ figure: "headAboveFloorMm", words: "to the head" }],
  "roller-blind": [{ figure: "headAboveFloorMm", words: "to the head" }],
  valance: [BOARD],
  pelmet: [BOARD],
};
/** Two heights nearer than this are one to the eye; more than two chains are a ladder. */
const SAME_HEIGHT = 30;
const MOST_HEIGHTS = 2;

/** Heights above the floor of poles, boards and heads of blinds on a wall, the lowest first, each once. */
function hungHeights(
  items: readonly StandingItem[],
  wallHeight: number,
): { readonly mm: number; readonly words: string }[] {
  const all = items
    .flatMap(({ item, y, isOnBed }) => {
      // What begins at its head has a height by its place on a wall too, where its own figures have none; a pole stands below its finials.
      const known = { headAboveFloorMm: wallHeight - y, ...item.made.figures };
      const from = HUNG_FROM[item.kind.kind]?.find(({ figure }) => figure in known);
      const mm = from && known[from.figure as keyof typeof known];
      if (!from || !mm) return [];
      return [{ mm, words: (isOnBed && from.onBed) || from.words }];
    })
    .sort((a, b) => a.mm - b.mm);
  return all
    .filter((h, at) => at === 0 || h.mm - (all[at - 1]?.mm ?? 0) > SAME_HEIGHT)
    .slice(-MOST_HEIGHTS);
}

/** What the heights at the left of a wall take, millimetres of paper. */
export function heightsMm(items: readonly StandingItem[], wallHeight: number): number {
  const { length } = hungHeights(items, wallHeight);
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
    (i) =>
      !WORN.has(i.item.kind.kind) &&
      !i.standsOn &&
      !i.before &&
      // What hangs on a bed is as wide as its bed, which has its own measure; finials of its poles are only drawn.
      !i.isOnBed &&
      !isLoose(i) &&
      i.width > 200,
  );
  const taken: { from: number; to: number }[] = [];
  for (const item of [...main].sort((a, b) => b.width - a.width)) {
    const beyond = item.beyond ?? 0;
    const box = {
      from: Math.max(0, item.x + beyond),
      to: Math.min(length, item.x + item.width - beyond),
    };
    if (taken.every((t) => box.to <= t.from + 1 || box.from >= t.to - 1)) taken.push(box);
  }
  taken.sort((a, b) => a.from - b.from);
  const parts: Part[] = [];
  let at = 0;
  for (const t of taken) {
    if (t.from - at > 60) parts.push({ from: at, to: t.from });
    parts.push(t);
    at = t.to;
  }
  if (taken.length > 0 && length - at > 60) parts.push({ from: at, to: length });
  const step = stepOf(parts, length, units);
  const print = (mm: number): string => measure(mm, units);
  const out: Dimension[] = parts.map(({ from, to }) => ({
    axis: "horizontal",
    from,
    to,
    side: "top",
    level: 1,
    text: measure(to - from, units, step),
  }));
  out.push({
    axis: "horizontal",
    from: 0,
    to: length,
    side: "top",
    level: taken.length > 0 ? 2 : 1,
    text: measure(length, units, step),
  });
  for (const [at, { mm, words }] of hungHeights(items, height).entries())
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
