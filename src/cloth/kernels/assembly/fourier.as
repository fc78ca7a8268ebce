/*
 * Fourier transforms of four lines of complex numbers at once, a number of each line in one vector: real parts in one row of
 * vectors, imaginary parts in another. Cooley and Tukey's, decimated in time, two stages of it in one pass (radix 4).
 */

/**
 * Transforms four lines of `count` numbers in place, which stand in reversed order; `turns` holds cosine and sine of each
 * `count`th part of a whole turn backwards, up to three quarters of it.
 */
function transformFour(re: usize, im: usize, count: i32, turns: usize): void {
  let half = 1;
  if (ctz(count) & 1) {
    pairs(re, im, count);
    half = 2;
  }
  for (; half < count; half *= 4) fours(re, im, count, half, turns);
}

/** The first stage, where the number of stages is odd. */
function pairs(re: usize, im: usize, count: i32): void {
  const end = <usize>count << 4;
  for (let p: usize = 0; p < end; p += 32) {
    const a = v128.load(re + p);
    const b = v128.load(re + p, 16);
    v128.store(re + p, f32x4.add(a, b));
    v128.store(re + p, f32x4.sub(a, b), 16);
    const c = v128.load(im + p);
    const d = v128.load(im + p, 16);
    v128.store(im + p, f32x4.add(c, d));
    v128.store(im + p, f32x4.sub(c, d), 16);
  }
}

/** Two stages, of `half` and twice as many numbers to a side. */
function fours(re: usize, im: usize, count: i32, half: i32, turns: usize): void {
  const step = <usize>half << 4;
  const stride = count / (4 * half);
  for (let k = 0; k < half; k++) {
    // In reversed order the second of four parts is the odd one of the evens.
    const one = turns + (<usize>(k * stride * 2) << 3);
    const two = turns + (<usize>(k * stride) << 3);
    const three = turns + (<usize>(k * stride * 3) << 3);
    const oneRe = v128.load32_splat(one);
    const oneIm = v128.load32_splat(one, 4);
    const twoRe = v128.load32_splat(two);
    const twoIm = v128.load32_splat(two, 4);
    const threeRe = v128.load32_splat(three);
    const threeIm = v128.load32_splat(three, 4);
    const end = <usize>count << 4;
    for (let p = <usize>k << 4; p < end; p += 4 * step) {
      const ar = v128.load(re + p);
      const ai = v128.load(im + p);
      const xr = v128.load(re + p + step);
      const xi = v128.load(im + p + step);
      const yr = v128.load(re + p + 2 * step);
      const yi = v128.load(im + p + 2 * step);
      const zr = v128.load(re + p + 3 * step);
      const zi = v128.load(im + p + 3 * step);
      const br = f32x4.sub(f32x4.mul(xr, oneRe), f32x4.mul(xi, oneIm));
      const bi = f32x4.add(f32x4.mul(xr, oneIm), f32x4.mul(xi, oneRe));
      const cr = f32x4.sub(f32x4.mul(yr, twoRe), f32x4.mul(yi, twoIm));
      const ci = f32x4.add(f32x4.mul(yr, twoIm), f32x4.mul(yi, twoRe));
      const dr = f32x4.sub(f32x4.mul(zr, threeRe), f32x4.mul(zi, threeIm));
      const di = f32x4.add(f32x4.mul(zr, threeIm), f32x4.mul(zi, threeRe));
      const er = f32x4.add(ar, br);
      const ei = f32x4.add(ai, bi);
      const fr = f32x4.sub(ar, br);
      const fi = f32x4.sub(ai, bi);
      const gr = f32x4.add(cr, dr);
      const gi = f32x4.add(ci, di);
      const hr = f32x4.sub(cr, dr);
      const hi = f32x4.sub(ci, di);
      v128.store(re + p, f32x4.add(er, gr));
      v128.store(im + p, f32x4.add(ei, gi));
      v128.store(re + p + step, f32x4.add(fr, hi));
      v128.store(im + p + step, f32x4.sub(fi, hr));
      v128.store(re + p + 2 * step, f32x4.sub(er, gr));
      v128.store(im + p + 2 * step, f32x4.sub(ei, gi));
      v128.store(re + p + 3 * step, f32x4.sub(fr, hi));
      v128.store(im + p + 3 * step, f32x4.add(fi, hr));
    }
  }
}

/**
 * Transforms rows `from` to `to` of a field of complex numbers, `count` in a row, in place; `work` has room for two rows of vectors,
 * `order` gives each number its place once its bits are reversed.
 */
