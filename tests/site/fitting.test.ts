import { expect, test } from "vitest";
import { askedOf, CURTAINS, computedRoom, linesOf, STUDIO, sheetOf } from "./fittingOf.ts";

test("a pole of 200 cm over an opening of 160 cm that is 90 cm from the wall's end stands 70 cm from it, 20 cm beyond at each side", async () => {
  const { walls, rate } = await sheetOf(CURTAINS);
  expect(walls.map((w) => w.heading)).toEqual(["North wall"]);
  const entry = walls[0]?.entries[0];
  expect(entry?.of).toBe("1 of 1");
  expect(entry?.about).toBe("Made by Bench Workroom.");
  expect(linesOf(entry, "Opening")).toEqual([
    "Quay: 160 cm × 120 cm, 90 cm from the left end.",
    "Sill 85 cm, head 205 cm above the floor.",
    "Outside the recess, on the wall.",
  ]);
  expect(linesOf(entry, "Pole")).toEqual([
    "200 cm long between its finials.",
    "From 70 cm to 270 cm along the wall.",
    "20 cm beyond the opening at each side.",
    "Its middle 225 cm above the floor, 20 cm above the opening.",
    "Returns 8 cm to the wall at each end.",
  ]);
  expect(linesOf(entry, "What hangs").at(-1)).toBe("Drawn back it takes 20 cm at each side.");
  expect(linesOf(entry, "Comes with it")).toEqual(["Iron pole.", "Bought by the studio."]);
  expect(linesOf(entry, "Note")).toEqual(["Rings on the left are numbered."]);
  expect(askedOf(entry)).toEqual([]);
  expect(rate).toBe("£43 per hour");
  const svg = walls[0]?.drawings[0]?.svg.html.replace(/\u202f/g, " ") ?? "";
  for (const measure of ["70 cm", "200 cm (1)", "90 cm", "160 cm", "150 cm", "400 cm in all"])
    expect(svg).toContain(measure);
});

test("what goes up otherwise than in the last revision that was sent is said first", async () => {
  const made = {
    mount: "outside",
    pole: "200\u00a0cm",
    "pole-height": "215\u00a0cm",
    to: "floor",
    heading: "pencil-pleat",
    return: "8\u00a0cm",
    "stack-back": "40\u00a0cm",
  };
  const item = {
    ...{ room: "den", roomName: "Den", item: "curtains-quay", what: "Curtains, quay" },
    ...{ cloths: ["Plain"], way: null, made, sumMinor: 100, open: false },
  };
  const sent = {
    ...{ form: 1, project: "quay", revision: "A", sent: "2026-11-02", dated: "2026-11-02" },
    ...{ currency: "GBP", items: [item], others: [], totalMinor: 100 },
  };
  const { walls } = await sheetOf(CURTAINS, {
    "projects/quay/sent/A.json": JSON.stringify(sent),
  });
  const groups = walls[0]?.entries[0]?.groups ?? [];
  expect(groups[0]?.heading).toBe("Not as it was");
  expect(linesOf(walls[0]?.entries[0], "Not as it was")).toEqual([
    "Changed since revision A: pole height 225 cm, before 215 cm.",
  ]);
});

test("what is not said is asked before anything is drilled", async () => {
  const items = CURTAINS.replace(/ {4}(?:pole|pole-height|return): .*\n/g, "").replace(
    / {4}hardware.*/,
    "",
  );
  const entry = (await sheetOf(items)).walls[0]?.entries[0];
  // The usual values of the kind: 20 cm beyond and 20 cm above would be others' numbers, so only that it asks is held here.
  expect(askedOf(entry)).toEqual([
    expect.stringMatching(/^The pole is not yet measured: \d+(\.\d)? cm is assumed\.$/),
    expect.stringMatching(/^The height of the pole is not said: \d+(\.\d)? cm is assumed\.$/),
  ]);
  expect(linesOf(entry, "Comes with it")).toEqual([
    "No pole is on the order: what is there is used, or ask who brings it.",
  ]);
});

