import { capital } from "../../../units/capital.ts";
import { Length } from "../../../units/length.ts";
import { printLength, printSize } from "../../../units/printLength.ts";
import type { ClothFacts, ItemContext, ItemCut, WorkingLine } from "../../itemKind.ts";
import { clothFault } from "../clothFault.ts";
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
import { matchedTurning } from "../join/matchedTurning.ts";
import { motifWhereQuestion, noMotifInMiddle, noMotifToCentre } from "../join/motifFaults.ts";
import { handbookCut, selvedgeMatch } from "../join/selvedgeMatch.ts";
import { sidewaysAsItFalls } from "../join/sideways.ts";
import { motifPlaceWords } from "../motifPlaceWords.ts";
import type { Notes } from "../notes.ts";
import { nearlyWideEnough } from "./nearlyWideEnough.ts";

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
  const cloth = context.cloth(ask.cloth);
  if (!cloth) return null;
  const usable = cloth.usableWidth;
  if (!usable) {
    const lacks = `it cannot be said whether this ${ask.piece} needs a join`;
    clothFault(ask.keyPath, cloth, context, notes, {
      code: "cloth-without-width",
      message: `${cloth.name} has no width, so ${lacks}.`,
      hint: `Write width: in the card of ${cloth.id}, for example 54" or 137 cm.`,
    });
    return null;
  }
  const asItFalls = ask.railroad === true && hasMotif(cloth) ? sidewaysAsItFalls(cloth) : null;
  if (asItFalls) notes.questions.push(asItFalls);
  else if (ask.railroad === true && cloth.nap)
    notes.questions.push(
      `${cloth.name} has a pile: run sideways it lies from one side to the other. Is that wished?`,
    );
  if (ask.motifAsked && !hasMotif(cloth))
    notes.diagnostics.push(noMotifToCentre(cloth, "motif", context));
  const lay = layOf(ask, cloth, usable);
  const join = lay.sideways ? ask.join : matchedTurning(cloth, ask.join);
  return lay.across.isMoreThan(usable)
    ? joinedPanel({ ...ask, join }, lay, context, notes)
    : wholePanel(ask, lay, context, notes);
}

/** How the piece lies on its cloth. */
interface Lay {
  readonly cloth: ClothFacts;
  readonly usable: Length;
  readonly sideways: boolean;
  /** Of the piece, across the cloth and along it. */
  readonly across: Length;
  readonly along: Length;
  /** A motif is to stand in its middle, and the cloth has one. */
  readonly wants: boolean;
  /** Null on a cloth that need not match along its length. */
  readonly repeatUp: Length | null;
}

/** Sideways where it is said, or where nothing is said, the cloth may turn and that saves a join. */
function layOf(ask: FlatAsk, cloth: ClothFacts, usable: Length): Lay {
  const tooWide = ask.width.isMoreThan(usable);
  const saves = tooWide && !ask.height.isMoreThan(usable);
  const sideways = ask.railroad === true || ((ask.railroad ?? cloth.mayTurn) && saves);
  const matched = cloth.repeat !== null && cloth.repeat.match !== "free";
  return {
    cloth,
    usable,
    sideways,
    across: sideways ? ask.height : ask.width,
    along: sideways ? ask.width : ask.height,
    wants: ask.motifAboveFoot !== null && hasMotif(cloth) && !sideways,
    repeatUp: matched ? (cloth.repeat?.up ?? null) : null,
  };
}

/** What both ways of cutting begin with. */
function pieceOf(ask: FlatAsk, { across, along, sideways }: Lay) {
  return {
    piece: ask.piece,
    surface: ask.surface,
    cloth: ask.cloth,
    count: ask.count,
    because: `${ask.because}${sideways ? "; cloth run sideways" : ""}`,
    width: across,
    height: along,
  };
}

function panelOf(ask: FlatAsk, { cloth, usable, sideways }: Lay) {
  const { width, height, join } = ask;
  return { cloth, usableWidth: usable, width, height, sideways, join };
}

/** A piece from one width, its motif in its middle where that has room. */
function wholePanel(ask: FlatAsk, lay: Lay, context: ItemContext, notes: Notes): FlatPanel {
  const { cloth, usable, across, along, wants, repeatUp } = lay;
  const place = centredPlace(cloth, across, along);
  const centred = wants && place.fits;
  if (wants && !place.fits) sayNoRoom(ask, lay, place.widest, context, notes);
  const cut: ItemCut = {
    ...pieceOf(ask, lay),
    mayTurn: !wants && !lay.sideways && cloth.mayTurn,
    across: centred ? place.across : { how: "free" },
    // Where no motif can stand in the middle across, the pattern still begins from the middle along.
    along:
      wants && repeatUp
        ? { how: "motif-at", aboveFoot: ask.motifAboveFoot as Length, joined: 0 }
        : { how: "free" },
  };
  const perRow = centred ? Math.max(1, centredAcross(cloth, across)) : 1;
  const handbook = wants
    ? handbookCut(along, Math.ceil(ask.count / perRow), repeatUp, false).total
    : (handbookRows(
        Array.from({ length: ask.count }, () => ({ width: across, length: along })),
        usable,
      ) ?? along.times(ask.count));
  const whole = { parts: null, centred, gap: false, widths: 1, handbook };
  return { ...panelOf(ask, lay), cuts: [cut], ...whole };
}

