import { Length } from "../../units/length.ts";
import { printLength, printMeasured, printSize } from "../../units/printLength.ts";
import { boardEnds, measuredCheck } from "../common/board/boardEnds.ts";
import { depthAt } from "../common/board/lowerEdge.ts";
import { clothLines } from "../common/clothLines.ts";
import { hangsOnWords } from "../common/hangsOnWords.ts";
import { sidewaysWords } from "../common/join/sideways.ts";
import { blankUnit, filledGroups, hardwareLines, linesOf } from "../common/sheetWords.ts";
import type { DrawingContext, ItemSheet, SheetGroup } from "../itemDrawing.ts";
import type { PelmetMade } from "./pieces.ts";
import type { PelmetPlan } from "./plan.ts";
import type { PelmetFields } from "./schema.ts";

/** The words beside a pelmet's drawing. No price, no client. */
export function pelmetSheet(
  fields: PelmetFields,
  made: PelmetMade,
  context: DrawingContext,
): ItemSheet {
  const { plan } = made;
  if (plan === null) return { groups: [], checks: [], signs: [] };
  const p = (length: Length) => printLength(length, context.units);
  const blank = blankUnit(context.units);
  const { board, edge, strips } = plan;
  const hasNone = board.hangsOn !== null && board.returnEach.isZero();
  const us = context.language === "en-US";
  const word = us ? "cornice" : "pelmet";
  const groups: SheetGroup[] = [
    { heading: "Cloth", lines: clothLines(plan.cloth.id, context) },
    {
      heading: "Finished",
      lines: linesOf([
        `${plan.count === 1 ? `One ${word}` : `${plan.count} ${word}s`}, front ${fields.board ? printMeasured(fields.board, context.units) : p(board.length)}${boardEnds(board, p)}.`,
        edge.line === "straight"
          ? `${p(edge.shortest)} deep, lower edge straight.`
          : edge.line === "arched"
            ? `${p(edge.shortest)} deep in the middle, ${p(edge.deepest)} at the ends and on the returns.`
            : `${p(edge.shortest)} deep between ${edge.arcs} scallops, ${p(edge.deepest)} at their lowest; returns ${p(edge.shortest)}.`,
        board.hangsOn && `On ${hangsOnWords(board.hangsOn)}.`,
        board.topHeight && `Upper edge ${p(board.topHeight)} above the floor.`,
      ]),
    },
    { heading: "Lower edge", lines: edgeLines(plan, p) },
    { heading: "Cut", lines: cutLines(plan, p, context) },
    {
      heading: "Match",
      lines: linesOf([
        plan.motifCentred && "Motif in the middle of the front, half-way down the shortest depth.",
        strips.joins > 0 &&
          (strips.motif
            ? "The middle is cut so that a motif stands in its middle; pattern matched at the joins."
            : "Whole width in the middle; pattern matched at the joins."),
        plan.railroaded && sidewaysWords(plan.cloth, plan.cutHeight),
        !board.returnEach.isZero() && "The cloth runs on round the returns without a join.",
      ]),
    },
    { heading: "Stiffening", lines: stiffLines(plan, p) },
    {
      heading: "Lining",
      lines:
        plan.layers.length === 0
          ? ["Not padded, not lined."]
          : plan.layers.map(
              (layer) =>
                `${layer.surface === "lining" ? "Lining" : "Padding"}: ${layer.cloth.name}, cut ${printSize([layer.width, layer.height], context.units)}.`,
            ),
    },
    {
      heading: "Edges",
      lines: linesOf([
        plan.welt &&
          `${us ? "Welt" : "Piping"} of ${context.cloth(plan.welt.cloth)?.name ?? plan.welt.cloth}, strip ${p(plan.welt.strip)}, ${plan.welt.cut === "bias" ? "on the bias" : "straight"}, along ${fields.edge?.where === "both" ? "both edges" : "the lower edge"}: ${p(plan.welt.total)}.`,
        fields.trim &&
          `${context.cloth(fields.trim)?.name ?? fields.trim} along the lower edge, ${p(plan.lowerRun)} each.`,
      ]),
    },
    {
      heading: "Hardware",
      lines: hardwareLines(fields.hardware),
    },
    ...(fields.note ? [{ heading: "Note", lines: [fields.note] }] : []),
  ];
  return {
    groups: filledGroups(groups),
    checks: [
      { text: "Cloth checked for flaws; length received", blank },
      ...(plan.cloth.repeat ? [{ text: "Repeat measured", blank }] : []),
      { text: measuredCheck(board), blank },
      {
        text: `What hangs beneath clears the front${hasNone ? "" : " and the returns"}`,
        blank: null,
      },
      { text: "Front level, edge true to its template", blank: null },
    ],
    signs: linesOf([
      "Long and short: middle of the front.",
      strips.joins > 0 && "Long line with two dots: seam.",
      plan.motifCentred && "Lozenge: middle of the motif.",
      "Arrow: up the cloth.",
    ]),
  };
}

