import { diagnostic } from "../../../diagnostics/diagnostic.ts";
import { Length } from "../../../units/length.ts";
import { printLength, printSize } from "../../../units/printLength.ts";
import type { AlongMatch, ClothFacts, ItemContext, ItemCut } from "../../itemKind.ts";
import { centredAcross, centredPlace, hasMotif } from "../join/centredMotif.ts";
import { handbookRows } from "../join/handbookRows.ts";
import type { JoinedPart } from "../join/joinedPart.ts";
import {
  gapQuestion,
  hasMotifInMiddle,
  joinedCuts,
  joinPiece,
  middleOfWidth,
} from "../join/joinPiece.ts";
import { handbookCut, selvedgeMatch } from "../join/selvedgeMatch.ts";
import type { Notes } from "../notes.ts";

/** A flat piece of cloth that may be wider than its cloth: a bed cover, a tablecloth, their linings. Sizes as cut, top up. */
export interface FlatAsk {
  readonly piece: string;
  readonly surface: string;
  readonly cloth: string;
  readonly width: Length;
  readonly height: Length;
  readonly count: number;
  /** Turning on each piece of a join. */
  readonly join: Length;
  /** Where a motif is to stand above the foot, in the middle of the width; null: the pattern lies as it falls. */
  readonly motifAboveFoot: Length | null;
  /** The motif was asked for in so many words: what stands in its way is an error. */
  readonly motifAsked: boolean;
  /** True, false, or not said: then a cloth that may turn is run sideways where that saves a join. */
  readonly railroad: boolean | undefined;
  readonly because: string;
  readonly keyPath: readonly string[];
}

export interface FlatPanel {
  readonly cuts: readonly ItemCut[];
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  readonly width: Length;
  readonly height: Length;
  /** The cloth runs sideways: its length lies across the piece, and joins run from side to side. */
  readonly sideways: boolean;
  /** From left to right, or from head to foot where it is sideways; null where there is no join. */
  readonly parts: readonly JoinedPart[] | null;
  readonly join: Length;
  readonly centred: boolean;
  /** In the middle of a joined one stands the gap between two motifs. */
  readonly gap: boolean;
  /** Widths of one, as the handbook counts them. */
  readonly widths: number;
  readonly handbook: Length;
}

/**
 * How the piece is cut: from one width; else sideways where the cloth may run so and that saves the join; else a whole width in the
 * middle and equal strips at its sides, in register, never a join down the middle. Null, with a diagnostic, where it cannot be cut.
 * The handbook's length: pieces side by side, each row up to whole repeats; a joined one takes whole widths.
 */
