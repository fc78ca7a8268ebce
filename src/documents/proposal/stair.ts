import type { Tile } from "../../drawing/binding.ts";
import { textWidthMm } from "../../drawing/words.ts";
import { capital } from "../../units/capital.ts";
import { type Money, majorUnits } from "../../units/money.ts";
import { tileImages } from "../board/cuttings.ts";
import { escapeHtml, type Markup } from "../words/marks.ts";
import { svgNumber } from "../words/svgNumber.ts";

/** One part of a step: what it buys and what that looks like. */
export interface StairPart {
  readonly label: string;
  readonly sum: Money;
  readonly fill:
    | { readonly tile: Tile; readonly scale: number; readonly ground: string | null }
    | { readonly flat: string }
    | { readonly hatch: true };
}

export interface StairStep {
  readonly name: string;
  readonly sum: string;
  readonly parts: readonly StairPart[];
  /** True of what comes off: its bar goes back from where the last one ended. */
  readonly isBack?: true;
}

export interface Stair {
  readonly steps: readonly StairStep[];
  readonly reserve: { readonly sum: Money; readonly words: string } | null;
  readonly limit: { readonly sum: Money; readonly words: string } | null;
}

/** The stair's words by themselves, bar by bar, then the reserve and the limit: for a screen on which they would be too small in it. */
export function stairWords({ steps, reserve, limit }: Stair): { name: string; sum: string }[] {
  const others = [reserve?.words, limit?.words].flatMap((w) =>
    w ? [{ name: capital(w), sum: "" }] : [],
  );
  return [...steps.map(({ name, sum }) => ({ name, sum })), ...others];
}

const WIDTH = 170;
const BAR = 8.5;
const PITCH = 12;
const TOP = 9;
/** Words stand so far off the limit's line. */
const OFF_LINE = 1.5;
/** Words stand so far from their bar, and their ground reaches so far past them. */
const BESIDE = 2.4;
const GROUND = 0.8;
const r = (n: number): string => svgNumber(n, 2);

/** Strokes at 45 degrees over a box, for making and fitting. */
function hatching(x: number, y: number, w: number, h: number, id: string): string {
  let d = "";
  for (let at = x - h; at < x + w; at += 1.7) d += `M${r(at)} ${r(y + h)}l${r(h)} ${r(-h)}`;
  return `<clipPath id="${id}"><rect x="${r(x)}" y="${r(y)}" width="${r(w)}" height="${r(h)}"/></clipPath><path d="${d}" clip-path="url(#${id})" stroke="#23282e" stroke-width=".13" fill="none"/>`;
}

/** Where words end that the limit's line would run through: short of the line, or past it where they would then begin before the stair. */
export function clearOf(
  line: number | null,
  { end, wide }: { readonly end: number; readonly wide: number },
): number {
  if (line === null || line < end - wide - OFF_LINE || line > end + OFF_LINE) return end;
  const before = line - OFF_LINE;
  return before >= wide ? before : line + OFF_LINE + wide;
}

/** Where the words of a bar stand: past it where it ends early, else before it; within its end where they would begin before the stair. */
export function wordsAt({ from, to, wide }: Record<"from" | "to" | "wide", number>): {
  readonly tx: number;
  readonly stand: "after" | "before" | "within";
} {
  if (to < WIDTH * 0.66) return { tx: to + BESIDE, stand: "after" };
  const fits = from - BESIDE >= wide - GROUND;
  return { tx: (fits ? from : to) - BESIDE, stand: fits ? "before" : "within" };
}

/**
 * The stair: one axis, the text's width, that ends at the client's limit (or at the total, where it is more). Each phase's bar begins
 * where the last one ended and is filled with the cloths that it buys; what comes off goes back from there. Lengths are money, exactly in proportion.
 */
