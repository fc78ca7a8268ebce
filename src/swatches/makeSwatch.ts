import type { ClothMeasure } from "../cloth/clothMeasure.ts";
import { colourName } from "../colour/colourName.ts";
import { family } from "../colour/family.ts";
import { lightReflectance } from "../colour/luminance.ts";
import { mix } from "../colour/mix.ts";
import { oklchOf } from "../colour/oklab.ts";
import type { ClothRecord, ObjectRecord } from "../records/records.ts";
import type {
  Disagreement,
  Origin,
  PatternKind,
  Swatch,
  SwatchColour,
  SwatchPhoto,
} from "./swatch.ts";

/** A photograph that was read, and what was measured on it; the measurement is null where the card does not say what it shows. */
export interface ReadSwatch {
  readonly photo: SwatchPhoto;
  readonly measure: ClothMeasure | null;
}

type Declared = NonNullable<ClothRecord["fields"]["colours"]>;

/** Colours said by hand, with equal shares where none are given. */
function declaredColours(list: Declared): SwatchColour[] {
  const given = list.map((c) => c.share?.valueOf() ?? null);
  const left = Math.max(0, 1 - given.reduce<number>((a, s) => a + (s ?? 0), 0));
  const open = given.filter((s) => s === null).length;
  const shares = given.map((s) => s ?? left / Math.max(1, open));
  const sum = shares.reduce((a, b) => a + b, 0) || 1;
  return list.map((c, at) => ({
    hex: c.colour,
    oklch: oklchOf(c.colour),
    share: (shares[at] as number) / sum,
    name: c.name ?? colourName(c.colour).name,
    family: family(c.colour),
    lrv: lightReflectance(c.colour),
  }));
}

/** Relative difference from which a card and its photograph are said to disagree; common practice, no source. */
const REPEAT_DIFFERS = 0.04;

function disagreementsOf(card: ClothRecord, measure: ClothMeasure | null): Disagreement[] {
  const measured = measure?.pattern;
  const out: Disagreement[] = [];
  const declared = card.fields.repeat;
  const repeat = measured?.repeat;
  const mm = (n: number): string => `${Math.round(n)} mm`;
  if (declared && repeat?.sure && repeat.verticalMm) {
    const up = declared.up.toMm();
    if (Math.abs(repeat.verticalMm - up) / up > REPEAT_DIFFERS)
      out.push({ what: "repeat", declared: mm(up), measured: mm(repeat.verticalMm) });
  }
  if (card.fields.motif && measured?.motifMm) {
    const motif = card.fields.motif.toMm();
    if (Math.abs(measured.motifMm - motif) / motif > 0.35)
      out.push({ what: "motif", declared: mm(motif), measured: mm(measured.motifMm) });
  }
  return out;
}

const from = (declared: boolean, measured: boolean): Origin =>
  declared ? "declared" : measured ? "measured" : "unknown";

/**
 * A cloth card and its photograph as the room uses them. What the card declares counts; what it leaves open is taken from the
 * photograph; where they differ, both values are kept.
 */
export function clothSwatch(card: ClothRecord, read: ReadSwatch | null): Swatch {
  const { fields } = card;
  const measure = read?.measure ?? null;
  const measured = measure?.pattern ?? null;
  const colours = measure ? measure.colours : fields.colours ? declaredColours(fields.colours) : [];
  const kind: PatternKind | null = fields.kind ?? measured?.kind ?? null;
  const plain = kind === "plain" || kind === "textured-plain";
  const declared = fields.repeat;
  const sureRepeat = measured?.repeat?.sure && measured.repeat.verticalMm ? measured.repeat : null;
  const repeat = declared
    ? {
        upMm: declared.up.toMm(),
        acrossMm: declared.across?.toMm() ?? null,
        match: declared.match ?? ("straight" as const),
        fromSelvedgeMm: declared["from-selvedge"]?.toMm() ?? null,
      }
    : sureRepeat?.verticalMm && !plain
      ? {
          upMm: sureRepeat.verticalMm,
          acrossMm: sureRepeat.horizontalMm,
          match: sureRepeat.match === "other" ? ("straight" as const) : sureRepeat.match,
          fromSelvedgeMm: null,
        }
      : null;
  const motif = plain ? null : (fields.motif?.toMm() ?? measured?.motifMm ?? null);
  return {
    id: card.id,
    of: "cloth",
    name: fields.cloth,
    photo: read?.photo ?? null,
    colours,
    coloursFrom: from(measure === null && fields.colours !== undefined, measure !== null),
    average: measure?.average ?? mix(colours.map((c) => ({ hex: c.hex, share: c.share }))),
    contrast: measured?.contrast ?? null,
    busyness: measured?.busyness ?? null,
    kind,
    kindFrom: from(fields.kind !== undefined, measured?.kind != null),
    motifMm: motif,
    motifFrom: from(fields.motif !== undefined, measured?.motifMm != null),
    repeat,
    repeatFrom: from(declared !== undefined, sureRepeat !== null),
    readsPlainFromM: measured?.readsPlainFromM ?? null,
    animal: fields.animal ?? false,
    disagreements: disagreementsOf(card, measure),
    confirm: (measure?.confirm ?? []).map((c) => c.why),
    place: card.place,
  };
}

/** An object's card and its photograph: its colours, for a palette and for drawing it. */
export function objectSwatch(card: ObjectRecord, read: ReadSwatch | null): Swatch {
  const { fields } = card;
  const measure = read?.measure ?? null;
  const colours = measure ? measure.colours : fields.colours ? declaredColours(fields.colours) : [];
  return {
    id: card.id,
    of: "object",
    name: fields.object,
    photo: read?.photo ?? null,
    colours,
    coloursFrom: from(measure === null && fields.colours !== undefined, measure !== null),
    average: measure?.average ?? mix(colours.map((c) => ({ hex: c.hex, share: c.share }))),
    contrast: measure?.pattern.contrast ?? null,
    busyness: null,
    kind: null,
    kindFrom: "unknown",
    motifMm: measure?.pattern.motifMm ?? null,
    motifFrom: from(false, measure?.pattern.motifMm != null),
    repeat: null,
    repeatFrom: "unknown",
    readsPlainFromM: null,
    animal: false,
    disagreements: [],
    confirm: (measure?.confirm ?? []).map((c) => c.why),
    place: card.place,
  };
}
