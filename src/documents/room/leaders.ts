import { svgNumber } from "../words/svgNumber.ts";
/** What a leader names, in millimetres of the wall. */
export interface LeaderLabel {
  readonly id: string;
  readonly name: string;
  readonly words: string;
  /** Between these its dot may stand where `spotAt` gives a height. */
  readonly left: number;
  readonly right: number;
  spotAt(x: number): number | null;
  /** True where its line, on its way to the floor, runs over nothing that stands before it. */
  isFree(x: number, y: number): boolean;
  /** Which part of it is seen there; all one where nothing is said. */
  partAt?(x: number, y: number): number;
  /** Left out where it finds no place on the first line. */
  readonly ifRoom?: true;
}

export interface PlacedLeaders {
  readonly svg: string;
  /** True where a label found no place clear of the others. */
  readonly crowded: boolean;
  /** Where each label stands on paper, its left edge on its leader. */
  readonly labels: readonly {
    readonly x: number;
    readonly y: number;
    readonly name: string;
    readonly words: string;
  }[];
}

/** The least width that a label takes on paper, its letters, and the step to a further line of labels. */
const LABEL_MM = 18;
const LETTER_MM = 1.95;
const STEP_MM = 12;
/** What a label without a clear place costs: more than any shift of all others. */
const NO_PLACE = 10_000;
/** A label breaks its words over several lines at this width. */
const WIDEST_MM = 46;
const ROWS = 3;
/** Two leaders nearer than this read as one. */
const APART_MM = 3;
const r = (n: number): string => svgNumber(n, 2);

interface Standing {
  readonly px: number;
  readonly py: number;
  readonly end: number;
  readonly row: number;
}

/** A place for a dot on paper. */
interface Spot {
  readonly px: number;
  readonly py: number;
  readonly free: boolean;
  readonly part: number;
}

/** A part is broader where it is so much so; of about equal ones the first at the left is taken. */
const MUCH = 1.15;

/** What it costs to run over something else, in millimetres moved. */
const CROSSING_MM = 14;

/** True where a label with its leader at `px` in `row` meets no other: text clear of text, and no leader through a text. */
function isClear(px: number, end: number, row: number, all: readonly Standing[]): boolean {
  return all.every((o) => {
    const overlap = px < o.end && o.px < end;
    if (o.row === row) return !overlap;
    if (Math.abs(px - o.px) < APART_MM) return false;
    // The lower one's leader runs past the upper one's text.
    return o.row < row ? px < o.px || px > o.end : o.px < px || o.px > end;
  });
}

/** Places on a thing for its dot, a millimetre apart: nearest to the middle of its broadest clear part, and clear of what stands below. */
function candidates(from: number, to: number, at: (px: number) => Omit<Spot, "px"> | null) {
  const steps = Math.max(0, Math.floor(to - from));
  const runs: Spot[][] = [[]];
  for (let n = 0; n <= steps; n++) {
    const px = from + n + (to - from - steps) / 2;
    const spot = at(px);
    const last = runs.at(-1)?.at(-1);
    if (spot === null || (last && last.part !== spot.part)) runs.push([]);
    if (spot !== null) runs.at(-1)?.push({ px, ...spot });
  }
  const broadest = runs.reduce((a, b) => (b.length > a.length * MUCH ? b : a));
  const wish = broadest[Math.floor(broadest.length / 2)]?.px ?? (from + to) / 2;
  const cost = (s: Spot): number => Math.abs(s.px - wish) + (s.free ? 0 : CROSSING_MM);
  return { wish, spots: runs.flat().sort((a, b) => cost(a) - cost(b)) };
}

interface Arranged {
  readonly standing: ReadonlyMap<LeaderLabel, Standing>;
  /** How badly: rows used, ways moved, and above all labels that found no clear place. */
  readonly cost: number;
}

interface Span {
  readonly wish: number;
  readonly width: number;
  readonly spots: readonly Spot[];
}

/** What is named only where there is room chooses last. */
function last(order: readonly LeaderLabel[]): LeaderLabel[] {
  return [...order.filter((l) => !l.ifRoom), ...order.filter((l) => l.ifRoom)];
}

