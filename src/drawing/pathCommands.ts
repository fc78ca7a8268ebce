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
function* written(d: PathData): Generator<PathCommand> {
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

/**
 * The commands of a path, all absolute: M, L, H, V, C, Q, A and Z. The short forms of curves come as the long ones, their first control
 * point the mirror of the last one of the curve before (W3C, SVG 1.1, 8.3.6 and 8.3.7). Throws on relative commands.
 */
export function* pathCommands(d: PathData): Generator<PathCommand> {
  let [x, y] = [0, 0];
  let start: readonly [number, number] = [0, 0];
  /** The last control point of the curve before, and of which sort that was. */
  let control: { readonly of: string; readonly x: number; readonly y: number } | null = null;
  for (const one of written(d)) {
    const long = one.command === "S" ? "C" : one.command === "T" ? "Q" : one.command;
    const mirror: readonly number[] =
      control?.of === long ? [2 * x - control.x, 2 * y - control.y] : [x, y];
    const values = long === one.command ? one.values : [...mirror, ...one.values];
    yield { command: long, values };
    const last = (back: number) => values[values.length - back] as number;
    if (long === "Z") [x, y] = start;
    else if (long === "H") x = last(1);
    else if (long === "V") y = last(1);
    else [x, y] = [last(2), last(1)];
    if (long === "M") start = [x, y];
    control = long === "C" || long === "Q" ? { of: long, x: last(4), y: last(3) } : null;
  }
}
