import { expect, test } from "vitest";
import { martindale } from "../../src/scheme/cardFigures.ts";
import { pasteLineFor } from "../../src/scheme/finding.ts";
import { CREAM, GOLD, GREEN, plain, print, ROOM, small, stripe, walls, with_ } from "./goodRoom.ts";
import { codesOf, findingOf, type MadeRoom, schemeOf } from "./roomOf.ts";

// Rules of taste: common practice, no source. Each finding is tested both ways: where it speaks and where it keeps silent.

test("a room that holds together is told what works, and nothing else", () => {
  const scheme = schemeOf(ROOM);
  expect(codesOf(scheme)).toEqual(
    expect.arrayContaining(["main-cloth", "ladder-holds", "plain-enough", "light-and-dark"]),
  );
  expect(scheme.findings.filter((f) => f.level === "problem")).toEqual([]);
  for (const f of scheme.findings) {
    expect(f.message).toMatch(/\.$|\.\s/);
    expect(f.reason).toMatch(/common practice|BS 8300/);
    expect(f.pasteLine === null).toBe(f.level === "works");
  }
});

test("roles are computed: the largest print that has room leads; a fixed role stands", () => {
  const roles = Object.fromEntries(schemeOf(ROOM).roles.map((r) => [r.cloth, r.role]));
  expect(roles).toEqual({
    fern: "main",
    ticking: "geometric",
    sprig: "small-print",
    velvet: "plain",
  });
});

test("no main cloth where every cloth is plain; a room of textures may do without", () => {
  const textures: MadeRoom = {
    cloths: { wool: { kind: "textured-plain", colours: { [CREAM]: 1 } }, velvet: plain },
    seen: [walls, { cloth: "wool", areaMm2: 5e6 }, { cloth: "velvet", areaMm2: 1e6 }],
  };
  expect(findingOf(schemeOf(textures), "no-main-cloth")?.level).toBe("worth-a-look");
  expect(codesOf(schemeOf(ROOM))).not.toContain("no-main-cloth");
});

test("of the only cloth that is seen it is not said that it leads; of nearly all, not that it is all", () => {
  const of = (sprigMm2: number) =>
    findingOf(
      schemeOf({
        ...with_({}, { room: "" } as never),
        seen: [
          walls,
          { cloth: "fern", areaMm2: 9e6 },
          ...(sprigMm2 > 0 ? [{ cloth: "sprig", areaMm2: sprigMm2 }] : []),
        ],
      }),
      "main-cloth",
    );
  expect(of(0)).toBeUndefined();
  expect(of(1e6)?.message).toContain("leads: 90 % of");
  expect(of(1e4)?.message).toContain("leads: 99 % of");
});

test("of a print that is hardly seen it is not said that it leads", () => {
  const papered = { item: "paper", cloth: "leaf", kind: "wallpaper", zone: "wall", areaMm2: 400e6 };
  const scheme = schemeOf(
    with_({ leaf: small }, { room: "", seen: [...ROOM.seen, papered] } as never),
  );
  expect(scheme.roles.find((r) => r.role === "main")?.shareOfCloth).toBeLessThan(0.1);
  expect(codesOf(scheme)).not.toContain("main-cloth");
  expect(codesOf(schemeOf(ROOM))).toContain("main-cloth");
});

test("two large prints of one weight compete; one that is smaller or less seen does not", () => {
  const rival = (motif: number, areaMm2: number) =>
    schemeOf(
      with_(
        { rose: print(motif) },
        { seen: [...ROOM.seen, { cloth: "rose", kind: "curtains", areaMm2 }] },
      ),
    );
  expect(findingOf(rival(175, 5.5e6), "mains-compete")?.of).toEqual(
    expect.arrayContaining(["fern", "rose"]),
  );
  expect(codesOf(rival(175, 1e6))).not.toContain("mains-compete");
  expect(codesOf(rival(100, 5.5e6))).not.toContain("mains-compete");
});

test("rungs closer than one and a half times are named with both sizes", () => {
  const close = schemeOf(with_({ ticking: { ...stripe, motifMm: 150 } }));
  expect(findingOf(close, "rungs-close")).toMatchObject({
    of: ["fern", "ticking"],
    evidence: { largerMm: 180, smallerMm: 150, ratio: 1.2 },
  });
  expect(codesOf(close)).not.toContain("ladder-holds");
  expect(codesOf(schemeOf(with_({ ticking: { ...stripe, motifMm: 120 } })))).toContain(
    "ladder-holds",
  );
});

