import { mirrorPath } from "../../../drawing/mirrorPath.ts";
import { arc, circle, line, rect, roundedRect } from "../../../drawing/paths.ts";
import type { Drawing, Fill, Shape } from "../../../drawing/shape.ts";
import { capital } from "../../../units/capital.ts";
import { printSize } from "../../../units/printLength.ts";
import {
  FLAT,
  face,
  floorShadow,
  leg,
  PADDED,
  roundedBand,
  stroke,
} from "../../common/clothFace.ts";
import type { DrawingContext } from "../../itemDrawing.ts";
import type { PieceName } from "../pieceTable.ts";
import type { SeatFields, SeatMade } from "../seatMade.ts";
import { openFront } from "./openChair.ts";
import { armOutline, backOutline, cushionOutline, seatParts, wingOutline } from "./outlines.ts";
import { type ChairShape, chairShape } from "./shapeOfChair.ts";

const WELT_MM = 8;

/** Which surface shows on a part of the chair: a piece's own cloth where it has one, else the cover's. */
export function surfaceOf(made: SeatMade, ...names: PieceName[]): string {
  for (const name of names) {
    const piece = made.pieces.find((p) => p.piece === name);
    if (piece) return piece.surface;
  }
  return "cover";
}

/** The chair from the front, each face with its cloth centred; back, seat and front share the motif's column. */
export function armchairElevation(
  fields: SeatFields,
  made: SeatMade,
  context: DrawingContext,
): Drawing {
  const c = chairShape(made, fields.type);
  return {
    widthMm: c.width,
    heightMm: c.height,
    shapes: frontShapes(c, made),
    dimensions: [],
    title: made.job.title,
    description: `${capital(made.job.thing)} from the front, ${printSize(made.size, context.units)} (width, depth, height), covered in ${context.cloth(fields.cloth)?.name ?? fields.cloth}.`,
  };
}

