import type { Spot } from "./node.ts";

/**
 * The lines of a front matter as typed beside the lines that are read on with, where one was mended: a place in the mended text is
 * given as the place in the typed one.
 */
export class SourceLines {
  readonly typed: readonly string[];
  private readonly current: string[];
  private readonly firstLine: number;

  constructor(yaml: string, firstLine: number) {
    this.typed = yaml.split("\n");
    this.current = [...this.typed];
    this.firstLine = firstLine;
  }

  /** The text that is read on with. */
  text(): string {
    return this.current.join("\n");
  }

  lines(): readonly string[] {
    return this.current;
  }

  /** Reads on with another text for a line (from nought). */
  mend(line: number, by: string): void {
    this.current[line] = by;
  }

  /** From line and column counted from nought in the mended text to the place in the file. */
  spot(line: number, column: number): Spot {
    return { line: line + this.firstLine, column: this.typedColumn(line, column) + 1 };
  }

  /** The typed line (numbered as in the file), or null. */
  excerpt(fileLine: number): string | null {
    return this.typed[fileLine - this.firstLine] ?? null;
  }

  /** The line that is read on with (numbered as in the file), or null. */
  readOn(fileLine: number): string | null {
    return this.current[fileLine - this.firstLine] ?? null;
  }

  private typedColumn(line: number, column: number): number {
    const before = this.typed[line] ?? "";
    const after = this.current[line] ?? "";
    if (before === after) return column;
    let head = 0;
    while (head < before.length && head < after.length && before[head] === after[head]) head += 1;
    if (column <= head) return column;
    let tail = 0;
    while (
      tail < before.length - head &&
      tail < after.length - head &&
      before[before.length - 1 - tail] === after[after.length - 1 - tail]
    )
      tail += 1;
    if (column >= after.length - tail) return column - after.length + before.length;
    return Math.min(column, Math.max(head, before.length - tail - 1));
  }
}
