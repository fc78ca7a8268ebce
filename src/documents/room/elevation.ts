import type { Wall } from "../../room/walls.ts";
import type { BoardSheet } from "../board/sheetGeometry.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { lookUpsOf } from "../sheets/lookUps.ts";
import type { Markup } from "../words/marks.ts";
import { listed } from "../words/phrases.ts";
import { drawnView, type View, type ViewLabel } from "./drawView.ts";
import { freeRow, itemsAtWall } from "./placeItems.ts";
import { scaleBar, scaleWords } from "./scaleBar.ts";
import { BETWEEN_MM, scaleOf, spaceOn, viewsBySheet } from "./sheetsOfViews.ts";

export interface ElevationPage {
  readonly title: string;
  readonly standfirst: string;
  readonly svg: Markup;
  readonly labels: readonly ViewLabel[];
}

/** True where a wall has cloth or paper to show: a piece that stands there alone is on the plan. */
export function isShown(room: RoomData, wall: Wall): boolean {
  const hung = room.items.some((item) => {
    const placed = room.plan.placements.get(item.record.id);
    const lying = room.items.some(
      (other) => room.plan.placements.get(other.record.id)?.on === item.record.id,
    );
    return placed?.wallBox?.wall === wall.name && (item.kind.kind !== "object" || lying);
  });
  const papered = room.plan.covers.some(
    (c) => c.what === "paper" && c.faces.some((f) => f.wall === wall.name),
  );
  return hung || papered;
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
  const { top, down } = spaceOn(sheet);
  const scale = scaleOf(views, sheet, units) ?? 60;
  const paperHeight = Math.max(...views.map((v) => v.heightMm)) / scale;
  const foot = top + paperHeight + Math.max(0, (down - paperHeight) * 0.6);
  const whole =
    views.reduce((sum, v) => sum + v.widthMm / scale, 0) + BETWEEN_MM * (views.length - 1);
  let x = (sheet.width - whole) / 2;
  const drawn = views.map((view, at) => {
    const from = x;
    x += view.widthMm / scale + BETWEEN_MM;
    const right = at < views.length - 1 ? x - 6 : sheet.width - sheet.margin.right;
    return drawnView(data, room, view, scale, { x: from, foot, right }, book, `${prefix}${at}`);
  });
  const ruler = scaleBar(
    sheet.width - sheet.margin.right - (units === "inches" ? 4 * 304.8 : 2000) / scale,
    sheet.margin.top + 14,
    scale,
    units,
  );
  return {
    title: titleOf(views),
    standfirst: `Drawn at ${scaleWords(scale, units)}. Each pattern is at the same scale as the furniture.`,
    svg: {
      html: `<svg class="wall-picture" viewBox="0 0 ${sheet.width} ${sheet.height}" xmlns="http://www.w3.org/2000/svg">${drawn.map((d) => d.svg).join("")}${ruler}</svg>`,
    },
    labels: drawn.flatMap((d) => d.labels),
  };
}

function titleOf(views: readonly View[]): string {
  const names = views.flatMap((v) => (v.wall ? [v.wall.name] : []));
  if (names.length === 0) return "Standing in the room";
  const walls = `The ${listed(names)} ${names.length > 1 ? "walls" : "wall"}`;
  return names.length < views.length ? `${walls}, and standing free` : walls;
}

/** The elevations of a room in the order of its walls, two on a sheet where both fit, and what stands free; none without a height. */
export function elevationPages(
  data: ProjectData,
  room: RoomData,
  sheet: BoardSheet,
  book: PictureBook,
  prefix: string,
): ElevationPage[] {
  const wallHeight = room.plan.height?.toMm();
  if (!wallHeight) return [];
  const context = lookUpsOf(data);
  const { units } = data.studio.fields;
  const walls = (room.plan.walls ?? [])
    .filter((w) => isShown(room, w))
    .map(
      (wall): View => ({
        name: wall.name,
        wall,
        widthMm: wall.length.toMm(),
        heightMm: wallHeight,
        items: itemsAtWall(room, wall.name, wallHeight, context),
      }),
    );
  const row = freeRow(room, context);
  const free: View | null = row && { name: "", wall: null, ...row };
  return viewsBySheet(walls, free, sheet, units).map((views, at) =>
    elevationPage(data, room, views, sheet, book, `${prefix}-w${at}`),
  );
}
