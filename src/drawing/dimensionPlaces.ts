import type { Dimension } from "./shape.ts";
import { textWidthMm } from "./words.ts";

/** Distances on paper (print design 8 and 10), millimetres. */
const FIRST_MM = 8;
const STEP_MM = 7.5;
export const GAP_MM = 1;
/** From a vertical chain to a figure that stands level beside it. */
export const BESIDE_MM = 2;
/** Half the height that such a figure takes, with the air about it. */
const HALF_FIGURE_MM = 3;
/** Shorter than this, arrows stand outside and the text beside. */
export const LEAST_MM = { horizontal: 13, vertical: 8 } as const;

/** A dimension at its distance from the drawing; `only` where its lines and its words are drawn apart. */
export interface PlacedDimension extends Dimension {
  readonly offsetMm: number;
  readonly only?: "lines" | "words";
}

/** How far off the drawing a chain runs; level 1 is the nearest. */
export function chainOffset(level: number): number {
  return FIRST_MM + STEP_MM * (Math.max(1, level) - 1);
}

/** The nearest chain at a side that clears figures standing level beside the first: where parts too short for their text stand. */
export function levelPast(texts: readonly string[]): number {
  const past = BESIDE_MM + Math.max(0, ...texts.map((text) => textWidthMm(text))) + GAP_MM;
  return 1 + Math.ceil(past / STEP_MM);
}

/** The text that is written on a span of paper: the whole where it fits between the arrows, or where the figure alone would not fit either. */
export function textFor({ text, brief, axis }: Dimension, span: number): string {
  if (brief === undefined || textWidthMm(text) + 2 <= span) return text;
  return span >= LEAST_MM[axis] && textWidthMm(brief) + 2 <= span ? brief : text;
}

function spanOf({ from, to }: Dimension, scale: number): number {
  return Math.abs(to - from) * scale;
}

/** True where a dimension's text finds no room between its arrows. */
export function isNarrow(dimension: Dimension, scale: number): boolean {
  const span = spanOf(dimension, scale);
  return span < LEAST_MM[dimension.axis] || textWidthMm(textFor(dimension, span)) + 2 > span;
}

const startOf = (d: Dimension): number => Math.min(d.from, d.to);
const endOf = (d: Dimension): number => Math.max(d.from, d.to);

function inOneChain(a: Dimension, b: Dimension): boolean {
  return a.axis === b.axis && a.side === b.side && a.level === b.level;
}

/** Equal parts of a chain, one after another, each too short for its text: their text stands once over all of them, `5 × 16″`. */
function joinedParts(
  all: readonly Dimension[],
  scale: number,
): (Dimension & Pick<PlacedDimension, "only">)[] {
  const done = new Set<Dimension>();
  return all.flatMap((first) => {
    if (done.has(first)) return [];
    const run = [first];
    if (first.axis === "horizontal" && first.text !== "" && isNarrow(first, scale))
      for (;;) {
        const end = endOf(run.at(-1) as Dimension);
        const next = all.find(
          (d) =>
            inOneChain(d, first) &&
            d.text === first.text &&
            Math.abs(startOf(d) - end) * scale < 0.05,
        );
        if (!next || run.includes(next)) break;
        run.push(next);
      }
    const whole = {
      ...first,
      from: startOf(first),
      to: endOf(run.at(-1) as Dimension),
      text: `${run.length} × ${first.text}`,
    };
    if (run.length < 2 || textWidthMm(whole.text) > spanOf(whole, scale)) return [first];
    for (const part of run) done.add(part);
    return [
      ...run.map((part) => ({ ...part, only: "lines" as const })),
      { ...whole, only: "words" as const },
    ];
  });
}

/**
 * Each dimension at its distance from the drawing at a scale, in paper millimetres: chains one after another, and further off where a
 * figure of a nearer chain stands level beside its line.
 */
export function placedDimensions(all: readonly Dimension[], scale: number): PlacedDimension[] {
  const joined = joinedParts(all, scale);
  const offsets = new Map<string, number>();
  const chainOf = (d: Dimension): string => `${d.side} ${d.level}`;
  for (const d of [...joined].sort((a, b) => a.level - b.level)) {
    const nearer = joined.filter(
      (e) => e.side === d.side && e.level < d.level && e.axis === "vertical" && isNarrow(e, scale),
    );
    const past = nearer.flatMap((e) => {
      const middle = ((e.from + e.to) / 2) * scale;
      const meets =
        middle + HALF_FIGURE_MM > startOf(d) * scale && middle - HALF_FIGURE_MM < endOf(d) * scale;
      const wide = textWidthMm(textFor(e, spanOf(e, scale)));
      const at = offsets.get(chainOf(e)) ?? chainOffset(e.level);
      return meets ? [at + BESIDE_MM + wide + GAP_MM] : [];
    });
    offsets.set(chainOf(d), Math.max(offsets.get(chainOf(d)) ?? chainOffset(d.level), ...past));
  }
  return joined.map((d) => ({ ...d, offsetMm: offsets.get(chainOf(d)) as number }));
}
