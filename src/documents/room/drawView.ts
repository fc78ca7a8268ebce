import { line } from "../../drawing/paths.ts";
import { renderDrawing } from "../../drawing/renderDrawing.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import type { Wall } from "../../room/walls.ts";
import { type SheetPart, sheetPart } from "../board/sheetPart.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { itemPhrase, type Language } from "../words/phrases.ts";
import { svgNumber } from "../words/svgNumber.ts";
import { roomBindings } from "./bindings.ts";
import type { LeaderLabel } from "./leaderRoutes.ts";
import { type NamesOn, type PlacedLeaders, placeLeaders } from "./leaders.ts";
import { seenPieces } from "./seenPieces.ts";
import type { Extent } from "./sheetsOfViews.ts";
import type { StandingItem } from "./standingItem.ts";
import { dimensionsOf, widthsOf } from "./viewDimensions.ts";
import { groupedCushions, labelsOf, paperLabels } from "./viewLabels.ts";
import { wallFrame, wallShapes } from "./wallShapes.ts";

/** What is drawn from the front on a sheet: a wall, or the row of what stands free. */
export interface View extends Extent {
  readonly name: string;
  readonly wall: Wall | null;
  readonly items: readonly StandingItem[];
}

/** A name beside a drawing, at a place of the sheet in millimetres. */
export interface ViewLabel {
  readonly x: number;
  readonly y: number;
  /** The name on its lines. */
  readonly lines: readonly string[];
  readonly words: string;
}

/** A view as SVG, and the names that stand below it. */
export interface DrawnView {
  readonly svg: string;
  /** The lines from the things to their names, apart: without the names they say nothing. */
  readonly leaders: string;
  /** How far below its floor its names reach, millimetres of paper. */
  readonly reachMm: number;
  readonly labels: readonly ViewLabel[];
  /** The wall itself on the sheet, and all that belongs to it: measures, names and their lines. */
  readonly wall: SheetPart;
  readonly whole: SheetPart;
}

/** A name takes no more than this beside its line, and with its words so much below it. */
const LABEL_WIDTH_MM = 46;
const LABEL_HEIGHT_MM = 14;
/** Below a label where the drawing is moved about in a window. */
const LABEL_AIR_MM = 2;
/** The air that a dot needs on its cloth, on paper. */
const DOT_MM = 0.9;

/** One view at its place on the sheet, with its cloths, dimensions above and names below. */
export function drawnView(
  data: ProjectData,
  room: RoomData,
  view: View,
  scale: number,
  at: {
    readonly x: number;
    readonly foot: number;
    readonly right: number;
    readonly heights: boolean;
    /** How far below its floor there is paper for names. */
    readonly below: number;
  },
  book: PictureBook,
  prefix: string,
): DrawnView {
  const { units } = data.studio.fields;
  const language = data.studio.fields.language as Language;
  const { wall, widthMm, heightMm, items } = view;
  const floor: Shape = {
    shape: "path",
    d: line(-150, heightMm, widthMm + 150, heightMm),
    fill: null,
    pen: "cut",
  };
  const drawing: Drawing = {
    widthMm,
    heightMm,
    shapes: wall
      ? [
          ...wallShapes(wall, room, heightMm),
          ...items.flatMap((i) => i.shapes),
          wallFrame(widthMm, heightMm),
        ]
      : [...items.flatMap((i) => i.shapes), floor],
    dimensions: wall
      ? dimensionsOf(wall, heightMm, items, units, at.heights)
      : widthsOf(items, units),
    title: wall
      ? `The ${wall.name} wall of ${room.record.fields.room}`
      : `What stands free in ${room.record.fields.room}`,
    description:
      items.map((i) => `${itemPhrase(i.item, language)} ${i.item.record.title}`).join("; ") ||
      "an empty wall",
  };
  const rendered = renderDrawing(drawing, {
    scale: 1 / scale,
    bindings: roomBindings(data, room, scale, book),
    style: "cloth",
    dimensions: true,
    idPrefix: prefix,
  });
  const y = at.foot - heightMm / scale;
  const papers = wall ? paperLabels(data, room, wall, heightMm, items, language) : [];
  const labels = [...papers, ...labelsOf(data, room, items, language, DOT_MM * scale)];
  const pieces = seenPieces(items, wall, view, scale);
  const place = (all: readonly LeaderLabel[], namesOn: NamesOn) =>
    placeLeaders(all, { scale: 1 / scale, x: at.x, y }, at.foot + 6, at.right, pieces, namesOn);
  const reachOf = ({ labels: all }: PlacedLeaders): number =>
    Math.max(0, ...all.map((l) => l.y + l.heightMm - at.foot));
  const fits = (placed: PlacedLeaders): boolean =>
    !placed.crowded && reachOf(placed) <= at.below + 0.01;
  const leaders = bestLeaders(labels, groupedCushions(labels, items, language), place, fits);
  return {
    svg: nested(
      rendered.svg,
      at.x - rendered.insetMm.left,
      y - rendered.insetMm.top,
      rendered.widthMm,
      rendered.heightMm,
    ),
    leaders: leaders.svg,
    labels: leaders.labels,
    reachMm: reachOf(leaders),
    wall: sheetPart(at.x, y, at.x + widthMm / scale, at.foot),
    whole: sheetPart(
      at.x - rendered.insetMm.left,
      y - rendered.insetMm.top,
      Math.max(
        at.x + widthMm / scale + rendered.insetMm.right,
        ...leaders.labels.map((l) => l.x + LABEL_WIDTH_MM),
      ),
      Math.max(
        at.foot + 4,
        ...leaders.labels.map((l) => l.y + Math.max(LABEL_HEIGHT_MM, l.heightMm + LABEL_AIR_MM)),
      ),
    ),
  };
}

/** Names in full where there is room for them, else cut short; where even that is too narrow, cushions share one. */
function bestLeaders(
  each: readonly LeaderLabel[],
  grouped: readonly LeaderLabel[],
  place: (all: readonly LeaderLabel[], namesOn: NamesOn) => PlacedLeaders,
  fits: (placed: PlacedLeaders) => boolean,
): PlacedLeaders {
  const full = place(each, "two lines");
  if (fits(full)) return full;
  const short = place(each, "one line");
  if (!short.crowded) return short;
  const shared = place(grouped, "two lines");
  return fits(shared) ? shared : place(grouped, "one line");
}

const r = svgNumber;

/** The rendered drawing as an SVG that nests in a page-sized one, at a place on the sheet. */
function nested(svg: string, x: number, y: number, width: number, height: number): string {
  return svg
    .replace(
      / width="[^"]*mm" height="[^"]*mm"/,
      ` x="${r(x)}" y="${r(y)}" width="${r(width)}" height="${r(height)}"`,
    )
    .replace(' xmlns="http://www.w3.org/2000/svg"', "");
}