function edgeLines(plan: PelmetPlan, p: (length: Length) => string): string[] {
  const { edge, board } = plan;
  if (edge.radiusMm === null) return [];
  const radius = p(Length.mm(edge.radiusMm.toFixed(3)));
  if (edge.line === "scalloped") {
    return [
      `${edge.arcs} scallops, each ${p(edge.chord)} wide and ${p(edge.deepest.minus(edge.shortest))} deep: strike with a radius of ${radius}.`,
    ];
  }
  // Half the arch at eighths of the half, for a template without a long beam.
  const half = board.length.toMm() / 2;
  const stations = Array.from({ length: 9 }, (_, at) =>
    p(Length.mm(depthAt(edge, half + (half * at) / 8).toFixed(3))),
  );
  return [
    `One arc, radius ${radius}.`,
    `Depths from the middle to the end, each ${p(board.length.dividedBy(16))} further: ${stations.join(", ")}.`,
  ];
}

function cutLines(
  plan: PelmetPlan,
  p: (length: Length) => string,
  context: DrawingContext,
): string[] {
  const { strips, count } = plan;
  const turns = `Round each end ${p(plan.endTurn)}, top ${p(plan.topTurn)}, bottom ${p(plan.bottomTurn)}.`;
  if (plan.railroaded)
    return [
      `${count} of ${p(plan.cutWidth)} along the cloth, ${p(plan.cutHeight)} across it.`,
      turns,
    ];
  if (strips.strip === null)
    return [`${count} of ${printSize([plan.cutWidth, plan.cutHeight], context.units)}.`, turns];
  const whole = strips.motif
    ? `A width of ${p(strips.middle)}`
    : strips.wholes === 1
      ? "One whole width"
      : `${strips.wholes} whole widths`;
  return [
    `${whole} in the middle, a strip of ${p(strips.strip)} at each side, ${p(plan.cutHeight)} high${count > 1 ? `; ${count} times` : ""}.`,
    `Joins ${p(plan.join)} on each piece, pressed open; ${p(plan.cutWidth)} joined.`,
    turns,
  ];
}

function stiffLines(plan: PelmetPlan, p: (length: Length) => string): string[] {
  const { board, edge } = plan;
  const ends = board.returnEach.isZero() ? "" : `ends ${p(board.returnEach)} long, `;
  const boardText = board.hangsOn
    ? `${ends}no top: it hangs on the bed`
    : board.returnEach.isZero()
      ? "no top: it stands between the walls"
      : `top ${p(board.length)} × ${p(board.returnEach)}`;
  return plan.stiffening === "buckram"
    ? [
        `Pelmet buckram, ${p(board.span)} × ${p(edge.deepest)}, creased at the corners, never joined on the front where its length allows.`,
        board.hangsOn
          ? "On the bed's tester, with hook-and-loop tape."
          : `On a board, ${boardText}, with hook-and-loop tape.`,
      ]
    : [`Thin board: front ${p(board.length)} × ${p(edge.deepest)}, ${boardText}.`];
}
