import { type ClothMeasure, isPlainKind } from "../cloth/clothMeasure.ts";
import { difference } from "../colour/difference.ts";
import type { ClothRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { printLike } from "../units/printLike.ts";
import type { Disagreement } from "./swatch.ts";

/** How far card and photograph may differ: a photograph is no ruler. */
const REPEAT_SHARE = 0.03;
const REPEAT_LEAST_MM = 3;
/** What counts as the motif is a matter of taste, and a stem or a petal may be measured for it: only gross slips are said. */
const MOTIF_TIMES = 5;
/** CIEDE2000 above which two colours are different colours. */
const COLOUR = 10;

function inUnitsOf(mm: number, like: Length): string {
  return printLike(Length.mm(mm.toFixed(1)), like);
}

/** Where a card and its photograph differ beyond tolerance, with both values in words. The card's counts. */
export function disagreements(card: ClothRecord, measure: ClothMeasure | null): Disagreement[] {
  if (!measure) return [];
  return [
    ...repeats(card, measure),
    ...kinds(card, measure),
    ...runs(card, measure),
    ...motifs(card, measure),
    ...colours(card, measure),
  ];
}

function repeats(card: ClothRecord, measure: ClothMeasure): Disagreement[] {
  const declared = card.fields.repeat;
  const seen = measure.pattern.repeat;
  // A weave's own repeat says nothing against that of the pattern that the card means.
  if (!declared || !seen?.sure || isPlainKind(measure.pattern.kind)) return [];
  const apart = (one: number | null, other: number | null) =>
    one !== null &&
    other !== null &&
    Math.abs(one - other) > Math.max(REPEAT_LEAST_MM, one * REPEAT_SHARE);
  const up = declared.up?.toMm() ?? null;
  const across = declared.across?.toMm() ?? null;
  const match = declared.match ?? null;
  const differs =
    apart(up, seen.verticalMm) ||
    apart(across, seen.horizontalMm) ||
    (match !== null && match !== "free" && seen.match !== "other" && match !== seen.match);
  const like = declared.up ?? declared.across;
  if (!differs || !like) return [];
  return [
    {
      what: "repeat",
      declared: repeatWords(up, across, match, like),
      measured: repeatWords(seen.verticalMm, seen.horizontalMm, seen.match, like),
    },
  ];
}

/** In the units in which the card has it. */
function repeatWords(
  up: number | null,
  across: number | null,
  match: string | null,
  like: Length,
): string {
  return [
    up === null ? null : `${inUnitsOf(up, like)} up`,
    across === null ? null : `${inUnitsOf(across, like)} across`,
    match,
  ]
    .filter((part) => part !== null)
    .join(", ");
}

function kinds(card: ClothRecord, measure: ClothMeasure): Disagreement[] {
  const declared = card.fields.kind;
  const measured = measure.pattern.kind;
  if (declared === undefined || measured === null || declared === measured) return [];
  // Whether a weave shows is for the hand to say: a photograph of one may be flat.
  if (isPlainKind(declared) && isPlainKind(measured)) return [];
  return [{ what: "kind", declared, measured }];
}

/** A card that lets a pattern lie upside down which is not the same so; what is the same may be cut one way for its pile or sheen. */
function runs(card: ClothRecord, measure: ClothMeasure): Disagreement[] {
  const declared = card.fields.runs;
  const { runs: measured, repeat } = measure.pattern;
  if (declared === undefined || declared === "one-way") return [];
  if (measured !== "one-way" || !repeat?.sure) return [];
  return [{ what: "runs", declared, measured: "one-way, not the same upside down" }];
}

function motifs(card: ClothRecord, measure: ClothMeasure): Disagreement[] {
  const motif = card.fields.motif;
  const measured = measure.pattern.motifMm;
  if (motif === undefined || measured === null) return [];
  const declared = motif.toMm();
  if (Math.max(declared / measured, measured / declared) <= MOTIF_TIMES) return [];
  return [
    {
      what: "motif",
      declared: inUnitsOf(declared, motif),
      measured: inUnitsOf(measured, motif),
    },
  ];
}

/** A declared colour that no colour of the photograph comes near. */
function colours(card: ClothRecord, measure: ClothMeasure): Disagreement[] {
  const seen = measure.colours;
  if (seen.length === 0) return [];
  const missing = (card.fields.colours ?? []).filter(({ colour }) =>
    seen.every((each) => difference(colour, each.hex) > COLOUR),
  );
  if (missing.length === 0) return [];
  return [
    {
      what: "colours",
      declared: missing.map((each) => each.colour).join(", "),
      measured: seen.map((each) => each.hex).join(", "),
    },
  ];
}
