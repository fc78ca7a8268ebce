import { expect, test } from "vitest";
import { CREAM, GREEN, plain, print, ROOM, stripe, with_ } from "./goodRoom.ts";
import { findingOf, type MadeRoom, schemeOf } from "./roomOf.ts";

// Roles are common practice, no source.

const rolesOf = (room: MadeRoom) =>
  Object.fromEntries(schemeOf(room).roles.map((r) => [r.cloth, r.role]));

test("a role that she fixed stands, is marked as hers, and the others are computed round it", () => {
  const scheme = schemeOf(with_({ ticking: { ...stripe, role: "main" } }));
  const roles = Object.fromEntries(scheme.roles.map((r) => [r.cloth, [r.role, r.fixed]]));
  expect(roles).toEqual({
    ticking: ["main", true],
    fern: ["supporting", false],
    sprig: ["small-print", false],
    velvet: ["plain", false],
  });
  expect(scheme.palette.source).toMatchObject({ from: "main-cloth", id: "ticking" });
  // The larger print that no longer leads is said to compete with the stripe that she chose.
  expect(findingOf(scheme, "mains-compete")?.of).toEqual(["ticking", "fern"]);
});

test("a plain that she makes the accent is no longer among the plains", () => {
  expect(rolesOf(with_({ velvet: { ...plain, role: "accent" } })).velvet).toBe("accent");
});

test("a second print is supporting from 90 mm, and a small print below", () => {
  const second = (motifMm: number) => {
    const cloths = { rose: { ...print(motifMm), kind: "irregular" as const } };
    const seen = [...ROOM.seen, { cloth: "rose", areaMm2: 1e6 }];
    return rolesOf(with_(cloths, { seen })).rose;
  };
  expect(second(90)).toBe("supporting");
  expect(second(89)).toBe("small-print");
});

test("a geometric of which little is seen is an accent: from three parts in a hundred of the cloth it is not", () => {
  const of = (areaMm2: number) =>
    rolesOf(
      with_(
        { check: { ...stripe, kind: "check" } },
        { seen: [...ROOM.seen, { cloth: "check", areaMm2 }] },
      ),
    ).check;
  // The other cloths show 9 m2.
  expect(of(0.25e6)).toBe("accent");
  expect(of(0.3e6)).toBe("geometric");
});

test("linings and trims are no part of the mix", () => {
  const roles = rolesOf(
    with_({
      tallow: { kind: "plain", colours: { [CREAM]: 1 }, card: "type: lining" },
      braid: { kind: "plain", colours: { [GREEN]: 1 }, card: "type: trim" },
    }),
  );
  expect(Object.keys(roles).sort()).toEqual(["fern", "sprig", "ticking", "velvet"]);
});

test("a paper stands back for a cloth of the same print", () => {
  const room = with_(
    { paper: { ...print(180), card: `roll: { width: 20 1/2", length: 11 yd }` } },
    { seen: [...ROOM.seen, { cloth: "paper", kind: "wallpaper", zone: "wall", areaMm2: 9e6 }] },
  );
  expect(rolesOf(room)).toMatchObject({ fern: "main", paper: "supporting" });
});
