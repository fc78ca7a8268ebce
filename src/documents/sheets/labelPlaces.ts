/** A box on paper, millimetres. */
export interface LabelBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Whether two boxes share room. */
export function meets(a: LabelBox, b: LabelBox): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

/** From one place that is tried for a label to the next. */
const STEP = 0.7;
/** So many steps each way are tried at most. */
const MOST_STEPS = 60;
/** Shifts from `from` to `to`, the nearest to none first. */
function shifts(from: number, to: number): number[] {
  const all = [0];
  for (let step = 1; step <= MOST_STEPS; step++)
    for (const by of [step * STEP, -step * STEP]) if (by >= from && by <= to) all.push(by);
  return all;
}

/**
 * How far a label's boxes move inside `room` so that they stand on no label that is there and on no motif: the shortest way; where
 * there is none, to where they cover the fewest motifs, and never on a label while another place is left.
 */
export function clearShift(
  boxes: readonly LabelBox[],
  room: LabelBox,
  labels: readonly LabelBox[],
  motifs: readonly LabelBox[],
): { readonly dx: number; readonly dy: number } {
  const left = Math.min(...boxes.map((b) => b.x)) - room.x;
  const right = room.x + room.width - Math.max(...boxes.map((b) => b.x + b.width));
  const top = Math.min(...boxes.map((b) => b.y)) - room.y;
  const bottom = room.y + room.height - Math.max(...boxes.map((b) => b.y + b.height));
  const near = (all: readonly LabelBox[]) => all.filter((one) => meets(one, room));
  const [taken, seen] = [near(labels), near(motifs)];
  const cost = ({ dx, dy }: { dx: number; dy: number }): number => {
    const moved = boxes.map((b) => ({ ...b, x: b.x + dx, y: b.y + dy }));
    const over = (all: readonly LabelBox[]) =>
      all.filter((one) => moved.some((box) => meets(box, one))).length;
    return over(taken) * 1000 + over(seen);
  };
  let best = { dx: 0, dy: 0 };
  let least = cost(best);
  if (least === 0) return best;
  const places = shifts(-left, right)
    .flatMap((dx) => shifts(-top, bottom).map((dy) => ({ dx, dy })))
    .sort((a, b) => Math.hypot(a.dx, a.dy) - Math.hypot(b.dx, b.dy));
  for (const place of places) {
    const costs = cost(place);
    if (costs < least) [best, least] = [place, costs];
    if (least === 0) break;
  }
  return best;
}
