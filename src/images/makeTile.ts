import sharp from "sharp";

/** A cell of a photograph to be made into a tile, in pixels of the upright picture. */
export interface TileCell {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly blendPx: number;
}

/** Light that falls off evenly: the plane through a picture's brightness, as a gain that makes each place as light as the middle. */
async function evenLight(
  data: Buffer,
  width: number,
  height: number,
): Promise<(x: number, y: number) => number> {
  const w = 24;
  const h = Math.max(4, Math.round((24 * height) / width));
  const small = await sharp(data, { raw: { width, height, channels: 3 } })
    .resize(w, h, { fit: "fill", kernel: "cubic" })
    .greyscale()
    .raw()
    .toBuffer();
  let [sxx, syy, sv, sxv, syv] = [0, 0, 0, 0, 0];
  for (let y = 0; y < h; y++) {
    for (let x = 0; x < w; x++) {
      const v = small[y * w + x] as number;
      const px = (x + 0.5) / w - 0.5;
      const py = (y + 0.5) / h - 0.5;
      sxx += px * px;
      syy += py * py;
      sv += v;
      sxv += px * v;
      syv += py * v;
    }
  }
  const mean = sv / (w * h);
  const a = sxv / sxx;
  const b = syv / syy;
  return (x, y) => {
    const light = mean + a * (x / width - 0.5) + b * (y / height - 0.5);
    return light > 1 ? mean / light : 1;
  };
}

/**
 * One cell of a repeat that joins itself on all four sides: light that falls off evenly over the photograph is taken out, and a band
 * at the left and top is blended with what lies one cell further on (on half-drop cloth the next column hangs half a cell lower;
 * since the cell's own pattern says so, the blend looks there). Raw RGB of the photograph in, raw RGB of the cell out.
 */
export async function seamlessCell(
  data: Buffer,
  width: number,
  height: number,
  cell: TileCell,
  halfDrop: boolean,
): Promise<Buffer> {
  const gain = await evenLight(data, width, height);
  const sample = (x: number, y: number, channel: number): number => {
    let yy = y;
    if (yy >= height) yy -= cell.height;
    if (yy < 0) yy += cell.height;
    const xx = Math.min(width - 1, Math.max(0, x));
    yy = Math.min(height - 1, Math.max(0, yy));
    return (data[(yy * width + xx) * 3 + channel] as number) * gain(xx, yy);
  };
  const out = Buffer.alloc(cell.width * cell.height * 3);
  const blend = cell.blendPx;
  const shift = halfDrop ? Math.round(cell.height / 2) : 0;
  const column = (x: number, y: number, c: number): number => {
    const own = sample(cell.x + x, cell.y + y, c);
    if (x >= blend) return own;
    const further = sample(cell.x + x + cell.width, cell.y + y + shift, c);
    const t = x / blend;
    return own * t + further * (1 - t);
  };
  for (let y = 0; y < cell.height; y++) {
    for (let x = 0; x < cell.width; x++) {
      for (let c = 0; c < 3; c++) {
        let v = column(x, y, c);
        if (y < blend) {
          const t = y / blend;
          v = v * t + column(x, y + cell.height, c) * (1 - t);
        }
        out[(y * cell.width + x) * 3 + c] = Math.max(0, Math.min(255, Math.round(v)));
      }
    }
  }
  return out;
}
