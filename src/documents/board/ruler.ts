import { svgNumber } from "../words/svgNumber.ts";

const r = svgNumber;

/**
 * A ruler down a page at one to `scale`: ticks outward, the unit beside the nought. `side` is where the ticks point. Millimetres of
 * paper; exact, since its ticks are placed from real lengths over the scale.
 */
export function rulerSvg(
  unit: "cm" | "in",
  side: "left" | "right",
  x: number,
  top: number,
  height: number,
  scale: number,
): string {
  const stepMm = unit === "cm" ? 10 : 25.4;
  const label = unit === "cm" ? 10 : scale <= 3 ? 2 : 5;
  const middle = unit === "cm" ? 5 : 1;
  const sign = side === "left" ? -1 : 1;
  const count = Math.floor((height * scale) / stepMm + 1e-9);
  let ticks = "";
  let words = "";
  for (let i = 0; i <= count; i++) {
    const y = top + (i * stepMm) / scale;
    const length = i % label === 0 ? 3.2 : i % middle === 0 ? (unit === "cm" ? 2.2 : 1.6) : 1.1;
    if (unit === "cm" && scale > 4 && i % 2 !== 0 && i % 5 !== 0) continue;
    ticks += `M${r(x)} ${r(y)}h${r(sign * length)}`;
    if (i % label === 0)
      words += `<text x="${r(x + sign * 4.6)}" y="${r(y + 1.2)}" text-anchor="${side === "left" ? "end" : "start"}">${i}${i === 0 ? `\u202f${unit}` : ""}</text>`;
  }
  return `<path d="M${r(x)} ${r(top)}V${r(top + height)}${ticks}" fill="none" stroke="#23282e" stroke-width=".18"/><g class="drawn" font-size="3.5">${words}</g>`;
}
