import type { ClothMeasure, MeasuredRepeat } from "../../../src/cloth/clothMeasure.ts";
import { measureCloth } from "../../../src/cloth/measureCloth.ts";
import { seeded } from "../../cloth/made.ts";
import { type Framing, type Shot, shoot } from "./camera.ts";
import type { Level } from "./damage.ts";
import type { Truth, Vector } from "./primitive.ts";
import type { Subject } from "./subjects.ts";

const PLACE = { file: "bench", line: 1, column: 1, keyPath: null };
/** Longer side of the photographs. */
const SIDE = 640;
/** A shown cell is at least so many pixels across, or nothing of it can be seen. */
const LEAST_PX = 14;

/** One photograph of a subject and what was measured on it. */
export interface Trial {
  readonly subject: Subject;
  readonly level: Level;
  readonly seed: number;
  readonly shot: Shot;
  readonly mmPerPx: number;
  /** True shifts in millimetres of the measurement, in the picture's own axes. */
  readonly truth: readonly Vector[];
  readonly directionDeg: number | null;
  readonly measure: ClothMeasure;
  readonly repeats: number;
  /** Side of a square as large as the primitive cell, in millimetres. */
  readonly mmOfCell: number;
}

/** Photographs a subject so that 1.5 to 6 of its repeats are seen, and measures it. */
export async function tryOn(
  subject: Subject,
  level: Level,
  seed: number,
  mm: number | null = null,
): Promise<Trial> {
  const { showsMm, ...trial } = await photographOf(subject, level, seed, mm);
  const { value, diagnostics } = measureCloth(trial.shot.pixels, showsMm, { place: PLACE });
  if (!value) throw new Error(`${subject.name}: ${diagnostics[0]?.message}`);
  return { ...trial, measure: value };
}

/** Photographs a subject so that 1.5 to 6 of its repeats are seen. */
export async function photographOf(
  subject: Subject,
  level: Level,
  seed: number,
  mm: number | null = null,
): Promise<Omit<Trial, "measure"> & { readonly showsMm: number }> {
  const random = seeded(seed ^ 0x5bd1e995);
  const framing = frame(subject, random);
  const shot = await shoot(subject.tile, framing, level, seed);
  // The tile's own millimetres where it has some, else a cell of a size that cloth has.
  const cellPx = cellOf(subject.truth) ?? subject.tile.width;
  const mmPerTilePx = subject.mmPerPx ?? (mm ?? 60) / cellPx;
  const showsMm = shot.shows * mmPerTilePx;
  const mmPerPx = showsMm / framing.width;
  const onPicture = (v: Vector): Vector => {
    const [x, y] = shot.toPicture(v);
    return [x * mmPerPx, y * mmPerPx];
  };
  const { truth, directionDeg } = seen(subject.truth, onPicture);
  return {
    subject,
    level,
    seed,
    shot,
    showsMm,
    mmPerPx,
    truth,
    directionDeg,
    repeats: framing.repeats,
    mmOfCell: cellPx * mmPerTilePx,
  };
}

function cellOf(truth: Truth): number | null {
  if (truth.form === "stripe") return Math.hypot(...truth.across);
  if (truth.form !== "lattice") return null;
  const [[ax, ay], [bx, by]] = truth.basis;
  return Math.sqrt(Math.abs(ax * by - ay * bx));
}

function frame(subject: Subject, random: () => number): Framing & { repeats: number } {
  const upright = random() < 0.5;
  const [width, height] = upright ? [480, SIDE] : [SIDE, 480];
  const repeats = Math.exp(Math.log(1.5) + random() * Math.log(4));
  const { truth, tile } = subject;
  if (truth.form === "stripe") {
    const [x, y] = truth.across;
    const across = Math.min(
      width / Math.max(1e-6, Math.abs(x)),
      height / Math.max(1e-6, Math.abs(y)),
    );
    return { width, height, step: repeats / across, repeats };
  }
  if (truth.form === "lattice" || truth.form === "doubtful") {
    // What nearly repeats within its tile is shown as the whole tile asks.
    const [a, b] = truth.form === "lattice" ? truth.basis : wholeTile(tile);
    const cell: Vector = [
      Math.max(Math.abs(a[0]), Math.abs(b[0])),
      Math.max(Math.abs(a[1]), Math.abs(b[1])),
    ];
    const step = repeats * Math.max(cell[0] / width, cell[1] / height);
    const short = Math.min(Math.hypot(...a), Math.hypot(...b)) / step;
    // A long narrow cell is shown fewer times, so that its narrow side is still seen.
    const fewer = Math.max(1.5 / repeats, Math.min(1, short / LEAST_PX));
    return { width, height, step: step * fewer, repeats: repeats * fewer };
  }
  // A plain or an irregular cloth: a fifth to two fifths of a metre.
  const shown = (200 + 200 * random()) / (subject.mmPerPx ?? 1);
  return { width, height, step: Math.min(shown, tile.width / 1.2) / width, repeats: 0 };
}

