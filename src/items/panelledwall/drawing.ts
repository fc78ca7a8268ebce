import { line, rect } from "../../drawing/paths.ts";
import type { Dimension, Drawing, PathData, Shape } from "../../drawing/shape.ts";
import { printLength } from "../../units/printLength.ts";
import { stroke } from "../common/clothFace.ts";
import type { DrawingContext, ItemDrawing } from "../itemDrawing.ts";
import type { Panel } from "./layout.ts";
import type { PanelledWallMade } from "./pieces.ts";
import type { PanelledWallFields } from "./schema.ts";
import { panelledWallSheet } from "./sheet.ts";

interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

function boxOf(panel: Panel): Box {
  return {
    x: panel.left.toMm(),
    y: panel.top.toMm(),
    w: panel.width.toMm(),
    h: panel.height.toMm(),
  };
}

/** A rectangle less the one inside it, left open by running the inner one the other way. */
function frameOf({ x, y, w, h }: Box, m: number): PathData {
  const f = (n: number) => n.toFixed(2);
  return `${rect(x, y, w, h)}M${f(x + m)} ${f(y + m)}V${f(y + h - m)}H${f(x + w - m)}V${f(y + m)}Z`;
}

function mitres({ x, y, w, h }: Box, m: number): PathData {
  return [
    line(x, y, x + m, y + m),
    line(x + w, y, x + w - m, y + m),
    line(x, y + h, x + m, y + h - m),
    line(x + w, y + h, x + w - m, y + h - m),
  ].join("");
}

function elevation(fields: PanelledWallFields, made: PanelledWallMade): Drawing | null {
  if (made.panels.length === 0) return null;
  const m = made.moulding.toMm();
  return {
    widthMm: made.width.toMm(),
    heightMm: made.height.toMm(),
    shapes: made.panels.flatMap((panel): Shape[] => {
      const b = boxOf(panel);
      const inner = { x: b.x + m, y: b.y + m, w: b.w - 2 * m, h: b.h - 2 * m };
      const d = rect(inner.x, inner.y, inner.w, inner.h);
      return [
        ...(fields.cloth
          ? [
              {
                shape: "path",
                d,
                fill: { surface: "panel", x: b.x + b.w / 2, y: b.y + b.h / 2 },
                pen: null,
              } as const,
              { shape: "shading", d, light: 0.06, dark: 0.08, direction: "down" } as const,
            ]
          : [{ shape: "shading", d, light: 0.05, dark: 0.05, direction: "down" } as const]),
        ...(m > 0
          ? [
              ...(fields.cloth
                ? [{ shape: "path", d: frameOf(b, m), fill: { tone: "white" }, pen: null } as const]
                : [
                    {
                      shape: "shading",
                      d: frameOf(b, m),
                      light: 0.24,
                      dark: 0.16,
                      direction: "down",
                    } as const,
                  ]),
              stroke(rect(b.x, b.y, b.w, b.h), "dimension"),
              stroke(rect(inner.x, inner.y, inner.w, inner.h), "fold"),
              stroke(mitres(b, m), "fold"),
            ]
          : [stroke(rect(b.x, b.y, b.w, b.h), "edge")]),
      ];
    }),
    dimensions: [],
    title: fields["panelled-wall"],
    description: `${made.panels.length} panels${fields.cloth ? " with cloth in them" : ""}.`,
  };
}

/** The wall set out: each panel with its number, moulding, joins and motif; margins and panels in one chain, heights in another. */
function workshop(
  fields: PanelledWallFields,
  made: PanelledWallMade,
  context: DrawingContext,
): Drawing[] {
  if (made.panels.length === 0) return [];
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  const [w, h] = [made.width.toMm(), made.height.toMm()];
  const m = made.moulding.toMm();
  const shapes: Shape[] = [
    { shape: "path", d: rect(0, 0, w, h), fill: { tone: "paper" }, pen: "outline" },
  ];
  for (const panel of made.panels) {
    const b = boxOf(panel);
    shapes.push(stroke(rect(b.x, b.y, b.w, b.h), "edge"));
    if (m > 0) shapes.push(stroke(rect(b.x + m, b.y + m, b.w - 2 * m, b.h - 2 * m), "dimension"));
    const cloth = made.cloths.find((c) => c.row === panel.row);
    if (cloth?.parts) {
      const total = cloth.parts.reduce((n, x) => n + x.width.toMm(), 0);
      const turning = (total - cloth.cut[0].toMm()) / 2 / (cloth.parts.length - 1);
      let at = b.x + b.w / 2 - cloth.cut[0].toMm() / 2;
      for (const [n, part] of cloth.parts.slice(0, -1).entries()) {
        at += part.width.toMm() - turning * (n === 0 ? 1 : 2);
        if (at > b.x + m && at < b.x + b.w - m)
          shapes.push(stroke(line(at, b.y + m, at, b.y + b.h - m), "seam"));
      }
    }
    if (made.shows === "motif")
      shapes.push({ shape: "sign", sign: "lozenge", x: b.x + b.w / 2, y: b.y + b.h / 2 });
    shapes.push({
      shape: "words",
      x: b.x + m,
      y: b.y + m,
      text: String(panel.number),
      anchor: "start",
      weight: "bold",
      dxPaper: 1.2,
      dyPaper: 4,
    });
  }
  for (const o of made.openings) {
    const [x, y] = [o.left.toMm(), o.top.toMm()];
    shapes.push({
      shape: "path",
      d: rect(x, y, o.width.toMm(), o.height.toMm()),
      fill: { tone: "paper" },
      pen: "outline",
    });
    shapes.push({
      shape: "words",
      x: x + o.width.toMm() / 2,
      y: y + o.height.toMm() / 2,
      text: o.what,
      anchor: "middle",
    });
  }
  const dimensions: Dimension[] = [
    { axis: "horizontal", from: 0, to: w, side: "bottom", level: 2, text: p(made.width) },
    { axis: "vertical", from: 0, to: h, side: "left", level: 2, text: p(made.height) },
  ];
  // The chain gives the first margin and panel and one margin more, since all are alike; each panel has its number.
  const firstRow = made.panels.filter((q) => q.row === 0);
  for (const [n, panel] of firstRow.entries()) {
    const b = boxOf(panel);
    dimensions.push({
      axis: "horizontal",
      from: b.x,
      to: b.x + b.w,
      side: "bottom",
      level: 1,
      text: p(panel.width),
    });
    if (n === 0)
      dimensions.push({
        axis: "horizontal",
        from: 0,
        to: b.x,
        side: "top",
        level: 1,
        text: p(made.margin),
      });
  }
  for (const row of [...new Set(made.panels.map((q) => q.row))]) {
    const one = made.panels.find((q) => q.row === row) as Panel;
    const b = boxOf(one);
    dimensions.push({
      axis: "vertical",
      from: b.y,
      to: b.y + b.h,
      side: "left",
      level: 1,
      text: p(one.height),
    });
  }
  return [
    {
      widthMm: w,
      heightMm: h,
      shapes,
      dimensions,
      title: "The wall set out",
      description: `${fields["panelled-wall"]}: ${made.panels.length} panels on ${p(made.width)} by ${p(made.height)}, ${p(made.margin)} of wall between them.`,
    },
  ];
}

export const panelledWallDrawing: ItemDrawing<PanelledWallFields, PanelledWallMade> = {
  kind: "panelled-wall",
  elevation,
  plan: () => null,
  workshop,
  sheet: panelledWallSheet,
};
