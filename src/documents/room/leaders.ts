import { nameLines } from "../words/nameLines.ts";
import { shortened } from "../words/phrases.ts";
import { svgNumber } from "../words/svgNumber.ts";
import { type LeaderLabel, type OnSheet, type Route, routesOf } from "./leaderRoutes.ts";
import type { SeenPieces } from "./seenPieces.ts";

export interface PlacedLeaders {
  readonly svg: string;
  /** True where a label found no place clear of the others. */
  readonly crowded: boolean;
  /** Where each label stands on paper, its left edge on its leader. */
  readonly labels: readonly {
    readonly x: number;
    readonly y: number;
    /** The name on its lines. */
    readonly lines: readonly string[];
    readonly words: string;
    /** How high it stands, name and words. */
    readonly heightMm: number;
  }[];
}

/** How names may stand: long ones on two lines, or all on one, the longer cut short. */
export type NamesOn = "two lines" | "one line";

/** The least width that a label takes on paper, its letters, and the step to a further line of labels, which grows with them. */
const LABEL_MM = 18;
const LETTER_MM = 1.95;
const STEP_MM = 12;
/** Between a label and the one below it. */
const BETWEEN_MM = 3;
/** Letters of a name on one line, and at the most, where it would else be cut: as many as a label is wide. */
const NAME_LETTERS = 20;
const MOST_LETTERS = 24;
/** A line of a name and one of its words, and how many letters of the words go on a line, in the layouts' own type. */
const NAME_MM = 5;
const WORDS_MM = 4;
const WORDS_LETTERS = 26;
/** What a label without a clear place costs: more than any shift of all others. */
const NO_PLACE = 10_000;
/** A label breaks its words over several lines at this width. */
const WIDEST_MM = 46;
const ROWS = 3;
/** What a further line of names costs, in millimetres moved: less than to run over another piece. */
const ROW_COST = 20;
/** Each label is placed once, and looked at once more when all have their places. */
const ROUNDS = 2;
/** Two leaders nearer than this read as one. */
const APART_MM = 3;
const r = (n: number): string => svgNumber(n, 2);

interface Standing extends Route {
  /** Where its name ends, and on which line of names it stands. */
  readonly end: number;
  readonly row: number;
}

/** True where a leader that turns at `a` runs over another's dot, line or turn, or too near to them. */
function runsOver(a: Route, b: Route): boolean {
  const [from, to] = [Math.min(a.px, a.turn) - APART_MM, Math.max(a.px, a.turn) + APART_MM];
  // Its level part over the other's upright one, or along the other's level part.
  if (a.px !== a.turn && b.turn > from && b.turn < to && b.py <= a.py) return true;
  const [left, right] = [Math.min(b.px, b.turn), Math.max(b.px, b.turn)];
  if (a.px !== a.turn && Math.abs(a.py - b.py) < APART_MM && left < to && right > from) return true;
  // Its upright part over the other's dot.
  return Math.abs(a.turn - b.px) < APART_MM && b.py >= a.py;
}

/** True where a name with its leader meets no other: text clear of text, no leader through a text, and none over another. */
function isClear(one: Standing, all: readonly Standing[]): boolean {
  return all.every((o) => {
    if (Math.abs(one.turn - o.turn) < APART_MM || runsOver(one, o) || runsOver(o, one))
      return false;
    if (o.row === one.row) return !(one.turn < o.end && o.turn < one.end);
    // The lower one's leader runs past the upper one's text.
    const [upper, lower] = o.row < one.row ? [o, one] : [one, o];
    return lower.turn < upper.turn || lower.turn > upper.end;
  });
}

interface Arranged {
  readonly standing: ReadonlyMap<LeaderLabel, Standing>;
  /** How badly: lines of names used, ways moved, and above all names that found no clear place. */
  readonly cost: number;
}

/** The ways that a label may take, how its name is broken, and how wide and high it is. */
interface Span {
  readonly lines: readonly string[];
  readonly heightMm: number;
  readonly width: number;
  readonly routes: readonly Route[];
}

/** What is named only where there is room chooses last. */
function last(order: readonly LeaderLabel[]): LeaderLabel[] {
  return [...order.filter((l) => !l.ifRoom), ...order.filter((l) => l.ifRoom)];
}

const costOf = (s: Standing): number => s.cost + s.row * ROW_COST;

