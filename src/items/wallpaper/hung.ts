import { Length } from "../../units/length.ts";
import type { ItemContext, WallRun } from "../itemKind.ts";
import { type Paper, stripAskOf } from "./paper.ts";
import type { WallpaperFields } from "./schema.ts";
import { type HungStretch, stretchesOf, wallGroups } from "./stretches.ts";
import { rollsFor, type StripAsk, type StripsPerRoll, stripsPerRoll } from "./strips.ts";

/** The paper as it is hung: its strips, and the rolls that they are cut from. */
export interface HungPaper {
  readonly runs: readonly WallRun[];
  readonly isCeiling: boolean;
  readonly height: Length;
  readonly cut: Length;
  /** What the strips are reckoned by; null, and no rolls, where the roll's size is not known. */
  readonly ask: StripAsk | null;
  readonly stretches: readonly HungStretch[];
  readonly strips: number;
  readonly perRoll: StripsPerRoll | null;
  /** Rolls that are hung, by the worst start; null where they cannot be reckoned. */
  readonly rollsHung: number | null;
  readonly rollsBest: number | null;
}

/** Strips as high as is said, else as the highest wall (on a ceiling as long as it is), and a trim; over each stretch of wall; and their rolls. */
export function hangPaper(
  fields: WallpaperFields,
  paper: Paper,
  runs: readonly WallRun[],
  context: ItemContext,
): HungPaper {
  const { roll, trim, large } = paper;
  const height =
    fields.height ??
    (runs.length ? Length.max(...runs.map((r) => r.height)) : (context.roomHeight ?? Length.zero));
  const cut = height.plus(trim);
  const ask = stripAskOf(paper, cut);
  const groups = wallGroups(fields.on, runs);
  const stretches =
    ask && roll
      ? stretchesOf({ groups, height, strips: ask, rollWidth: roll.width, trim, large })
      : [];
  const strips = stretches.reduce((n, s) => n + s.strips, 0);
  return {
    runs,
    isCeiling: fields.on === "ceiling",
    height,
    cut,
    ask,
    stretches,
    strips,
    perRoll: ask ? stripsPerRoll(ask) : null,
    rollsHung: ask && strips > 0 ? rollsFor(strips, ask, "worst") : null,
    rollsBest: ask && strips > 0 ? rollsFor(strips, ask, "best") : null,
  };
}