test("too little plain surface, as a share of what is seen", () => {
  const busy = schemeOf({ ...ROOM, seen: ROOM.seen.slice(1) });
  expect(findingOf(busy, "plain-short")?.evidence.plainShare).toBeCloseTo(0.6 / 9, 6);
  expect(schemeOf(ROOM).plainShare).toBeCloseTo(30.6 / 39, 6);
});

test("a colour that is carried, and one that is seen once; accessories count by their colour's name", () => {
  const room = (more: string) => ({
    ...ROOM,
    room: `colours:\n  - { colour: "${GREEN}", name: Bottle }\n  - { colour: "#3b5aa0", name: Ink }\n${more}`,
  });
  const scheme = schemeOf(room(""));
  expect(findingOf(scheme, "colour-carried")?.message).toContain("Bottle is carried");
  expect(findingOf(scheme, "colour-once")).toMatchObject({
    message:
      "Ink is seen nowhere yet. To carry it, cheapest first: a small thing at table height; a welt on Sprig pair; an edge on Bay.",
    of: ["#3b5aa0"],
  });
  const carried = schemeOf(
    room(
      `accessories:\n  - { what: jug, height: table, colours: [Ink] }\n  - { what: rug, height: floor, colours: [ink] }\n  - { what: print, height: wall, colours: [Ink] }\n`,
    ),
  );
  expect(carried.findings.filter((f) => f.code === "colour-once")).toEqual([]);
});

test("a colour that is there in small touches is not said to be nowhere", () => {
  const scheme = schemeOf(
    with_(
      { sprig: { ...small, colours: { [CREAM]: 0.98, "#3b5aa0": 0.02 } } },
      {
        room: `colours:\n  - { colour: "${GREEN}", name: Bottle }\n  - { colour: "#3b5aa0", name: Ink }`,
      },
    ),
  );
  const said = scheme.findings.find((f) => f.code === "colour-once" && f.of[0] === "#3b5aa0");
  expect(said?.message).toMatch(/^Ink is seen in small touches only, on Sprig pair\. To carry it/);
});

test("a colour from outside is named, and as a complement where it is one", () => {
  const odd = schemeOf(
    with_(
      { sprig: { ...small, colours: { [CREAM]: 0.8, "#1f6fd0": 0.2 } } },
      {
        room: `colours:\n  - { colour: "${CREAM}", name: Cream }\n  - { colour: "#e07b20", name: Amber }`,
      },
    ),
  );
  const finding = odd.findings.find((f) => f.code === "colour-outside" && f.of[0] === "sprig");
  expect(finding?.message).toMatch(
    /20 % of it\. It is the complement of Amber on the painter's twelve-hue wheel\./,
  );
  expect(odd.findings.some((f) => f.code === "cloth-belongs" && f.of[0] === "ticking")).toBe(false);
  expect(
    schemeOf(ROOM).findings.some((f) => f.code === "cloth-belongs" && f.of[0] === "ticking"),
  ).toBe(true);
});

test("busy patterns that touch in near sizes are said once; a plain between, or a clear step in size, is not", () => {
  const touch = (a: string, b: string, cloths = ROOM.cloths) =>
    schemeOf({
      ...ROOM,
      cloths,
      contacts: [
        { one: a, other: b, stated: true },
        { one: b, other: a, stated: true },
      ],
    }).findings.filter((f) => f.code === "patterns-touch");
  expect(
    touch("item-1", "item-2", { ...ROOM.cloths, ticking: { ...stripe, motifMm: 110 } }),
  ).toHaveLength(1);
  expect(touch("item-1", "item-3")).toHaveLength(0);
  expect(touch("item-1", "item-4")).toHaveLength(0);
});

test("light and dark, by points of light reflectance", () => {
  const flat = schemeOf({
    cloths: {
      one: { kind: "plain", colours: { "#8a8f7a": 1 } },
      two: { kind: "plain", colours: { "#8f8a78": 1 } },
    },
    seen: [
      { cloth: "one", areaMm2: 1e6 },
      { cloth: "two", areaMm2: 1e6 },
    ],
  });
  expect(findingOf(flat, "light-and-dark")?.level).toBe("worth-a-look");
  expect(findingOf(schemeOf(ROOM), "light-and-dark")?.level).toBe("works");
});

