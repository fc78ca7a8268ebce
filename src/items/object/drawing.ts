import { line, rect } from "../../drawing/paths.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { stroke } from "../common/clothFace.ts";
import type { DrawingContext, ItemDrawing } from "../itemDrawing.ts";
import type { ObjectFacts } from "../itemKind.ts";
import { objectFitting } from "./fitting.ts";
import { drawBed } from "./look/bed.ts";
import { drawCase } from "./look/case.ts";
import { drawFromAbove } from "./look/fromAbove.ts";
import { drawLamp } from "./look/lamp.ts";
import type { Draw, Look } from "./look/look.ts";
import { drawMirror, drawPicture } from "./look/picture.ts";
import { drawRugEdge, RUG_MM } from "./look/rug.ts";
import { drawSeat } from "./look/seat.ts";
import { drawStove } from "./look/stove.ts";
import {
  drawBox,
  drawChair,
  drawChairBack,
  drawChairSide,
  drawChest,
  drawTable,
} from "./look/wood.ts";
import type { ObjectMade } from "./pieces.ts";
import type { ObjectItemFields } from "./schema.ts";
import { objectSheet } from "./sheet.ts";

const FRONTS: Readonly<Record<ObjectFacts["shape"], Draw>> = {
  rug: drawRugEdge,
  picture: drawPicture,
  mirror: drawMirror,
  table: drawTable,
  chest: drawChest,
  lamp: drawLamp,
  stove: drawStove,
  chair: drawChair,
  seat: drawSeat,
  box: drawBox,
  bed: drawBed,
};

function lookOf(facts: ObjectFacts): Look | null {
  const rug = facts.shape === "rug";
  if (facts.width === null || (rug ? facts.depth : facts.height) === null) return null;
  return {
    width: facts.width.toMm(),
    depth: facts.depth?.toMm() ?? 0,
    height: rug ? RUG_MM : (facts.height?.toMm() ?? 0),
    colours: facts.colours,
    hasPhoto: facts.hasPhoto,
    topMm: facts.mattress?.[2].toMm() ?? null,
  };
}

function elevation(_: ObjectItemFields, made: ObjectMade, context: DrawingContext): Drawing | null {
  const facts = made.facts;
  const look = facts ? lookOf(facts) : null;
  if (!facts || !look) return null;
  const sizes = [facts.width, facts.shape === "rug" ? facts.depth : facts.height].flatMap((l) =>
    l ? [l] : [],
  );
  return {
    widthMm: look.width,
    heightMm: look.height,
    shapes: FRONTS[facts.shape](context.look?.bare ? { ...look, bare: true } : look),
    dimensions: [],
    title: facts.name,
    description: `${facts.name}, ${printSize(sizes, context.units)}${facts.shape === "rug" ? ", from its edge" : ", from the front"}.`,
  };
}

/** What looks alike from all sides is seen from its end: as its front, its depth for its width. */
const ALIKE: ReadonlySet<ObjectFacts["shape"]> = new Set([
  "table",
  "chest",
  "lamp",
  "stove",
  "box",
]);

/** What stands free from its end or from behind, where neither its doors nor its drawers are seen. */
function aside(
  shape: ObjectFacts["shape"],
  look: Look,
  from: "end" | "back",
  context: DrawingContext,
): Shape[] {
  if (shape === "chest" || shape === "box") return drawCase(look, from);
  return FRONTS[shape]({ ...look, turned: true, ...(context.look?.bare ? { bare: true } : {}) });
}

function side(_: ObjectItemFields, made: ObjectMade, context: DrawingContext): Drawing | null {
  const facts = made.facts;
  const look = facts ? lookOf(facts) : null;
  const chair = facts?.shape === "chair";
  if (!facts || !look || look.depth === 0 || !(chair || ALIKE.has(facts.shape))) return null;
  const turned = { ...look, width: look.depth, depth: look.width, hasPhoto: false };
  return {
    widthMm: turned.width,
    heightMm: turned.height,
    shapes: chair ? drawChairSide(turned) : aside(facts.shape, turned, "end", context),
    dimensions: [],
    title: facts.name,
    description: `${facts.name} from ${chair ? "its left side" : "its end"}.`,
  };
}

function back(fields: ObjectItemFields, made: ObjectMade, context: DrawingContext): Drawing | null {
  const shape = made.facts?.shape;
  const front = elevation(fields, made, context);
  const look = made.facts ? lookOf(made.facts) : null;
  if (shape === "chair" && front && look)
    return {
      ...front,
      shapes: drawChairBack(look),
      description: `${front.title} from behind.`,
    };
  return front && look && shape && ALIKE.has(shape)
    ? { ...front, shapes: aside(shape, { ...look, hasPhoto: false }, "back", context) }
    : null;
}

function plan(_: ObjectItemFields, made: ObjectMade): Drawing | null {
  const facts = made.facts;
  const look = facts ? lookOf(facts) : null;
  if (!facts || !look || look.depth === 0 || made.hangs) return null;
  return {
    widthMm: look.width,
    heightMm: look.depth,
    shapes: drawFromAbove(facts, look),
    dimensions: [],
    title: facts.name,
    description: `${facts.name} from above.`,
  };
}

/** For the fitter: what hangs, with its height above the floor. Nothing for what only stands. */
function workshop(fields: ObjectItemFields, made: ObjectMade, context: DrawingContext): Drawing[] {
  const facts = made.facts;
  if (!made.hangs || !facts?.width || !facts.height) return [];
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  const at = fields.at;
  const foot = typeof at === "object" && "height" in at ? (at.height ?? null) : null;
  const [w, h] = [facts.width.toMm(), facts.height.toMm()];
  const under = foot?.toMm() ?? 300;
  const frame = Math.min(Math.max(Math.min(w, h) * 0.075, 12), 60);
  const middle = foot?.plus(facts.height.dividedBy(2));
  return [
    {
      widthMm: w,
      heightMm: h + under,
      title: facts.name,
      description: `${facts.name}, ${printSize([facts.width, facts.height], context.units)}${foot ? `, its foot ${p(foot)} above the floor` : ""}.`,
      shapes: [
        { shape: "path", d: rect(0, 0, w, h), fill: { tone: "paper" }, pen: "outline" },
        stroke(rect(frame, frame, w - 2 * frame, h - 2 * frame), "edge"),
        stroke(line(-40, h / 2, w + 40, h / 2), "centre"),
        ...(foot ? [stroke(line(-120, h + under, w + 120, h + under), "cut")] : []),
        ...(facts.weight
          ? [
              {
                shape: "words",
                x: w / 2,
                y: h / 2,
                dyPaper: -3,
                text: facts.weight,
                anchor: "middle",
                weight: "bold",
              } as const,
            ]
          : []),
      ],
      dimensions: [
        { axis: "horizontal", from: 0, to: w, side: "top", level: 1, text: p(facts.width) },
        { axis: "vertical", from: 0, to: h, side: "right", level: 1, text: p(facts.height) },
        ...(foot && middle
          ? [
              {
                axis: "vertical",
                from: h,
                to: h + under,
                side: "left",
                level: 1,
                text: `${p(foot)} to its foot`,
              } as const,
              {
                axis: "vertical",
                from: h / 2,
                to: h + under,
                side: "left",
                level: 2,
                text: `${p(middle)} to its middle`,
              } as const,
            ]
          : []),
      ],
    },
  ];
}

export const objectDrawing: ItemDrawing<ObjectItemFields, ObjectMade> = {
  kind: "object",
  elevation,
  side,
  back,
  plan,
  workshop,
  sheet: objectSheet,
  fitting: objectFitting,
};