export function transformRows(
  re: usize,
  im: usize,
  count: i32,
  from: i32,
  to: i32,
  turns: usize,
  order: usize,
  work: usize,
): void {
  const workIm = work + (<usize>count << 4);
  for (let y = from; y < to; y += 4) {
    const start = <usize>(y * count) << 2;
    turnIn(re + start, count, order, work);
    turnIn(im + start, count, order, workIm);
    transformFour(work, workIm, count, turns);
    turnOut(work, count, re + start);
    turnOut(workIm, count, im + start);
  }
}

/** Transforms all columns in place; of each the first `filled` numbers are read, the rest is nought, and the first `kept` are written. */
export function transformColumns(
  re: usize,
  im: usize,
  across: i32,
  count: i32,
  filled: i32,
  kept: i32,
  turns: usize,
  order: usize,
  work: usize,
): void {
  const workIm = work + (<usize>count << 4);
  const row = <usize>across << 2;
  for (let x: usize = 0; x < row; x += 16) {
    if (filled < count) memory.fill(work, 0, <usize>count << 5);
    for (let y = 0; y < filled; y++) {
      const at = <usize>load<i32>(order + (<usize>y << 2)) << 4;
      v128.store(work + at, v128.load(re + <usize>y * row + x));
      v128.store(workIm + at, v128.load(im + <usize>y * row + x));
    }
    transformFour(work, workIm, count, turns);
    for (let y = 0; y < kept; y++) {
      v128.store(re + <usize>y * row + x, v128.load(work + (<usize>y << 4)));
      v128.store(im + <usize>y * row + x, v128.load(workIm + (<usize>y << 4)));
    }
  }
}

/** Four rows of numbers as one row of vectors, in reversed order. */
function turnIn(from: usize, count: i32, order: usize, to: usize): void {
  const row = <usize>count << 2;
  for (let x = 0; x < count; x += 4) {
    const p = from + (<usize>x << 2);
    const a = v128.load(p);
    const b = v128.load(p + row);
    const c = v128.load(p + 2 * row);
    const d = v128.load(p + 3 * row);
    const ab = v128.shuffle<f32>(a, b, 0, 4, 1, 5);
    const cd = v128.shuffle<f32>(c, d, 0, 4, 1, 5);
    const abHigh = v128.shuffle<f32>(a, b, 2, 6, 3, 7);
    const cdHigh = v128.shuffle<f32>(c, d, 2, 6, 3, 7);
    const places = order + (<usize>x << 2);
    v128.store(to + (<usize>load<i32>(places) << 4), v128.shuffle<f32>(ab, cd, 0, 1, 4, 5));
    v128.store(to + (<usize>load<i32>(places, 4) << 4), v128.shuffle<f32>(ab, cd, 2, 3, 6, 7));
    v128.store(to + (<usize>load<i32>(places, 8) << 4), v128.shuffle<f32>(abHigh, cdHigh, 0, 1, 4, 5));
    v128.store(to + (<usize>load<i32>(places, 12) << 4), v128.shuffle<f32>(abHigh, cdHigh, 2, 3, 6, 7));
  }
}

/** A row of vectors as four rows of numbers. */
function turnOut(from: usize, count: i32, to: usize): void {
  const row = <usize>count << 2;
  for (let x = 0; x < count; x += 4) {
    const p = from + (<usize>x << 4);
    const a = v128.load(p);
    const b = v128.load(p, 16);
    const c = v128.load(p, 32);
    const d = v128.load(p, 48);
    const ab = v128.shuffle<f32>(a, b, 0, 4, 1, 5);
    const cd = v128.shuffle<f32>(c, d, 0, 4, 1, 5);
    const abHigh = v128.shuffle<f32>(a, b, 2, 6, 3, 7);
    const cdHigh = v128.shuffle<f32>(c, d, 2, 6, 3, 7);
    const q = to + (<usize>x << 2);
    v128.store(q, v128.shuffle<f32>(ab, cd, 0, 1, 4, 5));
    v128.store(q + row, v128.shuffle<f32>(ab, cd, 2, 3, 6, 7));
    v128.store(q + 2 * row, v128.shuffle<f32>(abHigh, cdHigh, 0, 1, 4, 5));
    v128.store(q + 3 * row, v128.shuffle<f32>(abHigh, cdHigh, 2, 3, 6, 7));
  }
}

/** Squares of the amounts of complex numbers, added to what stands there, or with `anew` in its place. */
export function addPower(re: usize, im: usize, count: i32, to: usize, anew: i32): void {
  const end = <usize>count << 2;
  for (let p: usize = 0; p < end; p += 16) {
    const a = v128.load(re + p);
    const b = v128.load(im + p);
    const power = f32x4.add(f32x4.mul(a, a), f32x4.mul(b, b));
    v128.store(to + p, anew ? power : f32x4.add(power, v128.load(to + p)));
  }
}
