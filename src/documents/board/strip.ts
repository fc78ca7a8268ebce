import type { RoomScheme } from "../../scheme/roomScheme.ts";
import { capital } from "../../units/capital.ts";
import { svgNumber } from "../words/svgNumber.ts";
import { spreadLabels } from "./spreadLabels.ts";

/** A part of the share strip, millimetres from the sheet's upper edge. */
export interface StripPart {
  readonly hex: string;
  readonly name: string;
  readonly hundredths: number;
  readonly y: number;
  readonly height: number;
  /** Where its label's first line stands; moved off where the part is too low for it. */
  readonly labelY: number;
  /** True where a hair leader must join label and part. */
  readonly led: boolean;
  /** True where it runs on one line over the column beside it, because many low parts crowd together. */
  readonly oneLine: boolean;
}

/** A leader's stub at its part and at its label, millimetres: between them it slants, so that neighbours never cross. */
const STUB_MM = 0.6;

/** What a label takes: a line of four millimetres each, and a millimetre of air. A longer name than this breaks into two. */
const LINE_MM = 4;
const AIR_MM = 1;
const LETTERS = 17;
/** Further off than this a name no longer stands at its part; parts lower than this make a crowd, with less air between their names. */
const FAR_MM = 6;
const CROWD_MM = 14;
const CROWD_AIR_MM = 0.4;
/** What it counts to move the name of a high part, beside one for a low part. */
const GIVES_WAY = 0.02;
/** From a label's top to the middle of its first line. */
const FIRST_LINE_MM = 2;

function labelHeight(name: string, hundredths: number): number {
  let lines = 1;
  let used = 0;
  for (const word of `${name} ${hundredths}`.split(" ")) {
    if (used > 0 && used + 1 + word.length > LETTERS) {
      lines++;
      used = word.length;
    } else used += (used > 0 ? 1 : 0) + word.length;
  }
  return lines * LINE_MM + AIR_MM;
}

/**
 * The order of the parts down the strip: the largest at the head, the next one at the foot, the others between them by size. The small
 * ones then lie where their names have room above and below, and not at the paper's edge.
 */
function ordered<P extends { readonly hundredths: number }>(parts: readonly P[]): P[] {
  const [first, second, ...others] = [...parts].sort((a, b) => b.hundredths - a.hundredths);
  return [first, ...others, second].filter((p) => p !== undefined);
}

/**
 * The share strip: full height, every part at its true height; each label begins at its part's head, or at the middle of a low one.
 * Where low parts follow each other their labels are moved as little as may be, and led to by a hair line.
 */
export function shareStrip(
  scheme: Pick<RoomScheme, "shares">,
  height: number,
  labelsFrom: number,
  labelsTo: number,
): StripPart[] {
  let y = 0;
  const parts = ordered(scheme.shares).map((s) => {
    const part = {
      hex: s.hex,
      name: capital(s.name),
      hundredths: s.hundredths,
      y,
      height: (height * s.hundredths) / 100,
    };
    y += part.height;
    return part;
  });
  // Where a name would stand far off its part, all names there run on one line, over the column beside them.
  const first = placeNames(parts, new Set(), labelsFrom, labelsTo);
  if (!first.some(isFar)) return first;
  const crowd = new Set(parts.filter((p) => p.height < CROWD_MM).map((p) => p.y));
  return placeNames(parts, crowd, labelsFrom, labelsTo);
}

type Part = Omit<StripPart, "labelY" | "led" | "oneLine">;

/** True of a name that stands further off its part than a reader's eye follows without a line. */
function isFar(p: StripPart): boolean {
  const line = p.labelY + FIRST_LINE_MM;
  return Math.max(p.y - line, line - p.y - p.height) > FAR_MM;
}

/** Places for the names; those of `crowd`, by where their parts begin, take one line each. */
function placeNames(
  parts: readonly Part[],
  crowd: ReadonlySet<number>,
  labelsFrom: number,
  labelsTo: number,
): StripPart[] {
  const tall = parts.map((p) =>
    crowd.has(p.y) ? LINE_MM + CROWD_AIR_MM : labelHeight(p.name, p.hundredths),
  );
  const wanted = parts.map((p) =>
    Math.max(labelsFrom, p.y + Math.min(3.2, p.height / 2 - FIRST_LINE_MM)),
  );
  // A name may stand anywhere beside a high part, and gives way to those of low ones.
  const weights = parts.map((p, at) => (p.height > 3 * (tall[at] as number) ? GIVES_WAY : 1));
  const placed = spreadLabels(wanted, tall, labelsFrom, labelsTo, weights);
  return parts.map((p, at) => {
    const labelY = placed[at] as number;
    const line = labelY + FIRST_LINE_MM;
    const oneLine = crowd.has(p.y);
    return { ...p, labelY, oneLine, led: line < p.y || line > p.y + p.height };
  });
}

/** How far to the right of the others the names of a crowd begin, so that their lines slant gently. */
export const CROWD_SHIFT_MM = 4.5;

/**
 * The leaders of a strip's labels as path data: a stub at the part's middle, a slant, a stub at the label's first line. `toX` is where
 * labels begin that are in no crowd.
 */
export function stripLeaders(parts: readonly StripPart[], fromX: number, toX: number): string[] {
  const f = (n: number): string => svgNumber(n, 2);
  return parts
    .filter((p) => p.led)
    .map((p) => {
      const end = toX + (p.oneLine ? CROWD_SHIFT_MM : 0);
      const [part, label] = [p.y + p.height / 2, p.labelY + FIRST_LINE_MM + 0.1];
      return `M${f(fromX)} ${f(part)}H${f(fromX + STUB_MM)}L${f(end - STUB_MM)} ${f(label)}H${f(end)}`;
    });
}
