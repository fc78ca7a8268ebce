import type { TrapFinder } from "../trap.ts";

/** A line of dots, with which YAML ends a document before its end. */
export const documentMarks: TrapFinder = ({ all, lines }) =>
  all.flatMap((piece) => {
    if (piece.kind !== "document") return [];
    return [
      {
        code: "document-twice",
        message: `A line of ${piece.text} ends the front matter before its end.`,
        how: "Take the line out.",
        line: piece.line,
        column: piece.column,
        actual: lines[piece.line] as string,
        expected: null,
        mended: null,
        readOnAs: "",
      },
    ];
  });
