import { builtText, textWidthMm } from "../../drawing/words.ts";
import { escapeHtml } from "../words/marks.ts";
import { svgNumber } from "../words/svgNumber.ts";

const r = (n: number): string => svgNumber(n, 2);
/** From line to line of a label. */
const LINE = 4.2;

/** A box on paper, millimetres. */
export interface LabelBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Shares of a piece's length by which its number moves where it would stand on another's: of strips too thin for a number. */
const ASIDE = [0, 0.15, -0.15, 0.3, -0.3, 0.42, -0.42];

/** A label's place in the middle of its piece, or along the piece where that is taken by the label of a neighbour. */
function clearOf(taken: readonly LabelBox[], label: LabelBox, piece: LabelBox): LabelBox {
  const along = piece.width >= piece.height ? "x" : "y";
  const long = Math.max(piece.width, piece.height);
  const moved = ASIDE.map((share) => ({ ...label, [along]: label[along] + share * long }));
  const meets = (a: LabelBox, b: LabelBox): boolean =>
    a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
  return moved.find((one) => !taken.some((other) => meets(one, other))) ?? label;
}

/** A label in at most three lines of the width, broken at spaces; null where it does not fit so. */
function linesOf(text: string, width: number): string[] | null {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (textWidthMm(longer) * 1.12 <= width && last !== undefined) lines[lines.length - 1] = longer;
    else lines.push(word);
    if (textWidthMm(lines.at(-1) as string) * 1.12 > width) return null;
  }
  return lines.length <= 3 ? lines : null;
}

/**
 * The number of a piece and, where it has room, its name and the arrow up the pattern; the number stands clear of those already
 * `taken`, to which it adds itself.
 */
export function pieceLabel(
  piece: { readonly number: string; readonly name: string; readonly up: boolean },
  at: LabelBox,
  taken: LabelBox[],
): string {
  const lines = linesOf(`${piece.number} ${piece.name}`, at.width - 4);
  const named = lines !== null && at.height >= lines.length * LINE + 1.5;
  const shown = named ? lines : [piece.number];
  const arrow = piece.up && at.width > 16 && at.height > shown.length * LINE + 5.5;
  const height = shown.length * LINE + (arrow ? 4 : 0);
  const width = Math.max(...shown.map((line) => textWidthMm(line) * 1.12));
  const x = at.x + (named ? 2.5 : Math.max(0.6, at.width / 2 - width / 2));
  const y = at.y + Math.max(at.height > height ? 0.4 : -height, (at.height - height) / 2);
  const box = clearOf(taken, { x, y, width, height }, at);
  taken.push(box);
  const said = shown.map((line, i) => {
    const top = box.y + i * LINE;
    const ground = `<rect x="${r(box.x - 0.5)}" y="${r(top)}" width="${r(textWidthMm(line) * 1.12 + 1)}" height="${LINE}" fill="#fff"/>`;
    return `${ground}<text x="${r(box.x)}" y="${r(top + 3.2)}" font-size="3.5" font-weight="700">${escapeHtml(line)}</text>`;
  });
  if (!arrow) return said.join("");
  const ay = box.y + shown.length * LINE + 2;
  const shaft = `<rect x="${r(at.x + 2)}" y="${r(ay - 1.4)}" width="13" height="2.8" fill="#fff"/><path d="M${r(at.x + 3)} ${r(ay)}h9" stroke="#000" stroke-width=".25"/>`;
  return `${said.join("")}${shaft}<path d="M${r(at.x + 14)} ${r(ay)}l-2.6 -.7v1.4z"/>`;
}

/** A word on white in the middle of a field. */
export function label(text: string, cx: number, cy: number, upright = false): string {
  const w = textWidthMm(text, 3.2) * 1.05;
  const turn = upright ? ` transform="rotate(-90 ${r(cx)} ${r(cy)})"` : "";
  return `<g${turn}><rect x="${r(cx - w / 2 - 0.5)}" y="${r(cy - 2)}" width="${r(w + 1)}" height="4" fill="#fff"/><text x="${r(cx)}" y="${r(cy + 1.1)}" text-anchor="middle" font-size="3.2">${builtText(text)}</text></g>`;
}