/** The best clear place for a label among those that stand; null where there is none. */
function bestPlace(label: LeaderLabel, span: Span, done: readonly Standing[]): Standing | null {
  let best: Standing | null = null;
  for (let row = 0; row < (label.ifRoom ? 1 : ROWS); row++)
    for (const route of span.routes) {
      if (best && route.cost + row * ROW_COST >= costOf(best)) break;
      const one = { ...route, end: route.turn + span.width, row };
      if (isClear(one, done)) best = one;
    }
  return best;
}

/** Places labels one after another, each as well as those before it allow; then each once more, among all others. */
function arrange(order: readonly LeaderLabel[], spans: ReadonlyMap<LeaderLabel, Span>): Arranged {
  const standing = new Map<LeaderLabel, Standing>();
  const lost = new Set<LeaderLabel>();
  for (let round = 0; round < ROUNDS; round++)
    for (const label of order) {
      const span = spans.get(label) as Span;
      standing.delete(label);
      lost.delete(label);
      const found = bestPlace(label, span, [...standing.values()]);
      const [first] = span.routes;
      if (found) standing.set(label, found);
      else if (first && !label.ifRoom) {
        standing.set(label, { ...first, end: first.turn + span.width, row: ROWS - 1 });
        lost.add(label);
      }
    }
  const cost = [...standing.values()].reduce((sum, s) => sum + costOf(s), 0);
  return { standing, cost: cost + lost.size * NO_PLACE };
}

/** Where each line of labels begins: below the highest of those before it. */
function rowTops(
  standing: ReadonlyMap<LeaderLabel, Standing>,
  spans: ReadonlyMap<LeaderLabel, Span>,
  below: number,
): number[] {
  const tops = [below];
  for (let row = 0; row < ROWS - 1; row++) {
    const own = [...standing].filter(([, at]) => at.row === row);
    const highest = Math.max(0, ...own.map(([label]) => spans.get(label)?.heightMm ?? 0));
    tops.push((tops[row] as number) + Math.max(STEP_MM, highest + BETWEEN_MM));
  }
  return tops;
}

/**
 * Leaders from things on a wall to their names below the floor: a white dot on the cloth, a line under-laid with white, the label
 * left-aligned to it. A line falls straight down where it runs over nothing else, or over what the thing rests on; else it leaves the
 * thing sideways, and falls where the wall is free. Dots move within their things until labels have room and no leader runs through
 * a name or over another; what still has none goes a line lower. Several orders are tried, the best is kept. `below` is the height of
 * the first line of names on paper, `pieces` what is seen on the wall (null where nothing stands there), `namesOn` how long names stand.
 */
export function placeLeaders(
  all: readonly LeaderLabel[],
  sheet: OnSheet,
  below: number,
  rightEdge: number,
  pieces: SeenPieces | null,
  namesOn: NamesOn = "two lines",
): PlacedLeaders {
  const spans = new Map(
    all.map((label): [LeaderLabel, Span] => {
      const { name, words } = label;
      const lines =
        namesOn === "one line"
          ? [shortened(name, NAME_LETTERS)]
          : nameLines(name, NAME_LETTERS, MOST_LETTERS);
      const letters = Math.max(...lines.map((line) => line.length * 1.1), words.length);
      const width = Math.min(WIDEST_MM, Math.max(LABEL_MM, letters * LETTER_MM + 3));
      const heightMm = NAME_MM * lines.length + WORDS_MM * Math.ceil(words.length / WORDS_LETTERS);
      const routes = routesOf(label, width, rightEdge, pieces, sheet);
      return [label, { lines, heightMm, width, routes }];
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
  const labels: PlacedLeaders["labels"][number][] = [];
  const tops = rowTops(best.standing, spans, below);
  for (const label of byPlace) {
    const at = best.standing.get(label);
    if (!at) continue;
    const { px, py, turn, row } = at;
    const { lines, heightMm } = spans.get(label) as Span;
    const ly = tops[row] as number;
    const start = `M${r(px)} ${r(py)}${turn === px ? "" : `H${r(turn)}`}`;
    svg += `<path d="${start}V${r(ly + 3)}" fill="none" stroke="#fff" stroke-opacity=".75" stroke-width=".7"/><path d="${start}V${r(ly + heightMm - 1)}" fill="none" stroke="#23282e" stroke-width=".18"/>`;
    dots += `<circle cx="${r(px)}" cy="${r(py)}" r=".75" fill="#fff" stroke="#23282e" stroke-width=".25"/>`;
    labels.push({ x: turn + 1.2, y: ly, lines, words: label.words, heightMm });
  }
  return { svg: svg + dots, crowded: best.cost >= NO_PLACE, labels };
}
