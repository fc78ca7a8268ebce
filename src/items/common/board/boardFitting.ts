import { capital } from "../../../units/capital.ts";
import type { Length } from "../../../units/length.ts";
import { printLength, printMeasured } from "../../../units/printLength.ts";
import type { FittingContext, FittingLine } from "../../itemDrawing.ts";
import {
  acrossLines,
  acrossOf,
  comesLines,
  fixingChecks,
  markOf,
  mountLine,
  openingLines,
  overOpening,
} from "../fittingWords.ts";
import { hangsOnWords } from "../hangsOnWords.ts";
import { filledGroups, linesOf, weightUnit } from "../sheetWords.ts";
import type { Board } from "./boardAtWindow.ts";
import type { BoardFields } from "./boardFields.ts";
import type { LowerEdge } from "./lowerEdge.ts";

/** A board with what hangs from it, as its kind calls the two. */
export interface HungBoard {
  /** `pelmet`, `valance`, in the studio's words. */
  readonly what: string;
  readonly board: Board;
  readonly edge: LowerEdge;
  readonly count: number;
  readonly hardware: Parameters<typeof comesLines>[0];
}

/** What the fitter of a pelmet or a valance reads: the board's place, height and returns, and how low what hangs from it comes. */
export function boardFitting(
  { what, board, edge, count, hardware }: HungBoard,
  fields: BoardFields,
  context: FittingContext,
): FittingLine {
  const p = (length: Length) => printLength(length, context.units);
  const { hangsOn } = context;
  const rail = hangsOn ? "tester" : "board";
  const across = hangsOn ? null : acrossOf(board.length, context);
  const length = fields.board ? printMeasured(fields.board, context.units) : p(board.length);
  const foot = board.topHeight?.minus(edge.deepest) ?? null;
  return {
    groups: filledGroups([
      {
        heading: "Opening",
        lines: linesOf([...openingLines(context), mountLine(board.inside, context)]),
      },
      { heading: "Piece", lines: hangsOn ? [`On ${hangsOnWords(hangsOn)}.`] : [] },
      {
        heading: capital(rail),
        lines: linesOf([
          `${length} long.`,
          ...acrossLines(across, context),
          board.topHeight &&
            `Its top ${p(board.topHeight)} above the floor${overOpening(board.topHeight, context)}.`,
          hangsOn
            ? !board.returnEach.isZero() && `Goes ${p(board.returnEach)} along each side.`
            : board.returnEach.isZero()
              ? "Between the walls, no returns."
              : `Stands out ${p(board.returnEach)} from the wall: it must clear all that hangs under it.`,
        ]),
      },
      {
        heading: "What hangs",
        lines: linesOf([
          `${count === 1 ? `One ${what}` : `${count} ${what}s`}, ${p(edge.shortest)} deep${edge.line === "straight" ? "" : ` where it is shortest, ${p(edge.deepest)} where it is deepest`}.`,
          foot && `Its lowest edge ${p(foot)} above the floor.`,
        ]),
      },
      {
        heading: "Comes with it",
        lines: comesLines(
          hardware,
          hangsOn
            ? "Nothing is on the order: it is fixed to the bed's tester."
            : "No board or brackets are on the order: ask who brings them.",
        ),
      },
    ]),
    checks: [
      ...fixingChecks(`${rail}'s top`, context),
      {
        text: "Weighed before fixings are chosen",
        blank: weightUnit(context.units),
      },
      { text: "What hangs under it draws freely and clears it", blank: null },
    ],
    questions: linesOf([
      !fields.board && `The ${rail} is not yet measured: ${p(board.length)} is assumed.`,
      board.topHeight === null
        ? `How high above the floor is the ${rail}'s top?`
        : !fields["top-height"] &&
          `The height of the ${rail}'s top is not said: ${p(board.topHeight)} is assumed.`,
      !fields.return &&
        !board.inside &&
        !hangsOn &&
        `Its return is not said: ${p(board.returnEach)} is assumed.`,
      across === null && !hangsOn && "Where on the wall is the board?",
    ]),
    mark: hangsOn ? null : markOf("board", board.topHeight, across),
  };
}