test("fitness alone is a problem: what the card does not name, and too few rubs for a seat", () => {
  const bad = schemeOf(
    with_({ ticking: { ...stripe, card: "suits: [curtains]\nrubs: 12000 martindale\nfire: yes" } }),
  );
  expect(bad.findings.filter((f) => f.level === "problem").map((f) => f.code)).toEqual([
    "not-suited",
    "rubs-low",
  ]);
  const good = schemeOf(
    with_({ ticking: { ...stripe, card: "suits: [upholstery]\nrubs: 25,000 martindale" } }),
  );
  expect(good.findings.filter((f) => f.level === "problem")).toEqual([]);
  expect(martindale("30000 wyzenbeek")).toBeNull();
  expect(martindale("25 000 Martindale")).toBe(25_000);
});

test("an animal marking, a cloth without photograph, and a card that its photograph contradicts", () => {
  const scheme = schemeOf(
    with_({
      spot: { kind: "irregular", motifMm: 25, colours: { [GOLD]: 1 }, animal: true },
      bare: { ...small, photo: false },
      wrong: {
        ...small,
        disagreements: [{ what: "repeat", declared: "640 mm", measured: "320 mm" }],
      },
    }),
  );
  expect(findingOf(scheme, "animal-marking")?.level).toBe("works");
  expect(scheme.roles.find((r) => r.cloth === "spot")?.role).toBe("accent");
  expect(findingOf(scheme, "no-photograph")?.of).toEqual(["bare"]);
  expect(findingOf(scheme, "card-and-photo-differ")?.evidence).toEqual({
    declared: "640 mm",
    measured: "320 mm",
  });
});

test("a photograph that shows less than a repeat is told, with what it shows; one that shows a whole repeat is not", () => {
  // The photograph shows 300 mm each way.
  const period = (upMm: number) => ({ acrossMm: 250, upMm, halfDrop: true });
  const scheme = schemeOf(
    with_({
      less: { ...small, period: period(640) },
      whole: { ...small, period: period(300) },
      unknown: { ...small, period: null },
    }),
  );
  const told = scheme.findings.filter((f) => f.code === "photo-shows-part");
  expect(told.map((f) => f.of)).toEqual([["less"], ["unknown"]]);
  expect(told[0]?.message).toMatch(/shows only .* of a repeat of .* up\.$/);
  expect(told[1]?.message).toContain("not known");
});

test("a finding is waived by its printed line and her reason; a waiver for what does not occur is reported", () => {
  const room = with_({ ticking: { ...stripe, motifMm: 150 } });
  const line = findingOf(schemeOf(room), "rungs-close")?.pasteLine as string;
  expect(line).toBe(pasteLineFor("rungs-close", ["fern", "ticking"]));
  const waived = schemeOf({
    ...room,
    room: `accept:\n${line.replace("…", "They are on opposite walls.")}`,
  });
  expect(findingOf(waived, "rungs-close")?.accepted).toBe("They are on opposite walls.");
  expect(waived.diagnostics).toEqual([]);
  const idle = schemeOf({
    ...ROOM,
    room: "accept:\n  - { finding: mains-compete, because: I like it. }",
  });
  expect(idle.diagnostics.map((d) => [d.code, d.severity, d.line])).toEqual([
    ["waiver-unused", "warning", 4],
  ]);
});

test("a free scheme hears of nothing but fitness and the cards themselves", () => {
  const free = schemeOf({
    ...with_({ ticking: { ...stripe, motifMm: 150, card: "suits: [curtains]\nfire: yes" } }),
    room: "approach: free",
  });
  expect(free.findings.filter((f) => f.level !== "works").map((f) => f.code)).toEqual([
    "not-suited",
  ]);
});

test("what is seen, in a hundred parts, sums to a hundred and follows the areas", () => {
  const { shares } = schemeOf(ROOM);
  expect(shares.reduce((a, s) => a + s.hundredths, 0)).toBe(100);
  expect(shares[0]?.hex).toBe(GREEN);
  expect([...shares].sort((a, b) => b.areaMm2 - a.areaMm2)).toEqual(shares);
});

test("the palette is drawn from the main cloth, as many as asked, the largest share first", () => {
  const three = schemeOf({ ...ROOM, room: "colours: 3" });
  expect(three.palette.source).toMatchObject({ from: "main-cloth", id: "fern" });
  expect(three.palette.colours).toHaveLength(3);
  expect(three.palette.colours[0]?.hex).toBe(CREAM);
});
