/** How a room's title is set: large where it is short, else smaller; and the room that it takes, an estimate on the safe side. */
export interface TitleBlock {
  readonly long: boolean;
  readonly lines: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** About how wide a letter of the display face runs, and the step from line to line, millimetres, at 66 and at 44 pt. */
const LARGE = { letter: 10.6, line: 22 };
const SMALLER = { letter: 7.2, line: 16 };

/** About how many lines a title takes in a width, and how long the longest is. */
function linesOf(title: string, width: number, letterMm: number): { lines: number; most: number } {
  let lines = 1;
  let used = 0;
  let most = 0;
  for (const word of title.split(/\s+/)) {
    const size = word.length * letterMm;
    if (used > 0 && used + letterMm * 0.6 + size > width) {
      lines++;
      used = size;
    } else used += (used > 0 ? letterMm * 0.6 : 0) + size;
    if (used > width) lines += Math.ceil(used / width) - 1;
    most = Math.max(most, Math.min(used, width));
  }
  return { lines, most };
}

/** A title of at most two lines stands large; one that needs more, or has a word too long for the width, stands smaller. */
export function titleBlock(title: string, width: number): TitleBlock {
  const large = linesOf(title, width, LARGE.letter);
  const longest = Math.max(...title.split(/\s+/).map((w) => w.length)) * LARGE.letter;
  if (large.lines <= 2 && longest <= width)
    return {
      long: false,
      lines: large.lines,
      widthMm: large.most,
      heightMm: large.lines * LARGE.line,
    };
  const { lines, most } = linesOf(title, width, SMALLER.letter);
  return { long: true, lines, widthMm: most, heightMm: lines * SMALLER.line };
}

/** Where a title may stand: over the left-hand piece, or in one line over two of them where it is short enough. */
export function titleOver(title: string, first: number, firstTwo: number): TitleBlock {
  const wide = titleBlock(title, firstTwo);
  return wide.lines === 1 && !wide.long ? wide : titleBlock(title, first);
}
