import { Length } from "../../units/length.ts";
import { printLength, printMeasured, printSize } from "../../units/printLength.ts";
import { boardEnds, measuredCheck } from "../common/board/boardEnds.ts";
import { clothLines } from "../common/clothLines.ts";
import { hangsOnWords } from "../common/hangsOnWords.ts";
import { blankUnit, filledGroups, hardwareLines, linesOf } from "../common/sheetWords.ts";
import type { DrawingContext, ItemSheet, SheetGroup } from "../itemDrawing.ts";
import { lowerRun, type ValanceMade } from "./pieces.ts";
import type { ValancePlan } from "./plan.ts";
import type { ValanceFields } from "./schema.ts";

/** The words beside a valance's drawing. No price, no client. */
export function valanceSheet(
  fields: ValanceFields,
  made: ValanceMade,
  context: DrawingContext,
): ItemSheet {
  const { plan } = made;
  if (plan === null) return { groups: [], checks: [], signs: [] };
  const p = (length: Length) => printLength(length, context.units);
  const blank = blankUnit(context.units);
  const { board, strips, cloth } = plan;
  const matched = cloth.repeat !== null && cloth.repeat.match !== "free";
  const groups: SheetGroup[] = [
    { heading: "Cloth", lines: clothLines(cloth.id, context) },
    {
      heading: "Finished",
      lines: linesOf([
        `${plan.count === 1 ? "One valance" : `${plan.count} valances`}, front ${fields.board ? printMeasured(fields.board, context.units) : p(board.length)}${boardEnds(board, p)}, ${plan.edge.arcs > 0 ? `${p(plan.edge.shortest)} deep where it is shortest, ${p(plan.edge.deepest)} where it is deepest` : `${p(board.depth)} deep`}.`,
        board.hangsOn && `On ${hangsOnWords(board.hangsOn)}.`,
        board.topHeight && `Upper edge ${p(board.topHeight)} above the floor.`,
        `Fullness ${plan.fullness.toString()}.`,
      ]),
    },
    {
      heading: "Cut",
      lines: linesOf([
        strips.strip
          ? `${strips.wholes === 1 ? "One whole width" : `${strips.wholes} whole widths`} in the middle, a strip of ${p(strips.strip)} at each end, ${p(plan.cutHeight)} long${plan.count > 1 ? `; ${plan.count} times` : ""}.`
          : `${plan.count} of ${printSize([plan.cutWidth, plan.cutHeight], context.units)}.`,
        `${p(plan.headingTurn)} heading, ${p(plan.hem)} ${plan.edge.arcs > 0 ? "seam along the shaped edge" : "hem"}, ends ${p(plan.sideHem)}.`,
        strips.joins > 0 && `Joins ${p(plan.join)} on each piece; ${p(plan.cutWidth)} joined.`,
      ]),
    },
    { heading: "Lower edge", lines: edgeLines(plan, p) },
    { heading: "Heading", lines: headingLines(plan, p) },
    {
      heading: "Lining",
      lines:
        plan.layers.length === 0
          ? ["Unlined."]
          : plan.layers.map(
              (layer) =>
                `${layer.surface === "lining" ? "" : "Interlining: "}${layer.cloth.name}, cut ${printSize([layer.width, layer.height], context.units)} joined.`,
            ),
    },
    {
      heading: "Match",
      lines: matched
        ? linesOf([
            strips.joins > 0 && "Whole width in the middle; level and matched at the joins.",
            plan.lowestMotif
              ? `Lowest motif ${p(plan.lowestMotif)} above the lower edge, ${p(plan.lowestMotif.plus(plan.hem))} above the cut.`
              : "Height of the lowest motif: ask.",
            plan.shifts && "Each next width from the middle falls half a repeat.",
          ])
        : [],
    },
    {
      heading: "Edges",
      lines: fields.trim
        ? [
            `${context.cloth(fields.trim)?.name ?? fields.trim} along the lower edge, ${p(lowerRun(plan, context.units))} flat.`,
          ]
        : [],
    },
    {
      heading: "Hardware",
      lines: [
        `On ${board.hangsOn ? "the bed's tester" : "a board"} ${board.returnEach.isZero() ? p(board.length) : printSize([board.length, board.returnEach], context.units)}, hook-and-loop tape round its front and ends.`,
        ...hardwareLines(fields.hardware),
      ],
    },
    ...(fields.note ? [{ heading: "Note", lines: [fields.note] }] : []),
  ];
  return {
    groups: filledGroups(groups),
    checks: [
      { text: "Cloth checked for flaws; length received", blank },
      ...(matched ? [{ text: "Repeat measured", blank }] : []),
      { text: measuredCheck(board), blank },
      { text: "Lower edge level, pleats even to both corners", blank: null },
    ],
    signs: linesOf([
      plan.edge.arcs > 0
        ? "Dashed, flat: turnings."
        : `Dashed: hem, ${p(plan.hem.dividedBy(2))} deep, turned twice.`,
      "Long and short: middle of the front.",
      strips.joins > 0 && "Long line with two dots: seam.",
      plan.lowestMotif && matched && "Dotted: level of the pattern.",
    ]),
  };
}

/** How a shaped lower edge is drawn on the flat cloth; nothing for a straight one. */
function edgeLines({ edge, flatEdge }: ValancePlan, p: (length: Length) => string): string[] {
  if (flatEdge.radiusMm === null) return [];
  const what =
    edge.line === "arched" ? "One arch over the front" : `${edge.arcs} scallops on the front`;
  return [
    `${what}, drawn on the flat cloth before its heading is made: ${edge.arcs > 1 ? "each " : ""}${p(flatEdge.chord)} wide, ${p(edge.deepest.minus(edge.shortest))} high, radius ${p(Length.mm(flatEdge.radiusMm.toFixed(3)))}.`,
    `Returns straight, ${p(edge.line === "arched" ? edge.deepest : edge.shortest)} deep.`,
    "Cut to a template; sewn to the lining or facing, clipped and turned.",
  ];
}

function headingLines({ heading }: ValancePlan, p: (length: Length) => string): string[] {
  if ("tape" in heading)
    return [
      `${heading.heading === "gathered" ? "Gathered on tape" : `Pencil pleat, tape ${p(heading.depth)} deep`}, tape cut ${p(heading.tape)}. Tie the cords off, do not cut them.`,
    ];
  if (heading.heading === "pinch-pleat")
    return [
      `Pinch pleat, ${p(heading.depth)} deep: ${heading.pleats}, one at each corner.`,
      `${heading.pleats - 1} spaces of ${p(heading.space)}; each pleat takes up ${p(heading.takeUp)}. Returns flat.`,
    ];
  return [
    `Box pleat: ${heading.boxes} boxes of ${p(heading.box)} on the front, one in the middle, a pleat at each corner.`,
    `${heading.pleats} pleats, each takes up ${p(heading.takeUp)}. Returns flat.`,
  ];
}
