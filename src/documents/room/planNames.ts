import { readableInk } from "../../colour/contrast.ts";
import { textWidthMm } from "../../drawing/words.ts";
import { escapeHtml } from "../words/marks.ts";
import { svgNumber } from "../words/svgNumber.ts";

/** A rectangle on paper, in millimetres. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly foot: number;
}

/** A piece of the room as it lies on the drawn plan. */
export interface PlanPiece extends Box {
  readonly title: string;
  /** The object's card, where it has one. */
  readonly object: string | null;
  /** A rug, on which other things stand. */
  readonly flat: boolean;
  /** One more of a piece that is named at its first place. */
  readonly isCopy?: boolean;
}

/** Where a name stands on the plan, and its lines. */
export interface PlanName {
  readonly piece: PlanPiece;
  readonly lines: readonly string[];
  readonly box: Box;
  /** The one colour that it stands on. */
  readonly ground: string;
}

/** The one colour that is drawn under a box; null where there are several. */
export type GroundAt = (box: Box) => string | null;
const PAPER: GroundAt = () => "#ffffff";

const INK = "#23282e";
const WHITE = "#ffffff";
const EM_MM = 3.5;
const LINE_MM = 4.1;
/** Clear paper about the letters. */
const PAD_MM = 0.9;
/** From a wall: half of its line, which a name's ground would cut. */
const OFF_WALL_MM = 0.5;
/** Places tried along each side of a piece or of the paper beside it. */
const STEPS = 8;

/**
 * Names for the pieces of a plan: inside a piece where there is room clear of what stands on it, else beside it on the floor; never
 * over another piece or name, always on one colour. `solid` is masonry that stands in the room. What finds no place in `floor` has none: the lists beside the plan name it.
 */
export function planNames(
  pieces: readonly PlanPiece[],
  floor: Box,
  solid: readonly Box[] = [],
  groundAt: GroundAt = PAPER,
): PlanName[] {
  const named: PlanName[] = [];
  // Large pieces have the most places, so the small ones choose first.
  const order = [...pieces].sort((a, b) => area(a) - area(b) || (a.title < b.title ? -1 : 1));
  for (const piece of order) {
    if (piece.isCopy) continue;
    const found = ways(piece.title)
      .flatMap((lines) =>
        [...within(piece, sizeOf(lines)), ...beside(piece, sizeOf(lines), floor)].map(
          (box, at) => ({
            lines,
            box,
            at,
          }),
        ),
      )
      .find(
        ({ box }) =>
          isClear(box, piece, pieces, named, floor) &&
          solid.every((wall) => !meets(box, wall)) &&
          groundAt(box) !== null,
      );
    const ground = found ? groundAt(found.box) : null;
    if (found && ground) named.push({ piece, lines: found.lines, box: found.box, ground });
  }
  return named;
}

/** The names as SVG, each on its own ground, which hides the fine lines that it would cross, in the ink that reads on it. */
export function drawPlanNames(names: readonly PlanName[]): string {
  const r = (n: number) => svgNumber(n, 2);
  return names
    .map(({ lines, ground, box: { left, top, right, foot } }) => {
      const middle = (left + right) / 2;
      const words = lines
        .map(
          (line, n) =>
            `<text class="drawn" x="${r(middle)}" y="${r(top + PAD_MM + EM_MM * 0.82 + n * LINE_MM)}" text-anchor="middle" font-size="${EM_MM}" style="fill:${readableInk(ground, INK, WHITE)}">${escapeHtml(line)}</text>`,
        )
        .join("");
      return `<rect x="${r(left)}" y="${r(top)}" width="${r(right - left)}" height="${r(foot - top)}" fill="${ground}"/>${words}`;
    })
    .join("");
}

/** A title on one line, and broken at its words into two and three, the widest line as short as can be. */
function ways(title: string): string[][] {
  const words = title.split(" ");
  const found: string[][] = [[title]];
  for (let lines = 2; lines <= Math.min(3, words.length); lines++) {
    const width = (parts: readonly string[]) => Math.max(...parts.map((part) => part.length));
    found.push(breaks(words, lines).reduce((a, b) => (width(b) < width(a) ? b : a)));
  }
  return found;
}

/** All ways to set words in so many lines. */
function breaks(words: readonly string[], lines: number): string[][] {
  if (lines === 1) return [[words.join(" ")]];
  const found: string[][] = [];
  for (let n = 1; n <= words.length - lines + 1; n++)
    for (const rest of breaks(words.slice(n), lines - 1))
      found.push([words.slice(0, n).join(" "), ...rest]);
  return found;
}

function sizeOf(lines: readonly string[]) {
  return {
    width: Math.max(...lines.map((line) => textWidthMm(line, EM_MM))) + 2 * PAD_MM,
    height: (lines.length - 1) * LINE_MM + EM_MM + 2 * PAD_MM,
  };
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Places inside a piece, the nearest to its middle first. */
function within(piece: PlanPiece, { width, height }: Size): Box[] {
  const [roomX, roomY] = [piece.right - piece.left - width, piece.foot - piece.top - height];
  if (roomX < 0 || roomY < 0) return [];
  const places: { box: Box; off: number }[] = [];
  for (let i = 0; i <= STEPS; i++) {
    for (let j = 0; j <= STEPS; j++) {
      const [left, top] = [piece.left + (roomX * i) / STEPS, piece.top + (roomY * j) / STEPS];
      const off = Math.hypot((roomX * (2 * i - STEPS)) / STEPS, (roomY * (2 * j - STEPS)) / STEPS);
      places.push({ box: { left, top, right: left + width, foot: top + height }, off });
    }
  }
  return places.sort((a, b) => a.off - b.off).map(({ box }) => box);
}

/** Places below, above, right and left of a piece, on the floor. */
function beside(piece: PlanPiece, { width, height }: Size, floor: Box): Box[] {
  const [middleX, middleY] = [(piece.left + piece.right) / 2, (piece.top + piece.foot) / 2];
  // A name beside a piece that stands in a corner is moved along until it lies on the floor.
  const inside = (value: number, low: number, high: number) => Math.max(low, Math.min(value, high));
  const at = (x: number, y: number): Box => {
    const left = inside(x, floor.left + OFF_WALL_MM, floor.right - OFF_WALL_MM - width);
    const top = inside(y, floor.top + OFF_WALL_MM, floor.foot - OFF_WALL_MM - height);
    return { left, top, right: left + width, foot: top + height };
  };
  return [
    at(middleX - width / 2, piece.foot + PAD_MM),
    at(middleX - width / 2, piece.top - PAD_MM - height),
    at(piece.right + PAD_MM, middleY - height / 2),
    at(piece.left - PAD_MM - width, middleY - height / 2),
  ];
}

function isClear(
  box: Box,
  own: PlanPiece,
  pieces: readonly PlanPiece[],
  named: readonly PlanName[],
  floor: Box,
): boolean {
  const inside =
    box.left >= floor.left &&
    box.right <= floor.right &&
    box.top >= floor.top &&
    box.foot <= floor.foot;
  return (
    inside &&
    named.every((other) => !meets(box, other.box)) &&
    pieces.every((other) => other === own || (other.flat && !own.flat) || !meets(box, other))
  );
}

function meets(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.foot && b.top < a.foot;
}

function area({ left, right, top, foot }: Box): number {
  return (right - left) * (foot - top);
}
