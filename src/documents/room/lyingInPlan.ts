import { line, roundedRect } from "../../drawing/paths.ts";
import { renameSurfaces } from "../../drawing/renameSurfaces.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { ITEM_DRAWINGS } from "../../items/drawings.ts";
import type { DrawingContext } from "../../items/itemDrawing.ts";
import type { ItemData, RoomData } from "../projectData.ts";
import { LYING } from "./carried.ts";
import { isPadOn, LIES_ON_SEAT } from "./cushionsOn.ts";
import { itemsOn } from "./hangOn.ts";
import { factsOf } from "./itemView.ts";

/** What a piece with cushions has before its back: the back's thickness and the arms', as shares of depth and width (common practice, no source). */
const BACK_SHARE = 0.24;
const ARM_SHARE = 0.08;
/** A cushion that leans on a back is about so thick as it is seen from above, and never more than this share of the depth. */
const CUSHION_MM = 170;
const CUSHION_SHARE = 0.3;
/** Before a seat's front edge, and before a bed's own pillows. */
const FRONT_MM = 15;
const BED_PILLOW_SHARE = 0.2;
/** Air at the end of a table's top. */
const END_SHARE = 0.05;

/** An item from above with its surfaces named after it; null where its kind has no such view. */
export function planOf(item: ItemData, context: DrawingContext): Drawing | null {
  const entry = ITEM_DRAWINGS.find((d) => d.kind === item.kind.kind);
  const drawing = entry?.plan(item.record.fields as never, item.made as never, context) ?? null;
  return (
    drawing && {
      ...drawing,
      shapes: renameSurfaces(drawing.shapes, (surface) => `${item.record.id}/${surface}`),
    }
  );
}

/** A piece from above. */
export interface PlanSize {
  readonly width: number;
  readonly depth: number;
}

const at = (x: number, y: number, children: readonly Shape[]): Shape => ({
  shape: "group",
  x,
  y,
  children,
});

/** A drawing about a point. */
const about = (x: number, y: number, d: Drawing): Shape =>
  at(x - d.widthMm / 2, y - d.heightMm / 2, d.shapes);

const countOf = (item: ItemData): number => (item.record.fields as { count?: number }).count ?? 1;

function finishedOf(item: ItemData): readonly [number, number] | null {
  const size = (item.record.fields as { size?: readonly { toMm(): number }[] }).size;
  return size?.[0] && size[1] ? [size[0].toMm(), size[1].toMm()] : null;
}

/** A cushion of some size as it leans or lies: its outline, and the seam that one sees from above on one that leans. */
function cushion(
  item: ItemData,
  x: number,
  y: number,
  w: number,
  d: number,
  leans: boolean,
): Shape[] {
  const outline = roundedRect(x, y, w, d, leans ? d * 0.5 : 30);
  return [
    {
      shape: "path",
      d: outline,
      fill: { surface: `${item.record.id}/face`, x: x + w / 2, y: y + d / 2 },
      pen: "edge",
    },
    ...(leans
      ? [
          {
            shape: "path",
            d: line(x + d * 0.3, y + d / 2, x + w - d * 0.3, y + d / 2),
            fill: null,
            pen: "fold",
          } as const,
        ]
      : []),
  ];
}

/** Cushions on a seat or a bed: pads before the back, the others side by side along it, over each other where they are many. */
function cushions(room: RoomData, host: ItemData, width: number, depth: number): Shape[] {
  const all = itemsOn(room, host, "cushion");
  const bed = factsOf(host)?.shape === "bed";
  const back = bed ? depth * BED_PILLOW_SHARE : Math.min(depth * BACK_SHARE, 190);
  const arm = bed ? 40 : Math.min(width * ARM_SHARE, 90);
  const free = width - 2 * arm;
  const pads = all.filter((i) => isPadOn(width, i));
  const leaning = all
    .filter((i) => !pads.includes(i))
    .flatMap((item) => Array.from({ length: countOf(item) }, () => item));
  const thick = Math.min(CUSHION_MM, depth * CUSHION_SHARE);
  const wide = leaning.map((i) => Math.min(finishedOf(i)?.[0] ?? 400, free));
  const sum = wide.reduce((a, b) => a + b, 0);
  const gap = leaning.length > 1 ? Math.min(60, (free - sum) / (leaning.length - 1)) : 0;
  let x = arm + (free - sum - gap * (leaning.length - 1)) / 2;
  return [
    ...pads.flatMap((item) => {
      const [w, d] = finishedOf(item) as readonly [number, number];
      const [padW, padD] = [Math.min(w, free), Math.min(d, depth - back - FRONT_MM)];
      return cushion(item, (width - padW) / 2, depth - FRONT_MM - padD, padW, padD, false);
    }),
    ...leaning.flatMap((item, n) => {
      const from = x;
      x += (wide[n] as number) + gap;
      return cushion(item, from, back * (bed ? 1 : 0.86), wide[n] as number, thick, true);
    }),
  ];
}

/**
 * Lamps and the like on a table or a chest, each with its own shade, and the shade of what is a lamp itself: one near its left end,
 * more spread from end to end; in the piece's own millimetres.
 */
export function standingInPlan(
  room: RoomData,
  host: ItemData,
  { width, depth }: PlanSize,
  context: DrawingContext,
): Shape[] {
  const own = shades(room, host, width / 2, depth / 2, context);
  if (host.kind.kind !== "object") return own;
  const all = itemsOn(room, host, "object").flatMap((item) => {
    const drawing = planOf(item, context);
    return drawing && drawing.widthMm <= width
      ? Array.from({ length: countOf(item) }, () => ({ item, drawing }))
      : [];
  });
  const end = width * END_SHARE;
  const lamps = all.flatMap(({ item, drawing }, n) => {
    const spare = width - 2 * end - drawing.widthMm;
    const x =
      end + drawing.widthMm / 2 + (all.length > 1 ? (spare * n) / (all.length - 1) : spare * 0.06);
    return [about(x, depth / 2, drawing), ...shades(room, item, x, depth / 2, context)];
  });
  return [...own, ...lamps];
}

/** The shade that a lamp wears, about its middle. */
function shades(
  room: RoomData,
  lamp: ItemData,
  x: number,
  y: number,
  context: DrawingContext,
): Shape[] {
  return itemsOn(room, lamp, "lampshade").flatMap((shade) => {
    const drawing = planOf(shade, context);
    return drawing ? [about(x, y, drawing)] : [];
  });
}

/**
 * What lies and leans on a piece as one sees it from above, the lower layers first, in the piece's own millimetres: its back is
 * at the upper edge. What lies over a bed or a table lies about its middle.
 */
export function lyingInPlan(
  room: RoomData,
  host: ItemData,
  size: PlanSize,
  context: DrawingContext,
): Shape[] {
  const { width, depth } = size;
  const covers = LYING.flatMap((kind) =>
    itemsOn(room, host, kind).flatMap((item) => {
      const drawing = planOf(item, context);
      return drawing ? [about(width / 2, depth / 2, drawing)] : [];
    }),
  );
  const seats = [...LIES_ON_SEAT].flatMap((kind) =>
    itemsOn(room, host, kind).flatMap((item) => {
      const drawing = planOf(item, context);
      return drawing ? [about(width / 2, depth - FRONT_MM - drawing.heightMm / 2, drawing)] : [];
    }),
  );
  return [...covers, ...seats, ...cushions(room, host, width, depth)];
}