/** Places labels one after another, each as well as those before it allow. */
function arrange(order: readonly LeaderLabel[], spans: ReadonlyMap<LeaderLabel, Span>): Arranged {
  const standing = new Map<LeaderLabel, Standing>();
  let cost = 0;
  for (const label of order) {
    const { wish, width, spots } = spans.get(label) as Span;
    const done = [...standing.values()];
    let found: Standing | null = null;
    for (let row = 0; row < (label.ifRoom ? 1 : ROWS) && !found; row++) {
      const spot = spots.find(
        (p) =>
          isClear(p.px, p.px + width, row, done) &&
          done.every((o) => Math.abs(o.px - p.px) >= APART_MM),
      );
      if (spot) found = { ...spot, end: spot.px + width, row };
    }
    if (!found && (label.ifRoom || spots.length === 0)) continue;
    const set = found ?? {
      ...(spots[0] as Spot),
      end: (spots[0] as Spot).px + width,
      row: ROWS - 1,
    };
    standing.set(label, set);
    cost += (found ? 0 : NO_PLACE) + set.row * 60 + Math.abs(set.px - wish);
  }
  return { standing, cost };
}

/**
 * Leaders from things on a wall to their names below the floor: a white dot on the cloth, a vertical line under-laid with white, the
 * label left-aligned to it. Dots move sideways within their things until labels have room and no leader runs through a name; what
 * still has none goes a line lower. Several orders are tried, the best is kept. `scale` is paper over real; (x, y) is the wall's
 * upper left corner on paper.
 */
export function placeLeaders(
  all: readonly LeaderLabel[],
  scale: number,
  x: number,
  y: number,
  below: number,
  rightEdge: number,
): PlacedLeaders {
  const spans = new Map(
    all.map((label): [LeaderLabel, Span] => {
      const letters = Math.max(label.name.length * 1.1, label.words.length);
      const width = Math.min(WIDEST_MM, Math.max(LABEL_MM, letters * LETTER_MM + 3));
      const from = x + label.left * scale + 1.5;
      const to = Math.max(from, Math.min(rightEdge - width, x + label.right * scale - 1.5));
      const at = (px: number) => {
        const place = (px - x) / scale;
        const high = label.spotAt(place);
        if (high === null) return null;
        return {
          py: y + high * scale,
          free: label.isFree(place, high),
          part: label.partAt?.(place, high) ?? 0,
        };
      };
      return [label, { width, ...candidates(from, to, at) }];
    }),
  );
  const byPlace = [...all].sort(
    (a, b) => a.left + a.right - (b.left + b.right) || (a.id < b.id ? -1 : 1),
  );
  const wide = (l: LeaderLabel): number => l.right - l.left;
  const orders = [
    byPlace,
    [...byPlace].reverse(),
    [...byPlace].sort((a, b) => wide(a) - wide(b)),
    [...byPlace].sort((a, b) => a.right - b.right),
    [...byPlace].sort((a, b) => b.left - a.left),
  ];
  const best = orders
    .map((order) => arrange(last(order), spans))
    .reduce((a, b) => (b.cost < a.cost - 1e-9 ? b : a));
  let svg = "";
  let dots = "";
  const labels: { x: number; y: number; name: string; words: string }[] = [];
  for (const label of byPlace) {
    const at = best.standing.get(label);
    if (!at) continue;
    const { px, py, row } = at;
    const ly = below + row * STEP_MM;
    svg += `<path d="M${r(px)} ${r(py)}V${r(ly + 3)}" stroke="#fff" stroke-opacity=".75" stroke-width=".7"/><path d="M${r(px)} ${r(py)}V${r(ly + 8)}" stroke="#23282e" stroke-width=".18"/>`;
    dots += `<circle cx="${r(px)}" cy="${r(py)}" r=".75" fill="#fff" stroke="#23282e" stroke-width=".25"/>`;
    labels.push({ x: px + 1.2, y: ly, name: label.name, words: label.words });
  }
  return { svg: svg + dots, crowded: best.cost >= NO_PLACE, labels };
}
