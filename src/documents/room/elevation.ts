import type { Wall } from "../../room/walls.ts";
import type { Swatch } from "../../swatches/swatch.ts";
import type { BoardSheet } from "../board/sheetGeometry.ts";
import { around, type Glance, type SheetPart, viewOf } from "../board/sheetPart.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import { tileCellOf } from "../pictures/tileCell.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { lookUpsOf } from "../sheets/lookUps.ts";
import type { Markup } from "../words/marks.ts";
import { type Language, listed } from "../words/phrases.ts";
import { awaitedWords } from "./awaitedWords.ts";
import { type DrawnView, drawnView, type View, type ViewLabel } from "./drawView.ts";
import { factsOf } from "./itemView.ts";
import { partWords } from "./partWords.ts";
import { freeRow, itemsByWall } from "./placeItems.ts";
import { scaleBar, scaleWords } from "./scaleBar.ts";
import {
  acrossOf,
  BETWEEN_MM,
  COLUMN_AIR_MM,
  COLUMN_MM,
  overColumn,
  scaleOf,
  spaceOn,
  type TitlePlace,
  viewsBySheet,
} from "./sheetsOfViews.ts";
import type { StandingItem } from "./standingItem.ts";
import { heightsMm } from "./viewDimensions.ts";

export interface ElevationPage {
  readonly title: string;
  /** The scale in words, which is true on paper alone. */
  readonly drawnAt: string;
  readonly standfirst: string;
  /** Over the drawing, or in a column beside it. */
  readonly titlePlace: TitlePlace;
  readonly columnWidth: number;
  readonly svg: Markup;
  readonly labels: readonly ViewLabel[];
  /** For a narrow screen: the walls without words at a glance, and all of the drawing in a window that is moved sideways. */
  readonly glance: Glance;
  readonly pan: SheetPart;
}

/** True where a wall has cloth or paper to show, or two things at least: a single plain piece is on the plan. */
export function isShown(room: RoomData, wall: Wall, items: readonly StandingItem[]): boolean {
  const papered = room.plan.covers.some(
    (c) => c.what === "paper" && c.faces.some((f) => f.wall === wall.name),
  );
  const things = items.filter((i) => factsOf(i.item)?.shape !== "rug");
  const cloth = things.some((i) => i.item.kind.kind !== "object");
  return papered || cloth || things.length > 1;
}

/** Of the height that a drawing leaves, so much stands above it. */
const SINK = { above: 0.62, beside: 0.5 } as const;

/** Layers that no drawing shows. */
const UNSEEN: ReadonlySet<string> = new Set(["lining", "interlining", "wadding", "platform"]);

/** The cloths and papers that are seen on a sheet's drawings. */
function clothsOn(data: ProjectData, room: RoomData, views: readonly View[]): Swatch[] {
  const covers = room.plan.covers.filter((c) =>
    c.faces.some((f) => views.some((v) => v.name === f.wall)),
  );
  const items = [
    ...views.flatMap((v) => v.items.map((i) => i.item)),
    ...room.items.filter((i) => covers.some((c) => c.item === i.record.id)),
  ];
  return items
    .flatMap((item) => item.kind.cloths(item.record.fields as never))
    .filter((use) => !UNSEEN.has(use.surface))
    .flatMap((use) => data.swatches.get(use.cloth) ?? []);
}

/** What must be said of cloths that cannot be drawn as they are. */
function cautionsOf(data: ProjectData, room: RoomData, views: readonly View[]): string {
  const cloths = clothsOn(data, room, views);
  // Only laid cloth shows how far its photograph goes; the rest is a flat.
  const laid = cloths.filter((swatch) => tileCellOf(swatch) !== null);
  return partWords(laid) + awaitedWords(cloths, data.studio.fields.language as Language);
}

