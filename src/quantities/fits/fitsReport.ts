import { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import { COMMON_PROJECT } from "../commonItems.ts";
import type { PlannedPiece } from "../quantityTypes.ts";
import { beginWords } from "../text/beginWords.ts";
import { clothText } from "../text/clothText.ts";
import { type Json, planJson } from "../text/toJson.ts";
import { SEAM_EACH_SIDE } from "./clothFits.ts";
import type { ClothFits, Makes, Miss, Named, RemnantInHand } from "./found.ts";

/** What was asked: the rooms' needs, and the common items, each null where it was not asked for. */
export interface FitsAsked {
  readonly rooms: ClothFits | null;
  readonly common: ClothFits | null;
  /** True of a cloth that is washed before it is cut. */
  readonly isWashed: boolean;
  /** True where the common items are the studio's own list. */
  readonly ownList: boolean;
}

/** The `fits` document: lengths in millimetres. What the common items come to stands apart from what the rooms need. */
export function fitsJson(cloth: string, remnant: RemnantInHand, asked: FitsAsked): Json {
  const width = (asked.rooms ?? asked.common)?.width;
  return {
    cloth,
    lengthMm: remnant.length.toMm(),
    widthMm: width?.toMm() ?? null,
    count: remnant.count,
    ...(asked.rooms ? foundJson(asked.rooms) : { makes: [], nearestMiss: null }),
    common: asked.common && { ownList: asked.ownList, ...foundJson(asked.common) },
  };
}

function foundJson(found: ClothFits) {
  const names = (each: Makes | Miss) => ({
    project: each.project,
    room: each.room,
    items: [...each.items],
    insteadOf: each.insteadOf,
  });
  return {
    makes: found.makes.map((each) => ({
      ...names(each),
      neededMm: each.needed.toMm(),
      keepsSelvedge: each.keeps,
      plan: planJson(each.plan),
    })),
    nearestMiss: found.nearestMiss && {
      ...names(found.nearestMiss),
      missingMm: found.nearestMiss.missing.toMm(),
      holdsPieces: found.nearestMiss.shortfall.holds,
      ofPieces: found.nearestMiss.shortfall.of,
      nextPiece: found.nearestMiss.shortfall.piece,
      nextMissingMm: found.nearestMiss.shortfall.missing?.toMm() ?? null,
      motifLowerMm: found.nearestMiss.shortfall.motifLower?.toMm() ?? null,
    },
  };
}

/** The same as text, with each plan's pieces. */
export function fitsText(
  name: string,
  remnant: RemnantInHand,
  asked: FitsAsked,
  units: UnitSystem,
): string {
  const p = (length: Length) => printLength(length, units);
  const { rooms, common } = asked;
  const width = (rooms ?? common)?.width as Length;
  const makes = [...(rooms?.makes ?? []), ...(common?.makes ?? [])];
  return [
    `${name}: ${remnant.count === 1 ? "a remnant" : `${remnant.count} lengths`} of ${p(remnant.length)}, ${p(width)} wide`,
    ...leftOut(remnant, p),
    ...(rooms
      ? foundText(
          rooms,
          remnant,
          units,
          rooms.makes.length === 0
            ? "It makes nothing that the rooms need."
            : "IT MAKES, each by itself",
        )
      : []),
    ...(common
      ? foundText(
          common,
          remnant,
          units,
          common.makes.length === 0
            ? "It makes none of the common items."
            : `COMMON ITEMS THAT IT MAKES, each by itself (${
                asked.ownList
                  ? "the studio's own list"
                  : "usual sizes; common practice, no source: write your own under common-items in studio.md"
              })`,
        )
      : []),
    ...(makes.length > 0 && remnant.firstMotif === null && makes.some((m) => inRegister(m))
      ? [
          "Where the pattern begins is not known, so one repeat is kept in reserve: --first-motif, from the lower end up to the middle of the first motif, may give it back.",
        ]
      : []),
    ...(asked.isWashed
      ? ["This cloth is washed before it is cut: the remnant's measures must be those after."]
      : []),
    "These plans are not for cutting: measure the remnant and look it over for flaws first.",
  ].join("\n");
}

function foundText(
  { makes, nearestMiss }: ClothFits,
  remnant: RemnantInHand,
  units: UnitSystem,
  title: string,
): string[] {
  const p = (length: Length) => printLength(length, units);
  const where = ({ project, titles, words }: Named) =>
    project === COMMON_PROJECT ? titles.join(", ") : `${words.where}: ${words.items.join("; ")}`;
  const instead = ({ words }: Named) =>
    words.insteadOf === null ? "" : ` (in place of ${words.insteadOf})`;
  return [
    title,
    ...makes.flatMap((each) => [
      `  ${where(each)}${instead(each)}: needs ${clothText(each.needed, units, "up")}${remnant.count > 1 ? " of a length" : ""}${
        each.keeps === "both" ? "" : `, with the ${each.keeps} selvedge kept`
      }`,
      ...each.plan.pieces.map(
        (piece) =>
          `      ${remnant.count > 1 ? `length ${piece.length + 1}, ` : ""}${p(piece.x)} from the left edge, ${p(piece.y)} up: ${p(piece.width)} × ${p(piece.height)}${piece.turned ? ", turned" : ""}  ${pieceOf(each, piece)}`,
      ),
      // Heights count from the first cut, which is seldom the remnant's own end: cut elsewhere, no motif stands right.
      ...beginWords(each.plan, units).map(
        (words) => `      ${words} Heights are counted from that cut.`,
      ),
    ]),
    ...(nearestMiss
      ? [
          `Nearest to fitting: ${where(nearestMiss)}${instead(nearestMiss)}. ${missText(nearestMiss, remnant, units)}`,
        ]
      : []),
  ];
}

/** A piece by its name; with its item's title, where several items are cut. */
function pieceOf({ items, titles }: Makes, { item, piece }: PlannedPiece): string {
  return items.length > 1 ? `${titles[items.indexOf(item)] ?? item}, ${piece}` : piece;
}

function inRegister({ plan }: Makes): boolean {
  return plan.pieces.some((piece) => (piece.register?.y ?? null) !== null);
}

/** What was kept clear of. */
function leftOut({ holes, seams }: RemnantInHand, p: (length: Length) => string): string[] {
  const each = [
    ...holes.map(
      (hole) =>
        `${p(hole.width)} × ${p(hole.height)} at ${p(hole.fromLeft)} from the left edge, ${p(hole.up)} up`,
    ),
    ...seams.map(
      (seam) =>
        `the seam at ${p(seam)} from the left edge, with ${p(SEAM_EACH_SIDE)} on either side of it`,
    ),
  ];
  return each.length === 0 ? [] : [`Kept clear of: ${each.join("; ")}.`];
}

/** How near it comes, in words: what can be cut, what the next piece lacks, and what would do. */
function missText({ missing, shortfall }: Miss, remnant: RemnantInHand, units: UnitSystem): string {
  // UP: what is missing must not be understated. To 1/8 inch, or to the millimetre.
  const step = units === "inches" ? Length.inches(1).dividedBy(8) : Length.mm(1);
  // A long one is said as cloth is bought.
  const p = (length: Length) =>
    length.isMoreThan(Length.yards(1))
      ? clothText(length, units, "up")
      : printLength(length.upTo(step), units);
  const each = remnant.count > 1 ? ", each length" : "";
  const { holds, of, piece, motifLower } = shortfall;
  const parts = [`It is ${p(missing)} too short${each}.`];
  if (holds > 0)
    parts.push(
      `It holds ${holds} of the ${of} pieces; ${shortfall.missing ? `for the next (${piece}) ${p(shortfall.missing)} are missing` : `the next (${piece}) finds no place`}.`,
    );
  if (motifLower)
    parts.push(
      motifLower.isNegative()
        ? `With the motif ${p(Length.zero.minus(motifLower))} higher on it (${piece}) it would do.`
        : `With the motif ${p(motifLower)} lower on it (${piece}) it would do.`,
    );
  return parts.join(" ");
}