export function stairSvg(stair: Stair, prefix: string): Markup {
  const value = (sum: Money): number => majorUnits(sum).valueOf();
  const sumOf = (s: StairStep) => s.parts.reduce((a, p) => a + value(p.sum), 0);
  const on = stair.steps.reduce((a, s) => a + (s.isBack ? 0 : sumOf(s)), 0);
  const off = stair.steps.reduce((a, s) => a + (s.isBack ? sumOf(s) : 0), 0);
  const total = on - off + (stair.reserve ? value(stair.reserve.sum) : 0);
  const limit = stair.limit ? value(stair.limit.sum) : null;
  const axis = Math.max(on, total, limit ?? 0, 1);
  const mm = (n: number): number => (n / axis) * WIDTH;
  // What is kept, and what is over the limit, stand beside the last bar; below it where that one goes back.
  const isOver = limit !== null && limit < total;
  const isBelow = stair.steps.at(-1)?.isBack && (stair.reserve !== null || isOver);
  const rows = stair.steps.length + (isBelow ? 1 : 0);
  const lastY = TOP + (rows - 1) * PITCH;
  const height = lastY + BAR + 8;
  let x = 0;
  let out = "";
  let labels = "";
  for (const [at, step] of stair.steps.entries()) {
    const y = TOP + at * PITCH;
    if (step.isBack) x -= mm(sumOf(step));
    const from = x;
    for (const [n, part] of step.parts.entries()) {
      const w = mm(value(part.sum));
      if (w <= 0) continue;
      const id = `${prefix}-b${at}-${n}`;
      const box = { x, y, width: Math.max(0.2, w), height: BAR };
      if ("tile" in part.fill)
        out += `<clipPath id="${id}"><rect x="${r(x)}" y="${r(y)}" width="${r(w)}" height="${BAR}"/></clipPath><g clip-path="url(#${id})">${tileImages(part.fill.tile, part.fill.scale, box, x + Math.min(w / 2, 12), y + BAR / 2, part.fill.ground)}</g>`;
      else if ("flat" in part.fill)
        out += `<rect x="${r(x)}" y="${r(y)}" width="${r(w)}" height="${BAR}" fill="${part.fill.flat}"/>`;
      else out += hatching(x, y, w, BAR, id);
      x += w;
      if (n < step.parts.length - 1 && w > 1.2)
        out += `<path d="M${r(x)} ${r(y)}v${BAR}" stroke="#fff" stroke-width=".5"/>`;
    }
    out += `<rect x="${r(from)}" y="${r(y)}" width="${r(x - from)}" height="${BAR}" fill="none" stroke="#23282e" stroke-width=".18"/>`;
    if (at < rows - 1 && !step.isBack)
      out += `<path d="M${r(x)} ${r(y + BAR)}v${PITCH - BAR}" stroke="#23282e" stroke-width=".25"/>`;
    if (step.isBack && at < rows - 1)
      out += `<path d="M${r(from)} ${r(y + BAR)}v${PITCH - BAR}" stroke="#23282e" stroke-width=".25"/>`;
    // A white ground under the words: the limit's line may run behind them. Stroked text would become a nameless font in the PDF.
    const wide = Math.max(textWidthMm(step.name, 4.8) * 0.9, textWidthMm(step.sum, 3.7)) + 1.6;
    const { tx, stand } = wordsAt({ from, to: x, wide });
    const right = stand === "after";
    const anchor = right ? "start" : "end";
    // Within a bar its outline stays whole.
    const [lift, ground] =
      stand === "within" ? [0.9, { y: y + 0.4, height: BAR - 0.8 }] : [0, { y, height: BAR + 0.8 }];
    labels += `<rect class="behind-words" x="${r(right ? tx - GROUND : tx - wide + GROUND)}" y="${r(ground.y)}" width="${r(wide)}" height="${r(ground.height)}" fill="#fff"/>`;
    labels += `<text x="${r(tx)}" y="${r(y + 4 - lift)}" text-anchor="${anchor}" font-size="4.8" style="font-family:var(--display);font-style:italic">${escapeHtml(step.name)}</text><text class="drawn" x="${r(tx)}" y="${r(y + 8.4 - lift)}" text-anchor="${anchor}" font-size="3.7">${escapeHtml(step.sum)}</text>`;
    if (step.isBack) x = from;
  }
  if (stair.reserve) {
    const w = mm(value(stair.reserve.sum));
    out += `<rect x="${r(x)}" y="${r(lastY)}" width="${r(w)}" height="${BAR}" fill="none" stroke="#23282e" stroke-width=".25" stroke-dasharray="1.2 .8"/>`;
    const wide = textWidthMm(stair.reserve.words, 3.5);
    const end = clearOf(limit === null ? null : mm(limit), {
      end: Math.max(wide, Math.min(WIDTH - 2, x + w)),
      wide,
    });
    out += `<text class="drawn" x="${r(end)}" y="${r(lastY + BAR + 4.4)}" text-anchor="end" font-size="3.5">${escapeHtml(stair.reserve.words)}</text>`;
    x += w;
  }
  if (stair.limit && limit !== null) {
    const at = mm(limit);
    if (isOver)
      out += `<rect x="${r(at)}" y="${r(lastY)}" width="${r(mm(total) - at)}" height="${BAR}" fill="none" stroke="#8c3426" stroke-width=".7"/>`;
    out += `<path d="M${r(at)} ${TOP - 4}V${r(height - 2)}" stroke="#23282e" stroke-width=".5"/><text class="drawn" x="${r(at)}" y="${TOP - 5.4}" text-anchor="end" font-size="3.7">${escapeHtml(stair.limit.words)}</text>`;
  }
  const words = stair.steps.map((s) => `${s.name} ${s.sum}`).join("; ");
  return {
    html: `<svg class="budget-picture" viewBox="-0.5 0 ${WIDTH + 1} ${r(height)}" role="img" aria-labelledby="${prefix}-t ${prefix}-d" xmlns="http://www.w3.org/2000/svg"><title id="${prefix}-t">Where the money goes, phase by phase</title><desc id="${prefix}-d">${escapeHtml(words)}</desc>${out}${labels}</svg>`,
  };
}
