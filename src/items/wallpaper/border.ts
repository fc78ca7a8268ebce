import Fraction from "fraction.js";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printMeasured } from "../../units/printLength.ts";
import type { ItemContext, MaterialNeed, WallRun, WorkingLine } from "../itemKind.ts";
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

/** The parts of one run at a height that no opening interrupts. */
function clear(run: WallRun, foot: Length, head: Length): Length[] {
  const right = run.fromLeft.plus(run.width);
  const blocks = run.openings
    .filter((o) => o.foot.isLessThan(head) && o.foot.plus(o.height).isMoreThan(foot))
    .map(
      (o) =>
        [
          Length.max(o.fromLeft, run.fromLeft),
          Length.min(o.fromLeft.plus(o.width), right),
        ] as const,
    )
    .filter(([a, b]) => b.isMoreThan(a))
    .sort((a, b) => a[0].compare(b[0]));
  const parts: Length[] = [];
  let at = run.fromLeft;
  for (const [from, to] of blocks) {
    if (from.isMoreThan(at)) parts.push(from.minus(at));
    at = Length.max(at, to);
  }
  if (right.isMoreThan(at)) parts.push(right.minus(at));
  return parts;
}

/** Stretches of border: they run on round corners where nothing stands in the way and the walls are hung as one. */
function stretchesAt(
  groups: readonly (readonly WallRun[])[],
  foot: Length,
  head: Length,
): Length[] {
  return groups.flatMap((group) => {
    const out: Length[] = [];
    let open = false;
    for (const run of group) {
      const parts = clear(run, foot, head);
      const blockedAt = (edge: Length) =>
        run.openings.some(
          (o) =>
            o.foot.isLessThan(head) &&
            o.foot.plus(o.height).isMoreThan(foot) &&
            o.fromLeft.compare(edge) <= 0 &&
            o.fromLeft.plus(o.width).compare(edge) >= 0,
        );
      parts.forEach((part, n) => {
        const joins = n === 0 && open && !blockedAt(run.fromLeft);
        if (joins) out[out.length - 1] = (out.at(-1) as Length).plus(part);
        else out.push(part);
      });
      open = parts.length > 0 && !blockedAt(run.fromLeft.plus(run.width));
    }
    return out;
  });
}

/** Everything about the borders of a paper: places, runs, rolls, and what is wrong with them, each at its line. */
export function readBorders(
  fields: WallpaperFields,
  groups: readonly (readonly WallRun[])[],
  height: Length,
  context: ItemContext,
): BorderRead {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const diagnostics: Diagnostic[] = [];
  const working: WorkingLine[] = [];
  const materials: MaterialNeed[] = [];
  const questions: string[] = [];
  const borders: HungBorder[] = [];
  for (const [n, border] of (fields.borders ?? []).entries()) {
    const card = context.cloth(border.cloth);
    const roll = card?.roll ?? null;
    const place = (key: string) => context.place(["borders", n, key]);
    if (card && !roll) {
      diagnostics.push(
        diagnostic(
          place("cloth"),
          "border-without-roll",
          `${card.name} has no roll size on its card, so no rolls of border can be counted.`,
          {
            actual: border.cloth,
            expected: "a wallcovering's card with its roll",
            hint: "Write on the card, for example: roll: { width: 10 cm, length: 5 m }.",
          },
        ),
      );
    }
    if (!roll) continue;
    if (border.at === "rail" && !border.height) {
      diagnostics.push(
        diagnostic(
          place("at"),
          "border-not-measured",
          "A border at a rail needs its height above the floor, and none is written.",
          {
            expected: "height",
            hint: `Write height: ${p(units === "inches" ? Length.inches(36) : Length.cm(90))}, to the border's lower edge.`,
          },
        ),
      );
      continue;
    }
    const foot =
      border.height ??
      (border.at === "ceiling" ? height.minus(roll.width) : context.length("skirting-height"));
    if (foot.isNegative() || foot.plus(roll.width).isMoreThan(height)) {
      diagnostics.push(
        diagnostic(
          place(border.height ? "height" : "at"),
          "border-beyond-wall",
          `With its lower edge at ${p(foot)} a border ${p(roll.width)} wide reaches beyond the ${p(height)} that are papered.`,
          {
            actual: p(foot),
            expected: `${p(Length.max(height.minus(roll.width), Length.zero))} or less`,
            hint: "Write the height of the border's lower edge above the floor.",
          },
        ),
      );
      continue;
    }
    const parts = stretchesAt(groups, foot, foot.plus(roll.width));
    const trim = context.length("border-trim");
    const run = Length.sum(parts);
    const needed = run.plus(trim.times(parts.length));
    const repeat = card?.repeat && card.repeat.match !== "free" ? card.repeat.up : null;
    const rolls = borderRolls(needed, roll.length, repeat);
    const spare = context.count("spare-border-rolls");
    if (rolls === null)
      diagnostics.push(
        diagnostic(
          place("cloth"),
          "border-roll-too-short",
          `A roll of ${card?.name} is ${printMeasured(roll.length, units)} long, no longer than its repeat of ${p(repeat ?? roll.length)}.`,
          { hint: "Check roll and repeat on its card." },
        ),
      );
    const name = card?.name ?? border.cloth;
    working.push(
      {
        what: `Border ${name}`,
        sum: `${p(run)} in ${parts.length} ${parts.length === 1 ? "stretch" : "stretches"} + ${parts.length} × ${p(trim)} trim`,
        result: p(needed),
        rounded: null,
      },
      {
        what: "Rolls of border",
        sum: `${p(needed)} ÷ ${repeat ? `(${printMeasured(roll.length, units)} roll − ${p(repeat)} lost at each join)` : `${printMeasured(roll.length, units)} roll`} + ${spare} spare`,
        result: rolls === null ? "not reckoned" : String(rolls + spare),
        rounded: "up to whole rolls",
      },
    );
    if (rolls !== null)
      materials.push({
        what: name,
        cloth: border.cloth,
        amount: new Fraction(rolls + spare),
        unit: "roll",
        text: `${rolls + spare} rolls of border ${name}, of one batch${spare > 0 ? `, ${spare} of them spare` : ""}`,
        by: "studio",
      });
    if (border.at === "skirting" && !border.height)
      questions.push(`The border stands on the skirting, taken as ${p(foot)} high: is it so?`);
    borders.push({
      cloth: border.cloth,
      surface: `border-${n}`,
      name,
      at: border.at,
      foot,
      width: roll.width,
      run,
      stretches: parts.length,
      rolls,
      spare,
    });
  }
  return { borders, diagnostics, working, materials, questions };
}
