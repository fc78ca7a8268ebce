import { arc, line, rect, roundedRect } from "../../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../../drawing/shape.ts";
import { printLength } from "../../../units/printLength.ts";
import { leg, stroke } from "../../common/clothFace.ts";
import type { DrawingContext } from "../../itemDrawing.ts";
import { type CoverPiece, showsMotif } from "../coverPiece.ts";
import { flatPieces } from "../flatPieces.ts";
import { type PieceName, pieceWords } from "../pieceTable.ts";
import type { SeatFields, SeatMade } from "../seatMade.ts";
import { frontShapes } from "./elevation.ts";
import { openParts, openSide } from "./openChair.ts";
import {
  armOutline,
  backOutline,
  cushionOutline,
  seatParts,
  sideArm,
  sideBack,
  sideWing,
  wingOutline,
} from "./outlines.ts";
import { type ChairShape, chairShape } from "./shapeOfChair.ts";

/** Where a piece's letter stands: on the piece, or at the end of a leader to an edge of it. */
interface Spot {
  readonly x: number;
  readonly y: number;
  readonly lead?: readonly [dxPaper: number, dyPaper: number];
  /** It stands beside the middle, so that the motif column stays clear. */
  readonly off?: boolean;
  /** A lozenge here for a centred piece. */
  readonly motif?: boolean;
}

function frontSpots(c: ChairShape): Partial<Record<PieceName, Spot>> {
  const mid = c.width / 2;
  if (c.open) {
    const { pad, panelFoot } = openParts(c);
    return {
      "inside-back": { x: mid, y: panelFoot * 0.52, off: true, motif: true },
      seat: { x: mid - c.width * 0.14, y: c.seatTop + 8, lead: [-3, -2.8] },
      "cushion-top": { x: mid - c.width * 0.14, y: c.seatTop + 8, lead: [-3, -2.8] },
      boxing: { x: mid, y: c.seatTop + pad / 2, off: true },
      "seat-front": { x: mid, y: c.seatTop + pad / 2, off: true },
      "front-border": { x: mid, y: c.seatTop + pad / 2, off: true },
    };
  }
  const right = c.width - c.roll;
  return {
    "inside-back": { x: mid, y: c.seatTop * 0.45, off: true, motif: true },
    "cushion-top": { x: mid + c.width * 0.16, y: c.seatTop + 10, lead: [1.5, -5] },
    seat: { x: mid - c.width * 0.16, y: c.seatTop + 10, lead: [-1.5, -5], motif: true },
    boxing: { x: mid, y: (c.seatTop + c.seatFoot) / 2, off: true },
    "seat-front": { x: mid, y: (c.seatFoot + c.legTop) / 2 - 8, off: true, motif: true },
    "front-border": { x: mid, y: (c.seatFoot + c.legTop) / 2 + 12, off: true },
    "arm-front": { x: right, y: (c.armTop + c.roll * 2 + c.legTop) / 2 },
    "wing-inside": { x: c.width - c.backInset * 0.55 - c.arm * 0.5, y: c.armTop * 0.5 },
    skirt: { x: mid, y: (c.legTop + c.height) / 2, off: true },
  };
}

function sideSpots(c: ChairShape): Partial<Record<PieceName, Spot>> {
  if (c.open) {
    const { pad } = openParts(c);
    return {
      "outside-back": { x: c.depth - 3, y: c.height * 0.16, lead: [6, -4] },
      "cushion-bottom": { x: c.depth * 0.4, y: c.seatTop + pad - 6, lead: [-6, 10] },
    };
  }
  return {
    "outside-arm": { x: c.depth * 0.42, y: (c.armTop + c.legTop) / 2 + 20 },
    "inside-arm": { x: c.depth * 0.36, y: c.armTop + 8, lead: [-4, -9] },
    "outside-back": { x: c.depth - 8, y: c.height * 0.34, lead: [6, -6] },
    "wing-outside": { x: c.depth * 0.72, y: c.armTop * 0.5 },
    "cushion-bottom": { x: c.depth * 0.2, y: c.legTop - 12, lead: [-3, -6] },
  };
}

/** Letters, leaders and lozenges of the pieces that this view shows. */
function marks(pieces: readonly CoverPiece[], spots: Partial<Record<PieceName, Spot>>): Shape[] {
  const taken = new Map<string, number>();
  return pieces.flatMap((piece): Shape[] => {
    const spot = spots[piece.piece];
    if (!spot) return [];
    const again = taken.get(piece.piece) ?? 0;
    taken.set(piece.piece, again + 1);
    if (spot.lead)
      return [
        {
          shape: "note",
          x: spot.x,
          y: spot.y,
          dxPaper: spot.lead[0] + 6 * again,
          dyPaper: spot.lead[1],
          text: piece.letter,
          end: "dot",
        },
      ];
    const lozenge = showsMotif(piece) && spot.motif === true;
    return [
      {
        shape: "words",
        x: spot.x,
        y: spot.y,
        text: piece.letter,
        anchor: "middle",
        weight: "bold",
        dxPaper: (spot.off ? 5 : 0) + 6 * again,
        dyPaper: 1.2,
      },
      ...(lozenge ? [{ shape: "sign", sign: "lozenge", x: spot.x, y: spot.y } as const] : []),
    ];
  });
}

