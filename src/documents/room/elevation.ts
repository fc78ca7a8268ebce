import { line } from "../../drawing/paths.ts";
import { renderDrawing } from "../../drawing/renderDrawing.ts";
import type { Dimension, Drawing, Shape } from "../../drawing/shape.ts";
import type { Wall } from "../../room/walls.ts";
import { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import type { BoardSheet } from "../board/sheetGeometry.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { lookUpsOf } from "../sheets/lookUps.ts";
import type { Markup } from "../words/marks.ts";
import { capital, itemPhrase, type Language, listed, shortened } from "../words/phrases.ts";
import { roomBindings } from "./bindings.ts";
import { type LeaderLabel, placeLeaders } from "./leaders.ts";
import { freeRow, itemsAtWall, LYING, type StandingItem } from "./placeItems.ts";
import { BETWEEN_MM, scaleOf, spaceOn, viewsBySheet } from "./sheetsOfViews.ts";
import { wallFrame, wallShapes } from "./wallShapes.ts";

export interface ElevationPage {
  readonly title: string;
  readonly standfirst: string;
  readonly svg: Markup;
  readonly labels: readonly {
    readonly x: number;
    readonly y: number;
    readonly name: string;
    readonly words: string;
  }[];
}

const r = (n: number): string => (Math.round(n * 1000) / 1000).toString();

/** A computed measure of a drawing as an exact length: drawings are in whole tenths of a millimetre. */
function asLength(mm: number): Length {
  return Length.mm((Math.round(mm * 10) / 10).toString());
}

/** What lies on another item has no dimension of its own. */
const WORN: ReadonlySet<string> = new Set(["cushion", "tieback", "lampshade", ...LYING]);

/** Chains above the wall: what hangs and stands there from left to right, then the whole; its height at the right. */
function dimensionsOf(
  wall: Wall,
  height: number,
  items: readonly StandingItem[],
  units: UnitSystem,
): Dimension[] {
  const length = wall.length.toMm();
  const main = items.filter((i) => !WORN.has(i.item.kind.kind) && i.width > 200);
  const taken: { from: number; to: number }[] = [];
  for (const item of [...main].sort((a, b) => b.width - a.width)) {
    const box = {
      from: Math.max(0, item.x),
      to: Math.min(length, item.x + item.width),
    };
    if (taken.every((t) => box.to <= t.from + 1 || box.from >= t.to - 1)) taken.push(box);
  }
  taken.sort((a, b) => a.from - b.from);
  const print = (mm: number): string =>
    units === "inches"
      ? printLength(asLength(mm).nearest(Length.inches("0.5")), units)
      : printLength(asLength(mm).nearest(Length.mm(10)), units).replace(/\u202fcm$/, "");
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
function widthsOf(items: readonly StandingItem[], units: UnitSystem): Dimension[] {
  return items
    .filter((i) => i.item.kind.kind !== "cushion")
    .map((i) => ({
      axis: "horizontal",
      from: i.x,
      to: i.x + i.width,
      side: "top",
      level: 1,
      text:
        units === "inches"
          ? printLength(asLength(i.width).nearest(Length.inches("0.5")), units)
          : printLength(asLength(i.width).nearest(Length.mm(10)), units).replace(/\u202fcm$/, ""),
    }));
}

/** The rendered drawing as an SVG that nests in a page-sized one, at a place on the sheet. */
function nested(svg: string, x: number, y: number, width: number, height: number): string {
  return svg
    .replace(
      / width="[^"]*mm" height="[^"]*mm"/,
      ` x="${r(x)}" y="${r(y)}" width="${r(width)}" height="${r(height)}"`,
    )
    .replace(' xmlns="http://www.w3.org/2000/svg"', "");
}

function scaleWords(scale: number, units: UnitSystem): string {
  if (units === "inches" && scale % 12 === 0 && scale / 12 <= 4)
    return scale === 12
      ? "one inch to the foot"
      : `one inch to ${["", "one foot", "two feet", "three feet", "four feet"][scale / 12]}`;
  return PARTS[scale] ?? `one to ${scale}`;
}

const PARTS: Readonly<Record<number, string>> = {
  10: "one tenth",
  15: "one fifteenth",
  16: "one sixteenth",
  20: "one twentieth",
};

function bar(x: number, y: number, scale: number, units: UnitSystem): string {
  const step = units === "inches" ? 304.8 / scale : 500 / scale;
  const label =
    units === "inches"
      ? (n: number): string => `${n}${n === 4 ? "\u202fft" : ""}`
      : (n: number): string => `${n * 50}${n === 4 ? "\u202fcm" : ""}`;
  let out = "";
  for (let i = 0; i < 4; i++)
    out += `<rect x="${r(x + i * step)}" y="${r(y)}" width="${r(step)}" height="1.3" fill="${i % 2 === 0 ? "#23282e" : "#fff"}" stroke="#23282e" stroke-width=".18"/>`;
  for (const n of [0, 1, 2, 3, 4])
    out += `<text class="drawn" x="${r(x + n * step)}" y="${r(y + 5.4)}" text-anchor="${n === 4 ? "end" : n === 0 ? "start" : "middle"}" font-size="3.5">${label(n)}</text>`;
  return out;
}

/** A name's letters on one line below a drawing; the board has it in full. */
const MOST_LETTERS = 26;

function labelsOf(
  data: ProjectData,
  items: readonly StandingItem[],
  language: Language,
): LeaderLabel[] {
  const seen = new Set<string>();
  return items.flatMap((standing): LeaderLabel[] => {
    const { item } = standing;
    if (seen.has(item.record.id)) return [];
    seen.add(item.record.id);
    const uses = item.kind
      .cloths(item.record.fields as never)
      .filter((u) => ["face", "cover", "paper", "panel"].includes(u.surface));
    const names = [
      ...new Set(
        uses
          .map((u) => data.swatches.get(u.cloth)?.name)
          .filter((n): n is string => n !== undefined),
      ),
    ];
    const object =
      item.kind.kind === "object"
        ? data.objects.get((item.record.fields as { object: string }).object)?.name
        : undefined;
    const { x, y, width, height } = standing;
    // What is clothed shows only above its cloth: a bed its headboard, a table nothing.
    const cloths = items.filter((i) => i.host === item);
    const bare = Math.min(...cloths.map((i) => i.y)) - y;
    if (object && cloths.length > 0)
      return bare < 60
        ? []
        : [
            {
              id: item.record.id,
              name: object,
              words: "",
              left: x,
              right: x + width * 0.16,
              top: y,
              foot: y + bare * 0.4,
            },
          ];
    // On drawn-back curtains the dot stands on the left one; on a blind on what hangs below its head.
    const curtains = item.kind.kind === "curtains";
    const left = curtains ? x + width * 0.05 : x;
    const runner = item.kind.kind === "runner";
    // A runner shows at its ends alone.
    const right = curtains ? x + width * 0.12 : runner ? x + 24 : x + width;
    // A chair's back is all cloth, where its foot may be open; a cushion on it would hide the back.
    const chair =
      item.kind.kind === "armchair" &&
      !items.some((i) => i !== standing && i.y < y + height * 0.5 && i.front > standing.front);
    const foot =
      chair || ["blind", "pelmet", "valance"].includes(item.kind.kind)
        ? y + height * 0.45
        : y + height;
    return [
      {
        id: item.record.id,
        name: shortened(object ?? listed(names), MOST_LETTERS),
        words: object ? "" : itemPhrase(item, language),
        left,
        right,
        top: y,
        foot,
      },
    ];
  });
}

/** Where there are too many cushions to be named one by one, all of them share one label. */
function groupedCushions(
  labels: readonly LeaderLabel[],
  items: readonly StandingItem[],
  language: Language,
): LeaderLabel[] {
  const lying = items.filter((i) => i.item.kind.kind === "cushion");
  const isLying = (l: LeaderLabel): boolean => lying.some((i) => i.item.record.id === l.id);
  const theirs = labels.filter(isLying);
  const one = lying[0];
  if (!one || theirs.length < 3) return [...labels];
  const names = [...new Set(theirs.map((l) => l.name))];
  return [
    ...labels.filter((l) => !isLying(l)),
    {
      id: one.item.record.id,
      name: capital(one.item.kind.words[language].many),
      words: `in ${listed(names)}`,
      left: Math.min(...theirs.map((l) => l.left)),
      right: Math.max(...theirs.map((l) => l.right)),
      top: Math.min(...theirs.map((l) => l.top)),
      foot: Math.max(...theirs.map((l) => l.foot)),
    },
  ];
}

/** Papers on a wall are named too, where the paper is not covered: just above the skirting at its left part. */
function paperLabels(
  data: ProjectData,
  room: RoomData,
  wall: Wall,
  height: number,
  language: Language,
): LeaderLabel[] {
  return room.plan.covers.flatMap((cover): LeaderLabel[] => {
    const face =
      cover.what === "paper"
        ? cover.faces.find(
            (f) => f.wall === wall.name && (f.part === "wall" || f.part === "breast"),
          )
        : undefined;
    const item = room.items.find((i) => i.record.id === cover.item);
    const cloth = (item?.record.fields as { cloth?: string } | undefined)?.cloth;
    if (!face || !item || !cloth) return [];
    const x = face.fromLeft.toMm();
    return [
      {
        id: cover.item,
        name: shortened(data.swatches.get(cloth)?.name ?? "", MOST_LETTERS),
        words: itemPhrase(item, language),
        left: x,
        right: x + Math.min(400, face.width.toMm() * 0.25),
        top: height * 0.4,
        foot: height * 0.8,
      },
    ];
  });
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

/** What is drawn from the front on a sheet: a wall, or the row of what stands free. */
interface View {
  readonly name: string;
  readonly wall: Wall | null;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly items: readonly StandingItem[];
}

interface DrawnView {
  readonly svg: string;
  readonly labels: ElevationPage["labels"];
}

/** One view at its place on the sheet, with its cloths, dimensions above and names below. */
function drawnView(
  data: ProjectData,
  room: RoomData,
  view: View,
  scale: number,
  at: { readonly x: number; readonly foot: number; readonly right: number },
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
    dimensions: wall ? dimensionsOf(wall, heightMm, items, units) : widthsOf(items, units),
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
  const papers = wall ? paperLabels(data, room, wall, heightMm, language) : [];
  const labels = [...papers, ...labelsOf(data, items, language)];
  const place = (all: readonly LeaderLabel[]) =>
    placeLeaders(all, 1 / scale, at.x, y, at.foot + 6, at.right);
  const each = place(labels);
  const leaders = each.crowded ? place(groupedCushions(labels, items, language)) : each;
  return {
    svg:
      nested(
        rendered.svg,
        at.x - rendered.insetMm.left,
        y - rendered.insetMm.top,
        rendered.widthMm,
        rendered.heightMm,
      ) + leaders.svg,
    labels: leaders.labels,
  };
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
  const scaleBar = bar(
    sheet.width - sheet.margin.right - (units === "inches" ? 4 * 304.8 : 2000) / scale,
    sheet.margin.top + 14,
    scale,
    units,
  );
  return {
    title: titleOf(views),
    standfirst: `Drawn at ${scaleWords(scale, units)}. Each pattern is at the same scale as the furniture.`,
    svg: {
      html: `<svg class="wall-picture" viewBox="0 0 ${sheet.width} ${sheet.height}" xmlns="http://www.w3.org/2000/svg">${drawn.map((d) => d.svg).join("")}${scaleBar}</svg>`,
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
