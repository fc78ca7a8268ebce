import loadHighs from "highs";
import type { CutPiece, Grains } from "../../src/cutplan/piece.ts";
import type { Room } from "./rooms.ts";

/**
 * The exact answer for small rooms, by a published solver (HiGHS, mixed integer programming) on two models that share nothing
 * with the planner: places on a grid, or the order of pieces. One length of cloth, cutting from a given pattern point.
 */
export interface Exact {
  /** True: no plan is shorter than `length`. */
  readonly proved: boolean;
  readonly length: Grains;
}

/** When a model is given up. Nodes of the search are the same on a busy machine, seconds are not. */
export interface Limit {
  readonly seconds: number;
  readonly nodes?: number;
}

/** One way to lay a piece, from the rules of piece.ts by this file's own arithmetic. */
interface Way {
  readonly width: number;
  readonly height: number;
  /** x = x0 + k xStep up to the selvedge; xStep 0: only the listed xs; null: free. */
  readonly xs: readonly number[] | null;
  readonly y0: number | null;
}

/** Lengths are counted in half centimetres: the rooms of rooms.ts hold nothing finer. */
const UNIT = 800;

let solver: Promise<Awaited<ReturnType<typeof loadHighs>>> | null = null;

/** `apart`: two lengths that differ do so by this much at least, in units. */
async function solve(model: string, { seconds, nodes }: Limit, apart: number) {
  solver ??= loadHighs();
  const highs = await solver;
  try {
    return highs.solve(model, {
      time_limit: seconds,
      ...(nodes ? { mip_max_nodes: nodes } : {}),
      mip_rel_gap: 0,
      mip_abs_gap: 0.4 * apart,
    });
  } catch {
    // A model that the solver cannot hold is no answer; later models get a fresh solver.
    solver = null;
    return null;
  }
}

function waysOf(piece: CutPiece, room: Room, start: Grains): Way[] {
  const pattern = room.pattern;
  const H = (pattern?.horizontal ?? 0) / UNIT;
  const V = (pattern?.vertical ?? 0) / UNIT;
  const W = room.usableWidth / UNIT;
  const ways: Way[] = [];
  const { across, along } = piece;
  for (const turned of piece.mayTurn && across.rule !== "at" ? [false, true] : [false]) {
    const width = (turned ? piece.height : piece.width) / UNIT;
    const height = (turned ? piece.width : piece.height) / UNIT;
    if (turned && width === height) continue;
    const shift = turned ? (piece.width - piece.height) / 2 / UNIT : 0;
    const y0 =
      along.rule === "register" ? positive((along.residue - start) / UNIT - shift, V) : null;
    if (across.rule === "at") {
      const xs = across.positions.map((x) => x / UNIT).filter((x) => x >= 0 && x + width <= W);
      ways.push({ width, height, xs, y0 });
    } else if (across.rule === "free") {
      ways.push({ width, height, xs: null, y0 });
    } else {
      const given = across.residue / UNIT + shift;
      for (let k = -40; k <= 40; k++) {
        const x = given + k * H;
        if (x < 0 || x + width > W) continue;
        const odd = Math.abs(k) % 2 === 1;
        const dropped = pattern?.match === "half-drop" && odd && y0 !== null;
        ways.push({
          width,
          height,
          xs: [x],
          y0: dropped ? positive((y0 as number) + V / 2, V) : y0,
        });
      }
    }
  }
  return ways.filter((way) => way.width <= W && (way.xs === null || way.xs.length > 0));
}

function positive(value: number, period: number): number {
  return ((value % period) + period) % period;
}