/** Front and left side, lines only, with each piece's letter and the overall sizes. */
export function armchairWorkshop(
  fields: SeatFields,
  made: SeatMade,
  context: DrawingContext,
): Drawing[] {
  const c = chairShape(made, fields.type);
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  const paper = { tone: "paper" } as const;
  const open = (d: string, pen: "outline" | "edge" = "outline"): Shape => ({
    shape: "path",
    d,
    fill: paper,
    pen,
  });
  const inner = 2 * c.roll - c.roll * 0.16;
  const R = c.roll;
  const cy = c.armTop + R;
  const mid = c.width / 2;
  const wide = Math.min(56, c.arm * 0.46);
  const legs = (x: number) => (c.skirt ? [] : leg(x, c.legTop - 2, c.height, wide, wide * 0.62));
  const mirrored = (d: string): Shape => ({
    shape: "group",
    x: c.width,
    mirror: true,
    children: [open(d)],
  });
  const arm = (): Shape[] => [
    open(armOutline(c)),
    stroke(arc(R, cy, R * 0.62, -250, 20), "dimension"),
  ];
  const padX = inner - c.arm * 0.08;
  const padTop = Math.min(42, c.height * 0.045);
  const column = made.pieces.some((x) => x.inColumn || showsMotif(x));

  const closedFront = (): Shape[] => [
    ...legs(R - wide / 2 + 4),
    ...legs(c.width - R - wide / 2 - 4),
    open(backOutline(c)),
    ...Array.from({ length: c.backCushions ? c.seats : 1 }, (_, at) => {
      const w = (c.width - 2 * padX) / (c.backCushions ? c.seats : 1);
      return open(roundedRect(padX + at * w, padTop, w, c.seatTop + 30 - padTop, 60), "edge");
    }),
    ...(c.wing ? [open(wingOutline(c)), mirrored(wingOutline(c))] : []),
    open(rect(inner - 6, c.seatFoot - 12, c.width - 2 * (inner - 6), c.legTop - c.seatFoot + 12)),
    ...seatParts(c).map(([l, r]) => open(cushionOutline(l, r, c.seatTop, c.seatFoot))),
    ...arm(),
    { shape: "group", x: c.width, mirror: true, children: arm() },
    ...(c.skirt
      ? [open(rect(R * 0.16, c.legTop, c.width - R * 0.32, c.height - c.legTop - 6))]
      : []),
  ];
  const front: Shape[] = [
    ...(c.open ? frontShapes(c, made) : closedFront()),
    ...(column ? [stroke(line(mid, -14, mid, c.legTop + 14), "centre")] : []),
    stroke(line(-30, c.height, c.width + 30, c.height), "cut"),
    ...marks(made.pieces, frontSpots(c)),
  ];
  // A low wide thing has no room for two heights side by side.
  const low = c.width > c.height * 1.3;
  const frontSizes: Dimension[] = [
    {
      axis: "horizontal",
      from: 0,
      to: c.width,
      side: "bottom",
      level: 1,
      text: `${p(made.size[0])} wide`,
    },
    {
      axis: "vertical",
      from: c.seatTop,
      to: c.height,
      side: low ? "right" : "left",
      level: 1,
      text: `${p(made.seatHeight)} ${fields["seat-height"] ? "seat" : "assumed"}`,
    },
    {
      axis: "vertical",
      from: 0,
      to: c.height,
      side: "left",
      level: low ? 1 : 2,
      text: `${p(made.size[2])} high`,
    },
  ];
  const closedSide = (): Shape[] => [
    ...(c.skirt
      ? []
      : [
          ...leg(26, c.legTop - 2, c.height, wide, wide * 0.62),
          ...leg(c.depth - wide - 46, c.legTop - 2, c.height, wide, wide * 0.62),
        ]),
    open(sideBack(c)),
    open(sideArm(c)),
    ...(c.wing ? [open(sideWing(c))] : []),
    ...(c.skirt ? [open(rect(20, c.legTop, c.depth - 60, c.height - c.legTop - 6))] : []),
    stroke(
      arc(Math.min(R, 60) * 1.05, c.armTop + Math.min(R, 60), Math.min(R, 60) * 0.55, -250, 20),
      "dimension",
    ),
  ];
  const side: Shape[] = [
    ...(c.open ? openSide(c, { back: "cover", seat: "cover" }) : closedSide()),
    stroke(line(-30, c.height, c.depth + 30, c.height), "cut"),
    ...marks(made.pieces, sideSpots(c)),
  ];
  const words = made.pieces.map((x) => `${x.letter} ${pieceWords(x.piece)}`).join(", ");
  return [
    {
      widthMm: c.width,
      heightMm: c.height,
      shapes: front,
      dimensions: frontSizes,
      title: "Front",
      description: `Front of ${made.job.title}. Pieces: ${words || "not measured yet"}.`,
    },
    {
      widthMm: c.depth,
      heightMm: c.height,
      shapes: side,
      title: "Left side",
      description: `Left side of ${made.job.title}, its front to the left.`,
      dimensions: [
        {
          axis: "horizontal",
          from: 0,
          to: c.depth,
          side: "bottom",
          level: 1,
          text: `${p(made.size[1])} deep`,
        },
      ],
    },
    ...flatPieces(made, context),
  ];
}
