import type { Grains } from "../piece.ts";
import type { LengthAtHand, Place, Plan } from "../plan.ts";
import { mod } from "./modes.ts";
import { crossCuts } from "./places.ts";

/**
 * A plan made before the cloth came, moved onto the lengths that did: each of its lengths, the longest first, onto the tightest
 * length at hand that has it in register and without a flaw under a piece. Null if one finds none. So cloth that came as it was
 * ordered can always be cut as it was planned.
 */
export function asPlanned(
  plan: Plan,
  lengths: readonly LengthAtHand[],
  vertical: Grains,
): Plan | null {
  const order = plan.lengths.map((_, i) => i);
  order.sort((a, b) => (plan.lengths[b] as Grains) - (plan.lengths[a] as Grains) || a - b);
  const taken = new Map<number, { onto: number; by: Grains }>();
  for (const i of order) {
    const need = plan.lengths[i] as Grains;
    const places = plan.places.filter((place) => place.length === i);
    const used = new Set([...taken.values()].map((each) => each.onto));
    const fitting = lengths.flatMap((length, onto) => {
      if (used.has(onto)) return [];
      const by = vertical > 0 ? mod((plan.starts[i] as Grains) - length.start, vertical) : 0;
      const spare = length.length - by - need;
      return spare >= 0 && !isFlawed(places, by, length) ? [{ onto, by, spare }] : [];
    });
    const best = fitting.sort((a, b) => a.spare - b.spare || a.onto - b.onto)[0];
    if (!best) return null;
    taken.set(i, best);
  }
  const ends = lengths.map(() => 0);
  for (const [i, { onto, by }] of taken) ends[onto] = by + (plan.lengths[i] as Grains);
  const places = plan.places.map((place): Place => {
    const { onto, by } = taken.get(place.length) as { onto: number; by: Grains };
    const y = place.register?.y ?? null;
    return {
      ...place,
      y: place.y + by,
      length: onto,
      register: place.register && {
        x: place.register.x,
        y: y === null ? null : mod(y + by, vertical),
      },
    };
  });
  return {
    ...plan,
    length: ends.reduce((sum, end) => sum + end, 0),
    start: lengths[0]?.start ?? 0,
    starts: lengths.map((length) => length.start),
    lengths: ends,
    places,
    bands: crossCuts(places, lengths.length),
    itemByItem: null,
  };
}

function isFlawed(places: readonly Place[], by: Grains, { flaws }: LengthAtHand): boolean {
  return flaws.some((flaw) =>
    places.some(
      ({ x, y, width, height }) =>
        x < flaw.x + flaw.width &&
        flaw.x < x + width &&
        y + by < flaw.y + flaw.height &&
        flaw.y < y + by + height,
    ),
  );
}