/** The views of a sheet, drawn to one scale on one floor line. */
function elevationPage(
  data: ProjectData,
  room: RoomData,
  views: readonly View[],
  sheet: BoardSheet,
  book: PictureBook,
  prefix: string,
): ElevationPage {
  const { units } = data.studio.fields;
  const alone = views.every((v) => v.wall === null);
  const found = scaleOf(views, sheet, units, alone);
  const scale = found?.scale ?? 60;
  const space = found?.space ?? spaceOn(sheet, "above");
  const paperHeight = Math.max(...views.map((v) => v.heightMm)) / scale;
  const over = overColumn(views, space);
  const spare = Math.max(0, space.across + over - acrossOf(views, scale));
  const first = space.top + paperHeight;
  // As far as the names reach the drawing is moved up: at its highest they have the most room.
  const below = sheet.height - sheet.margin.bottom - first;
  const drawAt = (foot: number): DrawnView[] => {
    let x = space.left - over + (space.title === "beside" ? spare : spare / 2);
    return views.map((view, at) => {
      const from = x + (view.beforeMm ?? 0);
      x = from + view.widthMm / scale + BETWEEN_MM;
      const isLast = at === views.length - 1;
      const right = isLast ? sheet.width - sheet.margin.right : x - 4;
      // Walls of one room are of one height: it stands once, beside the last.
      const heights = isLast || views[at + 1]?.wall === null;
      const place = { x: from, foot, right, heights, below };
      return drawnView(data, room, view, scale, place, book, `${prefix}${at}`);
    });
  };
  // How many lines of names there are is known once they have their places; then the whole stands on the foot of the sheet.
  const reach = Math.max(...drawAt(first).map((d) => d.reachMm));
  const down = below - reach;
  const drawn = drawAt(first + Math.max(0, down * SINK[space.title]));
  const ruler =
    space.title === "above"
      ? scaleBar(sheet.width - sheet.margin.right, sheet.margin.top + 14, scale, units, "end")
      : scaleBar(sheet.margin.left, sheet.height - sheet.margin.bottom - 7, scale, units, "start");
  const before = views.some((v) => v.items.some((i) => i.before));
  return {
    title: titleOf(views),
    drawnAt: `Drawn at ${scaleWords(scale, units)}.`,
    standfirst: `Each pattern is at the same scale as the furniture.${before ? " What stands before the wall is in its own place." : ""}${cautionsOf(data, room, views)}`,
    titlePlace: space.title,
    columnWidth: COLUMN_MM - COLUMN_AIR_MM - (over > spare ? over / 2 : 0),
    svg: {
      html: `<svg class="wall-picture" viewBox="0 0 ${sheet.width} ${sheet.height}" xmlns="http://www.w3.org/2000/svg"><g id="${prefix}-drawn">${drawn.map((d) => d.svg).join("")}</g>${drawn.map((d) => d.leaders).join("")}<g class="on-paper">${ruler}</g></svg>`,
    },
    labels: drawn.flatMap((d) => d.labels),
    glance: { id: `${prefix}-drawn`, view: viewOf(around(drawn.map((d) => d.wall))) },
    pan: around(drawn.map((d) => d.whole)),
  };
}

function titleOf(views: readonly View[]): string {
  const names = views.flatMap((v) => (v.wall ? [v.wall.name] : []));
  if (names.length === 0) return "Standing in the room";
  const walls = `The ${listed(names)} ${names.length > 1 ? "walls" : "wall"}`;
  return names.length < views.length ? `${walls}, and standing free` : walls;
}

/** The walls of a room that have something to show, in the room's order, and what is drawn before none of them; null without a height. */
export function viewsOfRoom(
  data: ProjectData,
  room: RoomData,
): { readonly walls: readonly View[]; readonly free: View | null } | null {
  const wallHeight = room.plan.height?.toMm();
  if (!wallHeight) return null;
  const context = lookUpsOf(data);
  const placed = itemsByWall(room, wallHeight, context);
  const walls = (room.plan.walls ?? []).flatMap((wall): View[] => {
    const items = placed.walls.get(wall.name) ?? [];
    if (!isShown(room, wall, items)) return [];
    const widthMm = wall.length.toMm();
    const beforeMm = heightsMm(items, wallHeight);
    return [{ name: wall.name, wall, widthMm, heightMm: wallHeight, beforeMm, items }];
  });
  const row = freeRow(room, context, placed.before);
  return { walls, free: row && { name: "", wall: null, ...row } };
}

/** The elevations of a room in the order of its walls, two on a sheet where both fit, and what stands free; none without a height. */
export function elevationPages(
  data: ProjectData,
  room: RoomData,
  sheet: BoardSheet,
  book: PictureBook,
  prefix: string,
): ElevationPage[] {
  const views = viewsOfRoom(data, room);
  if (!views) return [];
  return viewsBySheet(views.walls, views.free, sheet, data.studio.fields.units).map((both, at) =>
    elevationPage(data, room, both, sheet, book, `${prefix}-w${at}`),
  );
}