const wholeTile = ({ width, height }: Subject["tile"]): [Vector, Vector] => [
  [width, 0],
  [0, height],
];

function seen(truth: Truth, onPicture: (v: Vector) => Vector) {
  if (truth.form === "lattice") return { truth: truth.basis.map(onPicture), directionDeg: null };
  if (truth.form !== "stripe") return { truth: [], directionDeg: null };
  const turn = (truth.directionDeg * Math.PI) / 180;
  const [rx, ry] = onPicture([Math.cos(turn), -Math.sin(turn)]);
  const [x, y] = onPicture(truth.across);
  // What stands square to the run on the cloth need not on the picture: the part of it that does.
  const length = Math.hypot(rx, ry);
  const along = (x * rx + y * ry) / (length * length);
  return {
    truth: [[x - along * rx, y - along * ry] as Vector],
    directionDeg: ((((Math.atan2(-ry, rx) * 180) / Math.PI) % 180) + 180) % 180,
  };
}

/** Greatest part by which a vector of the answer is off, or infinite where it is another lattice. */
export function offBy(repeat: MeasuredRepeat | null, truth: readonly Vector[]): number {
  if (!repeat || repeat.lattice.length !== truth.length) return Number.POSITIVE_INFINITY;
  if (truth.length === 1) {
    const [a, t] = [repeat.lattice[0] as Vector, truth[0] as Vector];
    const same = a[0] * t[0] + a[1] * t[1] < 0 ? -1 : 1;
    return Math.hypot(a[0] * same - t[0], a[1] * same - t[1]) / Math.hypot(...t);
  }
  const [t1, t2] = truth as [Vector, Vector];
  const det = t1[0] * t2[1] - t1[1] * t2[0];
  let worst = 0;
  const whole = repeat.lattice.map(([x, y]) => {
    const i = Math.round((x * t2[1] - y * t2[0]) / det);
    const j = Math.round((y * t1[0] - x * t1[1]) / det);
    const [tx, ty] = [i * t1[0] + j * t2[0], i * t1[1] + j * t2[1]];
    const size = Math.hypot(tx, ty);
    worst = Math.max(
      worst,
      size > 0 ? Math.hypot(x - tx, y - ty) / size : Number.POSITIVE_INFINITY,
    );
    return [i, j] as const;
  });
  const [p, q] = whole as [readonly [number, number], readonly [number, number]];
  return Math.abs(p[0] * q[1] - p[1] * q[0]) === 1 ? worst : Number.POSITIVE_INFINITY;
}

/** Millimetres at which a print is plainly large, and plainly small; between them two people would differ. */
const LARGE_MM = 170;
const SMALL_MM = 60;

/** Size of a cell for tiles that have none: half of the prints large, half small. */
export function sizeOf({ kind, mmPerPx }: Subject, i: number): number | null {
  if (mmPerPx !== null) return null;
  if (kind === "print") return i % 2 === 0 ? LARGE_MM : SMALL_MM;
  return kind === "check" ? 30 + 15 * (i % 4) : 40 + 15 * (i % 4);
}

/** What a decorator would call what was photographed. */
export function kindOf({ subject: { kind }, mmOfCell }: Pick<Trial, "subject" | "mmOfCell">) {
  // A cell that was made so large is so but for rounding.
  const isLarge = mmOfCell > 0.999 * LARGE_MM;
  return kind === "print" ? (isLarge ? "large-print" : "small-print") : kind;
}
