import { builtText, textWidthMm } from "../../drawing/words.ts";
import type { ClothQuantity } from "../../quantities/quantityTypes.ts";
import { Length } from "../../units/length.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import { printLength } from "../../units/printLength.ts";
import { escapeHtml, type Markup } from "../words/marks.ts";

/** One stretch of the cloth that is drawn as a row, in millimetres of the real thing along the length. */
interface Row {
  readonly length: number;
  readonly from: number;
  readonly to: number;
}

const PAGE_MM = 168;
const r = (n: number): string => (Math.round(n * 100) / 100).toString();

/** Rows that end at a straight cut where there is one, else at the page's edge; a long cloth wraps. */
function rowsOf(cloth: ClothQuantity, perRow: number): Row[] {
  return cloth.plan.lengths.flatMap((whole, index): Row[] => {
    const end = whole.toMm();
    const cuts = cloth.plan.crossCuts.filter((c) => c.length === index).map((c) => c.y.toMm());
    const feet = cloth.plan.pieces
      .filter((p) => p.length === index)
      .flatMap((p) => [p.y.toMm(), p.y.plus(p.height).toMm()]);
    const rows: Row[] = [];
    let from = 0;
    while (end - from > perRow + 1) {
      const limit = from + perRow;
      const good = cuts.filter((c) => c > from + perRow * 0.25 && c <= limit);
      const second = feet.filter((c) => c > from + perRow * 0.25 && c <= limit);
      const to =
        good.length > 0 ? Math.max(...good) : second.length > 0 ? Math.max(...second) : limit;
      rows.push({ length: index, from, to });
      from = to;
    }
    rows.push({ length: index, from, to: end });
    return rows;
  });
}

/** The scale: as large as lets the cloth's width stand about 30 mm high, from a few round ones. */
function scaleOf(cloth: ClothQuantity): number {
  const width = cloth.usableWidth.toMm();
  return [20, 25, 30, 40, 50, 60].find((s) => width / s <= 34.5) ?? 80;
}

function lozenges(cloth: ClothQuantity, row: Row, scale: number, y0: number): string {
  const pattern = cloth.plan.pattern;
  const h = pattern?.horizontal?.toMm();
  if (!pattern || !h) return "";
  const v = pattern.vertical.toMm();
  if (v / scale < 4 || h / scale < 4) return "";
  const width = cloth.usableWidth.toMm();
  const start = (cloth.plan.starts[row.length] ?? cloth.plan.start).toMm();
  let d = "";
  const first = Math.floor((0 - pattern.motifX.toMm()) / h);
  for (let k = first; pattern.motifX.toMm() + k * h <= width; k++) {
    const x = pattern.motifX.toMm() + k * h;
    if (x < 0) continue;
    const shift = pattern.match === "half-drop" && k % 2 !== 0 ? v / 2 : 0;
    for (let m = Math.floor((row.from + start - shift) / v); ; m++) {
      const y = m * v + shift - start;
      if (y > row.to) break;
      if (y < row.from) continue;
      const px = (y - row.from) / scale;
      const py = y0 + (width - x) / scale;
      d += `M${r(px - 1.5)} ${r(py)}l1.5 -1.1l1.5 1.1l-1.5 1.1z`;
    }
  }
  return `<path d="${d}" fill="#fff" stroke="#000" stroke-width=".2"/>`;
}

function dimension(x1: number, x2: number, y: number, text: string): string {
  const width = textWidthMm(text);
  const inside = x2 - x1 > width + 8;
  const arrows = `M${r(x1)} ${r(y)}H${r(x2)}`;
  const heads = `M${r(x1)} ${r(y)}l2.6 -.5v1zM${r(x2)} ${r(y)}l-2.6 -.5v1z`;
  const tx = inside ? (x1 + x2) / 2 : x2 + 2;
  return `<path d="${arrows}M${r(x1)} ${r(y - 3)}v4.5M${r(x2)} ${r(y - 3)}v4.5" stroke="#000" stroke-width=".18" fill="none"/><path d="${heads}" fill="#000"/><text x="${r(tx)}" y="${r(inside ? y - 1 : y + 1.2)}" text-anchor="${inside ? "middle" : "start"}" font-size="3.5">${builtText(text)}</text>`;
}

/**
 * The cutting plan of one cloth, black on white, one drawing a row so that a long cloth can run over pages: selvedges at top and
 * foot, the start at the left, waste hatched, motifs printed through.
 */
