/** Linear light of the three bytes of a pixel, by a table of 256 numbers. */
// @ts-ignore: decorator
@inline
function lightAt(data: usize, lights: usize): v128 {
  const red = v128.load32_zero(lights + (<usize>load<u8>(data) << 2));
  const both = v128.load32_lane(lights + (<usize>load<u8>(data, 1) << 2), red, 1);
  return v128.load32_lane(lights + (<usize>load<u8>(data, 2) << 2), both, 2);
}

/**
 * A picture at a smaller size, each new pixel the mean light of the area that it covers, encoded by a table of `steps` + 1 bytes. For each
 * new place across and down four numbers say which old ones it covers: the first, how many, and what part of the first and of the last
 * (nought where the first is the last). `light` has room for two new rows of vectors, all nought.
 */
export function shrinkInLight(
  data: usize,
  lights: usize,
  codes: usize,
  steps: i32,
  oldWidth: i32,
  newWidth: i32,
  newHeight: i32,
  across: usize,
  down: usize,
  scale: f32,
  light: usize,
  out: usize,
): void {
  const room = <usize>newWidth << 4;
  let below = light + room;
  const toStep = f32x4.splat(scale * <f32>steps);
  const most = f32x4.splat(<f32>steps);
  for (let newRow = 0; newRow < newHeight; newRow++) {
    const cover = down + (<usize>newRow << 4);
    const rows = load<i32>(cover, 4);
    // The last old row that the one above has is the first of this one: what of it falls here was summed there.
    const shared = newRow > 0 && load<f32>(cover, 8) < 1 ? 1 : 0;
    for (let k = shared; k < rows; k++) {
      const isLast = k === rows - 1 && k > 0;
      const part = k === 0 ? load<f32>(cover, 8) : isLast ? load<f32>(cover, 12) : <f32>1;
      const row = data + <usize>((load<i32>(cover) + k) * oldWidth * 3);
      addRow(row, lights, newWidth, across, part, light, isLast && part < 1 ? below : 0);
    }
    for (let x: usize = 0; x < room; x += 16, out += 3) {
      const step = f32x4.add(f32x4.mul(v128.load(light + x), toStep), f32x4.splat(0.5));
      const whole = i32x4.trunc_sat_f32x4_s(f32x4.min(step, most));
      store<u8>(out, load<u8>(codes + <usize>i32x4.extract_lane(whole, 0)));
      store<u8>(out, load<u8>(codes + <usize>i32x4.extract_lane(whole, 1)), 1);
      store<u8>(out, load<u8>(codes + <usize>i32x4.extract_lane(whole, 2)), 2);
    }
    memory.fill(light, 0, room);
    const done = light;
    light = below;
    below = done;
  }
}

/** Adds a part of the light of an old row to a new one, and the rest of it to the new row below, if there is one. */
function addRow(
  row: usize,
  lights: usize,
  newWidth: i32,
  across: usize,
  part: f32,
  light: usize,
  below: usize,
): void {
  const end = across + (<usize>newWidth << 4);
  const here = f32x4.splat(part);
  const rest = f32x4.splat(1 - part);
  for (let cover = across, at: usize = 0; cover < end; cover += 16, at += 16) {
    let p = row + <usize>(load<i32>(cover) * 3);
    let sum = f32x4.mul(v128.load32_splat(cover, 8), lightAt(p, lights));
    for (let left = load<i32>(cover, 4) - 1; left > 1; left--) {
      p += 3;
      sum = f32x4.add(sum, lightAt(p, lights));
    }
    if (load<f32>(cover, 12) > 0)
      sum = f32x4.add(sum, f32x4.mul(v128.load32_splat(cover, 12), lightAt(p + 3, lights)));
    v128.store(light + at, f32x4.add(v128.load(light + at), f32x4.mul(here, sum)));
    if (below !== 0) v128.store(below + at, f32x4.mul(rest, sum));
  }
}

/** What light is taken for darkness: its cube root is far under what one code makes. */
const DARKEST: f32 = 1e-20;
/** The bits of a number's cube root are about a third of its own, and this. */
const ROOT_BITS: f32 = 709_921_077;

/**
 * Oklab (Ottosson 2020, matrices of CSS Color 4) of the pixels of a picture in bytes, its two colour axes times `hue`. Pixels are written
 * `step` bytes apart, the three numbers of each `plane` bytes apart.
 */
export function oklabOfBytes(
  data: usize,
  lights: usize,
  pixels: i32,
  hue: f32,
  to: usize,
  step: usize,
  plane: usize,
): void {
  const red = f32x4(0.412221469470763, 0.2119034958178252, 0.0883024591900564, 0);
  const green = f32x4(0.5363325372617348, 0.6806995506452344, 0.2817188391361215, 0);
  const blue = f32x4(0.0514459932675022, 0.1073969535369406, 0.6299787016738222, 0);
  const scale = f32x4(1, hue, hue, 0);
  const long = f32x4.mul(scale, f32x4(0.210454268309314, 1.9779985324311684, 0.0259040424655478, 0));
  const middle = f32x4.mul(scale, f32x4(0.7936177747023054, -2.42859224204858, 0.7827717124575296, 0));
  const short = f32x4.mul(scale, f32x4(-0.0040720430116193, 0.450593709617411, -0.8086757549230774, 0));
  for (let p = 0; p < pixels; p++, data += 3, to += step) {
    const cones = cubeRoots(
      f32x4.add(
        f32x4.add(
          f32x4.mul(red, v128.load32_splat(lights + (<usize>load<u8>(data) << 2))),
          f32x4.mul(green, v128.load32_splat(lights + (<usize>load<u8>(data, 1) << 2))),
        ),
        f32x4.mul(blue, v128.load32_splat(lights + (<usize>load<u8>(data, 2) << 2))),
      ),
    );
    const lab = f32x4.add(
      f32x4.add(
        f32x4.mul(long, v128.shuffle<f32>(cones, cones, 0, 0, 0, 0)),
        f32x4.mul(middle, v128.shuffle<f32>(cones, cones, 1, 1, 1, 1)),
      ),
      f32x4.mul(short, v128.shuffle<f32>(cones, cones, 2, 2, 2, 2)),
    );
    store<f32>(to, f32x4.extract_lane(lab, 0));
    store<f32>(to + plane, f32x4.extract_lane(lab, 1));
    store<f32>(to + 2 * plane, f32x4.extract_lane(lab, 2));
  }
}

/** Cube roots of four numbers, by two steps of Halley's method from a third of their bits: each step has three times as many right ones. */
// @ts-ignore: decorator
@inline
function cubeRoots(numbers: v128): v128 {
  const x = f32x4.max(numbers, f32x4.splat(DARKEST));
  const bits = f32x4.mul(f32x4.convert_i32x4_s(x), f32x4.splat(<f32>(1.0 / 3)));
  const first = i32x4.trunc_sat_f32x4_s(f32x4.add(bits, f32x4.splat(ROOT_BITS)));
  return closerRoots(closerRoots(first, x), x);
}

// @ts-ignore: decorator
@inline
function closerRoots(root: v128, x: v128): v128 {
  const cube = f32x4.mul(f32x4.mul(root, root), root);
  const twice = f32x4.add(cube, cube);
  const over = f32x4.add(cube, f32x4.add(x, x));
  return f32x4.div(f32x4.mul(root, over), f32x4.add(twice, x));
}
