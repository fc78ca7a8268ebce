import type { UnitSystem } from "../../units/printLength.ts";
import { svgNumber } from "../words/svgNumber.ts";

const r = svgNumber;

/** A scale in words: `one inch to two feet`, `one twentieth`. */
export function scaleWords(scale: number, units: UnitSystem): string {
  if (units === "inches" && scale % 12 === 0 && scale / 12 <= 4)
    return scale === 12
      ? "one inch to the foot"
      : `one inch to ${["", "one foot", "two feet", "three feet", "four feet"][scale / 12]}`;
  return PARTS[scale] ?? `one to ${scale}`;
}

const PARTS: Readonly<Record<number, string>> = {
  10: "one tenth",
  15: "one fifteenth",
  16: "one sixteenth",
  20: "one twentieth",
  5: "one fifth",
  8: "one eighth",
};

/** The longest that a ruler grows, millimetres of paper. */
const LONGEST_MM = 90;

/** A ruler of four parts at most, of a foot or half a metre each at a scale; its upper corner at a place of the sheet; SVG. */
export function scaleBar(
  at: number,
  y: number,
  scale: number,
  units: UnitSystem,
  corner: "start" | "end",
): string {
  const step = units === "inches" ? 304.8 / scale : 500 / scale;
  const parts = Math.max(1, Math.min(4, Math.floor(LONGEST_MM / step)));
  const x = corner === "start" ? at : at - parts * step;
  const label =
    units === "inches"
      ? (n: number): string => `${n}${n === parts ? "\u202fft" : ""}`
      : (n: number): string => `${n * 50}${n === parts ? "\u202fcm" : ""}`;
  let out = "";
  for (let i = 0; i < parts; i++)
    out += `<rect x="${r(x + i * step)}" y="${r(y)}" width="${r(step)}" height="1.3" fill="${i % 2 === 0 ? "#23282e" : "#fff"}" stroke="#23282e" stroke-width=".18"/>`;
  for (let n = 0; n <= parts; n++)
    out += `<text class="drawn" x="${r(x + n * step)}" y="${r(y + 5.4)}" text-anchor="${n === parts ? "end" : n === 0 ? "start" : "middle"}" font-size="3.5">${label(n)}</text>`;
  return out;
}
