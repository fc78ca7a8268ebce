/** A commented example of a starting file, with everything below it, as it stands when its marks are taken away. */
export interface TriedOut {
  /** Its first line, for the name of a test. */
  readonly line: string;
  /** The whole file with this one example in use. */
  readonly file: string;
}

const KEY = /^(\s*)# ([\p{L}][\p{L}\p{N}-]*|- [\p{L}][\p{L}\p{N}-]*):(\s|$)/u;

/** The lines of a commented example: its own, and the commented ones below it that stand further in. */
function blockFrom(lines: readonly string[], at: number): number {
  const indent = (line: string): number => /^\s*# ?(\s*)/.exec(line)?.[1]?.length ?? 0;
  const own = indent(lines[at] as string);
  let end = at + 1;
  while (
    end < lines.length &&
    /^\s*# /.test(lines[end] as string) &&
    indent(lines[end] as string) > own
  )
    end++;
  return end;
}

/** Every commented example of a file, each tried out by itself: the mark of a line is taken away with those of what belongs to it. */
export function triedOut(file: string): TriedOut[] {
  const lines = file.split("\n");
  const close = lines.indexOf("---", 1);
  return lines.flatMap((line, at): TriedOut[] => {
    if (at < 2 || at >= close || !KEY.test(line)) return [];
    const end = blockFrom(lines, at);
    const used = lines.map((each, n) =>
      n >= at && n < end ? each.replace(/^(\s*)# /, "$1") : each,
    );
    return [{ line: line.trim(), file: used.join("\n") }];
  });
}
