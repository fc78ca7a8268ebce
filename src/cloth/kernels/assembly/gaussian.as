/** Lays three channels beside each other, four numbers a place, so that one step of a running mean is taken for all of them. */
export function interleave(channels: usize, places: i32, to: usize): void {
  const one = <usize>places << 2;
  for (let p = 0; p < places; p++, channels += 4, to += 16) {
    store<f32>(to, load<f32>(channels));
    store<f32>(to, load<f32>(channels + one), 4);
    store<f32>(to, load<f32>(channels + 2 * one), 8);
    store<f32>(to, 0, 12);
  }
}

/** The three channels one after the other again. */
export function separate(from: usize, places: i32, channels: usize): void {
  const one = <usize>places << 2;
  for (let p = 0; p < places; p++, channels += 4, from += 16) {
    store<f32>(channels, load<f32>(from));
    store<f32>(channels + one, load<f32>(from, 4));
    store<f32>(channels + 2 * one, load<f32>(from, 8));
  }
}

/** Running means of `radius` places to both sides along every row; near the ends over what is there. */
export function meansAlong(from: usize, to: usize, width: i32, height: i32, radius: i32): void {
  for (let y = 0; y < height; y++) {
    const start = <usize>(y * width) << 4;
    runningMean(from + start, to + start, width, 16, radius);
  }
}

/** The same down every column: the sums of all columns stand in `sums`, so that the picture is read row by row. */
export function meansDown(
  from: usize,
  to: usize,
  width: i32,
  height: i32,
  radius: i32,
  sums: usize,
): void {
  const row = <usize>width << 4;
  memory.fill(sums, 0, row);
  let n = min(height, radius);
  for (let y = 0; y < n; y++) addRow(sums, from + <usize>y * row, row);
  for (let y = 0; y < height; y++) {
    if (y + radius < height) {
      addRow(sums, from + <usize>(y + radius) * row, row);
      n++;
    }
    if (y > radius) {
      takeRow(sums, from + <usize>(y - radius - 1) * row, row);
      n--;
    }
    const part = f32x4.splat(<f32>(1 / <f64>n));
    const start = to + <usize>y * row;
    for (let x: usize = 0; x < row; x += 16)
      v128.store(start + x, f32x4.mul(v128.load(sums + x), part));
  }
}

function addRow(sums: usize, from: usize, row: usize): void {
  for (let x: usize = 0; x < row; x += 16)
    v128.store(sums + x, f32x4.add(v128.load(sums + x), v128.load(from + x)));
}

function takeRow(sums: usize, from: usize, row: usize): void {
  for (let x: usize = 0; x < row; x += 16)
    v128.store(sums + x, f32x4.sub(v128.load(sums + x), v128.load(from + x)));
}

function runningMean(from: usize, to: usize, count: i32, step: usize, radius: i32): void {
  let n = min(count, radius);
  let sum = f32x4.splat(0);
  for (let i = 0; i < n; i++) sum = f32x4.add(sum, v128.load(from + <usize>i * step));
  let part = f32x4.splat(<f32>(1 / <f64>n));
  for (let i = 0; i < count; i++) {
    const before = n;
    if (i + radius < count) {
      sum = f32x4.add(sum, v128.load(from + <usize>(i + radius) * step));
      n++;
    }
    if (i > radius) {
      sum = f32x4.sub(sum, v128.load(from + <usize>(i - radius - 1) * step));
      n--;
    }
    if (n !== before) part = f32x4.splat(<f32>(1 / <f64>n));
    v128.store(to + <usize>i * step, f32x4.mul(sum, part));
  }
}
