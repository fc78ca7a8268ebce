import Fraction from "fraction.js";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printMeasured } from "../../units/printLength.ts";
import { type Notes, newNotes } from "../common/notes.ts";
import type { ItemContext, MaterialNeed, WallRun, WorkingLine } from "../itemKind.ts";
import { beyondWall, noLongerThanRepeat, withoutHeight, withoutRoll } from "./borderFaults.ts";
import { type BorderAsk, borderStretches } from "./borderRuns.ts";
import type { WallpaperFields } from "./schema.ts";

/** A border as it is hung: where, how far it runs, and its rolls. */
export interface HungBorder {
  readonly cloth: string;
  /** `border-0`: its place in the list. */
  readonly surface: string;
  readonly name: string;
  readonly at: "ceiling" | "rail" | "skirting";
  /** Its lower edge above the floor. */
  readonly foot: Length;
  readonly width: Length;
  /** Along all runs, less the openings that stand in its way. */
  readonly run: Length;
  /** Lengths without a break, each cut with its trim. */
  readonly stretches: number;
  readonly rolls: number | null;
  readonly spare: number;
}

export interface BorderRead {
  readonly borders: readonly HungBorder[];
  readonly diagnostics: readonly Diagnostic[];
  readonly working: readonly WorkingLine[];
  readonly materials: readonly MaterialNeed[];
  readonly questions: readonly string[];
}

/**
 * Rolls of border: run over roll length, up. Where it has a repeat along its roll, each roll after the first loses up to one repeat
 * to meet the last, so a roll counts for its length less a repeat (the paper's worst start, carried over). Null where one is no longer
 * than its repeat.
 */
export function borderRolls(run: Length, roll: Length, repeat: Length | null): number | null {
  if (run.isZero()) return 0;
  const each = repeat ? roll.minus(repeat) : roll;
  if (each.compare(Length.zero) <= 0) return null;
  return Number(run.over(each).ceil().valueOf());
}

/** Everything about the borders of a paper: places, runs, rolls, and what is wrong with them, each at its line. */
export function readBorders(
  fields: WallpaperFields,
  groups: readonly (readonly WallRun[])[],
  height: Length,
  context: ItemContext,
): BorderRead {
  const notes = newNotes();
  const materials: MaterialNeed[] = [];
  const borders: HungBorder[] = [];
  for (const [n, border] of (fields.borders ?? []).entries()) {
    const hung = hangBorder({ n, border, groups, height }, context, notes);
    if (!hung) continue;
    borders.push(hung);
    materials.push(...borderRollsNeed(hung));
  }
  const { diagnostics, working, questions } = notes;
  return { borders, diagnostics, working, materials, questions };
}

/** A border where it runs; null, with a diagnostic, where its roll, its place or the room for it is not there. */
function hangBorder(ask: BorderAsk, context: ItemContext, notes: Notes): HungBorder | null {
  const { n, border, groups, height } = ask;
  const card = context.cloth(border.cloth);
  const roll = card?.roll ?? null;
  if (card && !roll) notes.diagnostics.push(withoutRoll(ask, card, context));
  if (!roll) return null;
  if (border.at === "rail" && !border.height) {
    notes.diagnostics.push(withoutHeight(ask, context));
    return null;
  }
  const foot =
    border.height ??
    (border.at === "ceiling" ? height.minus(roll.width) : context.length("skirting-height"));
  if (foot.isNegative() || foot.plus(roll.width).isMoreThan(height)) {
    notes.diagnostics.push(beyondWall(ask, foot, roll.width, context));
    return null;
  }
  const parts = borderStretches(groups, foot, foot.plus(roll.width));
  const trim = context.length("border-trim");
  const run = Length.sum(parts);
  const needed = run.plus(trim.times(parts.length));
  const repeat = card?.repeat && card.repeat.match !== "free" ? card.repeat.up : null;
  const hung: HungBorder = {
    cloth: border.cloth,
    surface: `border-${n}`,
    name: card?.name ?? border.cloth,
    at: border.at,
    foot,
    width: roll.width,
    run,
    stretches: parts.length,
    rolls: borderRolls(needed, roll.length, repeat),
    spare: context.count("spare-border-rolls"),
  };
  if (hung.rolls === null)
    notes.diagnostics.push(noLongerThanRepeat(ask, hung.name, roll.length, repeat, context));
  notes.working.push(...borderWorking(hung, { trim, needed, roll: roll.length, repeat }, context));
  if (border.at === "skirting" && !border.height)
    notes.questions.push(
      `The border stands on the skirting, taken as ${printLength(foot, context.units)} high: is it so?`,
    );
  return hung;
}

/** How a border's length and its rolls come about. */
function borderWorking(
  { name, run, stretches, rolls, spare }: HungBorder,
  by: {
    readonly trim: Length;
    readonly needed: Length;
    readonly roll: Length;
    readonly repeat: Length | null;
  },
  context: ItemContext,
): WorkingLine[] {
  const p = (l: Length) => printLength(l, context.units);
  const roll = `${printMeasured(by.roll, context.units)} roll`;
  const each = by.repeat ? `(${roll} − ${p(by.repeat)} lost at each join)` : roll;
  return [
    {
      what: `Border ${name}`,
      sum: `${p(run)} in ${stretches} ${stretches === 1 ? "stretch" : "stretches"} + ${stretches} × ${p(by.trim)} trim`,
      result: p(by.needed),
      rounded: null,
    },
    {
      what: "Rolls of border",
      sum: `${p(by.needed)} ÷ ${each} + ${spare} spare`,
      result: rolls === null ? "not reckoned" : String(rolls + spare),
      rounded: "up to whole rolls",
    },
  ];
}

function borderRollsNeed({ cloth, name, rolls, spare }: HungBorder): MaterialNeed[] {
  if (rolls === null) return [];
  return [
    {
      what: name,
      cloth,
      amount: new Fraction(rolls + spare),
      unit: "roll",
      text: `${rolls + spare} rolls of border ${name}, of one batch${spare > 0 ? `, ${spare} of them spare` : ""}`,
      by: "studio",
    },
  ];
}
