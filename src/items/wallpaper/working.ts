import type { Length } from "../../units/length.ts";
import { printLength, printMeasured } from "../../units/printLength.ts";
import type { ItemContext, WorkingLine } from "../itemKind.ts";
import type { HungPaper } from "./hung.ts";
import type { Paper } from "./paper.ts";

/** How the rolls come about, from the strip's cut to the spare ones; nothing where the roll's size is not known. */
export function paperWorking(paper: Paper, hung: HungPaper, context: ItemContext): WorkingLine[] {
  return [
    ...stripLines(paper, hung, context),
    ...perRollLines(paper, hung, context),
    ...rollLines(paper, hung),
  ];
}

function stripLines({ roll, trim }: Paper, hung: HungPaper, context: ItemContext): WorkingLine[] {
  if (!roll) return [];
  const p = (l: Length) => printLength(l, context.units);
  return [
    {
      what: "Strip",
      sum: `${p(hung.height)} ${hung.isCeiling ? "of ceiling" : "height"} + ${p(trim)} trim`,
      result: p(hung.cut),
      rounded: null,
    },
    ...hung.stretches.map((s) => ({
      what: `Strips, ${[...new Set(s.runs.map((r) => r.wall))].join(", ")}`,
      sum: `${p(s.width)} ÷ ${p(roll.width)} roll width${s.saved ? `, less ${s.saved} inside large openings` : ""}`,
      result: String(s.strips),
      rounded: "up to whole strips",
    })),
  ];
}

/** Spacing along the roll where there is a repeat, and strips a roll by the worst start. */
function perRollLines(paper: Paper, hung: HungPaper, context: ItemContext): WorkingLine[] {
  const { roll, repeat } = paper;
  const { ask, cut, perRoll } = hung;
  if (!roll || !ask || !perRoll) return [];
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const inTurn = ask.repeat?.match === "half-drop" && paper.hanging === "in-turn";
  const spacing = repeat && {
    what: "Spacing along the roll",
    sum: `${p(cut)} up to ${inTurn ? "an odd number of half repeats" : "whole repeats"} of ${p(repeat.up)}`,
    result: p(perRoll.spacing),
    rounded: "up",
  };
  const perRollLine = {
    what: "Strips a roll",
    sum: repeat
      ? `1 + (${printMeasured(roll.length, units)} roll − ${p(repeat.up)} that may be lost − ${p(cut)}) ÷ ${p(perRoll.spacing)}`
      : `1 + (${printMeasured(roll.length, units)} roll − ${p(cut)}) ÷ ${p(perRoll.spacing)}`,
    result: String(perRoll.worst),
    rounded: "down to whole strips",
  };
  return spacing ? [spacing, perRollLine] : [perRollLine];
}

/** Rolls by the worst start, with the best start beside them where there is a motif to begin at. */
function rollLines({ repeat, spare }: Paper, hung: HungPaper): WorkingLine[] {
  const { ask, perRoll, rollsHung, rollsBest, strips } = hung;
  if (!ask || !perRoll || rollsHung === null) return [];
  const apart = ask.repeat?.match === "half-drop" && ask.hanging === "two-stocks";
  const bought = {
    what: "Rolls",
    sum: `${strips} strips ÷ ${perRoll.worst} a roll${apart ? ", odd and even strips apart" : ""} + ${spare} spare`,
    result: String(rollsHung + spare),
    rounded: "up to whole rolls",
  };
  if (!repeat || rollsBest === null) return [bought];
  const best = {
    what: "Were every roll to begin at the motif",
    sum: `${strips} strips ÷ ${perRoll.best} a roll; not to be bought by`,
    result: `${rollsBest} rolls, no spare`,
    rounded: "up to whole rolls",
  };
  return [bought, best];
}
