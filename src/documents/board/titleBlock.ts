/** How a room's title is set: large where it is short, else smaller; and the height that it takes. */
export interface TitleBlock {
  readonly long: boolean;
  readonly lines: number;
  readonly heightMm: number;
}

/** About how wide a letter of the display face runs, and the step from line to line, millimetres, at 66 and at 44 pt. */
const LARGE = { letter: 10.6, line: 22 };
const SMALLER = { letter: 7.2, line: 16 };

/** About how many lines a title takes in a width. */
function linesOf(title: string, width: number, letterMm: number): number {
  let lines = 1;
  let used = 0;
  for (const word of title.split(/\s+/)) {
    const size = word.length * letterMm;
    if (used > 0 && used + letterMm * 0.6 + size > width) {
      lines++;
      used = size;
    } else used += (used > 0 ? letterMm * 0.6 : 0) + size;
    if (used > width) lines += Math.ceil(used / width) - 1;
  }
  return lines;
}

/** A title of at most two lines stands large; one that needs more, or has a word too long for the width, stands smaller. */
export function titleBlock(title: string, width: number): TitleBlock {
  const large = linesOf(title, width, LARGE.letter);
  const longest = Math.max(...title.split(/\s+/).map((w) => w.length)) * LARGE.letter;
  if (large <= 2 && longest <= width)
    return { long: false, lines: large, heightMm: large * LARGE.line };
  const lines = linesOf(title, width, SMALLER.letter);
  return { long: true, lines, heightMm: lines * SMALLER.line };
}
