import type { Plan, PlanInput } from "../../src/cutplan/plan.ts";

/** Everything that makes a plan wrong, found by its own arithmetic: an empty list is a plan that can be cut. */
export function faultsOf(plan: Plan, input: PlanInput): string[] {
  const faults: string[] = [];
  const { usableWidth, pattern, pieces } = input;
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const rem = (value: number, period: number) => ((value % period) + period) % period;
  const seen = new Set<string>();
  for (const place of plan.places) {
    const piece = byId.get(place.pieceId);
    const says = (what: string) => faults.push(`${place.pieceId}: ${what}`);
    if (!piece) {
      says("no such piece");
      continue;
    }
    if (seen.has(piece.id)) says("placed twice");
    seen.add(piece.id);
    const { x, y, width, height, turned } = place;
    for (const value of [x, y, width, height]) if (!Number.isInteger(value)) says("not whole");
    if (turned && !piece.mayTurn) says("may not be turned");
    if ((turned ? piece.height : piece.width) !== width) says("width");
    if ((turned ? piece.width : piece.height) !== height) says("height");
    if (x < 0 || x + width > usableWidth) says("outside the width");
    if (y < 0 || y + height > (plan.lengths[place.length] as number)) says("outside the length");
    const { across, along } = piece;
    const shift = turned ? Math.floor((piece.width - piece.height) / 2) : 0;
    if (across.rule === "at" && !across.positions.includes(x)) says("not at its selvedge");
    const start = plan.starts[place.length] as number;
    let column = 0;
    if (across.rule === "register" && pattern) {
      const off = x - across.residue - shift;
      if (rem(off, pattern.horizontal) !== 0) says("out of register across");
      column = Math.round(off / pattern.horizontal);
    }
    if (along.rule === "register" && pattern) {
      const dropped =
        across.rule === "register" && pattern.match === "half-drop" && rem(column, 2) === 1;
      const half = dropped ? Math.floor(pattern.vertical / 2) : 0;
      if (rem(y + start - along.residue + shift - half, pattern.vertical) !== 0) {
        says("out of register along");
      }
    }
  }
  for (const piece of pieces) if (!seen.has(piece.id)) faults.push(`${piece.id}: missing`);
  const places = [...plan.places].sort((a, b) => a.length - b.length || a.y - b.y);
  places.forEach((a, i) => {
    for (let j = i + 1; j < places.length; j++) {
      const b = places[j] as (typeof places)[number];
      if (b.length !== a.length || b.y >= a.y + a.height) break;
      if (a.x < b.x + b.width && b.x < a.x + a.width) {
        faults.push(`${a.pieceId} overlaps ${b.pieceId}`);
      }
    }
  });
  for (const cut of plan.bands) {
    for (const { pieceId, length, y, height } of places) {
      if (length === cut.length && y < cut.y && y + height > cut.y) {
        faults.push(`${pieceId} is crossed by the straight cut at ${cut.y}`);
      }
    }
  }
  const sum = plan.lengths.reduce((total, length) => total + length, 0);
  if (sum !== plan.length) faults.push("the lengths do not sum up");
  if (plan.lowerBound > plan.length) faults.push("the bound is above the plan");
  return faults;
}