export function boltRows(
  cloth: ClothQuantity,
  numberOf: ReadonlyMap<string, number>,
  units: UnitSystem,
  prefix: string,
): Markup[] {
  const scale = scaleOf(cloth);
  const rows = rowsOf(cloth, PAGE_MM * scale);
  const width = cloth.usableWidth.toMm();
  const high = width / scale;
  return rows.map((row, at) => {
    const y0 = 2;
    let out = "";
    const long = (row.to - row.from) / scale;
    const id = `${prefix}-r${at}`;
    let hatch = "";
    for (let x = -high; x < long; x += 2)
      hatch += `M${r(x)} ${r(y0 + high)}l${r(high)} ${r(-high)}`;
    out += `<clipPath id="${id}"><rect x="0" y="${r(y0)}" width="${r(long)}" height="${r(high)}"/></clipPath><path d="${hatch}" clip-path="url(#${id})" stroke="#000" stroke-width=".13" fill="none"/>`;
    const here = cloth.plan.pieces.filter(
      (p) =>
        p.length === row.length &&
        p.y.toMm() < row.to - 0.5 &&
        p.y.plus(p.height).toMm() > row.from + 0.5,
    );
    let labels = "";
    for (const p of here) {
      const x = Math.max(0, (p.y.toMm() - row.from) / scale);
      const x2 = Math.min(long, (p.y.plus(p.height).toMm() - row.from) / scale);
      const w = x2 - x;
      const h = p.width.toMm() / scale;
      const y = y0 + (width - p.x.toMm() - p.width.toMm()) / scale;
      out += `<rect x="${r(x)}" y="${r(y)}" width="${r(w)}" height="${r(h)}" fill="#fff" stroke="#000" stroke-width=".35"/>`;
      const number = String(numberOf.get(p.id) ?? "");
      const name = `${number} ${p.piece}`;
      const fits = textWidthMm(name) * 1.1 < w - 3 && h > 5;
      const shown = fits ? name : number;
      const tw = textWidthMm(shown) * 1.12;
      const cx = x + (fits ? 2.5 : Math.max(0.6, w / 2 - tw / 2));
      const cy = y + Math.min(h - 1.4, Math.max(4, h / 2 + 1.2));
      labels += `<rect x="${r(cx - 0.5)}" y="${r(cy - 3.3)}" width="${r(tw + 1)}" height="4.4" fill="#fff"/><text x="${r(cx)}" y="${r(cy)}" font-size="3.5" font-weight="700">${escapeHtml(shown)}</text>`;
      if (h > 10 && w > 16 && !p.turned)
        labels += `<path d="M${r(x + 3)} ${r(cy + 3.4)}h9" stroke="#000" stroke-width=".25"/><path d="M${r(x + 14)} ${r(cy + 3.4)}l-2.6 -.7v1.4z"/>`;
      if (p.turned)
        labels += `<text x="${r(x + 1)}" y="${r(y + h - 1)}" font-size="3.2">turned</text>`;
    }
    out += lozenges(cloth, row, scale, y0) + labels;
    out += `<path d="M0 ${r(y0)}H${r(long)}M0 ${r(y0 + high)}H${r(long)}" stroke="#000" stroke-width=".5"/><path d="M0 ${r(y0 - 1)}v${r(high + 2)}M${r(long)} ${r(y0 - 1)}v${r(high + 2)}" stroke="#000" stroke-width=".35"/>`;
    const end = Length.mm(Math.round(row.to * 160).toString()).dividedBy(160);
    const from = Length.mm(Math.round(row.from * 160).toString()).dividedBy(160);
    const words =
      row.from === 0
        ? `${printLength(end, units)}${cloth.plan.lengths.length > 1 ? `, length ${row.length + 1}` : ""}`
        : `${printLength(from, units)} to ${printLength(end, units)} from the start`;
    out += dimension(0, long, y0 + high + 5.6, words);
    const height = y0 + high + 8;
    const said = here.map((p) => `${numberOf.get(p.id)}: ${p.piece}`).join("; ");
    return {
      html: `<svg xmlns="http://www.w3.org/2000/svg" class="drawn" width="${PAGE_MM + 2}mm" height="${r(height)}mm" viewBox="-1 0 ${PAGE_MM + 2} ${r(height)}" role="img" aria-labelledby="${id}-t ${id}-d" font-family="'Alegreya Sans',sans-serif"><title id="${id}-t">Cutting plan, one to ${scale}${rows.length > 1 ? `, part ${at + 1} of ${rows.length}` : ""}</title><desc id="${id}-d">${escapeHtml(said)}</desc>${out}</svg>`,
    };
  });
}

/** The scale of the plan, for the words above it. */
export function boltScale(cloth: ClothQuantity): number {
  return scaleOf(cloth);
}