export function frontShapes(c: ChairShape, made: SeatMade): Shape[] {
  if (c.open) {
    const back = surfaceOf(made, "inside-back");
    const seat = surfaceOf(made, "boxing", "seat-front", "front-border", "cushion-top", "seat");
    return openFront(c, { back, seat }, made.welt !== null);
  }
  const mid = c.width / 2;
  const on = (surface: string, x: number, y: number): Fill => ({ surface, x, y });
  const inner = 2 * c.roll - c.roll * 0.16;
  const railTop = c.seatFoot;
  const shapes: Shape[] = [floorShadow(c.width * 0.02, c.height - 1, c.width * 0.98)];

  if (!c.skirt) {
    const wide = Math.min(56, c.arm * 0.46);
    shapes.push(
      ...leg(c.roll - wide / 2 + 4, c.legTop - 2, c.height, wide, wide * 0.62),
      ...leg(c.width - c.roll - wide / 2 - 4, c.legTop - 2, c.height, wide, wide * 0.62),
    );
  }
  // Back, then the pad inside it.
  const padX = inner + c.arm * (c.wing ? -0.1 : -0.08);
  const padTop = Math.min(42, c.height * 0.045);
  const padW = c.width - 2 * padX;
  const padH = c.seatTop + 30 - padTop;
  const backMiddle = padTop + (c.seatTop - padTop) / 2;
  const inside = surfaceOf(made, "inside-back");
  shapes.push(...face(backOutline(c), on(inside, mid, backMiddle), PADDED));
  // A tight back is one pad; loose cushions stand before it side by side.
  const pads = c.backCushions ? c.seats : 1;
  for (let at = 0; at < pads; at += 1) {
    const [x, w] = [padX + (padW * at) / pads, padW / pads];
    const pad = roundedRect(x, padTop, w, padH, c.backCushions ? 46 : 60);
    const front = c.backCushions ? surfaceOf(made, "back-cushion-front") : inside;
    shapes.push(
      ...face(
        pad,
        on(front, x + w / 2, backMiddle),
        { light: 0.2, dark: 0.2, across: { light: 0.05, dark: 0.1 } },
        "edge",
      ),
    );
    if (made.welt)
      shapes.push(welt(roundedBand(x, padTop, w, padH, c.backCushions ? 46 : 60, WELT_MM)));
  }
  if (c.wing) {
    const wing = surfaceOf(made, "wing-inside", "wing-outside");
    const x = c.backInset + c.arm * 0.2;
    const lit = { light: 0.16, dark: 0.22, across: { light: 0.1, dark: 0.18 } };
    shapes.push(...face(wingOutline(c), on(wing, x, c.armTop / 2), lit));
    shapes.push(
      ...face(mirrorPath(wingOutline(c), c.width), on(wing, c.width - x, c.armTop / 2), lit),
    );
  }

  // Front rail under the cushion: the seat's shadow lies along its head.
  const rail = rect(inner - 6, railTop - 12, c.width - 2 * (inner - 6), c.legTop - railTop + 12);
  const front = surfaceOf(made, "seat-front", "front-border");
  shapes.push(...face(rail, on(front, mid, (railTop + c.legTop) / 2), FLAT));
  shapes.push({
    shape: "path",
    d: rect(inner, railTop - 2, c.width - 2 * inner, 20),
    fill: { tone: "shadow" },
    pen: null,
  });
  shapes.push({
    shape: "path",
    d: rect(inner, railTop - 2, c.width - 2 * inner, 9),
    fill: { tone: "shadow" },
    pen: null,
  });

  // Shadow of the back on the seat, then the cushion.
  const seatMiddle = (c.seatTop + c.seatFoot) / 2;
  shapes.push({
    shape: "path",
    d: rect(inner, c.seatTop - 16, c.width - 2 * inner, 20),
    fill: { tone: "shadow" },
    pen: null,
  });
  for (const [l, r] of seatParts(c)) {
    const cushion = cushionOutline(l, r, c.seatTop, c.seatFoot);
    const cx = (l + r) / 2;
    shapes.push(
      ...face(cushion, on(surfaceOf(made, "boxing", "cushion-top", "seat"), cx, seatMiddle), {
        light: 0.26,
        dark: 0.24,
      }),
    );
    if (made.welt) {
      shapes.push(
        welt(roundedBand(l + 2, c.seatTop + 3, r - l - 4, c.seatFoot - c.seatTop - 5, 40, WELT_MM)),
        stroke(cushion, "outline"),
      );
    } else {
      const y = c.seatTop + (c.seatFoot - c.seatTop) * 0.24;
      shapes.push(
        stroke(
          `M${(l + 8).toFixed(1)} ${(y + 5).toFixed(1)}Q${cx.toFixed(1)} ${(y - 9).toFixed(1)} ${(r - 8).toFixed(1)} ${(y + 5).toFixed(1)}`,
          "dimension",
        ),
      );
    }
  }

  // Arms last: they stand forward of everything.
  const armCloth = surfaceOf(made, "arm-front", "inside-arm", "outside-arm");
  const R = c.roll;
  const cy = c.armTop + R;
  const flip = (d: string) => mirrorPath(d, c.width);
  for (const [turn, x] of [
    [(d: string) => d, R],
    [flip, c.width - R],
  ] as const) {
    shapes.push(
      ...face(turn(armOutline(c)), on(armCloth, x, (c.armTop + c.legTop) / 2), {
        light: 0.2,
        dark: 0.24,
        across: { light: 0.1, dark: 0.12 },
      }),
      ...(made.welt ? [welt(ringAt(x, cy, R * 0.74, WELT_MM))] : []),
      stroke(turn(arc(R, cy, R * 0.62, -250, 20)), "dimension"),
      stroke(turn(arc(R * 0.94, cy + R * 0.04, R * 0.3, -200, 40)), "dimension"),
      stroke(turn(line(R * 0.34, cy + R * 1.3, R * 0.34, c.legTop - 8)), "fold"),
    );
  }

  if (c.skirt) {
    const skirt = rect(R * 0.16, c.legTop, c.width - R * 0.32, c.height - c.legTop - 6);
    shapes.push(
      ...face(skirt, on(surfaceOf(made, "skirt"), mid, (c.legTop + c.height) / 2), {
        light: 0.14,
        dark: 0.2,
      }),
    );
    for (const x of [R * 1.1, mid, c.width - R * 1.1])
      shapes.push(
        stroke(line(x - 5, c.legTop + 4, x - 5, c.height - 8), "dimension"),
        stroke(line(x + 5, c.legTop + 4, x + 5, c.height - 8), "dimension"),
      );
  } else {
    shapes.push(stroke(line(R * 0.2, c.legTop, c.width - R * 0.2, c.legTop), "outline"));
  }
  return shapes;
}

function welt(d: string): Shape {
  return { shape: "path", d, fill: { surface: "welt", x: 0, y: 0, turnDeg: 45 }, pen: "fold" };
}

/** A ring: a circle, and a smaller one run the other way. */
function ringAt(x: number, y: number, radius: number, band: number): string {
  const r = radius - band;
  const f = (n: number) => n.toFixed(1);
  return `${circle(x, y, radius)}M${f(x + r)} ${f(y)}A${f(r)} ${f(r)} 0 0 0 ${f(x - r)} ${f(y)}A${f(r)} ${f(r)} 0 0 0 ${f(x + r)} ${f(y)}Z`;
}
