import type { ClothPattern, Grains } from "../cutplan/piece.ts";
import type { Place } from "../cutplan/plan.ts";
import type { RoomRecord } from "../records/records.ts";
import type { Length } from "../units/length.ts";
import { planNumber } from "./arrival/planNumber.ts";
import { mod, type NamedPiece, type PlannedCloth, seriesKey } from "./cutPieces.ts";
import { grainsUp, lengthOfGrains } from "./grains.ts";
import type { GroupPlan, Run } from "./planGroup.ts";
import type { ClothPlan, LevelPieces, LotUse, PlannedPiece } from "./quantityTypes.ts";
import { toMeasure, type WashingLeft } from "./text/washWords.ts";

/** Turns the planner's grains into exact lengths, with the names of what is cut. */
export function planOfCloth(
  group: Pick<GroupPlan, "run" | "choices" | "unchosen"> & Partial<Pick<GroupPlan, "atHand">>,
  cloth: PlannedCloth,
  notForCutting: readonly string[],
  names: {
    readonly cloth: string;
    readonly maker: string | null;
    readonly lots: readonly LotUse[];
  },
): ClothPlan {
  const { run, unchosen } = group;
  const plan = run?.plan ?? null;
  const vertical = cloth.pattern?.vertical ?? 0;
  const saved = plan && unchosen !== null && unchosen > plan.length ? unchosen - plan.length : null;
  const made: Omit<ClothPlan, "number"> = {
    length: lengthOfGrains(plan?.length ?? 0),
    lowerBound: lengthOfGrains(plan?.lowerBound ?? 0),
    start: lengthOfGrains(plan?.start ?? 0),
    starts: (plan?.starts ?? []).map(lengthOfGrains),
    lengths: (plan?.lengths ?? []).map(lengthOfGrains),
    forCutting: notForCutting.length === 0,
    notForCutting,
    pattern: cloth.pattern
      ? {
          horizontal:
            cloth.pattern.horizontal > 0 ? lengthOfGrains(cloth.pattern.horizontal) : null,
          vertical: vertical > 0 ? lengthOfGrains(vertical) : (cloth.repeatUp as Length),
          match: vertical > 0 ? cloth.pattern.match : "free",
          motifX: cloth.motifX,
        }
      : null,
    pieces: run ? run.plan.places.map((place) => plannedPiece(place, run, cloth)) : [],
    crossCuts: (plan?.bands ?? []).map((cut) => ({ length: cut.length, y: lengthOfGrains(cut.y) })),
    itemByItem: plan?.itemByItem == null ? null : lengthOfGrains(plan.itemByItem),
    saved: saved === null ? null : lengthOfGrains(saved),
    chose: choseOf(group),
    levels: levelsOf(group, run, vertical),
    released: null,
    flaws: (group.atHand ?? []).flatMap(({ flaws }, length) =>
      flaws.map(({ x, y, width, height }) => ({
        length,
        x: lengthOfGrains(x),
        y: lengthOfGrains(y),
        width: lengthOfGrains(width),
        height: lengthOfGrains(height),
      })),
    ),
  };
  const widthMm = cloth.usableWidth.mm.toFraction();
  return { ...made, number: planNumber(made, { ...names, widthMm }) };
}

/** Where the first motif stands above the foot of each series of level pieces, as the plan has it. */
function levelsOf(
  group: Pick<GroupPlan, "choices">,
  run: Run | null,
  vertical: Grains,
): LevelPieces[] {
  if (!run || vertical === 0) return [];
  const inRegister = [...run.pieces.values()].filter(
    (each) => each.piece.along.rule === "register",
  );
  const keys = new Set(inRegister.flatMap((each) => seriesKey(each.from) ?? []));
  return [...keys].map((key) => {
    const mine = inRegister.filter((each) => seriesKey(each.from) === key);
    const alone = mine.length === inRegister.length;
    return {
      room: (mine[0] as NamedPiece).from.room,
      items: [...new Set(mine.map((each) => each.from.item))],
      motifAboveFoot: alone
        ? null
        : lengthOfGrains(mod(-(group.choices.phases.get(key) ?? 0), vertical)),
    };
  });
}

function choseOf(group: Pick<GroupPlan, "choices">): ClothPlan["chose"] {
  return [
    ...(group.choices.phases.size > 0 ? (["pattern-point"] as const) : []),
    ...(group.choices.instead.size > 0 ? (["welt-shape"] as const) : []),
  ];
}

function plannedPiece(place: Place, run: Run, cloth: PlannedCloth): PlannedPiece {
  const { from } = run.pieces.get(place.pieceId) as NamedPiece;
  const register = place.register ? ownColumn(place, cloth.pattern) : null;
  return {
    id: place.pieceId,
    room: from.room,
    item: from.item,
    piece: from.cut.piece,
    surface: from.cut.surface,
    x: lengthOfGrains(place.x),
    y: lengthOfGrains(place.y),
    width: lengthOfGrains(place.width),
    height: lengthOfGrains(place.height),
    turned: place.turned,
    mayTurn: from.cut.mayTurn && !cloth.nap,
    register: register && {
      x: register.x === null ? null : lengthOfGrains(register.x),
      y: register.y === null ? null : lengthOfGrains(register.y),
    },
    length: place.length,
    because: from.cut.because,
  };
}

/**
 * The planner gives the register of column 0. On half-drop cloth a piece in an odd column stands half a repeat off, so its own
 * register is one column on and half a repeat up: then x and y equal it modulo the repeat wherever the piece lies.
 */
function ownColumn(
  place: Place,
  pattern: ClothPattern | null,
): { readonly x: Grains | null; readonly y: Grains | null } {
  const { x, y } = place.register as NonNullable<Place["register"]>;
  if (pattern?.match !== "half-drop" || x === null || y === null || pattern.horizontal === 0)
    return { x, y };
  const column = Math.round((place.x - x) / pattern.horizontal);
  if (mod(column, 2) === 0) return { x, y };
  return {
    x: x + pattern.horizontal,
    y: mod(y + Math.floor(pattern.vertical / 2), pattern.vertical),
  };
}

/** Why a plan is not for cutting yet, each a sentence. */
export function notForCutting(
  received: "planned" | "too little" | "no",
  rooms: readonly RoomRecord[],
  estimated: boolean,
  leftOut: number,
  unchosen: readonly string[],
  repeatUnknown: boolean,
  washing: WashingLeft,
): string[] {
  const measure = toMeasure(washing, ["has", "have"]);
  return [
    ...(received === "no" ? ["The cloth has not been received and checked."] : []),
    ...(received === "too little" ? ["What was received does not hold these pieces."] : []),
    ...rooms
      .filter((room) => !room.fields.measured?.checked)
      .map((room) => `The measures of ${room.fields.room} have not been checked on site.`),
    ...(repeatUnknown ? ["How its pattern repeats is not known."] : []),
    ...(washing === "wash"
      ? ["The cloth has still to be washed, and measured again: the plan is what is expected then."]
      : []),
    ...(measure ? [`Its ${measure} not been measured since it was washed.`] : []),
    ...(estimated ? ["An item is only estimated: its pieces are not measured."] : []),
    ...unchosen.map((title) => `The client has not chosen yet how ${title} is made.`),
    ...(leftOut > 0 ? ["Pieces that this cloth cannot hold are left out."] : []),
  ];
}

/** The longest single length to be had, in grains, less the repeat that may be lost before its pattern point. */
export function maxLengthOf(bolt: Length | null, vertical: Grains): Grains | null {
  if (bolt === null) return null;
  return Math.max(1, grainsUp(bolt) - vertical);
}