/** Solves a room; `known` is the length of a plan in hand, `limit` holds for each model. */
export async function exactLength(
  room: Room,
  start: Grains,
  known: Grains,
  limit: Limit,
): Promise<Exact> {
  const best = Math.round(known / UNIT);
  const kinds = new Map<string, { ways: Way[]; count: number }>();
  for (const piece of room.pieces) {
    const ways = waysOf(piece, room, start);
    const key = JSON.stringify(ways);
    const kind = kinds.get(key);
    if (kind) kind.count++;
    else kinds.set(key, { ways, count: 1 });
  }
  const list = [...kinds.values()];
  const grid = gridModel(list, room, best - 1);
  if (grid) {
    const answer = await solve(grid, limit, 1);
    if (answer?.Status === "Infeasible") return { proved: true, length: known };
    if (answer?.Status === "Optimal") {
      return { proved: true, length: Math.round(answer.ObjectiveValue) * UNIT };
    }
    return { proved: false, length: known };
  }
  const apart = commonStep(list, room);
  const answer = await solve(orderModel(list, room, best - apart, apart), limit, apart);
  if (answer?.Status === "Infeasible") return { proved: true, length: known };
  if (answer?.Status === "Optimal") {
    return { proved: true, length: Math.round(answer.ObjectiveValue) * UNIT };
  }
  return { proved: false, length: known };
}

type Kinds = readonly { ways: readonly Way[]; count: number }[];

const MOST_COLUMNS = 600;

/** A binary a legal place with its top at most `limit`; null where they are too many. */
function gridModel(kinds: Kinds, room: Room, limit: number): string | null {
  const W = room.usableWidth / UNIT;
  const V = (room.pattern?.vertical ?? 0) / UNIT;
  const ways = kinds.flatMap((kind) => kind.ways);
  const registeredEnds = {
    x: ways.flatMap((way) => (way.xs ?? []).map((x) => x + way.width)),
    y: ways.flatMap((way) =>
      (way.y0 === null ? [] : feet(way.y0, V, limit - way.height)).map((y) => y + way.height),
    ),
  };
  const freeX = kinds.map((kind) => ({
    count: kind.count,
    sizes: unique(kind.ways.filter((way) => way.xs === null).map((way) => way.width)),
  }));
  const freeY = kinds.map((kind) => ({
    count: kind.count,
    sizes: unique(kind.ways.filter((way) => way.y0 === null).map((way) => way.height)),
  }));
  const xs = sums(registeredEnds.x, freeX, W);
  const ys = sums(registeredEnds.y, freeY, limit);
  const places: { kind: number; x: number; y: number; way: Way }[] = [];
  kinds.forEach((kind, k) => {
    for (const way of kind.ways) {
      const lefts = way.xs ?? xs.filter((x) => x + way.width <= W);
      const foots =
        way.y0 === null
          ? ys.filter((y) => y + way.height <= limit)
          : feet(way.y0, V, limit - way.height);
      for (const x of lefts) for (const y of foots) places.push({ kind: k, x, y, way });
    }
  });
  const allRegistered = ways.every((way) => way.xs !== null && way.y0 !== null);
  if (places.length > (allRegistered ? 3000 : MOST_COLUMNS)) return null;
  const rows = new Set<string>();
  for (const px of unique(places.map((place) => place.x))) {
    for (const py of unique(places.map((place) => place.y))) {
      const over = places.flatMap(({ x, y, way }, i) =>
        x <= px && px < x + way.width && y <= py && py < y + way.height ? [i] : [],
      );
      if (over.length > 1) rows.add(over.map((i) => `p${i}`).join(" + "));
    }
  }
  const lines = ["Minimize", " obj: L", "Subject To"];
  kinds.forEach((kind, k) => {
    const own = places.flatMap((place, i) => (place.kind === k ? [`p${i}`] : []));
    lines.push(own.length > 0 ? ` ${own.join(" + ")} = ${kind.count}` : " z = 1");
  });
  for (const row of rows) lines.push(` ${row} <= 1`);
  places.forEach(({ y, way }, i) => {
    lines.push(` L - ${y + way.height} p${i} >= 0`);
  });
  lines.push("Bounds", " z <= 0", ` L <= ${limit}`);
  if (places.length > 0) lines.push("Binary", ` ${places.map((_, i) => `p${i}`).join(" ")}`);
  lines.push("End");
  return lines.join("\n");
}