export function flatPanel(ask: FlatAsk, context: ItemContext, notes: Notes): FlatPanel | null {
  const p = (l: Length) => printLength(l, context.units);
  const cloth = context.cloth(ask.cloth);
  if (!cloth) return null;
  const usable = cloth.usableWidth;
  const fault = (code: string, message: string, hint: string) =>
    notes.diagnostics.push(
      diagnostic(context.place(ask.keyPath), code, message, { actual: cloth.id, hint }),
    );
  if (!usable) {
    fault(
      "cloth-without-width",
      `${cloth.name} has no width, so it cannot be said whether this ${ask.piece} needs a join.`,
      `Write width: in the card of ${cloth.id}, for example 54" or 137 cm.`,
    );
    return null;
  }
  if (ask.railroad === true && cloth.nap)
    notes.questions.push(
      `${cloth.name} has a pile: run sideways it lies from one side to the other. Is that wished?`,
    );
  const couldTurn = ask.railroad ?? (cloth.mayTurn && ask.width.isMoreThan(usable));
  const saves = !ask.height.isMoreThan(usable) && ask.width.isMoreThan(usable);
  const sideways = ask.railroad === true || (couldTurn && saves);
  const [over, run] = sideways ? [ask.height, ask.width] : [ask.width, ask.height];
  const laid = { width: over, height: run };
  const base = {
    piece: ask.piece,
    surface: ask.surface,
    cloth: ask.cloth,
    count: ask.count,
    because: `${ask.because}${sideways ? "; cloth run sideways" : ""}`,
  };
  const motif = hasMotif(cloth);
  if (ask.motifAsked && !motif) {
    notes.diagnostics.push(
      diagnostic(
        context.place(["motif"]),
        "no-motif-to-centre",
        `${cloth.name} has no repeat on its card, so nothing can be centred.`,
        {
          severity: "warning",
          actual: "centred",
          expected: "as-it-falls",
          hint: "Write the repeat on the cloth's card, or motif: as-it-falls.",
        },
      ),
    );
  }
  const wants = ask.motifAboveFoot !== null && motif && !sideways;
  const matched = cloth.repeat !== null && cloth.repeat.match !== "free";
  const repeatUp = matched ? (cloth.repeat?.up ?? null) : null;
  const panel = {
    cloth,
    usableWidth: usable,
    width: ask.width,
    height: ask.height,
    sideways,
    join: ask.join,
  };
  if (!over.isMoreThan(usable)) {
    const place = centredPlace(cloth, over, run);
    const centred = wants && place.fits;
    if (wants && !place.fits) {
      const words = `No motif of ${cloth.name} can stand in the middle of a piece ${p(over)} wide`;
      if (ask.motifAsked)
        fault(
          "motif-does-not-fit",
          `${words}; the widest that can is ${place.widest ? p(place.widest) : "not known"}.`,
          "Write motif: as-it-falls, make it narrower, or choose another cloth.",
        );
      else notes.questions.push(`${words}: where across it is the motif wanted?`);
    }
    // Where no motif can stand in the middle across, the pattern still begins from the middle along.
    const along: AlongMatch =
      wants && matched
        ? { how: "motif-at", aboveFoot: ask.motifAboveFoot as Length, joined: 0 }
        : { how: "free" };
    const cut: ItemCut = {
      ...base,
      ...laid,
      mayTurn: !wants && !sideways && cloth.mayTurn,
      across: centred ? place.across : { how: "free" },
      along,
    };
    const perRow = centred ? Math.max(1, centredAcross(cloth, over)) : 1;
    const rows = wants
      ? handbookCut(run, Math.ceil(ask.count / perRow), repeatUp, false).total
      : (handbookRows(
          Array.from({ length: ask.count }, () => ({ width: over, length: run })),
          usable,
        ) ?? run.times(ask.count));
    return { ...panel, cuts: [cut], parts: null, centred, gap: false, widths: 1, handbook: rows };
  }
  const parts = joinPiece(over, usable, ask.join, "both-sides", wants ? cloth : null);
  if (!parts) {
    fault(
      "cloth-narrower-than-joins",
      `${cloth.name} is ${p(usable)} wide, which the turnings of its joins use up.`,
      "Look at the width on the cloth's card and at the allowance join.",
    );
    return null;
  }
  const gap = wants ? gapQuestion(cloth, ask.piece, parts) : null;
  if (gap) notes.questions.push(gap);
  const match = selvedgeMatch(cloth);
  if (match.question && !hasMotifInMiddle(parts)) notes.questions.push(match.question);
  const size = printSize([ask.width, ask.height], context.units);
  const series = `${ask.surface} ${size}`;
  const shift = wants ? middleOfWidth(cloth).shift : 0;
  const striped = !matched && cloth.repeat?.across != null;
  const cuts = joinedCuts(parts, { ...base, ...laid }, cloth, false, series).map(
    (cut, n): ItemCut => {
      // A stripe runs on over a join too: its strips are cut against the selvedge that joins, though nothing is met along it.
      const part = parts[n];
      const side = part?.motifFromLeft ? null : part?.selvedge;
      if (striped && side) return { ...cut, across: { how: "selvedge", side } };
      if (!wants || cut.along.how !== "level") return cut;
      const joined = part?.motifFromLeft ? 0 : (cut.along.joined + shift) % 2;
      return {
        ...cut,
        along: { how: "motif-at", aboveFoot: ask.motifAboveFoot as Length, joined },
      };
    },
  );
  const strip = parts[0]?.width ?? usable;
  const wholes = parts.length - 2;
  const widths = wholes + (strip.times(2).isMoreThan(usable) ? 2 : 1);
  notes.working.push({
    what: `${capital(ask.piece)}, joined`,
    sum: `${p(over)} ÷ ${p(usable)}; ${hasMotifInMiddle(parts) ? `a middle of ${p(parts[1]?.width ?? usable)}, the widest with a motif in its middle` : `${wholes === 1 ? "one whole width" : `${wholes} whole widths`} in the middle`}, ${p(ask.join)} turning on each piece of a join`,
    result: `2 strips of ${p(strip)} at the ${sideways ? "ends" : "sides"}; ${widths} widths of ${p(run)}`,
    rounded: "up to whole widths",
  });
  const handbook = handbookCut(run, widths * ask.count, repeatUp, match.shifts).total;
  return { ...panel, cuts, parts, centred: wants, gap: gap !== null, widths, handbook };
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Where the joins of a panel stand in the finished piece, from its left edge (or its head, sideways); `turning` is that edge's. */
export function joinsOf(panel: FlatPanel, turning: Length): Length[] {
  let at = Length.zero.minus(turning);
  return (panel.parts ?? []).slice(0, -1).map((part, n) => {
    at = at.plus(part.width).minus(n === 0 ? panel.join : panel.join.times(2));
    return at;
  });
}

/** Sums the handbook's lengths cloth by cloth. */
export function handbookOf(
  parts: readonly { readonly cloth: string; readonly length: Length }[],
): { cloth: string; length: Length }[] {
  const sums = new Map<string, Length>();
  for (const { cloth, length } of parts)
    sums.set(cloth, (sums.get(cloth) ?? Length.zero).plus(length));
  return [...sums].map(([cloth, length]) => ({ cloth, length }));
}
