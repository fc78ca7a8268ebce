import Fraction from "fraction.js";
import { diagnostic } from "../../../diagnostics/diagnostic.ts";
import { Length } from "../../../units/length.ts";
import { printLength, printMeasured } from "../../../units/printLength.ts";
import type { HangsOn, ItemContext } from "../../itemKind.ts";
import { finestStep } from "../finestStep.ts";
import { deeperThanLong, largerThanRoom } from "../likelySizes.ts";
import type { Notes } from "../notes.ts";
import { withoutLength } from "../withoutLength.ts";
import type { BoardFields } from "./boardFields.ts";

/** A board over a window and the depth of what hangs from it. */
export interface Board {
  readonly inside: boolean;
  readonly hangsOn: HangsOn | null;
  /** Its front, end to end. */
  readonly length: Length;
  readonly returnEach: Length;
  /** Front and both returns. */
  readonly span: Length;
  /** Depth at its shortest, from the board's upper face to the lower edge. */
  readonly depth: Length;
  /** Its upper face over the floor; null without a window and without a written height. */
  readonly topHeight: Length | null;
}

/**
 * The board from what is written or from the window: span = front + 2 returns ("measure round the board, including both ends", The
 * Encyclopaedia of Curtains, p. 116); depth at its shortest a fifth to a sixth of the curtain. What is assumed becomes a question.
 * `what` names the kind in words (`pelmet`) and in codes. Null, with a diagnostic at its place, where too little is known.
 */
export function boardAtWindow(
  what: string,
  fields: BoardFields,
  context: ItemContext,
  notes: Notes,
): Board | null {
  const { units, window } = context;
  const p = (length: Length) => printLength(length, units);
  const inside = fields.mount === "inside";
  const length = boardLength(what, fields, context, notes);
  const depth = boardDepth(what, fields, context, notes);
  notes.diagnostics.push(
    ...largerThanRoom(
      {
        upright: { depth: fields.depth, "curtain-drop": fields["curtain-drop"] },
        along: { board: fields.board },
      },
      context,
    ),
  );
  if (length === null || depth === null) return null;
  notes.diagnostics.push(...deeperThanLong(what, length, fields.depth, context));
  const { hangsOn } = context;
  const flush = inside || hangsOn !== null;
  const returnEach = fields.return ?? (flush ? Length.zero : context.length("return"));
  if (!fields.return && !flush) {
    notes.questions.push(
      `How far does what hangs under the ${what} stand out from the wall? A return of ${p(returnEach)} is assumed; it must clear it.`,
    );
  }
  const span = length.plus(returnEach.times(2));
  notes.working.push({
    what: "Span, round the board and both ends",
    sum: returnEach.isZero()
      ? `${printMeasured(length, units)} board${hangsOn ? "" : " between the walls"}`
      : `${printMeasured(length, units)} board + 2 × ${p(returnEach)} returns`,
    result: p(span),
    rounded: null,
  });
  const topHeight = boardTop(what, fields, context, notes);
  if (topHeight && !topHeight.isMoreThan(depth)) {
    notes.diagnostics.push(
      diagnostic(
        context.place(fields.depth ? ["depth"] : []),
        `${what}-below-floor`,
        `From ${p(topHeight)} above the floor a ${what} ${p(depth)} deep would reach the floor.`,
        { actual: p(depth), hint: "Look at its depth, and at top-height." },
      ),
    );
    return null;
  }
  if (topHeight && window) {
    const glass = window.sill.plus(window.height).minus(topHeight.minus(depth));
    if (glass.isMoreThan(window.height.dividedBy(3))) {
      notes.questions.push(
        `The ${what} hangs ${p(glass)} before the top of ${window.name}, more than a third of its height: is so much light to be lost?`,
      );
    }
  }
  return { inside, hangsOn, length, returnEach, span, depth, topHeight };
}