function feet(y0: number, V: number, last: number): number[] {
  const all: number[] = [];
  for (let y = y0; y <= last; y += V) all.push(y);
  return all;
}

function unique(list: readonly number[]): number[] {
  return [...new Set(list)].sort((a, b) => a - b);
}

/** Where a free piece may begin, all pushed down or left: 0, an end of a piece in register, and free sizes upon these. */
function sums(
  from: readonly number[],
  free: readonly { count: number; sizes: readonly number[] }[],
  limit: number,
): number[] {
  let reached = new Set<number>([0, ...from]);
  for (const { count, sizes } of free) {
    for (let copy = 0; copy < count && sizes.length > 0; copy++) {
      const next = new Set(reached);
      for (const at of reached) {
        for (const size of sizes) if (at + size < limit) next.add(at + size);
      }
      reached = next;
    }
  }
  return [...reached].filter((value) => value < limit).sort((a, b) => a - b);
}

/** What goes a whole number of times into every size, place and repeat, and so into some shortest length. */
function commonStep(kinds: Kinds, room: Room): number {
  const ways = kinds.flatMap((kind) => kind.ways);
  const inRegister = ways.some((way) => way.y0 !== null);
  const sizes = [
    room.usableWidth / UNIT,
    inRegister ? (room.pattern?.vertical ?? 0) / UNIT : 0,
    ...ways.flatMap((way) => [way.width, way.height, way.y0 ?? 0, ...(way.xs ?? [])]),
  ];
  const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
  const step = sizes.reduce(divisor, 0);
  return Number.isInteger(step) ? step : 1;
}

/** Whether the pieces, turned over from selvedge to selvedge, are the same ones. */
function hasMirror(kinds: Kinds, W: number): boolean {
  const of = (isMirrored: boolean) =>
    kinds
      .map(({ count, ways }) => {
        const lying = ways.map(({ width, height, xs, y0 }) => {
          const lefts = xs?.map((x) => (isMirrored ? W - width - x : x));
          return JSON.stringify([width, height, y0, lefts?.sort((a, b) => a - b) ?? null]);
        });
        return JSON.stringify([count, lying.sort()]);
      })
      .sort();
  return JSON.stringify(of(false)) === JSON.stringify(of(true));
}

/**
 * Continuous places and four binaries a pair: left of, right of, below, above. Asks for a length of at most `best`, a multiple of
 * `step`: infeasible means that there is none. Of plans that are mirror images of each other only one is looked at.
 */