test("walls follow each other round the room, and on each what hangs from left to right and from the top down", async () => {
  const { walls, cautions } = await sheetOf(`  - tieback: Quay
    at: { on: curtains-quay }
    count: 2
    cloth: plain
    length: 60 cm
    depth: 12 cm
    end-depth: 5 cm
    sag: 8 cm
    hook-height: 80 cm
  - object: view
    at: { wall: west, from-left: 200 cm, height: 130 cm }
  - blind: Lane
    at: lane
    mount: inside
    cloth: plain
    width: 99 cm
    drop: 139 cm
    operation: chain
    side: right
  - pelmet: Quay
    at: quay
    mount: outside
    cloth: plain
    board: 220 cm
    return: 15 cm
    top-height: 240 cm
    depth: 30 cm
${CURTAINS}
  - paint: Walls
    on: [north]
    colour: "#dddddd"
    coats: 2
    maker: brush`);
  expect(walls.map((w) => w.heading)).toEqual(["North wall", "East wall", "West wall"]);
  const [north, east, west] = walls;
  expect(north?.before).toBe("First, and dry: walls (paint).");
  expect(east?.before).toBe("");
  expect(north?.entries.map((e) => `${e.of} ${e.heading}`)).toEqual([
    "1 of 5 Pelmet: Quay",
    "2 of 5 Curtains: Quay",
    "3 of 5 Two tie-backs: Quay",
  ]);
  const [pelmet, , tieback] = north?.entries ?? [];
  // 220 - 160 = 60, half of it at each side; 90 - 30 = 60. 240 - 205 = 35 over the opening; 240 - 30 = 210.
  expect(linesOf(pelmet, "Board")).toEqual([
    "220 cm long.",
    "From 60 cm to 280 cm along the wall.",
    "30 cm beyond the opening at each side.",
    "Its top 240 cm above the floor, 35 cm above the opening.",
    "Stands out 15 cm from the wall: it must clear all that hangs under it.",
  ]);
  expect(linesOf(pelmet, "What hangs")[1]).toBe("Its lowest edge 210 cm above the floor.");
  expect(linesOf(tieback, "Hooks")[1]).toBe("80 cm above the floor.");
  // In the recess: (100 - 99) / 2 = 0.5 clear; 120.5 from the end; hem 80 + 140 - 139 = 81.
  const blind = east?.entries[0];
  expect(linesOf(blind, "Headrail")).toEqual([
    "99 cm long.",
    "From 120.5 cm to 219.5 cm along the wall.",
    "0.5 cm clear at each side.",
    "Its head 220 cm above the floor, level with the opening&#39;s head.",
  ]);
  expect(linesOf(blind, "What hangs")[1]).toBe(
    "Its hem 81 cm above the floor, 1 cm above the sill.",
  );
  expect(linesOf(blind, "Control").slice(0, 2)).toEqual([
    "Chain, at the right, seen from the room.",
    "Held fast to the wall with the safety device that comes with it: no free loop, out of a child&#39;s reach.",
  ]);
  // 130 + 40 / 2 = 150; 130 + 40 = 170.
  expect(linesOf(west?.entries[0], "Place")).toEqual([
    "From 200 cm to 260 cm along the wall.",
    "Foot 130 cm, middle 150 cm, top 170 cm above the floor.",
  ]);
  expect(linesOf(west?.entries[0], "Weight")).toEqual(["4 kg"]);
  expect(cautions.map((c) => c.word)).toEqual(["Cords.", "Old paint.", "Heavy piece."]);
});

test("of several alike it is asked where the others go; a hem at the sill is not held against the floor", async () => {
  const items = CURTAINS.replace("to: floor", "to: sill\n    count: 2");
  const entry = (await sheetOf(items)).walls[0]?.entries[0];
  expect(askedOf(entry)).toEqual([
    "There are 2 alike, and the place of one is said: where do the others go?",
  ]);
  const checks = entry?.checks.map(({ text }) => text.html) ?? [];
  expect(checks.filter((text) => /[Ff]loor/.test(text))).toEqual([
    "Pole&#39;s middle above the floor;",
    "Hem above the floor, all along;",
  ]);
});

test("a headboard is fitted where it hangs on the wall, not where its bed carries it", async () => {
  const headboard = (fixing: string) => `  - headboard: Guest
    at: { wall: south, from-left: 110 cm, height: 45 cm }
    cloth: plain
    size: 160 cm x 8 cm x 80 cm
    fixing: ${fixing}
    weight: 14 kg`;
  const entry = (await sheetOf(headboard("wall"))).walls[0]?.entries[0];
  expect(linesOf(entry, "Place")).toEqual([
    "From 110 cm to 270 cm along the wall.",
    "Foot 45 cm, head 125 cm above the floor.",
  ]);
  expect(linesOf(entry, "Weight")).toEqual(["14 kg"]);
  const { pages } = await computedRoom(headboard("bed"));
  expect(pages.filter(({ path }) => path.includes("/hook/"))).toEqual([]);
});

test("a blind at no window has its head where its place on the wall says: 70 cm and a drop of 150; unsaid it is asked", async () => {
  const read = async (kind: string, height: string) => {
    const { walls } = await sheetOf(
      `  - ${kind}: Niche\n    at: { wall: south, from-left: 100 cm${height} }\n    cloth: plain\n    mount: outside\n    width: 90 cm\n    drop: 150 cm\n    maker: bench\n`,
    );
    const entry = walls[0]?.entries[0];
    return JSON.stringify([entry?.groups, entry?.questions]).replace(/\s/g, " ");
  };
  for (const kind of ["blind", "roller-blind"]) {
    const said = await read(kind, ", height: 70 cm");
    expect(said, kind).toContain("220 cm above the floor");
    expect(said, kind).toContain("Its hem 70 cm above the floor");
    expect(said, kind).not.toMatch(/How high/);
    expect(await read(kind, ""), kind).toMatch(/How high above the floor/);
  }
});

test("where no maker fits there is no fitter's sheet; one who sews and fits has both sheets", async () => {
  const none = await computedRoom(CURTAINS, STUDIO.replace(/ {2}hook: .*\n/, ""));
  expect(none.pages.filter(({ path }) => path.endsWith("fitting.html"))).toEqual([]);
  const both = await computedRoom(CURTAINS, STUDIO.replace("[curtains,", "[fitting, curtains,"));
  const theirs = both.pages.map(({ path }) => path).filter((path) => path.startsWith("makers/"));
  expect(theirs).toEqual(["makers/bench/quay/den.html", "makers/bench/quay/den/fitting.html"]);
});

test("the fitter reads no price but the own rate, and no supplier", async () => {
  const { pages } = await computedRoom(CURTAINS);
  const page = pages.find(({ path }) => path.endsWith("/fitting.html"));
  const said = JSON.stringify(page?.model);
  expect(said).toContain("£43");
  for (const secret of ["987", "£71", "Hidden Poles"]) expect(said).not.toContain(secret);
});
