import { ellipse, roundedRect } from "../../drawing/paths.ts";
import type { Drawing } from "../../drawing/shape.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { face } from "../common/clothFace.ts";
import { joinsOf } from "../common/flat/flatPanel.ts";
import { flatView } from "../common/flat/flatView.ts";
import { drapedFront } from "../common/skirt/drapedFront.ts";
import type { DrawingContext, ItemDrawing } from "../itemDrawing.ts";
import type { TableclothMade } from "./pieces.ts";
import type { TableclothFields } from "./schema.ts";
import { tableclothSheet } from "./sheet.ts";

function elevation(
  fields: TableclothFields,
  made: TableclothMade,
  context: DrawingContext,
): Drawing | null {
  const of = made.plan;
  if (!of) return null;
  const cut = of.cover.face;
  const half = of.finished[0].dividedBy(2);
  const joins = cut && !cut.sideways ? joinsOf(cut, of.cover.turning) : [];
  return drapedFront({
    span: of.table.width.toMm(),
    drop: Math.min(of.drop.toMm(), of.table.height.toMm()),
    surface: "face",
    middleAbove: of.table.depth.dividedBy(2).toMm(),
    round: of.table.round,
    crown: 6,
    joins: joins.map((at) => at.minus(half).toMm()),
    title: fields.tablecloth,
    description: `${of.table.oval ? "Oval" : of.table.round ? "Round" : "Rectangular"} tablecloth ${printSize(of.finished, context.units)}, hanging ${printLength(of.drop, context.units)}.`,
  });
}

function plan(fields: TableclothFields, made: TableclothMade): Drawing | null {
  const of = made.plan;
  if (!of) return null;
  const out = 30;
  const [w, d] = [of.table.width.toMm() + 2 * out, of.table.depth.toMm() + 2 * out];
  const fill = { surface: "face", x: w / 2, y: d / 2 };
  const outer = of.table.round ? ellipse(w / 2, d / 2, w / 2, d / 2) : roundedRect(0, 0, w, d, 40);
  const top = of.table.round
    ? ellipse(w / 2, d / 2, w / 2 - out, d / 2 - out)
    : roundedRect(out, out, w - 2 * out, d - 2 * out, 4);
  return {
    widthMm: w,
    heightMm: d,
    shapes: [
      ...face(outer, fill, { light: 0.04, dark: 0.12 }, "edge"),
      { shape: "path", d: top, fill: null, pen: "fold" },
    ],
    dimensions: [],
    title: fields.tablecloth,
    description: `${fields.tablecloth} from above.`,
  };
}

function workshop(
  fields: TableclothFields,
  made: TableclothMade,
  context: DrawingContext,
): Drawing[] {
  const of = made.plan;
  if (!of) return [];
  return [
    flatView(
      {
        cover: of.cover,
        finished: of.finished,
        round: of.table.round,
        under: {
          word: "table",
          left: of.drop,
          top: of.drop,
          width: of.table.width,
          height: of.table.depth,
        },
        parts: [
          { length: of.drop, word: "drop" },
          { length: of.table.depth, word: "table" },
          { length: of.drop, word: "drop" },
        ],
        split: null,
        title: of.table.round
          ? `Laid out; the ${of.table.oval ? "oval" : "circle"} is cut after joining`
          : "Laid out",
        description: `${fields.tablecloth}, ${printSize(of.finished, context.units)} finished.`,
      },
      context,
    ),
  ];
}

/** How a tablecloth is drawn and described. */
export const tableclothDrawing: ItemDrawing<TableclothFields, TableclothMade> = {
  kind: "tablecloth",
  elevation,
  plan,
  workshop,
  sheet: tableclothSheet,
};
