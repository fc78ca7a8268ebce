import { ellipse, rect } from "../../drawing/paths.ts";
import type { Drawing } from "../../drawing/shape.ts";
import { printLength } from "../../units/printLength.ts";
import { face } from "../common/clothFace.ts";
import { skirtFront } from "../common/skirt/skirtFront.ts";
import { skirtWorkshop } from "../common/skirt/skirtViews.ts";
import type { DrawingContext, ItemDrawing } from "../itemDrawing.ts";
import type { TableSkirtMade } from "./pieces.ts";
import type { TableSkirtFields } from "./schema.ts";
import { tableSkirtSheet } from "./sheet.ts";

function elevation(
  fields: TableSkirtFields,
  made: TableSkirtMade,
  context: DrawingContext,
): Drawing | null {
  const of = made.plan;
  if (!of) return null;
  const [w, h] = [of.table.width.toMm(), of.skirt.drop.toMm()];
  // Round a curve more cloth is seen than its span: half the girth over the diameter.
  const curve = of.table.round ? Math.PI / 2 : 1;
  return {
    widthMm: w,
    heightMm: h,
    shapes: skirtFront({
      style: of.skirt.style,
      fullness: of.skirt.fullness.valueOf() * curve,
      width: w,
      drop: h,
      corners: !of.table.round,
    }),
    dimensions: [],
    title: fields["table-skirt"],
    description: `Table skirt, ${of.skirt.style}, ${printLength(of.skirt.drop, context.units)} finished drop.`,
  };
}

function plan(fields: TableSkirtFields, made: TableSkirtMade): Drawing | null {
  const of = made.plan;
  if (!of) return null;
  const out = of.skirt.style === "gathered" ? 26 : 10;
  const [w, d] = [of.table.width.toMm() + 2 * out, of.table.depth.toMm() + 2 * out];
  const [cx, cy] = [w / 2, d / 2];
  const outer = of.table.round ? ellipse(cx, cy, w / 2, d / 2) : rect(0, 0, w, d);
  const inner = of.table.round
    ? ellipse(cx, cy, w / 2 - out, d / 2 - out)
    : rect(out, out, w - 2 * out, d - 2 * out);
  return {
    widthMm: w,
    heightMm: d,
    shapes: [
      ...face(outer, { surface: "face", x: cx, y: cy }, { light: 0.04, dark: 0.12 }, "edge"),
      of.top
        ? { shape: "path", d: inner, fill: { surface: "top", x: cx, y: cy }, pen: "edge" }
        : { shape: "path", d: inner, fill: { tone: "wood" }, pen: "edge" },
    ],
    dimensions: [],
    title: fields["table-skirt"],
    description: `${fields["table-skirt"]} from above.`,
  };
}

function workshop(_: TableSkirtFields, made: TableSkirtMade, context: DrawingContext): Drawing[] {
  const of = made.plan;
  if (!of) return [];
  return skirtWorkshop(
    of.skirt,
    { width: of.table.width, word: "front", corners: !of.table.round },
    context,
  );
}

/** How a table skirt is drawn and described. */
export const tableSkirtDrawing: ItemDrawing<TableSkirtFields, TableSkirtMade> = {
  kind: "table-skirt",
  elevation,
  plan,
  workshop,
  sheet: tableSkirtSheet,
};
