import { expect, test } from "vitest";
import { CREAM, GREEN, ROOM, stripe, walls, with_ } from "./goodRoom.ts";
import { codesOf, findingOf, type MadeRoom, schemeOf } from "./roomOf.ts";

// Each limit just short of it and just at it. The limits are common practice, no source, but for light and dark (borrowed from
// BS 8300-2:2018, 30 points) and rubs (guideline of the Association for Contract Textiles, see fitness.test.ts).

const says = (room: MadeRoom, code: string): string | null =>
  findingOf(schemeOf(room), code)?.level ?? null;

test("rungs: one and a half times is far enough", () => {
  const motif = (motifMm: number) => codesOf(schemeOf(with_({ ticking: { ...stripe, motifMm } })));
  expect(motif(120)).toContain("ladder-holds");
  expect(motif(121)).toContain("rungs-close");
});

test("patterns that touch: two and a half times apart is far enough", () => {
  const touch = (motifMm: number) =>
    says(
      {
        ...with_({ ticking: { ...stripe, motifMm } }),
        contacts: [{ one: "item-1", other: "item-2", stated: true }],
      },
      "patterns-touch",
    );
  expect(touch(72)).toBeNull();
  expect(touch(73)).toBe("worth-a-look");
});

test("rubs: twenty thousand for a seat, asked of upholstery alone", () => {
  const rubs = (cycles: number, kind: "armchair" | "curtains" = "armchair") =>
    says(
      with_(
        { ticking: { ...stripe, card: `rubs: ${cycles} martindale` } },
        { seen: ROOM.seen.map((s) => (s.cloth === "ticking" ? { ...s, kind } : s)) },
      ),
      "rubs-low",
    );
  expect(rubs(19_999)).toBe("problem");
  expect(rubs(20_000)).toBeNull();
  expect(rubs(12_000, "curtains")).toBeNull();
});

test("a welt of another cloth is not asked whether its card names cushions", () => {
  const welted = (surface: string) =>
    says(
      {
        ...with_({ ticking: { ...stripe, card: "suits: [curtains]" } }),
        seen: [{ cloth: "ticking", kind: "cushion", surface, areaMm2: 1e4 }],
      },
      "not-suited",
    );
  expect(welted("welt")).toBeNull();
  expect(welted("face")).toBe("problem");
});

test("light and dark: thirty points of light reflectance", () => {
  // Greys: #9c9c9c is 33 points, #d6d6d6 67, #d1d1d1 64 (relative luminance of IEC 61966-2-1).
  const greys = (light: string) =>
    schemeOf({
      cloths: {},
      seen: [
        { ...walls, colour: "#9c9c9c", areaMm2: 1e6 },
        { ...walls, item: "b", colour: light, areaMm2: 1e6 },
      ],
    });
  const far = findingOf(greys("#d6d6d6"), "light-and-dark");
  const near = findingOf(greys("#cacaca"), "light-and-dark");
  expect(far?.level).toBe("works");
  expect(far?.evidence.spread).toBeGreaterThanOrEqual(30);
  expect(near?.level).toBe("worth-a-look");
  expect(near?.evidence.spread).toBeGreaterThan(24);
  expect(near?.evidence.spread).toBeLessThan(30);
});

const shares = (first: number, second: number, third: number) =>
  says(
    {
      cloths: {},
      room: `colours: ["${GREEN}", "${CREAM}", "#8a2030"]`,
      seen: [
        { ...walls, areaMm2: first * 1e5 },
        { ...walls, item: "b", colour: CREAM, areaMm2: second * 1e5 },
        { ...walls, item: "c", colour: "#8a2030", areaMm2: third * 1e5 },
      ],
    },
    "shares-level",
  );

test("shares: near 60, 30 and 10 is well; else a colour leads from forty parts, and with a quarter more than the second", () => {
  expect(shares(60, 30, 10)).toBe("works");
  expect(shares(40, 31, 29)).toBe("works");
  expect(shares(39, 31, 30)).toBe("worth-a-look");
  expect(shares(50, 40, 10)).toBe("works");
  expect(shares(49, 40, 11)).toBe("worth-a-look");
  expect(shares(46, 36, 18)).toBe("works");
  expect(shares(45, 36, 19)).toBe("worth-a-look");
  expect(shares(84, 10, 6)).toBe("works");
  expect(shares(85, 9, 6)).toBe("worth-a-look");
});

test("plain surface: forty parts in a hundred", () => {
  const plain = (areaMm2: number) =>
    codesOf(
      schemeOf({
        ...ROOM,
        seen: [
          { ...walls, areaMm2 },
          { cloth: "fern", areaMm2: 60e5 },
        ],
      }),
    );
  expect(plain(40e5)).toContain("plain-enough");
  expect(plain(39e5)).toContain("plain-short");
  expect(plain(39e5)).not.toContain("plain-enough");
  // Of all that is seen nothing is patterned: no pattern has or lacks room.
  expect(plain(1e12)).not.toContain("plain-enough");
});

test("what cards and photographs say is silent where there is nothing to say", () => {
  const codes = codesOf(schemeOf(ROOM));
  for (const code of [
    "no-photograph",
    "photo-shows-part",
    "card-and-photo-differ",
    "animal-marking",
    "not-suited",
    "rubs-low",
  ])
    expect(codes).not.toContain(code);
});
