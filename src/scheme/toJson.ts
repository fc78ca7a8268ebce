import type { RoomScheme } from "./roomScheme.ts";
import type { SharePart } from "./seenColours.ts";
import type { PlaceShares } from "./zones.ts";

const part = (s: SharePart) => ({
  hex: s.hex,
  name: s.name,
  hundredths: s.hundredths,
  areaMm2: s.areaMm2,
  inPalette: s.palette !== null,
});
const place = (p: PlaceShares) => ({
  place: p.place,
  areaMm2: p.areaMm2,
  plainShare: p.plainShare,
  shares: p.shares.map(part),
});

/** What was reckoned of a room's mix, for machines: shares are parts of one, areas square millimetres, distances metres. */
export function schemeJson(room: string, scheme: RoomScheme) {
  return {
    room,
    palette: scheme.palette.colours.map(({ hex, name, family, lrv }) => ({
      hex,
      name,
      family,
      lrv,
    })),
    roles: scheme.roles.map(({ cloth, role, fixed, motifMm, areaMm2, shareOfCloth }) => ({
      cloth,
      role,
      fixed,
      motifMm,
      areaMm2,
      shareOfCloth,
    })),
    knownShare: scheme.knownShare,
    plainShare: scheme.plainShare,
    plainShareClosed: scheme.plainClosed,
    shares: scheme.shares.map(part),
    byZone: scheme.byZone.map(place),
    byWall: scheme.byWall.map(place),
    carried: scheme.carried.map((c) => ({
      hex: c.colour.hex,
      name: c.colour.name,
      zones: [...c.zones],
      items: c.items.map((i) => i.id),
    })),
    views: scheme.views.map(
      ({
        cloth,
        doorM,
        seatM,
        readsPlainFromM,
        plainFromDoor,
        plainFromSeat,
        plainInHand,
        colour,
      }) => ({
        cloth,
        doorM,
        seatM,
        readsPlainFromM,
        plainFromDoor,
        plainFromSeat,
        plainInHand,
        colour,
      }),
    ),
    traditions: scheme.traditions.map((t) => ({ name: t.name, cloths: [...t.cloths] })),
    phases: scheme.phases.map((p) => ({
      phase: p.phase,
      items: [...p.items],
      newColours: [...p.newColours],
      colours: [...p.colours],
      newRoles: p.newRoles.map(({ role, cloth }) => ({ role, cloth })),
      plainShare: p.plainShare,
    })),
  };
}

export type SchemeJson = ReturnType<typeof schemeJson>;
