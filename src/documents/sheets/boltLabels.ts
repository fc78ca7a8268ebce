import { builtText, textWidthMm } from "../../drawing/words.ts";
import { escapeHtml } from "../words/marks.ts";
import { svgNumber } from "../words/svgNumber.ts";
import { clearShift, type LabelBox } from "./labelPlaces.ts";

const r = (n: number): string => svgNumber(n, 2);
/** From line to line of a label. */
const LINE = 4.2;

/** From one width that is tried for even lines to the next. */
const STEP = 0.7;
/** What is read of a width: bold, `textWidthMm` being a little wide. */
const BOLD = 1.04;

/** Words broken at spaces into lines of the width; null where a word alone is wider. */
function brokenAt(text: string, width: number): string[] | null {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && textWidthMm(longer) * BOLD <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
    if (textWidthMm(lines.at(-1) as string) * BOLD > width) return null;
  }
  return lines;
}

/** A label in at most three lines of the width, as even as they can be; null where it does not fit so. */
function linesOf(text: string, width: number): string[] | null {
  const lines = brokenAt(text, width);
  if (lines === null || lines.length > 3) return null;
  let even = lines;
  for (let narrower = width - STEP; narrower > 0; narrower -= STEP) {
    const tried = brokenAt(text, narrower);
    if (tried === null || tried.length > lines.length) break;
    even = tried;
  }
  return even;
}

/**
 * The number of a piece and, where it has room, its name and the arrow up the pattern. They stand clear of the motifs and of the
 * labels already `taken`, to which they add themselves; `cloth` is between its selvedges on paper, millimetres.
 */
export function pieceLabel(
  piece: { readonly number: string; readonly name: string; readonly up: boolean },
  at: LabelBox,
  taken: LabelBox[],
  motifs: readonly LabelBox[],
  cloth: { readonly top: number; readonly foot: number },
): string {
  const lines = linesOf(`${piece.number} ${piece.name}`, at.width - 4);
  const named = lines !== null && at.height >= lines.length * LINE + 1.5;
  const shown = named ? lines : [piece.number];
  const arrow = piece.up && at.width > 16 && at.height > shown.length * LINE + 5.5;
  const height = shown.length * LINE + (arrow ? 4 : 0);
  const width = Math.max(...shown.map((line) => textWidthMm(line) * BOLD));
  const x = at.x + (named ? 2.5 : Math.max(0.6, at.width / 2 - width / 2));
  // A strip thinner than its number lets it stand over its edges, and move along it, but not over the selvedge.
  const inside = (y: number) => Math.max(cloth.top, Math.min(cloth.foot - height, y));
  const y = inside(at.y + (at.height - height) / 2);
  const boxes = shown.map((line, i) => ({
    x: x - 0.5,
    y: y + i * LINE,
    width: textWidthMm(line) * BOLD + 1,
    height: LINE,
  }));
  const ay = y + shown.length * LINE + 2;
  if (arrow) boxes.push({ x: at.x + 2, y: ay - 1.4, width: 13, height: 2.8 });
  const room = {
    x: at.x + 0.3,
    y: Math.min(y, at.y + 0.3),
    width: at.width - 0.6,
    height: Math.max(height, at.height - 0.6),
  };
  const { dx, dy } = clearShift(boxes, room, taken, motifs);
  const stand = boxes.map((box) => ({ ...box, x: box.x + dx, y: box.y + dy }));
  taken.push(...stand);
  const grounds = stand.map(
    (box) =>
      `<rect x="${r(box.x)}" y="${r(box.y)}" width="${r(box.width)}" height="${r(box.height)}" fill="#fff"/>`,
  );
  const said = shown.map(
    (line, i) =>
      `<text x="${r(x + dx)}" y="${r(y + dy + i * LINE + 3.2)}" font-size="3.5" font-weight="700">${escapeHtml(line)}</text>`,
  );
  const to = { x: at.x + dx, y: ay + dy };
  const shaft = arrow
    ? `<path d="M${r(to.x + 3)} ${r(to.y)}h9" stroke="#000" stroke-width=".25"/><path d="M${r(to.x + 14)} ${r(to.y)}l-2.6 -.7v1.4z"/>`
    : "";
  return grounds.join("") + said.join("") + shaft;
}

/** The room that the words of `label` take with their ground. */
export function labelBox(text: string, cx: number, cy: number, upright = false): LabelBox {
  const w = textWidthMm(text, 3.2) * 1.05 + 1;
  return upright
    ? { x: cx - 2, y: cy - w / 2, width: 4, height: w }
    : { x: cx - w / 2, y: cy - 2, width: w, height: 4 };
}

/** A word on white in the middle of a field. */
export function label(text: string, cx: number, cy: number, upright = false): string {
  const w = textWidthMm(text, 3.2) * 1.05;
  const turn = upright ? ` transform="rotate(-90 ${r(cx)} ${r(cy)})"` : "";
  return `<g${turn}><rect x="${r(cx - w / 2 - 0.5)}" y="${r(cy - 2)}" width="${r(w + 1)}" height="4" fill="#fff"/><text x="${r(cx)}" y="${r(cy + 1.1)}" text-anchor="middle" font-size="3.2">${builtText(text)}</text></g>`;
}
