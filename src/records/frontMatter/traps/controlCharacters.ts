import type { TrapFinder } from "../trap.ts";

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/;

/** Characters that cannot be seen or printed, as a broken transfer leaves them. */
export const controlCharacters: TrapFinder = ({ lines }) =>
  lines.flatMap((line, at) => {
    const column = line.search(CONTROL);
    if (column < 0) return [];
    return [
      {
        code: "control-character",
        message: "A character on this line cannot be printed.",
        how: "Delete it.",
        line: at,
        column,
        actual: null,
        expected: null,
        mended: line.replace(new RegExp(CONTROL, "g"), ""),
      },
    ];
  });