/** A motif that has no room in the middle: an error where it was asked for, else a question. */
function sayNoRoom(
  ask: FlatAsk,
  { cloth, across }: Lay,
  widest: Length | null,
  context: ItemContext,
  notes: Notes,
): void {
  const { units } = context;
  if (!ask.motifAsked) {
    notes.questions.push(motifWhereQuestion(cloth, across, "across it", units));
    return;
  }
  clothFault(ask.keyPath, cloth, context, notes, {
    code: "motif-does-not-fit",
    message: `${noMotifInMiddle(cloth, across, units)}; the widest that can is ${widest ? printLength(widest, units) : "not known"}.`,
    hint: `Write motif: as-it-falls, make it narrower, or choose another cloth.${motifPlaceWords(cloth, units)}`,
  });
}

/** A piece wider than its cloth: a middle and a strip at each side, in register. Null, with a diagnostic, where joins use up the cloth. */
function joinedPanel(ask: FlatAsk, lay: Lay, context: ItemContext, notes: Notes): FlatPanel | null {
  const { cloth, usable, across, along, wants, repeatUp } = lay;
  const parts = joinPiece(across, usable, ask.join, "both-sides", wants ? cloth : null);
  if (!parts) {
    clothFault(ask.keyPath, cloth, context, notes, {
      code: "cloth-narrower-than-joins",
      message: `${cloth.name} is ${printLength(usable, context.units)} wide, which the turnings of its joins use up.`,
      hint: "Look at the width on the cloth's card and at the allowance join.",
    });
    return null;
  }
  const narrow = nearlyWideEnough(ask.piece, across, { name: cloth.name, usable }, context.units);
  if (narrow) notes.questions.push(narrow);
  const gap = wants ? gapQuestion(cloth, ask.piece, parts) : null;
  if (gap) notes.questions.push(gap);
  const match = selvedgeMatch(cloth);
  if (match.question && !hasMotifInMiddle(parts)) notes.questions.push(match.question);
  const strip = parts[0]?.width ?? usable;
  const widths = parts.length - 2 + (strip.times(2).isMoreThan(usable) ? 2 : 1);
  notes.working.push(joinedWorking(ask, lay, parts, widths, context));
  return {
    ...panelOf(ask, lay),
    cuts: inRegister(ask, lay, parts, context),
    parts,
    centred: wants,
    gap: gap !== null,
    widths,
    handbook: handbookCut(along, widths * ask.count, repeatUp, match.shifts).total,
  };
}

/** The parts level with each other, or with the motif where it is asked for; a stripe runs on over the joins too. */
function inRegister(
  ask: FlatAsk,
  lay: Lay,
  parts: readonly JoinedPart[],
  context: ItemContext,
): ItemCut[] {
  const { cloth, wants, repeatUp } = lay;
  const series = `${ask.surface} ${printSize([ask.width, ask.height], context.units)}`;
  const shift = wants ? middleOfWidth(cloth).shift : 0;
  const striped = repeatUp === null && cloth.repeat?.across != null;
  return joinedCuts(parts, pieceOf(ask, lay), cloth, false, series).map((cut, n): ItemCut => {
    // The strips of a stripe are cut against the selvedge that joins, though nothing is met along it.
    const part = parts[n];
    const side = part?.motifFromLeft ? null : part?.selvedge;
    if (striped && side) return { ...cut, across: { how: "selvedge", side } };
    if (!wants || cut.along.how !== "level") return cut;
    const joined = part?.motifFromLeft ? 0 : (cut.along.joined + shift) % 2;
    return { ...cut, along: { how: "motif-at", aboveFoot: ask.motifAboveFoot as Length, joined } };
  });
}

function joinedWorking(
  ask: FlatAsk,
  { across, along, usable, sideways }: Lay,
  parts: readonly JoinedPart[],
  widths: number,
  context: ItemContext,
): WorkingLine {
  const p = (l: Length) => printLength(l, context.units);
  const wholes = parts.length - 2;
  const middle = hasMotifInMiddle(parts)
    ? `a middle of ${p(parts[1]?.width ?? usable)}, the widest with a motif in its middle`
    : `${wholes === 1 ? "one whole width" : `${wholes} whole widths`} in the middle`;
  return {
    what: `${capital(ask.piece)}, joined`,
    sum: `${p(across)} ÷ ${p(usable)}; ${middle}, ${p(ask.join)} turning on each piece of a join`,
    result: `2 strips of ${p(parts[0]?.width ?? usable)} at the ${sideways ? "ends" : "sides"}; ${widths} widths of ${p(along)}`,
    rounded: "up to whole widths",
  };
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
