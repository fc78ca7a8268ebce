import type { PatternKind } from "../../../src/cloth/clothMeasure.ts";
import type { LightTile } from "../../cloths/ground/tile.ts";
import { outsideDrawings } from "./outside.ts";
import { moreDrawings, nearlyDrawings, ownDrawings, UNSEEN } from "./own.ts";
import { primitive, type Truth } from "./primitive.ts";
import { type Drawing, rasterise } from "./tile.ts";

/** Tuning is for trying limits; what is reported is held out: other tiles, other seeds. */
export type Half = "tuning" | "held-out";

/** A cloth whose truth is known. */
export interface Subject {
  readonly name: string;
  readonly origin: "own" | "outside";
  readonly tile: LightTile;
  readonly truth: Truth;
  readonly kind: PatternKind | "print" | null;
  /** Millimetres of one pixel of the tile, where the drawing has a size of its own. */
  readonly mmPerPx: number | null;
}

/** Drawings of every own tradition. */
const OWN_EACH = 4;
/** Of the further ones. */
const FURTHER_EACH = 3;

/** The drawings of one half, in a fixed order. */
export function drawingsOf(half: Half): { drawing: Drawing; origin: "own" | "outside" }[] {
  const outside = outsideDrawings().filter(({ name }) => halfOf(name) === half);
  const own = ownDrawings(OWN_EACH, half === "tuning" ? 1 : 1001);
  return [
    ...outside.map((drawing) => ({ drawing, origin: "outside" as const })),
    ...own.map((drawing) => ({ drawing, origin: "own" as const })),
  ];
}

/** The further drawings of one half, on which the kinds alone are judged; of some traditions the held-out half has all. */
export function furtherDrawingsOf(half: Half): { drawing: Drawing; origin: "own" | "outside" }[] {
  const tradition = (name: string) => name.split("-")[1] ?? "";
  return moreDrawings(FURTHER_EACH, half === "tuning" ? 1 : 1001)
    .filter(({ name }) => half === "held-out" || !UNSEEN.has(tradition(name)))
    .map((drawing) => ({ drawing, origin: "own" as const }));
}

/** Drawings of each of the stripes and checks whose half is nearly a repeat. */
const NEARLY_EACH = 10;

/** The stripes and checks of one half whose half or third is nearly a repeat, by which it is judged what is given as sure. */
export function nearlyDrawingsOf(half: Half): { drawing: Drawing; origin: "own" | "outside" }[] {
  return nearlyDrawings(NEARLY_EACH, half === "tuning" ? 1 : 1001).map((drawing) => ({
    drawing,
    origin: "own" as const,
  }));
}

export async function subjectOf(drawing: Drawing, origin: "own" | "outside"): Promise<Subject> {
  const tile = await rasterise(drawing);
  const truth: Truth =
    origin === "own" && ["irregular", "plain", "textured-plain"].includes(drawing.kind ?? "")
      ? { form: "none" }
      : drawing.wholeTile
        ? wholeTile(drawing, tile)
        : primitive(tile);
  return {
    name: drawing.name,
    origin,
    tile,
    truth,
    kind: drawing.kind,
    mmPerPx: origin === "own" ? drawing.width / tile.width : null,
  };
}

/** The repeat of a drawing that says itself that it is the whole tile. */
function wholeTile({ directionDeg }: Drawing, { width, height }: LightTile): Truth {
  if (directionDeg === undefined)
    return {
      form: "lattice",
      basis: [
        [width, 0],
        [0, height],
      ],
    };
  return { form: "stripe", across: directionDeg === 0 ? [0, height] : [width, 0], directionDeg };
}

/** Half of the outside tiles by their names (FNV-1a, its lowest bit but four), so that neither half has one maker's alone. */
function halfOf(name: string): Half {
  let hash = 2166136261;
  for (const letter of name) hash = Math.imul(hash ^ letter.charCodeAt(0), 16777619) >>> 0;
  return (hash >>> 4) % 2 === 0 ? "tuning" : "held-out";
}
