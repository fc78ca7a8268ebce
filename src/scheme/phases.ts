import type { PaletteColour } from "./palette.ts";
import type { Role, RoleOf } from "./roles.ts";
import type { SchemeInput, SeenPart } from "./schemeInput.ts";
import { carriedColours } from "./seenColours.ts";
import { plainShareOf } from "./zones.ts";

/** What a phase brings to a room, and what the room is once it is done. */
export interface SchemePhase {
  /** 0 is what is there already. */
  readonly phase: number;
  /** Ids of the items that come with it, in the room's order. */
  readonly items: readonly string[];
  /** Palette colours that nothing bought before carries, by name; what is there already counts for itself alone. */
  readonly newColours: readonly string[];
  /** All palette colours that are then seen, on what is there and on what was bought. */
  readonly colours: readonly string[];
  /** Roles that are filled with it for the first time, each with its cloth's name. */
  readonly newRoles: readonly {
    readonly role: Role;
    readonly cloth: string;
    readonly name: string;
  }[];
  /** Plain share of what is then seen, or null. */
  readonly plainShare: number | null;
}

/** What is seen once the phases up to one are done: bare walls and floor always, an item from its own phase on. */
export function seenAfter(input: SchemeInput, phase: number): SeenPart[] {
  const of = new Map(input.items.map((i) => [i.item, i.phase]));
  return input.seen.filter((s) => s.item === null || (of.get(s.item) ?? 0) <= phase);
}

/**
 * The room phase by phase: which colours and roles each establishes. Colours count once they are seen on anything; accessories, which
 * nobody buys here, are left out. What is there already is phase 0, and stands only where there is something.
 */
export function schemePhases(
  input: SchemeInput,
  palette: readonly PaletteColour[],
  roles: readonly RoleOf[],
): SchemePhase[] {
  const numbers = [...new Set(input.items.map((i) => i.phase))].sort((a, b) => a - b);
  const bare: SchemeInput = {
    ...input,
    room: { ...input.room, fields: { ...input.room.fields, accessories: undefined } },
  };
  const colours = new Set<string>();
  const carriedBy = (seen: readonly SeenPart[]): string[] =>
    carriedColours({ ...bare, seen }, palette)
      .filter((c) => c.items.length > 0)
      .map((c) => c.colour.name);
  const of = new Map(input.items.map((i) => [i.item, i.phase]));
  const filled = new Set<string>();
  return numbers.map((phase): SchemePhase => {
    const seen = seenAfter(input, phase);
    const own = carriedBy(input.seen.filter((s) => s.item !== null && of.get(s.item) === phase));
    const newColours = own.filter((c) => !colours.has(c));
    if (phase > 0) for (const c of newColours) colours.add(c);
    const cloths = new Set(seen.flatMap((s) => (s.cloth ? [s.cloth] : [])));
    const newRoles = roles
      .filter((r) => cloths.has(r.cloth) && !filled.has(r.cloth))
      .map(({ role, cloth, name }) => ({ role, cloth, name }));
    for (const r of newRoles) filled.add(r.cloth);
    return {
      phase,
      items: input.items.filter((i) => i.phase === phase).map((i) => i.item),
      newColours,
      colours: carriedBy(seen),
      newRoles,
      plainShare: plainShareOf(input, seen),
    };
  });
}
