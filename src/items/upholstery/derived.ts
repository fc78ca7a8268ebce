import type { JoinWay } from "../common/join/joinedPart.ts";
import type { ItemContext } from "../itemKind.ts";
import type { PieceEntry } from "./job.ts";

/**
 * Gives the pieces that are wider than their cloth their join: the way that is said, else the usual one; plain cloth that may lie
 * turned needs none. `assumed` tells that the usual way was taken. Each entry says what is added to it.
 */
export function withJoins(
  entries: readonly PieceEntry[],
  said: JoinWay | undefined,
  usual: JoinWay,
  cloth: string,
  railroad: boolean,
  context: ItemContext,
): { readonly entries: readonly PieceEntry[]; readonly assumed: boolean } {
  if (railroad) return { entries, assumed: false };
  let wide = 0;
  let assumed = false;
  const joined = entries.map((entry): PieceEntry => {
    const facts = context.cloth(entry.cloth ?? cloth);
    const usable = facts?.usableWidth ?? null;
    if (!facts || !usable || !entry.added) return entry;
    const width = entry.size[0].plus(entry.added.width);
    const length = entry.size[1].plus(entry.added.length);
    if (!width.isMoreThan(usable)) return entry;
    const turns = facts.mayTurn && !length.isMoreThan(usable);
    if (turns && said === undefined) return entry;
    wide += 1;
    if (said === undefined) assumed = true;
    return { ...entry, join: said ?? usual };
  });
  // Said where nothing is wide: the first piece carries it, so that its line is told that it says nothing.
  const [first, ...rest] = joined;
  if (said !== undefined && wide === 0 && first)
    return { entries: [{ ...first, join: said }, ...rest], assumed };
  return { entries: joined, assumed };
}

/** What is asked where the usual join was taken. */
export function joinQuestion(usual: JoinWay): string {
  return `It is wider than its cloth and nothing is said of joins: ${
    usual === "both-sides"
      ? "one width in the middle and equal strips at the sides are"
      : "a whole width and one strip are"
  } taken.`;
}
