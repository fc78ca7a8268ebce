/**
 * Sums of the products of a square window of a picture with other windows of it, one for each place of `side` by `side`, over its
 * channels, which lie one after the other. `own` and `first` are the numbers of the window's first place and of the first place of
 * the first other window; `count` places are taken in a row and in a column, `step` apart. Four neighbouring windows at a time;
 * each row of sums has room for whole fours.
 */
export function windowProducts(
  channels: usize,
  places: i32,
  width: i32,
  own: i32,
  first: i32,
  count: i32,
  step: i32,
  side: i32,
  sums: usize,
): void {
  const fours = (side + 3) >> 2;
  const down = <usize>(step * width) << 2;
  const along = <usize>step << 2;
  for (let dy = 0; dy < side; dy++) {
    for (let four = 0; four < fours; four++) {
      let sum = f32x4.splat(0);
      for (let c = 0; c < 3; c++) {
        const channel = channels + (<usize>(c * places) << 2);
        let p = channel + (<usize>own << 2);
        let q = channel + (<usize>(first + dy * width + 4 * four) << 2);
        for (let v = 0; v < count; v++, p += down, q += down) {
          let a = p;
          let b = q;
          for (let u = 0; u < count; u++, a += along, b += along)
            sum = f32x4.add(sum, f32x4.mul(v128.load32_splat(a), v128.load(b)));
        }
      }
      v128.store(sums + (<usize>((dy * fours + four) * 4) << 2), sum);
    }
  }
}
