import type { Binding } from "../../drawing/binding.ts";
import { renderDrawing } from "../../drawing/renderDrawing.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { roomBindings } from "../room/bindings.ts";
import type { View } from "../room/drawView.ts";
import { viewsOfRoom } from "../room/elevation.ts";
import { filledParts } from "../room/filledParts.ts";
import { wallFrame, wallShapes } from "../room/wallShapes.ts";
import type { Markup } from "../words/marks.ts";
import { listed } from "../words/phrases.ts";

/** One wall in grey, its size in millimetres of paper. */
export interface GreyWall {
  readonly markup: Markup;
  readonly width: number;
  readonly height: number;
}

/** The walls that show the room in grey, side by side at one scale. */
export interface GreyRoom {
  readonly walls: readonly GreyWall[];
  /** Which walls these are, in words. */
  readonly words: string;
  readonly height: number;
}

/** One to so much; even numbers, so that a wall is as large as it can be. */
const SCALES = [
  10, 12, 14, 15, 16, 18, 20, 22, 24, 25, 26, 28, 30, 32, 36, 40, 48, 50, 60, 80, 100,
];
export const BETWEEN_WALLS_MM = 6;

/** How much of a wall is cloth or paper of a card, in square millimetres of the drawing: boxes of its parts, an estimate. */
function clothOf(view: View, room: RoomData): number {
  const items = view.items.filter(
    (i) => i.item.kind.cloths(i.item.record.fields as never).length > 0,
  );
  const hung = items
    .flatMap((i) => filledParts(i.shapes))
    .filter((f) => f.surface !== null)
    .reduce((sum, f) => sum + (f.right - f.left) * (f.foot - f.top), 0);
  const papers = room.plan.covers
    .flatMap((c) => (c.what === "paper" ? c.faces : []))
    .filter((f) => f.wall === view.name)
    .reduce((sum, f) => sum + f.width.toMm() * f.height.toMm(), 0);
  return hung + papers;
}

/**
 * The wall with most cloth, as large as fits, and as many of the next as then fit beside it: every fill the grey that is as light as it
 * is. Null for a room whose walls are not known, or show nothing.
 */
export function greyRoomOf(
  data: ProjectData,
  room: RoomData,
  book: PictureBook,
  prefix: string,
  space: { readonly width: number; readonly height: number },
): GreyRoom | null {
  const views = viewsOfRoom(data, room)?.walls ?? [];
  const order = [...views].sort((a, b) => clothOf(b, room) - clothOf(a, room));
  const [first, ...others] = order;
  if (!first) return null;
  const scale = SCALES.find(
    (s) => first.widthMm / s <= space.width && first.heightMm / s <= space.height,
  );
  if (!scale) return null;
  const shown = [first];
  let used = first.widthMm / scale;
  for (const view of others) {
    const more = view.widthMm / scale + BETWEEN_WALLS_MM;
    if (used + more > space.width) continue;
    used += more;
    shown.push(view);
  }
  // They stand in the order in which one turns round in the room.
  shown.sort((a, b) => views.indexOf(a) - views.indexOf(b));
  // Objects show their own photograph, without its colour.
  const inColour = roomBindings(data, room, scale, { ...book, whole: book.inGrey(1).whole });
  const bindings = (surface: string): Binding => {
    const bound = inColour(surface);
    return bound !== null && "href" in bound ? { ...bound, isGrey: true } : bound;
  };
  const walls = shown.flatMap((view, at): GreyWall[] => {
    if (!view.wall) return [];
    const drawn = renderDrawing(
      {
        widthMm: view.widthMm,
        heightMm: view.heightMm,
        shapes: [
          ...wallShapes(view.wall, room, view.heightMm),
          ...view.items.flatMap((i) => i.shapes),
          wallFrame(view.widthMm, view.heightMm),
        ],
        dimensions: [],
        title: `The ${view.name} wall in grey`,
        description: "The same drawing as in cloth, each part as light or as dark as it is.",
      },
      {
        scale: 1 / scale,
        bindings,
        style: "grey",
        dimensions: false,
        idPrefix: `${prefix}-r${at}`,
      },
    );
    return [{ markup: { html: drawn.svg }, width: drawn.widthMm, height: drawn.heightMm }];
  });
  const names = listed(shown.map((v) => v.name));
  return {
    walls,
    words: `The ${names} ${shown.length > 1 ? "walls" : "wall"}`,
    height: Math.max(...walls.map((w) => w.height)),
  };
}
