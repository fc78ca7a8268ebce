import type { AcrossRule, AlongRule, ClothPattern, CutPiece, Grains } from "../cutplan/piece.ts";
import type { ClothFacts, ItemCut } from "../items/itemKind.ts";
import { Length } from "../units/length.ts";
import { grainsNearest, grainsUp } from "./grains.ts";

/** The pieces of one cut of one item, before they are numbered for the planner. */
export interface RoomCut {
  readonly room: string;
  readonly item: string;
  /** Its place in the item's list of cuts. */
  readonly at: number;
  readonly cut: ItemCut;
}

/** A planner's piece and what it is. */
export interface NamedPiece {
  readonly from: RoomCut;
  readonly piece: CutPiece;
}

/** The cloth as the planner sees it: usable width and repeat in grains, and where the first motif stands. */
export interface PlannedCloth {
  readonly usableWidth: Length;
  readonly usableWidthG: Grains;
  /** In grains; `vertical` is 0 on a free match. */
  readonly pattern: ClothPattern | null;
  readonly repeatUp: Length | null;
  /** From the left selvedge to the first motif's middle. */
  readonly motifX: Length;
  readonly nap: boolean;
}

/** Which series of level pieces stands at which pattern point, and which rectangle each bias reserve takes. */
export interface Choices {
  /** By series, its foot above the middle of a motif. */
  readonly phases: ReadonlyMap<string, Grains>;
  /** By piece key, an index into `instead`; absent: the size first given. */
  readonly instead: ReadonlyMap<string, number>;
}

/** Series are named within a room. */
export function seriesKey(cut: RoomCut): string | null {
  return cut.cut.along.how === "level" ? `${cut.room}/${cut.cut.along.series}` : null;
}

export function cutKey(cut: RoomCut): string {
  return `${cut.room}/${cut.item}/${cut.at}`;
}

/**
 * The cloth for the planner. A free match has nothing to meet along the length, but a stripe or motif may still be centred across;
 * without either there is no pattern.
 */
export function plannedCloth(
  facts: ClothFacts,
  usableWidth: Length,
  usableWidthG: Grains,
): PlannedCloth {
  const { repeat } = facts;
  const across = repeat?.across ?? null;
  const free = repeat?.match === "free";
  return {
    usableWidth,
    usableWidthG,
    pattern:
      repeat && !(free && across === null)
        ? {
            horizontal: across ? grainsUp(across) : 0,
            vertical: free ? 0 : grainsUp(repeat.up),
            match: repeat.match === "half-drop" ? "half-drop" : "straight",
          }
        : null,
    repeatUp: repeat?.up ?? null,
    motifX: repeat?.fromSelvedge ?? across?.dividedBy(2) ?? Length.zero,
    nap: facts.nap,
  };
}

/** Turns an item's cut into pieces for the planner, one for each of its count. Sizes go UP to the grain. */
export function piecesOf(from: RoomCut, cloth: PlannedCloth, choices: Choices): NamedPiece[] {
  const { cut } = from;
  const key = cutKey(from);
  const other = cut.instead?.[choices.instead.get(key) ?? -1];
  const whole = cut.across.how === "whole-width" || (other ?? cut).width.equals(cloth.usableWidth);
  const width = whole ? cloth.usableWidthG : grainsUp((other ?? cut).width);
  const across = acrossRule(cut, width, cloth);
  const shape = {
    group: key,
    width: withinSelvedge(width, across, cloth),
    height: grainsUp((other ?? cut).height),
    mayTurn: cut.mayTurn && !cloth.nap,
    across,
    along: alongRule(from, cloth, choices),
  };
  return Array.from({ length: cut.count }, (_, n) => ({
    from,
    piece: { id: `${key}/${n}`, ...shape },
  }));
}

/** What rounding to grains may push a piece in register over the selvedge: its width, its motif's place and that of two columns. */
const ROUNDED_OVER = 4;

/**
 * A piece in register that reaches the selvedge exactly stands over it by a few grains where the repeat across is no whole number of
 * them (thirds of an inch): it is that much narrower, a fortieth of a millimetre at most.
 */
function withinSelvedge(width: Grains, across: AcrossRule, cloth: PlannedCloth): Grains {
  const horizontal = cloth.pattern?.horizontal ?? 0;
  if (across.rule !== "register" || horizontal === 0) return width;
  const over = mod(across.residue, horizontal) + width - cloth.usableWidthG;
  return over > 0 && over <= ROUNDED_OVER ? width - over : width;
}

function acrossRule(cut: ItemCut, width: Grains, cloth: PlannedCloth): AcrossRule {
  const { across } = cut;
  if (across.how === "whole-width") return { rule: "at", positions: [0] };
  if (across.how === "selvedge") {
    return { rule: "at", positions: [across.side === "left" ? 0 : cloth.usableWidthG - width] };
  }
  const horizontal = cloth.pattern?.horizontal ?? 0;
  if (across.how === "free" || horizontal === 0) return { rule: "free" };
  // Left edge + fromLeft = motifX, modulo the repeat across. Not brought into the first repeat: on half-drop cloth the planner
  // counts its columns from here, so that pieces of every width agree on which column hangs lower.
  return { rule: "register", residue: grainsNearest(cloth.motifX.minus(across.fromLeft)) };
}

function alongRule(from: RoomCut, cloth: PlannedCloth, choices: Choices): AlongRule {
  const { along } = from.cut;
  const vertical = cloth.pattern?.vertical ?? 0;
  if (along.how === "free" || vertical === 0) return { rule: "free" };
  // Neighbouring widths of a half-drop at the selvedge are half a repeat apart: whole grains, down, as the planner's columns are.
  const halfDrop = cloth.pattern?.match === "half-drop";
  const shift = halfDrop && along.joined % 2 === 1 ? Math.floor(vertical / 2) : 0;
  const foot =
    along.how === "motif-at"
      ? // Foot + aboveFoot = a motif's middle, which is the pattern's origin.
        -grainsNearest(along.aboveFoot)
      : (choices.phases.get(seriesKey(from) as string) ?? 0);
  return { rule: "register", residue: mod(foot + shift, vertical) };
}

export function mod(value: number, period: number): number {
  return value - Math.floor(value / period) * period;
}
