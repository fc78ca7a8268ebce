import type { Length } from "../../../units/length.ts";
import { printLength, type UnitSystem } from "../../../units/printLength.ts";
import type { ClothFacts, WorkingLine } from "../../itemKind.ts";
import type { Notes } from "../notes.ts";
import { type HandbookCut, handbookCut, selvedgeMatch } from "./selvedgeMatch.ts";

export interface WidthsAsk {
  /** One cut without its repeat. */
  readonly plain: Length;
  /** What it is called in the working: `Cut length`. */
  readonly called: string;
  /** Widths of cloth in all. */
  readonly cuts: number;
  /** Whether any two of them meet at a selvedge. */
  readonly joined: boolean;
}

/** What the handbook makes of equal widths of a cloth that lies along its length. */
export interface WidthsByHandbook {
  readonly handbook: HandbookCut;
  /** Whether neighbouring widths hang half a repeat lower. */
  readonly shifts: boolean;
  /** The repeat that each cut is brought up to; null on a cloth that need not match. */
  readonly repeatUp: Length | null;
}

/** Equal widths by the handbook, with the lines of its working, and with the question of a half-drop where widths meet. */
export function widthsByHandbook(
  ask: WidthsAsk,
  cloth: ClothFacts,
  units: UnitSystem,
  notes: Notes,
): WidthsByHandbook {
  const { plain, cuts, joined } = ask;
  const repeatUp = cloth.repeat && cloth.repeat.match !== "free" ? cloth.repeat.up : null;
  const match = selvedgeMatch(cloth);
  const shifts = match.shifts && joined;
  if (joined && match.question) notes.questions.push(match.question);
  const found = { handbook: handbookCut(plain, cuts, repeatUp, shifts), shifts, repeatUp };
  notes.working.push(...handbookWorking(ask, found, units));
  return found;
}

/** How the handbook comes to its figure: each cut up to whole repeats, and half a repeat for every second one where they shift. */
export function handbookWorking(
  { plain, called, cuts }: Omit<WidthsAsk, "joined">,
  { handbook, shifts, repeatUp }: WidthsByHandbook,
  units: UnitSystem,
): WorkingLine[] {
  const p = (length: Length) => printLength(length, units);
  const halves = shifts && repeatUp ? Math.floor(cuts / 2) : 0;
  const more =
    halves > 0 && repeatUp ? ` + ${halves} × ${p(repeatUp.dividedBy(2))} for the half-drop` : "";
  const total = {
    what: "By the handbook",
    sum: `${cuts} × ${p(handbook.cutLength)}${more}`,
    result: p(handbook.total),
    rounded: null,
  };
  if (!repeatUp || handbook.repeats === null) return [total];
  const withRepeat = {
    what: `${called}, with its repeat`,
    sum: `${p(plain)} ÷ ${p(repeatUp)} repeat = ${plain.over(repeatUp).valueOf().toFixed(2)}; ${handbook.repeats} × ${p(repeatUp)}`,
    result: p(handbook.cutLength),
    rounded: "up to whole repeats",
  };
  return [withRepeat, total];
}
