import type { Point } from "../../drawing/paths.ts";
import type { End } from "./clothSpots.ts";
import { OPENING, type SeenPieces } from "./seenPieces.ts";

/** What a leader names, in millimetres of the wall. */
export interface LeaderLabel {
  readonly id: string;
  readonly name: string;
  readonly words: string;
  /** Between these its dot may stand where `spotAt` gives a height. */
  readonly left: number;
  readonly right: number;
  spotAt(x: number): number | null;
  /** Which part of it is seen there; all one where nothing is said. */
  partAt?(x: number, y: number): number;
  /** Where a dot may stand farthest to either side, for a line that leaves the thing sideways; none where nothing is said. */
  ends?(): readonly End[];
  /** The pieces that it names, and those that they rest on: a line may run over both. */
  readonly own: ReadonlySet<string>;
  readonly beneath: ReadonlySet<string>;
  /** Left out where it finds no place on the first line. */
  readonly ifRoom?: true;
}

/** A drawing on its sheet: `scale` is paper over real, (x, y) its upper left corner on paper. */
export interface OnSheet {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

/** A way for a leader, on paper: from its dot sideways to `turn`, if that is elsewhere, and from there down. */
export interface Route {
  readonly px: number;
  readonly py: number;
  readonly turn: number;
  /** How much it is worse than the best place for a dot, in millimetres moved. */
  readonly cost: number;
}

/** What it costs to run over another piece, over one that the thing rests on, and over a window or a door. */
export const CROSSING = { other: 40, beneath: 6, opening: 4 };
/** What it costs to turn, and for each millimetre sideways. */
const TURN_COST = 6;
const ALONG_COST = 0.35;
/** Air between a line that leaves its thing and another piece. */
const AIR_MM = 1.5;
/** Columns tried for a line that turns. */
const COLUMN_MM = 2;
/** Points along a line at which is looked what it runs over. */
const STEP_MM = 1;
/** What it costs to name a thing at a part of it that is a mere strip, against its broadest. */
const NARROW_COST = 20;

/** What a line has run over so far. */
class Crossed {
  private readonly seen = new Set<string>();
  cost = 0;
  constructor(
    private readonly label: LeaderLabel,
    private readonly pieces: SeenPieces | null,
    private readonly sheet: OnSheet,
  ) {}
  /** The same, to go on from here another way. */
  fork(): Crossed {
    const other = new Crossed(this.label, this.pieces, this.sheet);
    for (const id of this.seen) other.seen.add(id);
    other.cost = this.cost;
    return other;
  }
  over(px: number, py: number): void {
    const { label, pieces, sheet, seen } = this;
    const p: Point = [(px - sheet.x) / sheet.scale, (py - sheet.y) / sheet.scale];
    const id = pieces?.at(p) ?? null;
    if (id === null || seen.has(id) || label.own.has(id)) return;
    seen.add(id);
    const { other, beneath, opening } = CROSSING;
    this.cost += id === OPENING ? opening : label.beneath.has(id) ? beneath : other;
  }
  /** Down to the floor, with so much air at both sides. */
  down(px: number, py: number, air: number): void {
    const { pieces, sheet } = this;
    if (!pieces) return;
    const foot = sheet.y + pieces.heightMm * sheet.scale;
    for (let y = py; y < foot; y += STEP_MM)
      for (const x of air > 0 ? [px - air, px, px + air] : [px]) this.over(x, y);
  }
}

/** Places on a thing for its dot, a millimetre apart, from where its line falls to the floor; the best are the middles of its broad parts. */
function straightDown(
  label: LeaderLabel,
  from: number,
  to: number,
  pieces: SeenPieces | null,
  sheet: OnSheet,
): Route[] {
  const steps = Math.max(0, Math.floor(to - from));
  const runs: { px: number; py: number; part: number }[][] = [[]];
  for (let n = 0; n <= steps; n++) {
    const px = from + n + (to - from - steps) / 2;
    const place = (px - sheet.x) / sheet.scale;
    const high = label.spotAt(place);
    const part = high === null ? 0 : (label.partAt?.(place, high) ?? 0);
    const last = runs.at(-1)?.at(-1);
    if (high === null || (last && last.part !== part)) runs.push([]);
    if (high !== null) runs.at(-1)?.push({ px, py: sheet.y + high * sheet.scale, part });
  }
  const broadest = Math.max(1, ...runs.map((run) => run.length));
  return runs.flatMap((run) => {
    const wish = run[Math.floor(run.length / 2)]?.px ?? from;
    const narrow = (1 - run.length / broadest) * NARROW_COST;
    return run.map(({ px, py }) => {
      const crossed = new Crossed(label, pieces, sheet);
      crossed.down(px, py, 0);
      return { px, py, turn: px, cost: Math.abs(px - wish) + narrow + crossed.cost };
    });
  });
}

/** Ways that leave a thing at its left or right, and fall to the floor beside what stands before it: only those that so run over less. */
function sideways(label: LeaderLabel, last: number, pieces: SeenPieces, sheet: OnSheet): Route[] {
  const [leftEnd, rightEnd] = [sheet.x + AIR_MM, sheet.x + pieces.widthMm * sheet.scale - AIR_MM];
  return (label.ends?.() ?? []).flatMap(({ y, left, right }, level) =>
    [
      { px: sheet.x + left * sheet.scale, way: -1 },
      { px: sheet.x + right * sheet.scale, way: 1 },
    ].flatMap(({ px, way }): Route[] => {
      const py = sheet.y + y * sheet.scale;
      const routes: Route[] = [];
      const straight = new Crossed(label, pieces, sheet);
      straight.down(px, py, 0);
      const along = new Crossed(label, pieces, sheet);
      for (let off = STEP_MM; ; off += STEP_MM) {
        const turn = px + way * off;
        if (turn < leftEnd || turn > Math.min(rightEnd, last)) return routes;
        along.over(turn, py);
        if (off % COLUMN_MM !== 0) continue;
        const crossed = along.fork();
        crossed.down(turn, py, AIR_MM);
        if (crossed.cost >= straight.cost) continue;
        routes.push({
          px,
          py,
          turn,
          cost: TURN_COST + off * ALONG_COST + level * 0.2 + crossed.cost,
        });
      }
    }),
  );
}

/**
 * The ways from a thing down to its name, the best first. Where a line would run over something on its way straight down, it may
 * leave the thing sideways. `width` is its name's, which ends before `rightEdge`.
 */
export function routesOf(
  label: LeaderLabel,
  width: number,
  rightEdge: number,
  pieces: SeenPieces | null,
  sheet: OnSheet,
): Route[] {
  const from = sheet.x + label.left * sheet.scale + 1.5;
  const to = Math.max(from, Math.min(rightEdge - width, sheet.x + label.right * sheet.scale - 1.5));
  const straight = straightDown(label, from, to, pieces, sheet);
  const byCost = (a: Route, b: Route): number => a.cost - b.cost;
  straight.sort(byCost);
  const isClear = straight.some((route) => route.cost < CROSSING.beneath);
  if (isClear || pieces === null || label.ifRoom) return straight;
  return [...straight, ...sideways(label, rightEdge - width, pieces, sheet)].sort(byCost);
}
