import type { Dimension } from "../../drawing/shape.ts";
import { Length } from "../../units/length.ts";
import type { WallRun } from "../itemKind.ts";
import type { WallpaperMade } from "./pieces.ts";

/** Faces of one wall that are hung without a break, opened out flat: beside a chimney breast, its side, its front and so on. */
export interface OpenedWall {
  readonly runs: readonly WallRun[];
  /** How much of its stretch is hung before it, millimetres: a strip may begin on one wall and end on the next. */
  readonly beforeMm: number;
  /** Strips of the paper that are hung before its stretch. */
  readonly first: number;
  /** What is alike on every wall is dimensioned on the first alone. */
  readonly leads: boolean;
}

/** A face narrower than this is dimensioned above, where its figure finds room beside it, millimetres. */
const NARROW = 760;

/** What is known of a drawn wall: where its faces end and its strips join, from its left end, millimetres. */
interface DrawnWall {
  readonly wall: OpenedWall;
  readonly ends: readonly number[];
  readonly joins: readonly number[];
  /** True where a border's height is dimensioned at the left. */
  readonly banded: boolean;
}

/** Widths of a wall's faces and of all of it, the paper's height, and once an item a strip's width and the repeat. */
export function wallDimensions(
  { wall, ends, joins, banded }: DrawnWall,
  made: WallpaperMade,
  print: (length: Length) => string,
): Dimension[] {
  const { runs, leads } = wall;
  const whole = Length.sum(runs.map((run) => run.width));
  const cornered = runs.length > 1;
  const dimensions: Dimension[] = [
    {
      axis: "horizontal",
      from: 0,
      to: whole.toMm(),
      side: "bottom",
      level: cornered ? 2 : 1,
      text: cornered ? `${print(whole)} in all` : print(whole),
    },
    {
      axis: "vertical",
      from: 0,
      to: made.height.toMm(),
      side: "left",
      level: banded ? 2 : 1,
      text: print(made.height),
    },
  ];
  if (cornered)
    for (const [at, run] of runs.entries())
      dimensions.push({
        axis: "horizontal",
        from: ends[at] as number,
        to: ends[at + 1] as number,
        side: run.width.toMm() < NARROW ? "top" : "bottom",
        level: 1,
        text: print(run.width),
      });
  const [one, next] = joins;
  if (leads && one !== undefined && next !== undefined && made.rollWidth)
    dimensions.push({
      axis: "horizontal",
      from: one,
      to: next,
      side: "top",
      level: cornered ? 2 : 1,
      text: print(made.rollWidth),
    });
  const up = made.repeat?.up;
  if (leads && up && up.toMm() < made.height.toMm())
    dimensions.push({
      axis: "vertical",
      from: 0,
      to: up.toMm(),
      side: "right",
      level: 1,
      text: `${print(up)} repeat`,
      brief: print(up),
    });
  return dimensions;
}
