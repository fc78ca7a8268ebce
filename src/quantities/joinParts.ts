import type { CrossCut, LengthAtHand, Place, Plan } from "../cutplan/plan.ts";
import type { NamedPiece } from "./cutPieces.ts";
import type { LotPart } from "./lots/divideOverLots.ts";
import type { GroupPlan, Run } from "./planGroup.ts";
import type { LotUse } from "./quantityTypes.ts";

/**
 * The plans on several lots as one: its lengths are those of the first lot, then those of the next. `leastInAll` is what no division
 * over lots can be under.
 */
export function joinParts(
  parts: readonly LotPart[],
  leastInAll: (lengths: number) => number,
): { readonly plan: GroupPlan; readonly lots: readonly LotUse[] } {
  const pieces: [string, NamedPiece][] = [];
  const places: Place[] = [];
  const bands: CrossCut[] = [];
  const lengths: number[] = [];
  const starts: number[] = [];
  const atHand: LengthAtHand[] = [];
  const lots: LotUse[] = [];
  for (const { lot, cuts, plan } of parts) {
    const run = plan.run as Run;
    const first = lengths.length;
    pieces.push(...run.pieces);
    places.push(...run.plan.places.map((each) => ({ ...each, length: each.length + first })));
    bands.push(...run.plan.bands.map((each) => ({ ...each, length: each.length + first })));
    lengths.push(...run.plan.lengths);
    starts.push(...run.plan.starts);
    atHand.push(...plan.atHand);
    const rooms = [...new Set(cuts.map((cut) => cut.room))];
    lots.push({
      lot: lot.lot,
      lengths: run.plan.lengths.map((_, i) => first + i),
      rooms: rooms.map((room) => ({
        room,
        items: [...new Set(cuts.filter((cut) => cut.room === room).map((cut) => cut.item))],
      })),
    });
  }
  const used = lengths.filter((length) => length > 0).length;
  const joined: Plan = {
    ok: true,
    length: lengths.reduce((sum, each) => sum + each, 0),
    lowerBound: leastInAll(used),
    start: starts[0] ?? 0,
    starts,
    lengths,
    places,
    bands,
    itemByItem: null,
  };
  const first = (parts[0] as LotPart).plan;
  return {
    plan: {
      ...first,
      run: { plan: joined, pieces: new Map(pieces) },
      choices: {
        phases: new Map(parts.flatMap(({ plan }) => [...plan.choices.phases])),
        instead: new Map(parts.flatMap(({ plan }) => [...plan.choices.instead])),
      },
      unchosen: null,
      problems: [],
      unplaced: [],
      atHand,
    },
    lots,
  };
}
