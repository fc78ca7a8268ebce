import { line, rect } from "../../drawing/paths.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { textWidthMm } from "../../drawing/words.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { stroke } from "../common/clothFace.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import type { CoverPiece } from "./coverPiece.ts";
import type { CoverMade } from "./makeCover.ts";
import { pieceWords } from "./pieceTable.ts";

/** The box on a sheet that the pieces should fill, in millimetres of paper. */
const PAPER = { width: 116, height: 46 };
/** Room under and beside each piece, in millimetres of paper. */
const GAP = 5;

interface Laid {
  readonly piece: CoverPiece;
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** Pieces in rows, tallest first, `wide` millimetres at the most. */
function rowsOf(pieces: readonly CoverPiece[], wide: number, gap: number) {
  const sorted = [...pieces].sort(
    (a, b) => b.cut[1].compare(a.cut[1]) || b.cut[0].compare(a.cut[0]),
  );
  const laid: Laid[] = [];
  const rows: { left: number; y: number }[] = [];
  let foot = 0;
  let width = 0;
  for (const piece of sorted) {
    const [w, h] = [piece.cut[0].toMm(), piece.cut[1].toMm()];
    let row = rows.find((r) => r.left + w <= wide + 0.001);
    if (!row) {
      row = { left: 0, y: foot };
      rows.push(row);
      foot += h + gap;
    }
    laid.push({ piece, x: row.left, y: row.y, w, h });
    row.left += w + gap;
    width = Math.max(width, row.left - gap);
  }
  return { laid, width, height: foot - gap };
}

/** The widest layout that gives the largest scale on paper. */
function layOut(pieces: readonly CoverPiece[]) {
  const widest = Math.max(...pieces.map((p) => p.cut[0].toMm()));
  let best: { laid: Laid[]; width: number; height: number; scale: number } | null = null;
  for (const share of [1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 5, 6]) {
    const wide = widest * share;
    // The gap is one of paper: found from the scale that this width would give.
    const gap = (GAP * wide) / PAPER.width;
    const tried = rowsOf(pieces, wide, gap);
    const scale = Math.max(tried.width / PAPER.width, tried.height / PAPER.height);
    if (best === null || scale < best.scale) best = { ...tried, scale };
  }
  return best as NonNullable<typeof best>;
}

function pieceShapes(l: Laid, scale: number, context: DrawingContext): Shape[] {
  const { piece, x, y, w, h } = l;
  const p = (n: Parameters<typeof printLength>[0]) => printLength(n, context.units);
  const [pw, ph] = [w / scale, h / scale];
  const [cx, cy] = [x + w / 2, y + h / 2];
  const shapes: Shape[] = [
    { shape: "path", d: rect(x, y, w, h), fill: { tone: "paper" }, pen: "outline" },
  ];
  // The cut length stands inside the first part's join where that is close to the edge.
  let lengthIn = 4;
  if (piece.parts) {
    let at = x;
    // Each seam takes a turning from both sides: drawn where it will be seen.
    const turning =
      (piece.parts.reduce((n, q) => n + q.width.toMm(), 0) - w) / 2 / (piece.parts.length - 1);
    for (const [n, part] of piece.parts.slice(0, -1).entries()) {
      at += part.width.toMm() - turning * (n === 0 ? 1 : 2);
      shapes.push(stroke(line(at, y, at, y + h), "seam"));
      if (n === 0 && (at - x) / scale < 5) lengthIn = (at - x) / scale + 4;
    }
  }
  const column = piece.inColumn || piece.centred;
  const edges = pw >= 12.5 && ph >= 12;
  // A strip too low for a word has it under its foot, in the gap to the next row.
  const low = ph < 6.5;
  if (column) {
    // Through the piece where its sizes stand at its edges, else only at head and foot: words stay clear of it.
    const out = 1.5 * scale;
    if (edges) shapes.push(stroke(line(cx, y - out, cx, y + h + out), "centre"));
    else if (low) shapes.push(stroke(line(cx, y - out, cx, y + h), "centre"));
    else
      shapes.push(
        stroke(line(cx, y - out, cx, y + out), "centre"),
        stroke(line(cx, y + h - out, cx, y + h + out), "centre"),
      );
  }
  if (piece.centred && edges) shapes.push({ shape: "sign", sign: "lozenge", x: cx, y: cy });
  const many = piece.count > 1 ? ` × ${piece.count}` : "";
  const oneLine = `${piece.letter}${many}${many === "" ? "" : ","} ${printSize(piece.cut, context.units)}`;
  if (edges) {
    const small = pw < 21 || ph < 19;
    shapes.push(
      {
        shape: "words",
        x: cx,
        y,
        text: p(piece.cut[0]),
        anchor: "middle",
        dxPaper: column ? pw / 4 : 0,
        dyPaper: 4,
      },
      {
        shape: "words",
        x,
        y: cy,
        text: p(piece.cut[1]),
        anchor: "middle",
        turnDeg: -90,
        dxPaper: lengthIn,
      },
      {
        shape: "words",
        x: cx,
        // Beside the motif where there is room, else at the foot.
        y: small ? y + h : cy,
        text: `${piece.letter}${many}`,
        anchor: column ? "start" : "middle",
        weight: "bold",
        dxPaper: column ? (small ? 1.2 : 2.6) : 0,
        dyPaper: small ? -1.6 : 1.2,
      },
    );
    if (pw >= 24 && ph >= 20)
      shapes.push({
        shape: "sign",
        sign: "arrow",
        x: x + w - (piece.sideways ? 10 : 3.5) * scale,
        y: y + h - (piece.sideways ? 3.5 : 10) * scale,
        turnDeg: piece.sideways ? 0 : -90,
      });
  } else if (pw >= textWidthMm(oneLine) * (piece.centred ? 2 : 1) + 3) {
    if (piece.centred) shapes.push({ shape: "sign", sign: "lozenge", x: cx, y: cy });
    shapes.push({
      shape: "words",
      x: cx,
      y: low ? y + h : cy,
      text: oneLine,
      anchor: piece.centred ? "end" : "middle",
      dxPaper: piece.centred ? -3 : 0,
      dyPaper: low ? 3.6 : 1.2,
    });
  } else if (!column && pw >= 5 && ph >= textWidthMm(oneLine) + 3) {
    // A narrow piece is named along its length.
    shapes.push({
      shape: "words",
      x: cx,
      y: cy,
      text: oneLine,
      anchor: "middle",
      turnDeg: -90,
      dxPaper: 1.2,
    });
  } else {
    shapes.push({
      shape: "words",
      x: cx,
      y: low ? y + h : cy,
      text: `${piece.letter}${many}`,
      anchor: "middle",
      weight: "bold",
      dyPaper: low ? 3.6 : 1.2,
    });
  }
  return shapes;
}

/**
 * Every piece as it is cut, flat, to one scale: cut width along its head, cut length along its side, motif's middle, motif column,
 * joins, and the way up the cloth. Empty while none are measured.
 */
export function flatPieces(made: CoverMade, context: DrawingContext): Drawing[] {
  if (made.pieces.length === 0) return [];
  const { laid, width, height, scale } = layOut(made.pieces);
  return [
    {
      widthMm: width,
      heightMm: height,
      shapes: laid.flatMap((l) => pieceShapes(l, scale, context)),
      dimensions: [],
      title: made.count > 1 ? "Pieces as cut, of one" : "Pieces as cut",
      description: laid
        .map(
          ({ piece: q }) =>
            `${q.letter} ${pieceWords(q.piece)}${q.count > 1 ? ` × ${q.count}` : ""}, ${printSize(q.cut, context.units)}`,
        )
        .join("; "),
      below: true,
    },
  ];
}
