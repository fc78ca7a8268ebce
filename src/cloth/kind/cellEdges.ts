import { valueAt } from "../pixels/valueAt.ts";
import { area, type Shift } from "../repeat/lattice.ts";
import { CELL_SIDE, type MeanCell } from "./meanCell.ts";

/** Strength at which an edge counts whole, in that which a twentieth of all places have. */
const WHOLE = 0.8;

/**
 * Where the edges of a mean cell are, whatever colours lie to their sides: the strength of its change at each place, in the lattice's
 * own coordinates as the cell is, cut off where it is an edge without doubt, and wavering about nought.
 */
export function cellEdges({ channels }: MeanCell, [a, b]: readonly [Shift, Shift]): Float32Array {
  const n = CELL_SIDE;
  // A step of the lattice's coordinates in the picture's, for a cell as large as its square.
  const scale = n / Math.sqrt(area([a, b]));
  const det = scale * (a[0] * b[1] - a[1] * b[0]);
  const [ux, uy, vx, vy] = [
    (b[1] * n) / det,
    (-b[0] * n) / det,
    (-a[1] * n) / det,
    (a[0] * n) / det,
  ];
  const squares = new Float32Array(n * n);
  for (const channel of channels) {
    const soft = blurred(channel);
    for (let v = 0, k = 0; v < n; v++) {
      const [above, below] = [((v + n - 1) % n) * n, ((v + 1) % n) * n];
      for (let u = 0; u < n; u++, k++) {
        const du =
          (soft[v * n + ((u + 1) % n)] as number) - (soft[v * n + ((u + n - 1) % n)] as number);
        const dv = (soft[below + u] as number) - (soft[above + u] as number);
        const dx = du * ux + dv * vx;
        const dy = du * uy + dv * vy;
        squares[k] = (squares[k] as number) + dx * dx + dy * dy;
      }
    }
  }
  const strength = blurred(blurred(squares)).map(Math.sqrt);
  const whole = WHOLE * valueAt(strength, Math.floor(0.95 * strength.length));
  let sum = 0;
  for (let k = 0; k < strength.length; k++) {
    strength[k] = Math.min(whole, strength[k] as number);
    sum += strength[k] as number;
  }
  return strength.map((value) => value - sum / strength.length);
}

/** A cell's picture softened by weights of 1, 2 and 1 both ways; its sides meet. */
function blurred(picture: Float32Array): Float32Array {
  const n = CELL_SIDE;
  const across = new Float32Array(n * n);
  for (let v = 0, k = 0; v < n; v++) {
    for (let u = 0; u < n; u++, k++) {
      const row = v * n;
      const sides =
        (picture[row + ((u + n - 1) % n)] as number) + (picture[row + ((u + 1) % n)] as number);
      across[k] = (2 * (picture[k] as number) + sides) / 4;
    }
  }
  const soft = new Float32Array(n * n);
  for (let v = 0, k = 0; v < n; v++) {
    const [above, below] = [((v + n - 1) % n) * n, ((v + 1) % n) * n];
    for (let u = 0; u < n; u++, k++) {
      const sides = (across[above + u] as number) + (across[below + u] as number);
      soft[k] = (2 * (across[k] as number) + sides) / 4;
    }
  }
  return soft;
}