function orderModel(kinds: Kinds, room: Room, best: number, step: number): string {
  const W = room.usableWidth / UNIT;
  const V = (room.pattern?.vertical ?? 0) / UNIT;
  const lines = ["Minimize", " obj: L", "Subject To"];
  const binaries: string[] = [];
  const integers: string[] = [];
  const bounds: string[] = [` L <= ${best}`];
  const pieces = kinds.flatMap((kind, k) =>
    Array.from({ length: kind.count }, (_, copy) => ({ kind: k, copy, ways: kind.ways })),
  );
  pieces.forEach(({ ways, copy }, i) => {
    // Size and place hang on the way chosen.
    const own = ways.map((_, w) => `w${i}_${w}`);
    binaries.push(...own);
    lines.push(` ${own.join(" + ")} = 1`);
    const of = (value: (way: Way) => number) =>
      ways.map((way, w) => `- ${value(way)} w${i}_${w}`).join(" ");
    lines.push(` a${i} ${of((way) => way.width)} = 0`, ` b${i} ${of((way) => way.height)} = 0`);
    lines.push(` x${i} + a${i} <= ${W}`, ` y${i} + b${i} - L <= 0`);
    ways.forEach((way, w) => {
      if (way.xs) {
        const picks = way.xs.map((_, j) => `q${i}_${w}_${j}`);
        binaries.push(...picks);
        lines.push(` ${picks.join(" + ")} - w${i}_${w} = 0`);
        const sum = way.xs.map((x, j) => `- ${x} ${picks[j]}`).join(" ");
        lines.push(` x${i} ${sum} + ${W} w${i}_${w} <= ${W}`);
        lines.push(` x${i} ${sum} - ${W} w${i}_${w} >= -${W}`);
      }
      if (way.y0 !== null) {
        const n = `n${i}_${w}`;
        integers.push(n);
        bounds.push(` ${n} <= ${Math.ceil(best / V)}`);
        lines.push(` y${i} - ${V} ${n} + ${2 * best} w${i}_${w} <= ${2 * best + way.y0}`);
        lines.push(` y${i} - ${V} ${n} - ${2 * best} w${i}_${w} >= ${way.y0 - 2 * best}`);
      }
    });
    if (copy > 0) lines.push(` y${i} - y${i - 1} >= 0`);
  });
  // Area on L, also with widths over W - t counted as W and those under t as nothing (Fekete and Schepers 2001): the cuts that a
  // solver does not find by itself.
  const thresholds = kinds.flatMap(({ ways }) =>
    ways.flatMap(({ width }) => [width, W - width + 1].filter((t) => 2 * t <= W)),
  );
  for (const t of unique([0, ...thresholds])) {
    const counted = (width: number) => (width > W - t ? W : width < t ? 0 : width);
    const used = pieces.flatMap(({ ways }, i) =>
      ways.map((way, w) => `- ${counted(way.width) * way.height} w${i}_${w}`),
    );
    lines.push(` ${W} L ${used.join(" ")} >= 0`);
  }
  lines.push(` L - ${step} steps = 0`);
  integers.push("steps");
  // The kind with most cloth: its first copy in the left half, its copies on average in the lower half.
  const clothOf = (k: number) => {
    const { count, ways } = kinds[k] as Kinds[number];
    return count * (ways[0] as Way).width * (ways[0] as Way).height;
  };
  const chiefs = kinds.map((_, k) => k).sort((a, b) => clothOf(b) - clothOf(a));
  // Turned over it must be of the same kind: not a left part that becomes a right one.
  const leftward = hasMirror(kinds, W)
    ? chiefs.find((k) => hasMirror([kinds[k] as Kinds[number]], W))
    : undefined;
  const first = pieces.findIndex(({ kind }) => kind === leftward);
  if (first >= 0) lines.push(` 2 x${first} + a${first} <= ${W}`);
  const copies = pieces.flatMap(({ kind }, i) => (kind === chiefs[0] ? [i] : []));
  if (kinds.every(({ ways }) => ways.every((way) => way.y0 === null))) {
    const middles = copies.map((i) => `2 y${i} + b${i}`).join(" + ");
    lines.push(` ${middles} - ${copies.length} L <= 0`);
  }
  pieces.forEach((a, i) => {
    for (let j = i + 1; j < pieces.length; j++) {
      const b = pieces[j] as (typeof pieces)[number];
      const least = (ways: readonly Way[]) => Math.min(...ways.map((way) => way.width));
      const abreast = least(a.ways) + least(b.ways) <= W;
      const names = [`u${i}_${j}`, `o${i}_${j}`];
      lines.push(` y${i} + b${i} - y${j} + ${best} u${i}_${j} <= ${best}`);
      lines.push(` y${j} + b${j} - y${i} + ${best} o${i}_${j} <= ${best}`);
      if (abreast) {
        names.push(`l${i}_${j}`, `r${i}_${j}`);
        lines.push(` x${i} + a${i} - x${j} + ${W} l${i}_${j} <= ${W}`);
        lines.push(` x${j} + a${j} - x${i} + ${W} r${i}_${j} <= ${W}`);
      }
      binaries.push(...names);
      lines.push(` ${names.join(" + ")} = 1`);
    }
  });
  lines.push("Bounds", ...bounds, "Binary", ` ${binaries.join(" ")}`);
  if (integers.length > 0) lines.push("General", ` ${integers.join(" ")}`);
  lines.push("End");
  return lines.join("\n");
}
