import { expect, test } from "vitest";
import { codesOf, findingOf, type MadeCloth, type MadeRoom, schemeOf } from "./roomOf.ts";

// What each approach asks: common practice, no source. Every finding both ways.

const FIRE = "fire: test certificate on file";
const CREAM = "#efe4cb";
const GREEN = "#2f5446";
const SAGE = "#7f9a7c";
const RUST = "#9b4529";
const BLUE = "#2b4a80";
const GOLD = "#d19c45";
const VIOLET = "#5d3a78";

const large = (colours: MadeCloth["colours"], motifMm = 180, card = FIRE): MadeCloth => ({
  kind: "large-print",
  motifMm,
  colours,
  card,
});
const small = (colours: MadeCloth["colours"], motifMm = 20, card = FIRE): MadeCloth => ({
  kind: "small-print",
  motifMm,
  colours,
  card,
});

const room = (
  approach: string,
  cloths: MadeRoom["cloths"],
  more: Partial<MadeRoom> & { readonly lines?: string } = {},
): MadeRoom => ({
  cloths,
  seen: [
    { item: "walls", kind: "paint", colour: CREAM, zone: "wall", areaMm2: 20e6 },
    ...Object.keys(cloths).map((cloth, at) => ({
      item: `${cloth}-thing`,
      title: cloth,
      kind: at === 0 ? "curtains" : "cushion",
      cloth,
      zone: at === 0 ? ("window" as const) : ("seat" as const),
      areaMm2: (at === 0 ? 6 : 1.5) * 1e6,
    })),
  ],
  ...more,
  room: `approach: ${approach}\n${more.lines ?? ""}`,
});

test("restrained: one or two hues are well; three are named with their shares", () => {
  const green = room("restrained", {
    fern: large({ [CREAM]: 0.5, [GREEN]: 0.5 }),
    sprig: small({ [CREAM]: 0.7, [SAGE]: 0.3 }),
  });
  expect(findingOf(schemeOf(green), "hues-few")?.evidence).toEqual({ hues: 1 });
  const many = room("restrained", {
    fern: large({ [CREAM]: 0.4, [GREEN]: 0.6 }),
    sprig: small({ [RUST]: 1 }),
    dot: small({ [BLUE]: 1 }, 40),
  });
  expect(findingOf(schemeOf(many), "hues-many")).toMatchObject({
    level: "worth-a-look",
    evidence: { hues: 3 },
  });
  expect(codesOf(schemeOf({ ...many, room: "approach: collection" }))).not.toContain("hues-many");
});

test("restrained: a few strays are allowed and counted, more than three are too many; none is spoken of by itself", () => {
  const palette = `colours: ["${GREEN}", "${CREAM}"]`;
  const with_ = (n: number) =>
    schemeOf(
      room(
        "restrained",
        {
          fern: large({ [CREAM]: 0.5, [GREEN]: 0.5 }),
          odd: small(
            Object.fromEntries(
              [CREAM, RUST, BLUE, GOLD, VIOLET].slice(0, n + 1).map((hex) => [hex, 1 / (n + 1)]),
            ),
          ),
        },
        { lines: palette },
      ),
    );
  expect(codesOf(with_(0))).not.toContain("strays-counted");
  expect(findingOf(with_(2), "strays-counted")).toMatchObject({
    level: "works",
    evidence: { strays: 2 },
  });
  expect(findingOf(with_(4), "strays-counted")).toMatchObject({
    level: "worth-a-look",
    evidence: { strays: 4 },
  });
  for (const n of [0, 2, 4]) expect(codesOf(with_(n))).not.toContain("colour-outside");
});

test("restrained: two prints of one size are told apart by value, or not", () => {
  const pair = (dark: string, approach: string) =>
    codesOf(
      schemeOf(
        room(approach, {
          fern: { ...large({ [CREAM]: 1 }), kind: "geometric", motifMm: 100 },
          other: { ...large({ [dark]: 1 }), kind: "geometric", motifMm: 90 },
        }),
      ),
    );
  expect(pair(GREEN, "restrained")).not.toContain("rungs-close");
  expect(pair("#e8dcc0", "restrained")).toContain("rungs-close");
  expect(pair(GREEN, "collection")).toContain("rungs-close");
});

const anchored = (cloths: MadeRoom["cloths"], anchor: MadeCloth["colours"]): MadeRoom => ({
  ...room("from-anchor", { jar: large(anchor, 240), ...cloths }, { lines: "anchor: jar" }),
});
const JAR = { [GREEN]: 0.6, [CREAM]: 0.2, [RUST]: 0.12, [GOLD]: 0.08 };