function boardLength(
  what: string,
  fields: BoardFields,
  context: ItemContext,
  notes: Notes,
): Length | null {
  const { window, units } = context;
  const p = (length: Length) => printLength(length, units);
  const inside = fields.mount === "inside";
  if (fields.board) {
    if (window && inside && fields.board.isMoreThan(window.width)) {
      notes.diagnostics.push(
        diagnostic(
          context.place(["board"]),
          "board-longer-than-recess",
          `The board is ${printMeasured(fields.board, units)}, but ${window.name} is ${printMeasured(window.width, units)} wide.`,
          {
            actual: fields.board.typed,
            expected: `${p(window.width)} or less`,
            hint: "A board inside the recess must be shorter than the opening; write its length, or mount: outside.",
          },
        ),
      );
    } else if (window && !inside && fields.board.isLessThan(window.width)) {
      notes.diagnostics.push(
        diagnostic(
          context.place(["board"]),
          "board-shorter-than-opening",
          `The board is ${printMeasured(fields.board, units)}, shorter than ${window.name}, which is ${printMeasured(window.width, units)} wide.`,
          {
            severity: "warning",
            actual: fields.board.typed,
            hint: "Measure the board again, or write mount: inside.",
          },
        ),
      );
    }
    return fields.board;
  }
  if (!window) {
    notes.diagnostics.push(
      withoutLength(context, {
        code: `${what}-without-board`,
        key: "board",
        onBed: `how long the front of this ${what} is`,
        atWindow: `how wide this ${what} is`,
        usual: { bed: `62" or 158 cm`, window: `96" or 244 cm` },
      }),
    );
    return null;
  }
  if (inside) {
    const clearance = context.length("recess-clearance");
    const length = window.width.minus(clearance.times(2)).downTo(finestStep(context.units));
    notes.working.push({
      what: "Board between the walls",
      sum: `${printMeasured(window.width, units)} opening − 2 × ${p(clearance)} clearance`,
      result: p(length),
      rounded: `down to ${units === "inches" ? "1/8″" : "1 mm"}`,
    });
    if (length.compare(Length.zero) > 0) return length;
    notes.diagnostics.push(
      diagnostic(
        context.place([]),
        `${what}-is-nothing`,
        "The clearances take up the whole width of the opening.",
        { hint: `Look at the window's size, and at the ${what}'s allowance recess-clearance.` },
      ),
    );
    return null;
  }
  const beyond = context.length("beyond-opening");
  const length = window.width.plus(beyond.times(2));
  notes.working.push({
    what: "Board",
    sum: `${printMeasured(window.width, units)} opening + 2 × ${p(beyond)} beyond it`,
    result: p(length),
    rounded: null,
  });
  notes.questions.push(
    `How long is the board of the ${what}? ${p(length)} is assumed, ${p(beyond)} beyond the opening at each side.`,
  );
  return length;
}

function boardDepth(
  what: string,
  fields: BoardFields,
  context: ItemContext,
  notes: Notes,
): Length | null {
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const drop = fields["curtain-drop"];
  if (fields.depth) {
    if (drop) {
      const [least, most] = [drop.dividedBy(6), drop.dividedBy(5)];
      if (fields.depth.isLessThan(least) || fields.depth.isMoreThan(most)) {
        notes.questions.push(
          `At its shortest the ${what} is ${printMeasured(fields.depth, units)} deep, where a sixth to a fifth of the curtain, ${p(least)} to ${p(most)}, is usual: is it meant so?`,
        );
      }
    }
    return fields.depth;
  }
  if (!drop) {
    notes.diagnostics.push(
      diagnostic(
        context.place([]),
        `${what}-without-depth`,
        `Nothing says how deep this ${what} is.`,
        {
          expected: "depth, or curtain-drop",
          hint: `Write for example depth: 16" or 41 cm, or curtain-drop: and the finished length of the curtains beneath it.`,
        },
      ),
    );
    return null;
  }
  const share = context.ratio("depth-share");
  const marked = units === "inches" ? Length.inches(new Fraction(1, 2)) : Length.cm(1);
  const depth = drop.times(share).nearest(marked);
  notes.working.push({
    what: "Depth at its shortest",
    sum: `${printMeasured(drop, units)} curtain × ${share.toString()}`,
    result: p(depth),
    rounded: units === "inches" ? "to the nearest 1/2″" : "to the nearest centimetre",
  });
  notes.questions.push(
    `How deep is the ${what}? ${p(depth)} is taken from the curtain; a sixth to a fifth of it is usual.`,
  );
  return depth;
}

function boardTop(
  what: string,
  fields: BoardFields,
  context: ItemContext,
  notes: Notes,
): Length | null {
  const { window, units, roomHeight } = context;
  const typed = fields["top-height"];
  if (typed) {
    if (roomHeight && typed.isMoreThan(roomHeight)) {
      notes.diagnostics.push(
        diagnostic(
          context.place(["top-height"]),
          "board-above-ceiling",
          `The board stands at ${printMeasured(typed, units)}, above the ceiling at ${printMeasured(roomHeight, units)}.`,
          {
            actual: typed.typed,
            expected: `${printLength(roomHeight, units)} or less`,
            hint: "Measure from the floor to the board's upper face.",
          },
        ),
      );
    }
    return typed;
  }
  if (!window) return null;
  const opening = window.sill.plus(window.height);
  const wanted =
    fields.mount === "inside" ? opening : opening.plus(context.length("above-opening"));
  const height = roomHeight ? Length.min(wanted, roomHeight) : wanted;
  notes.questions.push(
    `How high above the floor is the upper face of the board of the ${what}? ${printLength(height, units)} is drawn.`,
  );
  return height;
}
