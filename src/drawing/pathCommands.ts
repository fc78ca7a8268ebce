import type { PathData } from "./shape.ts";

/** Numbers that one use of a command takes (W3C, SVG 1.1, 8.3). */
const COUNTS: Readonly<Record<string, number>> = {
  M: 2,
  L: 2,
  H: 1,
  V: 1,
  C: 6,
  S: 4,
  Q: 4,
  T: 2,
  A: 7,
  Z: 0,
};

/** One use of a command with its numbers; a command that is followed by several sets of numbers comes once for each. */
export interface PathCommand {
  readonly command: string;
  readonly values: readonly number[];
}

/** The commands of a path, all absolute. Throws on relative ones, which our own helpers never write. */
export function* pathCommands(d: PathData): Generator<PathCommand> {
  for (const [, command, rest] of d.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const need = COUNTS[command as string];
    if (need === undefined) throw new Error(`Path data must be absolute; found ${command}`);
    const numbers = ((rest as string).match(/-?\d*\.?\d+(?:e-?\d+)?/g) ?? []).map(Number);
    if (need === 0) yield { command: command as string, values: [] };
    for (let at = 0; need > 0 && at + need <= numbers.length; at += need)
      // Further places after a move are joined by lines.
      yield {
        command: command === "M" && at > 0 ? "L" : (command as string),
        values: numbers.slice(at, at + need),
      };
  }
}
