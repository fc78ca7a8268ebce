import type { Dimension } from "../../drawing/shape.ts";
import type { Wall } from "../../room/walls.ts";
import { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import type { NumberedItem } from "./fittingItems.ts";

/** Along the floor: the openings as a chain, then for each thing how far it stands from the wall's left end and how wide it is. */
export function alongFloor(
  items: readonly NumberedItem[],
  wall: Wall,
  units: UnitSystem,
): Dimension[] {
  const p = (length: Length) => printLength(length, units);
  const all: Dimension[] = [];
  let level = 0;
  const span = (from: Length, to: Length, text: string, brief?: string) => {
    if (!to.isMoreThan(from)) return;
    const base = { axis: "horizontal", side: "bottom", level } as const;
    all.push({ ...base, from: from.toMm(), to: to.toMm(), text, ...(brief ? { brief } : {}) });
  };
  const start = Length.zero;
  const openings = [...wall.openings].sort((a, b) => a.fromLeft.compare(b.fromLeft));
  if (openings.length > 0) {
    level += 1;
    let last = start;
    for (const { fromLeft, width } of openings) {
      span(last, fromLeft, p(fromLeft.minus(last)));
      span(fromLeft, fromLeft.plus(width), p(width));
      last = fromLeft.plus(width);
    }
    span(last, wall.length, p(wall.length.minus(last)));
  }
  for (const {
    line: { mark },
    number,
  } of items) {
    if (!mark?.across) continue;
    const { left, width } = mark.across;
    level += 1;
    span(start, left, p(left));
    span(left, left.plus(width), `${p(width)} (${number})`, p(width));
  }
  level += 1;
  span(start, wall.length, `${p(wall.length)} in all`, p(wall.length));
  return all;
}

/** Heights at which things are fixed, each once, the lowest next to the wall; the room's own at the right. */
export function upright(
  items: readonly NumberedItem[],
  high: number,
  room: Length | null,
  units: UnitSystem,
): Dimension[] {
  const p = (length: Length) => printLength(length, units);
  const heights = new Map<string, { height: Length; numbers: number[] }>();
  for (const {
    line: { mark },
    number,
  } of items) {
    if (!mark) continue;
    const key = p(mark.height);
    const known = heights.get(key);
    if (known) known.numbers.push(number);
    else heights.set(key, { height: mark.height, numbers: [number] });
  }
  const sorted = [...heights.values()].sort((a, b) => a.height.compare(b.height));
  return [
    ...sorted.map(
      ({ height, numbers }, at): Dimension => ({
        axis: "vertical",
        from: high - height.toMm(),
        to: high,
        side: "left",
        level: at + 1,
        text: `${p(height)} (${numbers.join(", ")})`,
        brief: p(height),
      }),
    ),
    ...(room
      ? [
          {
            axis: "vertical",
            from: 0,
            to: high,
            side: "right",
            level: 1,
            text: `${p(room)} high`,
            brief: p(room),
          } as const,
        ]
      : []),
  ];
}
