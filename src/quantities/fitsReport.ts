import type { Length } from "../units/length.ts";
import { printLength, type UnitSystem } from "../units/printLength.ts";
import type { ClothFits, Makes, Miss, RemnantInHand } from "./clothFits.ts";
import { clothText } from "./clothText.ts";
import { type Json, planJson } from "./toJson.ts";

/** The `fits` document: lengths in millimetres. */
export function fitsJson(cloth: string, remnant: RemnantInHand, found: ClothFits): Json {
  const names = (each: Makes | Miss) => ({
    project: each.project,
    room: each.room,
    items: [...each.items],
    insteadOf: each.insteadOf,
  });
  return {
    cloth,
    lengthMm: remnant.length.toMm(),
    widthMm: found.width.toMm(),
    makes: found.makes.map((each) => ({
      ...names(each),
      neededMm: each.needed.toMm(),
      keepsSelvedge: each.keeps,
      plan: planJson(each.plan),
    })),
    nearestMiss: found.nearestMiss && {
      ...names(found.nearestMiss),
      missingMm: found.nearestMiss.missing.toMm(),
    },
  };
}

/** The same as text, with each plan's pieces. */
export function fitsText(
  name: string,
  remnant: RemnantInHand,
  found: ClothFits,
  units: UnitSystem,
): string {
  const p = (length: Length) => printLength(length, units);
  const { makes, nearestMiss } = found;
  const where = (each: Makes | Miss) => `${each.project}/${each.room}: ${each.titles.join(", ")}`;
  const instead = (each: Makes | Miss) =>
    each.insteadOf === null ? "" : ` (in place of ${each.insteadOf})`;
  return [
    `${name}: a remnant of ${p(remnant.length)}, ${p(found.width)} wide`,
    makes.length === 0 ? "It makes nothing that the rooms need." : "IT MAKES, each by itself",
    ...makes.flatMap((each) => [
      `  ${where(each)}${instead(each)}: needs ${clothText(each.needed, units, "up")}${
        each.keeps === "both" ? "" : `, with the ${each.keeps} selvedge kept`
      }`,
      ...each.plan.pieces.map(
        (piece) =>
          `      ${p(piece.x)} from the left edge, ${p(piece.y)} up: ${p(piece.width)} × ${p(piece.height)}${piece.turned ? ", turned" : ""}  ${piece.piece}`,
      ),
    ]),
    ...(nearestMiss
      ? [
          `Nearest to fitting: ${where(nearestMiss)}${instead(nearestMiss)}: ${clothText(nearestMiss.missing, units, "up")} too short.`,
        ]
      : []),
    "These plans are not for cutting: measure the remnant and look it over for flaws first.",
  ].join("\n");
}
