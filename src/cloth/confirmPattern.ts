import {
  type Confirm,
  isPlainKind,
  type MeasuredPattern,
  type MeasuredRepeat,
} from "./clothMeasure.ts";
import type { JudgedKind } from "./kind/judgedKind.ts";
import type { FoundRuns } from "./kind/runsOf.ts";
import type { Motifs } from "./motif/motifSize.ts";
import type { Separation } from "./palette/clothColours.ts";

/** A pattern whose colours lie so near each other, or cover so little, that one is all that is told. */
export function confirmTones({ centres }: Separation, repeat: MeasuredRepeat | null): Confirm[] {
  if (centres.length > 1 || repeat === null) return [];
  const why =
    "The pattern's colours lie so near each other on this photograph, or cover so little of it, that they count as one; photograph it nearer and in clearer light, or name them on the card.";
  return [{ what: "colours", why }];
}

/** The size of motifs that stems or scrolls join hangs on where one is said to end. */
export function confirmMotif({ kind }: JudgedKind, motifs: Motifs | null): Confirm[] {
  const isPrint = kind === "small-print" || kind === "large-print";
  if (!isPrint || motifs?.method !== "joined") return [];
  const why =
    "The motifs are joined by what lies between them, so that where one ends is a guess; measure one on the cloth.";
  return [{ what: "pattern.motifMm", why }];
}

/** Stripes and checks of which the order of their bands is not told. */
export function confirmBands({ kind, repeat, bands }: MeasuredPattern): Confirm[] {
  const banded = kind === "stripe" || kind === "check";
  if (!banded || repeat === null || bands.length > 0) return [];
  const why =
    "The order of its bands cannot be told from this picture, as where lines are very thin on it or two colours lie near each other: photograph it nearer, or take it from the cloth.";
  return [{ what: "pattern.bands", why }];
}

/** A pattern that is not the same upside down, and whose motifs may have a top or may not. */
export function confirmRuns(found: FoundRuns | null): Confirm[] {
  if (!found?.isOther || found.runs !== null) return [];
  const why =
    "Upside down it is not the same. Whether its motifs have a top or lie every way is for the eye: write it as runs on its card.";
  return [{ what: "pattern.runs", why }];
}

const WOVEN =
  "It is called a weave, and yet it comes again as a small check or zigzag does. Nothing of it is matched at joins: where it has to meet, write its kind and its repeat on its card.";

const TOO_NEAR =
  "No repeat was found. A pattern that the picture does not show once and a half looks like a weave: where it has one, measure its repeat on the cloth.";

/** What she should look at of a kind and a repeat. */
export function confirmPattern(
  { kind, sure }: JudgedKind,
  repeat: MeasuredRepeat | null,
): Confirm[] {
  const guessed: Confirm[] = sure
    ? []
    : [{ what: "pattern.kind", why: "The kind of pattern is a guess; name it yourself." }];
  if (isPlainKind(kind)) {
    if (repeat) return [...guessed, { what: "pattern.repeat", why: WOVEN }];
    const unseen = kind === "textured-plain" && !sure;
    return unseen ? [...guessed, { what: "pattern.repeat", why: TOO_NEAR }] : guessed;
  }
  if (repeat === null) {
    return [
      {
        what: "pattern.repeat",
        why: "No repeat was found: the picture must show one and a half of it each way. Measure it on the cloth.",
      },
      {
        what: "pattern.kind",
        why: "Without a repeat the kind of pattern is a guess; name it yourself.",
      },
    ];
  }
  if (repeat.sure) return guessed;
  return [
    {
      what: "pattern.repeat",
      why: "The repeat is not sure, as where the picture does not show it twice; measure it on the cloth, from a motif to the next like it, up and across.",
    },
    ...guessed,
  ];
}
