import { type Binding, flatOf } from "../../drawing/binding.ts";
import { renderDrawing } from "../../drawing/renderDrawing.ts";
import type { Shape } from "../../drawing/shape.ts";
import { toneColour } from "../../drawing/tones.ts";
import { USUAL_SCALES } from "../../drawing/usualScales.ts";
import { capital } from "../../units/capital.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import type { BoardSheet } from "../board/sheetGeometry.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { lookUpsOf } from "../sheets/lookUps.ts";
import type { Markup } from "../words/marks.ts";
import { svgNumber } from "../words/svgNumber.ts";
import { roomBindings } from "./bindings.ts";
import { filledParts, holds } from "./filledParts.ts";
import { floorPlanShapes } from "./floorPlan.ts";
import { type Box, drawPlanNames, type GroundAt, planNames } from "./planNames.ts";

/** The room from above at its place on the sheet. */
export interface WherePlan {
  readonly markup: Markup;
  readonly scale: number;
  /** True where chairs are drawn about their table though the place of only one is written. */
  readonly spread: boolean;
  /** Its right edge and its foot, millimetres of the sheet. */
  readonly right: number;
  readonly foot: number;
}

/** A wall's thickness at each side, and a pen. */
const WALLS_MM = 220;
const PEN_MM = 1;
const r = svgNumber;

/** Furniture in plan is filled with its cloth's average, never with pattern: at this scale a pattern is only noise. */
function flatBindings(bindings: (surface: string) => Binding): (surface: string) => Binding {
  return (surface) => {
    const b = bindings(surface);
    if (b === null || "hex" in b) return b;
    return { hex: b.averageHex };
  };
}

/** Points tried under a name. */
const TRIED = [0.04, 0.27, 0.5, 0.73, 0.96];

/** What colour is drawn under a box of the plan: the floor is paper. */
function groundOf(shapes: readonly Shape[], bindings: (surface: string) => Binding): GroundAt {
  const parts = filledParts(shapes);
  const colourAt = (x: number, y: number): string | null => {
    const top = parts.findLast((f) => holds(f, [x, y]));
    if (!top) return "#ffffff";
    const { fill, surface } = top;
    if (fill === null) return surface === null ? null : flatOf(bindings(surface));
    if ("hatch" in fill) return null;
    if ("hex" in fill) return fill.hex;
    return "tone" in fill ? toneColour(fill.tone) : flatOf(bindings(fill.surface));
  };
  return ({ left, top, right, foot }) => {
    const seen = new Set<string | null>();
    for (const a of TRIED)
      for (const b of TRIED) seen.add(colourAt(left + (right - left) * a, top + (foot - top) * b));
    const [one] = seen;
    return seen.size === 1 ? (one ?? null) : null;
  };
}

/** Where the plan may stand on the sheet, and how much height the words below it want where it is so wide. */
export interface PlanSpace {
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly wordsMm: (planWidth: number) => number;
}

/** A plan is drawn smaller by so much at most to leave the words their room: one usual scale. */
const STEP = 1.34;

/** What the plan takes on paper, its walls and a pen more. */
const outer = (mm: number, scale: number): number => (mm + WALLS_MM) / scale + 2 * PEN_MM;

/** The largest usual scale that fits; one smaller where that leaves the words below it what they want. */
function scaleOf(plan: { width: number; height: number }, space: PlanSpace, units: UnitSystem) {
  const usual = USUAL_SCALES[units];
  const left = (s: number) => space.height - outer(plan.height, s);
  const fitting = usual.filter((s) => outer(plan.width, s) <= space.width && left(s) >= 0);
  const largest = fitting[0] ?? (usual.at(-1) as number);
  const withWords = fitting.find((s) => left(s) >= space.wordsMm(outer(plan.width, s)));
  return withWords !== undefined && withWords <= largest * STEP ? withWords : largest;
}

/** The plan at a usual scale in its space on the sheet; null without walls, and where nothing stands in them. */
export function wherePlanOf(
  data: ProjectData,
  room: RoomData,
  sheet: BoardSheet,
  book: PictureBook,
  prefix: string,
  at: PlanSpace,
): WherePlan | null {
  const plan = floorPlanShapes(room, lookUpsOf(data));
  if (!plan || plan.isBare) return null;
  const scale = scaleOf(plan, at, data.studio.fields.units);
  const bindings = flatBindings(roomBindings(data, room, scale, book));
  const rendered = renderDrawing(
    {
      widthMm: plan.width,
      heightMm: plan.height,
      shapes: plan.shapes,
      dimensions: [],
      title: `${capital(room.record.fields.room)} from above`,
      description: room.items.map((i) => i.record.title).join("; "),
    },
    { scale: 1 / scale, bindings, style: "cloth", dimensions: false, idPrefix: `${prefix}-plan` },
  );
  const edge = WALLS_MM / 2 / scale + PEN_MM;
  const [width, height] = [outer(plan.width, scale), outer(plan.height, scale)];
  const x = sheet.margin.left + edge - PEN_MM;
  const y = at.y + edge - PEN_MM;
  const inner = rendered.svg
    .replace(
      / width="[^"]*mm" height="[^"]*mm" viewBox="[^"]*"/,
      ` x="${r(x - edge)}" y="${r(y - edge)}" width="${r(width)}" height="${r(height)}" viewBox="${r(-edge)} ${r(-edge)} ${r(width)} ${r(height)}"`,
    )
    .replace(' xmlns="http://www.w3.org/2000/svg"', "");
  const onPaper = <B extends Box>(box: B): B => ({
    ...box,
    left: x + box.left / scale,
    right: x + box.right / scale,
    top: y + box.top / scale,
    foot: y + box.foot / scale,
  });
  const inRoom = (box: Box): Box => ({
    left: (box.left - x) * scale,
    right: (box.right - x) * scale,
    top: (box.top - y) * scale,
    foot: (box.foot - y) * scale,
  });
  const ground = groundOf(plan.shapes, bindings);
  const names = planNames(
    plan.pieces.map((piece) =>
      onPaper({ ...piece, title: data.objects.get(piece.object ?? "")?.name ?? piece.title }),
    ),
    onPaper({ left: 0, top: 0, right: plan.width, foot: plan.height }),
    plan.solid.map(onPaper),
    (box) => ground(inRoom(box)),
  );
  return {
    markup: {
      html: `<svg class="wall-picture" viewBox="0 0 ${sheet.width} ${sheet.height}" xmlns="http://www.w3.org/2000/svg">${inner}${drawPlanNames(names)}</svg>`,
    },
    scale,
    spread: plan.spread,
    right: sheet.margin.left + width,
    foot: at.y + height,
  };
}
