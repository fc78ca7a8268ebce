/** What a leader names, in millimetres of the wall. */
export interface LeaderLabel {
  readonly id: string;
  readonly name: string;
  readonly words: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
}

export interface PlacedLeaders {
  readonly svg: string;
  /** Where each label stands on paper, its left edge on its leader. */
  readonly labels: readonly {
    readonly x: number;
    readonly y: number;
    readonly name: string;
    readonly words: string;
  }[];
}

/** Width that a label takes on paper, and the step to a second line of labels. */
const LABEL_MM = 27;
const STEP_MM = 12;
const r = (n: number): string => (Math.round(n * 100) / 100).toString();

/**
 * Leaders from things on a wall to their names below the floor: a white dot on the cloth, a vertical line under-laid with white, the
 * label left-aligned to it. Dots move sideways within their things until labels have room; what still has none goes a line lower.
 * `scale` is paper over real; (x, y) is the wall's upper left corner on paper.
 */
export function placeLeaders(
  all: readonly LeaderLabel[],
  scale: number,
  x: number,
  y: number,
  below: number,
  rightEdge: number,
): PlacedLeaders {
  const sorted = [...all].sort(
    (a, b) => a.left + a.right - (b.left + b.right) || (a.id < b.id ? -1 : 1),
  );
  const ends = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let svg = "";
  const labels: { x: number; y: number; name: string; words: string }[] = [];
  for (const label of sorted) {
    const from = x + label.left * scale + 1.5;
    const to = Math.max(from, Math.min(rightEdge - LABEL_MM, x + label.right * scale - 1.5));
    const wish = Math.min(to, Math.max(from, x + ((label.left + label.right) / 2) * scale));
    const fits = (end: number): boolean => Math.max(wish, end) <= to;
    let row = ends.findIndex(fits);
    if (row < 0) row = ends.indexOf(Math.min(...ends));
    const px = Math.max(wish, Math.min(to, ends[row] as number));
    ends[row] = px + Math.max(LABEL_MM, Math.max(label.name.length, label.words.length) * 1.9);
    const tall = (label.foot - label.top) * scale;
    const py = y + label.foot * scale - Math.min(tall * 0.3, 14);
    const ly = below + row * STEP_MM;
    svg += `<path d="M${r(px)} ${r(py)}V${r(ly + 3)}" stroke="#fff" stroke-opacity=".75" stroke-width=".7"/><path d="M${r(px)} ${r(py)}V${r(ly + 8)}" stroke="#23282e" stroke-width=".18"/><circle cx="${r(px)}" cy="${r(py)}" r=".75" fill="#fff" stroke="#23282e" stroke-width=".25"/>`;
    labels.push({ x: px + 1.2, y: ly, name: label.name, words: label.words });
  }
  return { svg, labels };
}
