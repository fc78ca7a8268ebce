import { type ClothMeasure, isPlainKind } from "../cloth/clothMeasure.ts";
import { mix } from "../colour/mix.ts";
import type { ClothRecord, ObjectRecord } from "../records/records.ts";
import { declaredColours } from "./declaredColours.ts";
import { declaredRepeat } from "./declaredRepeat.ts";
import { disagreements } from "./disagreements.ts";
import { periodOf } from "./period.ts";
import type { Origin, Swatch, SwatchPhoto } from "./swatch.ts";

/** Colours by hand stand in only while there is no photograph. */
type Colours = Pick<Swatch, "colours" | "coloursFrom" | "average">;

/**
 * A cloth as the rooms use it: what its card declares counts, the photograph fills in what the card leaves open, and where both
 * speak and differ beyond tolerance both values are kept as a disagreement.
 */
export function usedCloth(
  card: ClothRecord,
  measure: ClothMeasure | null,
  photo: SwatchPhoto | null,
): Swatch {
  const { fields } = card;
  const pattern = measure?.pattern ?? null;
  const repeat = repeatOf(card, measure);
  return {
    id: card.id,
    of: "cloth",
    name: fields.cloth,
    photo,
    ...coloursOf(fields.colours, measure),
    contrast: fields.contrast?.valueOf() ?? pattern?.contrast ?? null,
    busyness: pattern?.busyness ?? null,
    kind: fields.kind ?? pattern?.kind ?? null,
    kindFrom: from(fields.kind, pattern?.kind),
    motifMm: fields.motif?.toMm() ?? pattern?.motifMm ?? null,
    motifFrom: from(fields.motif, pattern?.motifMm),
    ...repeat,
    wovenRepeat: fields.kind === undefined && comesAgain(measure),
    matched: fields.matched ?? true,
    period: periodOf(fields.kind ?? pattern?.kind ?? null, repeat.repeat, measure, {
      motifMm: fields.motif?.toMm() ?? pattern?.motifMm ?? null,
      photo,
    }),
    readsPlainFromM: pattern?.readsPlainFromM ?? null,
    runs: pattern?.repeat?.sure ? pattern.runs : null,
    animal: fields.animal ?? false,
    disagreements: disagreements(card, measure),
    confirm: confirmed(card, measure),
    place: card.place,
  };
}

/** An object's colours and photograph, as the rooms use them. */
export function usedObject(
  card: ObjectRecord,
  measure: ClothMeasure | null,
  photo: SwatchPhoto | null,
): Swatch {
  const pattern = measure?.pattern ?? null;
  return {
    id: card.id,
    of: "object",
    name: card.fields.object,
    photo,
    ...coloursOf(card.fields.colours, measure),
    contrast: pattern?.contrast ?? null,
    busyness: pattern?.busyness ?? null,
    kind: pattern?.kind ?? null,
    kindFrom: from(undefined, pattern?.kind),
    motifMm: pattern?.motifMm ?? null,
    motifFrom: from(undefined, pattern?.motifMm),
    repeat: null,
    repeatFrom: "unknown",
    period: null,
    readsPlainFromM: pattern?.readsPlainFromM ?? null,
    animal: false,
    disagreements: [],
    confirm: (measure?.confirm ?? []).map((each) => each.why),
    place: card.place,
  };
}

function from(declared: unknown, measured: unknown): Origin {
  if (declared !== undefined) return "declared";
  return measured === undefined || measured === null ? "unknown" : "measured";
}

function coloursOf(
  declared: ClothRecord["fields"]["colours"],
  measure: ClothMeasure | null,
): Colours {
  if (measure) {
    return { colours: measure.colours, coloursFrom: "measured", average: measure.average };
  }
  const colours = declaredColours(declared ?? []);
  const coloursFrom = colours.length > 0 ? "declared" : "unknown";
  return { colours, coloursFrom, average: mix(colours) };
}

/** True of a photographed weave in which a repeat was found. */
function comesAgain(measure: ClothMeasure | null): boolean {
  return measure !== null && isPlainKind(measure.pattern.kind) && measure.pattern.repeat !== null;
}

/** The card's repeat, else the photograph's where it is sure and of a kind that can be cut by; a weave's is matched only if its card says so. */
function repeatOf(
  card: ClothRecord,
  measure: ClothMeasure | null,
): Pick<Swatch, "repeat" | "repeatFrom"> {
  const kind = card.fields.kind ?? measure?.pattern.kind ?? null;
  const declared = declaredRepeat(card, kind);
  if (declared) {
    return {
      repeat: {
        upMm: declared.up.toMm(),
        acrossMm: declared.across?.toMm() ?? null,
        match: declared.match,
        fromSelvedgeMm: declared.fromSelvedge?.toMm() ?? null,
      },
      repeatFrom: "declared",
    };
  }
  if (card.fields.repeat) return { repeat: null, repeatFrom: "unknown" };
  const seen = measure?.pattern.repeat ?? null;
  if (!seen?.sure || seen.verticalMm === null || seen.match === "other" || isPlainKind(kind)) {
    return { repeat: null, repeatFrom: "unknown" };
  }
  return {
    repeat: {
      upMm: seen.verticalMm,
      acrossMm: seen.horizontalMm,
      match: seen.match,
      fromSelvedgeMm: null,
    },
    repeatFrom: "measured",
  };
}

/** What the photograph could not tell, less what the card tells. */
function confirmed(card: ClothRecord, measure: ClothMeasure | null): string[] {
  const { repeat, kind, motif, runs } = card.fields;
  const told: Readonly<Record<string, boolean>> = {
    "pattern.repeat": repeat !== undefined || isPlainKind(kind),
    "pattern.kind": kind !== undefined,
    "pattern.motifMm": motif !== undefined,
    "pattern.runs": runs !== undefined,
  };
  return (measure?.confirm ?? []).filter((each) => !told[each.what]).map((each) => each.why);
}
