import type { Bytes } from "../../cloth/pixels/pixels.ts";
import { rgbOfHex } from "../../colour/hex.ts";
import { byteOfLinear, LINEAR_OF_BYTE } from "../../colour/linear.ts";
import type { TileCell } from "../../swatches/tileCell.ts";
import { shrinkInLight } from "../photo/shrinkInLight.ts";
import type { Step } from "./findStep.ts";
import { litPicture, meanLight } from "./litPicture.ts";
import type { OpenCloth } from "./openCloth.ts";
import { nearPlaces } from "./tileLattice.ts";

/** Places much nearer to the picture's edge than the deepest are left out. */
const LEAST_PART = 0.45;
/** The soft edge of a photograph that shows less than a cell, as a part of its shorter side. */
const SOFT = 0.07;

/**
 * One cell of a cloth that joins itself on all four sides, the cell's size times `scale` (at most 1), with the photograph's turn taken
 * out. Every point is read wherever the photograph shows it, one step of the pattern apart, the nearer to the picture's middle the
 * more: so there is no seam to hide, light that falls off is even, and nothing is shown that the photograph does not show. Where it
 * shows less than a cell it stands in the cell's middle with a soft edge on a plain ground. Raw RGB.
 */
export async function drawCell(cloth: OpenCloth, scale: number): Promise<Bytes> {
  const { picture, cell, across, up } = await atScale(cloth, scale);
  const { width, height } = picture;
  const { widthPx, heightPx } = cell;
  const { agrees } = cloth.lattice;
  const texture = !cell.repeatsAcross && !cell.repeatsUp;
  const lit = litPicture(picture, cloth.gain);
  const mean = meanLight(lit, width, height);
  const ground = cell.ground ? rgbOfHex(cell.ground).map((v) => LINEAR_OF_BYTE[v] as number) : null;
  // The cell's own sides, level and upright: on half-drop cloth two columns' steps make one that is level.
  const half = cell.halfDrop ? 0.5 : 0;
  const side: Step = [across[0] - half * up[0], across[1] - half * up[1]];
  const near = nearPlaces(across, up, side, cell, width, height);
  const count = near.length;
  const stepX = Float64Array.from(near, (n) => n[0]);
  const stepY = Float64Array.from(near, (n) => n[1]);
  const depth = new Float64Array(count);
  const shorter = Math.min(width, height);
  const out = new Uint8Array(widthPx * heightPx * 3);
  const sum = [0, 0, 0];
  for (let y = 0, to = 0; y < heightPx; y++) {
    const t = (y + 0.5) / heightPx - 0.5;
    for (let x = 0; x < widthPx; x++, to += 3) {
      const s = (x + 0.5) / widthPx - 0.5;
      const px = cell.middle.x + s * side[0] + t * up[0];
      const py = cell.middle.y + s * side[1] + t * up[1];
      let deepest = Number.NEGATIVE_INFINITY;
      for (let k = 0; k < count; k++) {
        const nx = px + (stepX[k] as number);
        const ny = py + (stepY[k] as number);
        const d = Math.min(nx, width - nx, ny, height - ny);
        depth[k] = d;
        if (d > deepest) deepest = d;
      }
      let [red, green, blue, weights, squares] = [0, 0, 0, 0, 0];
      const base = Math.max(deepest, 1e-6);
      for (let k = 0; k < count; k++) {
        const d = depth[k] as number;
        const part = d / base;
        if (d < deepest && part < LEAST_PART) continue;
        // The picture's middle is preferred sharply to its edges, by the fourth power.
        const weight = deepest <= 0 ? 1 : part * part * (part * part);
        // Read between the pixels' middles, which lie half a pixel in.
        const fx = Math.max(0, Math.min(width - 1, px + (stepX[k] as number) - 0.5));
        const fy = Math.max(0, Math.min(height - 1, py + (stepY[k] as number) - 0.5));
        const x0 = Math.floor(fx);
        const y0 = Math.floor(fy);
        const [tx, ty] = [fx - x0, fy - y0];
        const a = (y0 * width + x0) * 3;
        const right = x0 + 1 < width ? a + 3 : a;
        const below = y0 + 1 < height ? a + width * 3 : a;
        const corner = right + below - a;
        const aw = weight * (1 - tx) * (1 - ty);
        const rw = weight * tx * (1 - ty);
        const bw = weight * (1 - tx) * ty;
        const cw = weight * tx * ty;
        red +=
          aw * (lit[a] as number) +
          rw * (lit[right] as number) +
          bw * (lit[below] as number) +
          cw * (lit[corner] as number);
        green +=
          aw * (lit[a + 1] as number) +
          rw * (lit[right + 1] as number) +
          bw * (lit[below + 1] as number) +
          cw * (lit[corner + 1] as number);
        blue +=
          aw * (lit[a + 2] as number) +
          rw * (lit[right + 2] as number) +
          bw * (lit[below + 2] as number) +
          cw * (lit[corner + 2] as number);
        weights += weight;
        squares += weight * weight;
      }
      // Where two places of a mere texture are mixed it would be flatter than elsewhere.
      const kept = squares / (weights * weights);
      const lift = texture ? 1 / Math.sqrt(kept + agrees * (1 - kept)) : 1;
      const shown = ground ? Math.max(0, Math.min(1, deepest / (SOFT * shorter) + 0.02)) : 1;
      const alpha = shown * shown * (3 - 2 * shown);
      sum[0] = red;
      sum[1] = green;
      sum[2] = blue;
      for (let c = 0; c < 3; c++) {
        const m = mean[c] as number;
        const own = m + ((sum[c] as number) / weights - m) * lift;
        const v = ground ? own * alpha + (ground[c] as number) * (1 - alpha) : own;
        out[to + c] = byteOfLinear(v);
      }
    }
  }
  return { width: widthPx, height: heightPx, data: out };
}

/** The picture made smaller in linear light, and cell and steps with it. */
async function atScale(
  { picture, cell, lattice }: OpenCloth,
  scale: number,
): Promise<{
  readonly picture: Bytes;
  readonly cell: TileCell;
  readonly across: Step;
  readonly up: Step;
}> {
  if (scale >= 1) return { picture, cell, across: lattice.across, up: lattice.up };
  const { data, info } = await shrinkInLight(
    picture.data,
    { width: picture.width, height: picture.height, channels: 3 },
    picture.width * scale,
  )
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const [x, y] = [info.width / picture.width, info.height / picture.height];
  const smaller = ([right, down]: Step): Step => [right * x, down * y];
  return {
    picture: { width: info.width, height: info.height, data },
    cell: {
      ...cell,
      widthPx: Math.max(2, Math.round(cell.widthPx * x)),
      heightPx: Math.max(2, Math.round(cell.heightPx * y)),
      middle: { x: cell.middle.x * x, y: cell.middle.y * y },
    },
    across: smaller(lattice.across),
    up: smaller(lattice.up),
  };
}
