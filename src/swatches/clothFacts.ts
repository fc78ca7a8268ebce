import Fraction from "fraction.js";
import { isPlainKind } from "../cloth/clothMeasure.ts";
import type { ClothFacts } from "../items/itemKind.ts";
import type { ClothRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { declaredRepeat } from "./declaredRepeat.ts";
import type { Swatch } from "./swatch.ts";
import { canBeWashed, washedFacts } from "./washedFacts.ts";

/** What an item's arithmetic may know of a card: the cloth as it is cut, which is washed first where the card says so. */
export function clothFacts(card: ClothRecord, swatch: Swatch | null): ClothFacts {
  const facts = factsAsSold(card, swatch);
  const isWashed = card.fields["wash-first"] === true && canBeWashed(facts);
  return isWashed ? washedFacts(facts, card.fields["shrinkage-across"] ?? null) : facts;
}

/**
 * A cloth as it is sold. What the card declares counts; a repeat that it does not give is taken from the photograph where that one is
 * sure, and is then listed as not declared. Widths come from the card alone: no photograph shows them.
 */
export function factsAsSold(card: ClothRecord, swatch: Swatch | null): ClothFacts {
  const { fields } = card;
  const type = fields.type ?? (fields.roll ? "wallcovering" : "cloth");
  const nap = fields.nap ?? false;
  return {
    id: card.id,
    name: fields.cloth,
    type,
    usableWidth: fields.width ?? fields.roll?.width ?? null,
    repeat: repeatOf(card, swatch),
    repeatUnknown: repeatIsUnknown(card, swatch),
    bandsUnknown: bandsAreUnknown(card, swatch),
    mayTurn: mayTurn(card, swatch, type, nap),
    nap,
    ...((fields.runs ?? swatch?.runs) === "one-way" ? { oneWay: true } : {}),
    ...(fields.shrinkage ? { shrinkage: fields.shrinkage } : {}),
    ...(fields["wash-first"] === false ? { cutUnwashed: true } : {}),
    roll: fields.roll ?? null,
  };
}

/** True where the repeat that counts was read on the photograph. */
export function repeatIsMeasured(card: ClothRecord, swatch: Swatch | null): boolean {
  return card.fields.repeat === undefined && swatch?.repeatFrom === "measured";
}

/**
 * True where a cloth is patterned, as its card or its photograph says, its pattern has to meet at joins, and nobody has said how it
 * repeats. A stripe runs on along the length, so that nothing is lost by it.
 */
export function repeatIsUnknown(card: ClothRecord, swatch: Swatch | null): boolean {
  const { fields } = card;
  const kind = fields.kind ?? swatch?.kind ?? null;
  if (kind === null || isPlainKind(kind) || kind === "stripe") return false;
  return fields.matched !== false && repeatOf(card, swatch) === null;
}

/** True of a stripe whose bands have to meet at joins, and nobody has said how they come again across it. */
function bandsAreUnknown(card: ClothRecord, swatch: Swatch | null): boolean {
  const { kind, matched } = card.fields;
  return (
    (kind ?? swatch?.kind) === "stripe" && matched !== false && repeatOf(card, swatch) === null
  );
}

function repeatOf(card: ClothRecord, swatch: Swatch | null): ClothFacts["repeat"] {
  if (card.fields.repeat) return declaredRepeat(card, card.fields.kind ?? swatch?.kind ?? null);
  // A cloth that the card calls plain has no repeat, whatever its weave shows.
  const kind = card.fields.kind;
  if (isPlainKind(kind) || !swatch?.repeat) return null;
  if (!repeatIsMeasured(card, swatch)) return null;
  const { upMm, acrossMm, match, fromSelvedgeMm } = swatch.repeat;
  return {
    up: measured(upMm),
    across: acrossMm === null ? null : measured(acrossMm),
    match,
    fromSelvedge: fromSelvedgeMm === null ? null : measured(fromSelvedgeMm),
  };
}

/** A measure off a photograph, to the nearest tenth of a millimetre. */
function measured(mm: number): Length {
  return Length.mm(new Fraction(Math.round(mm * 10), 10));
}

/**
 * True where pieces may lie turned a quarter: the card says that it runs any way, or it is plain and has no nap. A lining without a
 * repeat is plain; of a cloth whose kind nobody knows it is not assumed.
 */
function mayTurn(
  card: ClothRecord,
  swatch: Swatch | null,
  type: ClothFacts["type"],
  nap: boolean,
): boolean {
  const { runs } = card.fields;
  if (nap) return false;
  if (runs !== undefined) return runs === "any-way";
  const kind = card.fields.kind ?? swatch?.kind ?? null;
  // A weave that comes again shows which way it lies.
  if (isPlainKind(kind)) return swatch?.wovenRepeat !== true;
  const lining = type === "lining" || type === "interlining" || type === "leather";
  return lining && kind === null && repeatOf(card, swatch) === null;
}
