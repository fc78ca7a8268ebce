import { line, rect } from "../../drawing/paths.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { textWidthMm } from "../../drawing/words.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { stroke } from "../common/clothFace.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import { showsMotif } from "./coverPiece.ts";
import type { CoverMade } from "./makeCover.ts";
import { type LaidPiece, layOutPieces } from "./pieceRows.ts";
import { pieceWords } from "./pieceTable.ts";

function pieceShapes(l: LaidPiece, scale: number, context: DrawingContext): Shape[] {
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
  const motif = showsMotif(piece);
  const column = piece.inColumn || motif;
  const motifY = y + h - piece.middleAboveFoot.toMm();
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
  if (motif && edges) shapes.push({ shape: "sign", sign: "lozenge", x: cx, y: motifY });
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
  } else if (pw >= textWidthMm(oneLine) * (motif ? 2 : 1) + 3) {
    if (motif) shapes.push({ shape: "sign", sign: "lozenge", x: cx, y: motifY });
    shapes.push({
      shape: "words",
      x: cx,
      y: low ? y + h : cy,
      text: oneLine,
      anchor: motif ? "end" : "middle",
      dxPaper: motif ? -3 : 0,
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
  const { laid, width, height, scale } = layOutPieces(made.pieces);
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