test("from-anchor: cloths that take up the minor colours are praised; those that repeat the dominant one are pointed at", () => {
  const minor = schemeOf(
    anchored({ velvet: small({ [RUST]: 1 }), honey: small({ [GOLD]: 1 }, 60) }, JAR),
  );
  expect(findingOf(minor, "anchor-minor-first")).toMatchObject({
    level: "works",
    evidence: { minor: 2, dominant: 0 },
  });
  const dominant = schemeOf(
    anchored({ velvet: small({ [GREEN]: 1 }), honey: small({ [GREEN]: 1 }, 60) }, JAR),
  );
  expect(findingOf(dominant, "anchor-dominant-first")?.message).toMatch(
    /Honey and Velvet repeat .*60 %/,
  );
});

test("from-anchor: the larger and the smaller print lead with different colours, or with one", () => {
  expect(
    codesOf(schemeOf(anchored({ sprig: small({ [CREAM]: 0.7, [RUST]: 0.3 }) }, JAR))),
  ).toContain("prints-in-two-colours");
  expect(
    codesOf(schemeOf(anchored({ sprig: small({ [CREAM]: 0.7, [GREEN]: 0.3 }) }, JAR))),
  ).toContain("prints-in-one-colour");
});

test("from-anchor: one accent cloth; none and two are pointed at", () => {
  const accents = (n: number) => {
    const made = anchored(
      { sprig: small({ [RUST]: 1 }), a: small({ [GOLD]: 1 }, 60), b: small({ [BLUE]: 1 }, 90) },
      JAR,
    );
    const cloths = [
      "jar",
      "sprig",
      ...["a", "b"].map((id, at) => (at < n ? `{ ${id}: accent }` : id)),
    ];
    // The helper lists the cloths in the room; a fixed role is written over it.
    return schemeOf({ ...made, cloths: made.cloths, listed: cloths });
  };
  expect(codesOf(accents(1))).toContain("accent-one");
  expect(findingOf(accents(0), "accents")?.message).toBe("No cloth is the accent.");
  expect(findingOf(accents(2), "accents")?.message).toBe("A and B are all accents.");
});

const RANGE = `${FIRE}\ncollection: Harbour`;

test("collection: one range with shared colours, confirmed from the photographs", () => {
  const cloths = {
    fern: large({ [CREAM]: 0.5, [GREEN]: 0.5 }, 180, RANGE),
    sprig: small({ [CREAM]: 0.6, [GREEN]: 0.4 }, 20, RANGE),
  };
  const shared = findingOf(schemeOf(room("collection", cloths)), "collection-shared");
  expect(shared).toMatchObject({ level: "works", evidence: { cloths: 2, colours: 1 } });
  expect(shared?.message).toContain("confirmed from their photographs");
});

test("collection: a cloth whose photograph shares no colour, and a pattern from another range; plains are free", () => {
  const apart = schemeOf(
    room("collection", {
      fern: large({ [CREAM]: 0.5, [GREEN]: 0.5 }, 180, RANGE),
      sprig: small({ [CREAM]: 0.6, [GREEN]: 0.4 }, 20, RANGE),
      odd: small({ [VIOLET]: 1 }, 60, RANGE),
    }),
  );
  expect(findingOf(apart, "collection-apart")?.of).toEqual(["odd"]);
  expect(codesOf(apart)).not.toContain("colour-outside");
  const mixed = schemeOf(
    room("collection", {
      fern: large({ [CREAM]: 0.5, [GREEN]: 0.5 }, 180, RANGE),
      sprig: small({ [CREAM]: 0.6, [GREEN]: 0.4 }, 20, RANGE),
      stranger: small({ [GREEN]: 1 }, 60, `${FIRE}\ncollection: Elsewhere`),
      linen: { kind: "plain", colours: { [RUST]: 1 }, card: FIRE },
    }),
  );
  expect(mixed.findings.filter((f) => f.code === "collection-mixed").map((f) => f.of)).toEqual([
    ["stranger"],
  ]);
});

test("free: whatever the mix, only fitness, safety and the cards themselves are spoken of", () => {
  const cloths = {
    fern: large({ [CREAM]: 0.4, [GREEN]: 0.6 }),
    rose: large({ [RUST]: 1 }, 175),
    dot: small({ [BLUE]: 0.5, [VIOLET]: 0.5 }, 160),
  };
  expect(codesOf(schemeOf(room("free", cloths)))).toEqual([]);
  expect(codesOf(schemeOf(room("from-anchor", cloths))).length).toBeGreaterThan(5);
});
