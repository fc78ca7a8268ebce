import Fraction from "fraction.js";
import { US_GALLON } from "../../units/volume.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import type { PaintFields } from "./schema.ts";
import { unreadableInStudio } from "./studioPaint.ts";
import { isUnlikelyCoverage, parseCoverage, SQUARE_FOOT } from "./volume.ts";

/** How far a litre goes in one coat, and whose figure it is, in words. */
export interface Coverage {
  readonly m2PerLitre: Fraction;
  readonly from: string;
}

/**
 * The tin's own coverage; without it the studio's; without it the custom of the studio's units (two customs, not one figure in two
 * units). A rough or bare surface takes more, in the proportion of the two customs.
 */
export function coverageOf(fields: PaintFields, context: ItemContext, notes: Notes): Coverage {
  const { units } = context;
  const custom = (name: string) => {
    const value = context.ratio(name);
    return units === "inches" ? value.mul(SQUARE_FOOT).div(US_GALLON) : value;
  };
  const poor = fields.surface === "rough" || fields.surface === "bare";
  const less = poor ? custom("covers-rough").div(custom("covers")) : new Fraction(1);
  const on = poor ? `, less on a ${fields.surface} surface` : "";
  if (fields.coverage)
    return { m2PerLitre: fields.coverage.m2PerLitre.mul(less), from: `the tin's own${on}` };
  const studio = context.paint?.coverage ?? null;
  const read = studio === null ? null : parseCoverage(studio);
  if (read && !isUnlikelyCoverage(read))
    return { m2PerLitre: read.m2PerLitre.mul(less), from: `the studio's${on}` };
  if (studio !== null)
    notes.diagnostics.push(
      unreadableInStudio("coverage", studio, "12 m2/l or 400 sq ft/gal", context),
    );
  const said =
    units === "inches" ? "the custom of feet and gallons" : "the custom of metres and litres";
  return {
    m2PerLitre: custom(poor ? "covers-rough" : "covers"),
    from: `${said}${poor ? ` on a ${fields.surface} surface` : ", smooth wall"}`,
  };
}
