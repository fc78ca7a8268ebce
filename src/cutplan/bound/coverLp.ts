import { multiply, pivot } from "./denseInverse.ts";
import type { SideBySide } from "./sideBySide.ts";

/** One way to lay a kind: its type across, and how much of each slab one copy covers. */
export interface CoverOption {
  readonly type: number;
  readonly cover: Float64Array;
}

export interface CoverKind {
  readonly count: number;
  readonly options: readonly CoverOption[];
}

/**
 * A proof that some capacities do not do: sum over slabs of price x capacity must reach `demand`. It holds for every
 * capacity, since prices and demand do not depend on it.
 */
export interface Refutation {
  readonly prices: Float64Array;
  readonly demand: number;
  /** The part of the demand that one copy of each kind makes. */
  readonly ofKinds: readonly number[];
  /** False where the simplex was stopped before its end: the same capacities, asked again with the sets found so far, may tell more. */
  readonly isComplete: boolean;
}

const EPSILON = 1e-9;
const MOST_PIVOTS = 1500;

interface Column {
  readonly rows: number[];
  readonly values: number[];
}

/**
 * The slab programme. Each slab of the cloth is filled with sets of pieces side by side; each kind asks for its cover of the
 * slabs, mixed from its options. Finds the least excess t, in units of `excess` a slab, over the capacities, by a dense revised
 * simplex that makes its columns (sets side by side) as they are wanted. What counts is the price found: it is made good
 * afterwards by exact search over all sets, so that the refutation holds even if the simplex was stopped or rounded badly.
 */
export class CoverLp {
  private readonly columns: Column[] = [];
  private readonly rowOf: Int32Array[];
  private readonly kindRow: number;
  private readonly size: number;
  private readonly fixedColumns: number;
  private readonly lone: Column[] = [];
  private readonly firstOptions: number[] = [];

  constructor(
    private readonly sideBySide: SideBySide,
    private readonly kinds: readonly CoverKind[],
    private readonly excess: Float64Array,
  ) {
    const slabs = excess.length;
    let row = slabs;
    this.rowOf = sideBySide.types.map((_, type) =>
      Int32Array.from({ length: slabs }, (_, j) =>
        kinds.some((kind) =>
          kind.options.some((o) => o.type === type && (o.cover[j] as number) > 0),
        )
          ? row++
          : -1,
      ),
    );
    this.kindRow = row;
    this.size = row + kinds.length;
    const eachSlab = Array.from(excess, (_, j) => j);
    this.columns.push({ rows: eachSlab, values: Array.from(excess, (d) => -d) });
    for (const j of eachSlab) this.columns.push({ rows: [j], values: [1] });
    for (let r = slabs; r < this.kindRow; r++) this.columns.push({ rows: [r], values: [-1] });
    kinds.forEach((kind, k) => {
      this.firstOptions.push(this.columns.length);
      for (const option of kind.options) this.columns.push(this.optionColumn(option, k));
    });
    this.fixedColumns = this.columns.length;
    const prices = new Float64Array(sideBySide.types.length);
    this.rowOf.forEach((rows, type) => {
      prices.fill(0);
      prices[type] = 1;
      const most = Math.round(sideBySide.dearest(prices));
      rows.forEach((r, j) => {
        if (r >= 0) this.lone[r] = { rows: [j, r], values: [1, most] };
      });
    });
    for (let r = slabs; r < this.kindRow; r++) this.columns.push(this.lone[r] as Column);
  }

  private optionColumn(option: CoverOption, kind: number): Column {
    const rows: number[] = [];
    const values: number[] = [];
    option.cover.forEach((cover, j) => {
      if (cover <= 0) return;
      rows.push(this.rowOf[option.type]?.[j] as number);
      values.push(-cover);
    });
    rows.push(this.kindRow + kind);
    values.push(1);
    return { rows, values };
  }

  /** Tries these capacities; null if they do. */
  refute(capacities: Float64Array): Refutation | null {
    const { size, kindRow, columns } = this;
    const slabs = this.excess.length;
    const right = new Float64Array(size);
    right.set(capacities);
    // A little more cover than is asked, each row its own: keeps ties, and so cycles, away.
    for (let r = slabs; r < kindRow; r++) right[r] = 1e-7 * (1 + (r - slabs) / size);
    this.kinds.forEach((kind, k) => {
      right[kindRow + k] = kind.count;
    });
    const basis = new Int32Array(size);
    for (let j = 0; j < slabs; j++) basis[j] = 1 + j;
    for (let r = slabs; r < kindRow; r++) basis[r] = this.fixedColumns + r - slabs;
    this.kinds.forEach((_, k) => {
      basis[kindRow + k] = this.firstOptions[k] as number;
    });
    const inverse = this.firstInverse(basis);
    const values = multiply(inverse, right, size);
    let worst = -1;
    let most = EPSILON;
    for (let j = 0; j < slabs; j++) {
      const short = -(values[j] as number) / (this.excess[j] as number);
      if (short > most) {
        most = short;
        worst = j;
      }
    }
    if (worst < 0) return null;
    const direction = new Float64Array(size);
    this.along(columns[0] as Column, inverse, direction);
    pivot(inverse, values, direction, worst, size);
    basis[worst] = 0;
    let excessRow = worst;
    let isComplete = false;
    for (let count = 0; count < MOST_PIVOTS; count++) {
      if ((values[excessRow] as number) <= 1e-7) return null;
      const prices = inverse.subarray(excessRow * size, excessRow * size + size);
      let entering = this.cheapest(prices);
      if (entering < 0 && this.addSets(prices)) entering = this.cheapest(prices);
      isComplete = entering < 0;
      if (isComplete) break;
      this.along(columns[entering] as Column, inverse, direction);
      let leaving = -1;
      let least = Number.POSITIVE_INFINITY;
      for (let r = 0; r < size; r++) {
        const d = direction[r] as number;
        if (d <= EPSILON) continue;
        const ratio = Math.max(0, values[r] as number) / d;
        const tie = ratio < least + 1e-12 && leaving >= 0 && d > (direction[leaving] as number);
        if (ratio < least - 1e-12 || tie) {
          least = Math.min(least, ratio);
          leaving = r;
        }
      }
      if (leaving < 0) break;
      pivot(inverse, values, direction, leaving, size);
      basis[leaving] = entering;
      if (leaving === excessRow) return null;
      excessRow = basis.indexOf(0);
    }
    return {
      ...this.madeGood(inverse.subarray(excessRow * size, (excessRow + 1) * size)),
      isComplete,
    };
  }

  /** Options, then lone sets, then slack: block triangular, so its inverse is written down. */
  private firstInverse(basis: Int32Array): Float64Array {
    const { size, kindRow, columns } = this;
    const slabs = this.excess.length;
    const inverse = new Float64Array(size * size);
    for (let r = 0; r < size; r++) inverse[r * size + r] = 1;
    for (let r = slabs; r < kindRow; r++) {
      const most = (this.lone[r] as Column).values[1] as number;
      inverse[r * size + r] = 1 / most;
    }
    for (let k = kindRow; k < size; k++) {
      const option = columns[basis[k] as number] as Column;
      option.rows.forEach((r, i) => {
        if (r < kindRow) {
          const most = (this.lone[r] as Column).values[1] as number;
          inverse[r * size + k] = -(option.values[i] as number) / most;
        }
      });
    }
    for (let r = slabs; r < kindRow; r++) {
      const j = (this.lone[r] as Column).rows[0] as number;
      for (let c = slabs; c < size; c++) {
        inverse[j * size + c] =
          (inverse[j * size + c] as number) - (inverse[r * size + c] as number);
      }
    }
    return inverse;
  }

  private along(column: Column, inverse: Float64Array, direction: Float64Array): void {
    const { size } = this;
    const { rows, values } = column;
    direction.fill(0);
    for (let i = 0; i < rows.length; i++) {
      const value = values[i] as number;
      let at = rows[i] as number;
      for (let r = 0; r < size; r++, at += size) {
        direction[r] = (direction[r] as number) + value * (inverse[at] as number);
      }
    }
  }

  /** The known column with the most negative reduced cost, or -1. */
  private cheapest(prices: Float64Array): number {
    let best = -1;
    let least = -1e-8;
    for (let c = 1; c < this.columns.length; c++) {
      const { rows, values } = this.columns[c] as Column;
      let cost = 0;
      for (let i = 0; i < rows.length; i++) {
        cost -= (prices[rows[i] as number] as number) * (values[i] as number);
      }
      if (cost < least) {
        least = cost;
        best = c;
      }
    }
    return best;
  }

  /** Adds for each slab the set that its prices make dearest, where it is worth more than its place. */
  private addSets(prices: Float64Array): boolean {
    const before = this.columns.length;
    const types = new Float64Array(this.rowOf.length);
    for (let j = 0; j < this.excess.length; j++) {
      this.typePrices(prices, j, types);
      if (this.sideBySide.dearest(types) <= -(prices[j] as number) + 1e-8) continue;
      const rows = [j];
      const values = [1];
      this.sideBySide.setOf().forEach((count, type) => {
        const r = this.rowOf[type]?.[j] as number;
        if (count === 0 || r < 0) return;
        rows.push(r);
        values.push(count);
      });
      this.columns.push({ rows, values });
    }
    return this.columns.length > before;
  }

  private typePrices(prices: Float64Array, slab: number, into: Float64Array): void {
    for (let type = 0; type < into.length; type++) {
      const r = this.rowOf[type]?.[slab] as number;
      into[type] = r < 0 ? 0 : Math.max(0, prices[r] as number);
    }
  }

  /** Prices of cover as found; of slabs and of kinds so that they hold whatever rounding did. */
  private madeGood(prices: Float64Array): Omit<Refutation, "isComplete"> {
    const slabs = this.excess.length;
    const types = new Float64Array(this.rowOf.length);
    const ofSlab = new Float64Array(slabs);
    for (let j = 0; j < slabs; j++) {
      this.typePrices(prices, j, types);
      ofSlab[j] = this.sideBySide.dearest(types);
    }
    let demand = 0;
    const ofKinds: number[] = [];
    for (const kind of this.kinds) {
      let least = Number.POSITIVE_INFINITY;
      for (const { type, cover } of kind.options) {
        let worth = 0;
        for (let j = 0; j < slabs; j++) {
          const r = this.rowOf[type]?.[j] as number;
          if (r >= 0) worth += Math.max(0, prices[r] as number) * (cover[j] as number);
        }
        least = Math.min(least, worth);
      }
      ofKinds.push(least);
      demand += kind.count * least;
    }
    return { prices: ofSlab, demand, ofKinds };
  }
}
